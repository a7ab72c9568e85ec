import type { CatchDesign, FrontCell, HangingDesign, HingeEntry, NamedHinges } from '@fettle/engine';
import type { LangiumDocuments } from 'langium';
import type { Statement } from '../generated/ast.ts';
import * as face from '../schema/face.ts';
import * as vocabulary from '../schema/hanging.ts';
import { entryReader, optional, priceOf, shopFigure } from './read-shop.ts';
import { onlyStatement, type ReadContext, Reader } from './reader.ts';

/** How a door hangs, as the maker wrote it. */

type Hung = Pick<FrontCell, 'hingeSide' | 'hingeSideOrigin'>;

export function readHingeSide(context: ReadContext, statement: Statement): Hung {
  const reader = new Reader(statement, face.door, context);
  const side = (['left', 'right'] as const).find((each) => reader.has(`hinged ${each}`));
  return side === undefined
    ? {}
    : { hingeSide: side, ...optional('hingeSideOrigin', reader.originOf(`hinged ${side}`)) };
}

export function readHinges(
  context: ReadContext,
  statement: Statement,
  { isSingle, hingeSide }: { readonly isSingle: boolean } & Pick<FrontCell, 'hingeSide'>,
): Pick<FrontCell, 'hinges' | 'hingesOrigin' | 'hanging' | 'hingeSide'> {
  const found = onlyStatement(context, statement, 'hinges');
  const reader = found && new Reader(found, vocabulary.hinges, context);
  if (reader === undefined) return {};
  const target = reader.target('<hinge>');
  if (target !== undefined) context.touched.add(target.statement);
  const atLeft = namedHinges(reader, '<hinge> at left');
  const atRight = namedHinges(reader, '<hinge> at right');
  const only =
    target !== undefined
      ? { entry: readHinge(target.statement, context.documents), origin: target.origin }
      : isSingle
        ? ((hingeSide === 'right' ? atRight : atLeft) ?? atRight ?? atLeft)
        : undefined;
  // A single door hangs where its hinges are, if they are said for one edge alone.
  const side = target === undefined && (atLeft === undefined) !== (atRight === undefined);
  const hanging: HangingDesign = {
    origin: reader.origin,
    ...optional('atLeft', atLeft),
    ...optional('atRight', atRight),
    ...optional('count', reader.count('<count> to each door')),
    ...optional('countOrigin', reader.slotOrigin('<count> to each door')),
    ...optional('fromEnds', reader.length('<length> from ends')),
    ...optional(
      'caseGain',
      reader.measured('measured case gain <length> deep') ?? reader.length('case gain <length> deep'),
    ),
    ...optional('bevel', reader.length('closing edge bevelled <length>')),
  };
  return {
    ...(only === undefined ? {} : { hinges: only.entry, hingesOrigin: only.origin }),
    hanging,
    ...(isSingle && side && hingeSide === undefined
      ? { hingeSide: atLeft === undefined ? ('right' as const) : ('left' as const) }
      : {}),
  };
}

/** What holds a door shut, and what it comes to rest on. */
export function readCatches(context: ReadContext, statement: Statement): Pick<FrontCell, 'catches'> {
  const found = (['catch', 'stop'] as const).flatMap((kind) => {
    const said = onlyStatement(context, statement, kind);
    return said === undefined ? [] : [{ kind, said }];
  });
  if (found.length === 0) return {};
  return {
    catches: found.map(({ kind, said }): CatchDesign => {
      const reader = new Reader(said, vocabulary.catches, context);
      const at = (['top', 'bottom'] as const).filter((end) => reader.has(`at ${end}`));
      return {
        origin: reader.origin,
        kind,
        ...optional(
          'how',
          (['magnet', 'ball', 'touch'] as const).find((each) => reader.has(each)),
        ),
        at: at.length === 0 ? ['top'] : at,
        atOrigins: {
          ...optional('top', reader.originOf('at top')),
          ...optional('bottom', reader.originOf('at bottom')),
        },
      };
    }),
  };
}

function namedHinges<Pattern extends string>(reader: Reader<Pattern>, pattern: Pattern): NamedHinges | undefined {
  const target = reader.target(pattern);
  if (target === undefined) return undefined;
  reader.context.touched.add(target.statement);
  return {
    entry: readHinge(target.statement, reader.context.documents),
    origin: target.origin,
    phrase: reader.originOf(pattern) ?? target.origin,
  };
}

const entries = new WeakMap<Statement, HingeEntry>();

export function readHinge(statement: Statement, documents: LangiumDocuments): HingeEntry {
  const known = entries.get(statement);
  if (known !== undefined) return known;
  const reader = readerOf(statement, documents);
  const figure = (...patterns: Parameters<typeof reader.length>) => shopFigure(reader.length(...patterns), statement);
  const [thinnest, thickest] = reader.lengths('doors <length> to <length> thick');
  const entry: HingeEntry = {
    name: statement.name ?? '',
    origin: reader.origin,
    ...optional('thinnestDoor', shopFigure(thinnest, statement)),
    ...optional('thickestDoor', shopFigure(thickest, statement)),
    ...optional('widestDoor', figure('doors at most <length> wide')),
    ...optional('highestDoor', figure('doors at most <length> high')),
    madeFor: [
      ...(reader.has('for inset doors') ? (['inset'] as const) : []),
      ...(reader.has('for overlay doors') ? (['overlay'] as const) : []),
    ],
    ...optional(
      'form',
      (['butt', 'knife', 'concealed'] as const).find((each) => reader.has(each)),
    ),
    ...optional('length', figure('<length> long')),
    ...optional('leafWidth', figure('leaf <length> wide')),
    ...optional('closed', figure('<length> closed')),
    ...optional('screwLength', figure('screws <length> long')),
    ...optional('screwsEachLeaf', reader.count('<count> screws in each leaf')),
    ...optional('cup', readCup(reader, statement)),
    ...optional('opens', reader.number('opens <number> degrees')),
    ...optional('standsIn', figure('stands <length> into opening')),
    ...optional('openDoorIn', figure('open door <length> into opening')),
    ...optional('price', priceOf('each', reader.number('costs <number> each'))),
  };
  entries.set(statement, entry);
  return entry;
}

function readerOf(statement: Statement, documents: LangiumDocuments) {
  return entryReader(statement, vocabulary.hinge, documents).reader;
}

/** Undefined while the entry does not say how wide and how deep the cup is. */
function readCup(reader: ReturnType<typeof readerOf>, statement: Statement): HingeEntry['cup'] {
  const figure = (...patterns: Parameters<typeof reader.length>) => shopFigure(reader.length(...patterns), statement);
  const [diameter, depth] = [figure('cup <length> wide'), figure('cup <length> deep')];
  if (diameter === undefined || depth === undefined) return undefined;
  const [least, most] = reader.lengths('cup <length> to <length> from edge');
  const overlay = figure('overlay <length> more than cup distance');
  const gap = figure('gap and cup distance <length> together');
  return {
    diameter,
    depth,
    ...optional('leastDistance', shopFigure(least, statement)),
    ...optional('mostDistance', shopFigure(most, statement)),
    ...(overlay === undefined ? {} : { reach: { kind: 'overlay', figure: overlay } as const }),
    ...(overlay !== undefined || gap === undefined ? {} : { reach: { kind: 'gap', figure: gap } as const }),
    ...optional('holesApart', figure('fixing-holes <length> apart')),
    ...optional('holesBehind', figure('fixing-holes <length> behind cup')),
    ...optional('plateFrom', figure('plate <length> from front')),
  };
}
