import { assumed, type Cell, type Divider, type FrontFit, Length, type Material } from '@fettle/engine';
import { dividerOutOfPlace, unknownWord } from '@fettle/findings';
import type { Statement } from '../generated/ast.ts';
import * as vocabulary from '../schema/face.ts';
import { readDustPanel, readTenons, withEdging } from './read-construction.ts';
import { joinOf } from './read-joints.ts';
import { readMaterial } from './read-material.ts';
import { headOrigin, onlyStatement, originOf, type ReadContext, Reader } from './reader.ts';

/** What stands between the spaces of a row or a stack: of what, shown or covered, and where on its gap. */

const noMaterial: Material = { thickness: assumed(Length.zero, 'nothing lies between them') };

/** Nothing between two spaces. */
export function noDivider(id: string, origin: Divider['origin']): Divider {
  return { id, origin, form: 'none', material: noMaterial, mode: 'behind', anchor: 'centre' };
}

/** As it is written; without a mode where nothing says whether it is seen. */
export type DividerSaid = Omit<Divider, 'id' | 'mode'> & { readonly mode?: Divider['mode'] };

/** Undefined, with a finding, when its thickness cannot be known. */
export function readDivider(
  context: ReadContext,
  statement: Statement,
  group: 'row' | 'stack',
): DividerSaid | undefined {
  const reader = new Reader(statement, vocabulary.divider, context);
  const material = readMaterial(reader, statement.head ?? 'divider');
  if (material === undefined) return undefined;
  const railWidth = reader.length('rails <length> wide');
  const anchor = readAnchor(reader, group);
  const isBehind = reader.has('behind fronts') || (!reader.has('shown') && anchor !== undefined);
  const mode = isBehind ? 'behind' : reader.has('shown') ? 'shown' : undefined;
  const dustPanel = readDustPanel(context, onlyStatement(context, statement, 'dust-panel'));
  const said = onlyStatement(context, statement, 'tenons');
  const tenons =
    said === undefined && dustPanel === undefined
      ? undefined
      : readTenons(context, said, reader.origin, dustPanel?.groove);
  const formOrigin = reader.originOf('web-frame');
  const divider: DividerSaid = {
    origin: reader.origin,
    form: reader.has('web-frame') ? 'web-frame' : group === 'row' ? 'partition' : 'panel',
    material,
    ...(mode === undefined ? {} : { mode }),
    anchor: anchor ?? 'centre',
    ...(railWidth === undefined ? {} : { railWidth }),
    ...(formOrigin === undefined ? {} : { formOrigin }),
    ...(tenons === undefined ? {} : { tenons }),
    ...(dustPanel === undefined ? {} : { dustPanel }),
    ...joinOf(reader),
  };
  return withEdging(context, statement, divider);
}

/** The divider between `before` and `after`. `fit`: how the fronts of the face sit. */
export function dividerBetween(
  said: DividerSaid,
  id: string,
  group: 'row' | 'stack',
  fit: FrontFit,
  [before, after]: readonly [Cell, Cell],
): Divider {
  const isCovered = isClosedAt(before, group, 'end') && isClosedAt(after, group, 'start');
  return { ...said, id, mode: said.mode ?? (isCovered && isUsuallyBehind(group, fit) ? 'behind' : 'shown') };
}

/** Whether every space that reaches the divider at this end of the cell has a front: an open one shows its edge. */
function isClosedAt(cell: Cell, group: 'row' | 'stack', end: 'start' | 'end'): boolean {
  if (cell.kind === 'open') return false;
  if (cell.kind === 'front') return true;
  if (cell.kind !== group) return cell.cells.every((inner) => isClosedAt(inner, group, end));
  const outermost = end === 'start' ? cell.cells[0] : cell.cells.at(-1);
  return outermost === undefined || isClosedAt(outermost, group, end);
}

/**
 * Where nothing is said: fronts that lap an edge fully or half cover what is between them; fronts that lap it by an
 * amount or by a lip leave the middle of it to be seen; among inset fronts partitions are shown, dividers covered.
 */
function isUsuallyBehind(group: 'row' | 'stack', fit: FrontFit): boolean {
  if (fit.kind === 'inset') return group === 'stack';
  return fit.kind === 'overlay' && fit.how !== 'by';
}

type AnchorPattern = `${'upper' | 'lower' | 'left' | 'right'} face on gap` | 'centred on gap';
const anchors: readonly (readonly [AnchorPattern, 'row' | 'stack' | undefined, Divider['anchor'], AnchorPattern])[] = [
  ['centred on gap', undefined, 'centre', 'centred on gap'],
  ['left face on gap', 'row', 'start', 'upper face on gap'],
  ['right face on gap', 'row', 'end', 'lower face on gap'],
  ['upper face on gap', 'stack', 'start', 'left face on gap'],
  ['lower face on gap', 'stack', 'end', 'right face on gap'],
];

function readAnchor(reader: Reader<AnchorPattern | 'shown'>, group: 'row' | 'stack'): Divider['anchor'] | undefined {
  let found: Divider['anchor'] | undefined;
  for (const [pattern, inGroup, anchor, turned] of anchors) {
    const origin = reader.originOf(pattern);
    if (origin === undefined) continue;
    const isTurned = inGroup !== undefined && inGroup !== group;
    if (!isTurned && !reader.has('shown')) {
      found ??= anchor;
      continue;
    }
    reader.context.findings.push(
      unknownWord.at(
        origin,
        {
          words: pattern,
          place: reader.has('shown') ? 'a divider that is shown: there is no gap over it' : `a ${group}`,
          nearest: isTurned && !reader.has('shown') ? turned : '',
        },
        {
          mends: [
            ...(isTurned && !reader.has('shown')
              ? [
                  {
                    how: 'use-nearest',
                    values: { word: turned },
                    changes: [{ kind: 'set-words', at: origin, words: turned } as const],
                  },
                ]
              : []),
            { how: 'remove', values: { words: pattern }, changes: [{ kind: 'remove', at: origin }] },
          ],
        },
      ),
    );
  }
  return found;
}

export function dividerStandsAlone(
  context: ReadContext,
  statement: Statement,
  where: 'first' | 'last' | 'beside-another',
): void {
  const word = statement.head ?? 'divider';
  context.findings.push(
    dividerOutOfPlace.at(
      headOrigin(context, statement),
      { word, where },
      {
        mends: [{ how: 'remove', values: { word }, changes: [{ kind: 'remove', at: originOf(context, statement) }] }],
      },
    ),
  );
}
