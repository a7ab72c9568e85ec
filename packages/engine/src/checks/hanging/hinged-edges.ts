import { type Finding, hingesAtOtherEdge, type Mend } from '@fettle/findings';
import type { NamedHinges } from '../../design/hanging-design.ts';
import type { LaidCell } from '../../evaluation.ts';
import { cellsIn, type NamedCell, whoIs } from '../trade/alike.ts';
import type { TradeCase } from '../trade/case-facts.ts';

/** Hinges that are named for an edge at which nothing hangs, and doors for whose edge none are named. */
export function edgeFindings({ face }: TradeCase): readonly Finding[] {
  if (face === undefined) return [];
  return cellsIn(face.root).flatMap((each) => {
    const { cell, leaves } = each.laid;
    if (cell.kind !== 'front' || cell.what !== 'door') return [];
    return leaves.length > 1 ? ofPair(each) : ofSingle(each);
  });
}

type Edge = 'left' | 'right';

const other = { left: 'right', right: 'left' } as const;

function namedAt({ cell }: LaidCell, edge: Edge): NamedHinges | undefined {
  if (cell.kind !== 'front') return undefined;
  return edge === 'left' ? cell.hanging?.atLeft : cell.hanging?.atRight;
}

/** The words for one edge alone leave the other leaf without hinges. */
function ofPair({ laid, group }: NamedCell): readonly Finding[] {
  const { cell } = laid;
  if (cell.kind !== 'front' || cell.hinges !== undefined) return [];
  return (['left', 'right'] as const).flatMap((edge) => {
    const named = namedAt(laid, edge);
    if (named === undefined || namedAt(laid, other[edge]) !== undefined) return [];
    const { name } = named.entry;
    return [
      hingesAtOtherEdge.at(
        named.phrase,
        { ...whoIs(cell, group), hinge: name, named: edge, hung: other[edge], which: 'pair' },
        { mends: [{ how: 'both', values: { hinge: name }, changes: [words(named, `"${name}"`)] }] },
      ),
    ];
  });
}

function ofSingle({ laid, group }: NamedCell): readonly Finding[] {
  const { cell } = laid;
  if (cell.kind !== 'front' || cell.hingeSide === undefined) return [];
  const hung = cell.hingeSide;
  const named = namedAt(laid, other[hung]);
  if (named === undefined) return [];
  const { name } = named.entry;
  const facts = { ...whoIs(cell, group), hinge: name, named: other[hung], hung };
  const hasOwn = namedAt(laid, hung) !== undefined || cell.hingesOrigin?.start !== named.origin.start;
  if (hasOwn)
    return [
      hingesAtOtherEdge.at(
        named.phrase,
        { ...facts, which: 'unused' },
        { mends: [{ how: 'remove', values: { hinge: name }, changes: [{ kind: 'remove', at: named.phrase }] }] },
      ),
    ];
  const { hingeSideOrigin } = cell;
  const turn: readonly Mend[] =
    hingeSideOrigin === undefined
      ? []
      : [
          {
            how: 'turn',
            values: { edge: other[hung] },
            changes: [{ kind: 'set-words', at: hingeSideOrigin, words: `hinged ${other[hung]}` }],
          },
        ];
  const move: Mend = {
    how: 'move',
    values: { edge: hung, hinge: name },
    changes: [words(named, `"${name}" at ${hung}`)],
  };
  return [
    hingesAtOtherEdge.at(hingeSideOrigin ?? named.phrase, { ...facts, which: 'single' }, { mends: [...turn, move] }),
  ];
}

function words({ phrase }: NamedHinges, to: string) {
  return { kind: 'set-words', at: phrase, words: to } as const;
}
