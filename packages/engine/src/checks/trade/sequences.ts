import {
  cannotFollowInSequence,
  type Finding,
  type Mend,
  type Origin,
  sequenceInSeveralBlanks,
  sequenceLargerThanStock,
  sequenceWithoutOrder,
} from '@fettle/findings';
import type { Stock } from '../../design/shop.ts';
import { Length } from '../../length/length.ts';
import { type FrontInSequence, isVeneeredOneByOne, type LaidSequence } from '../../parts/front-sequences.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';
import { type BlankSize, sizeOfBlank } from '../../stock/blank.ts';
import { usualAllowances } from '../../stock/boards/board-allowances.ts';
import { kerfOf } from '../../stock/buying/buying-request.ts';
import { orderedBlank } from '../../stock/buying/ordered-blanks.ts';
import { cellsIn, whoIs } from './alike.ts';
import type { TradeCase } from './case-facts.ts';
import { beyondStock, isAlike, wordsFor } from './parts-from-stock.ts';

/** Whether the fronts of each sequence can follow one another, and whether some stock holds them in that order. */
export function sequenceFindings(one: TradeCase): readonly Finding[] {
  const { face } = one;
  if (face === undefined) return [];
  const groups = new Map(cellsIn(face.root).map(({ laid, group }) => [laid.cell, group]));
  const who = (cell: FrontInSequence['cell'] | LaidSequence['unfit'][number]['cell']) => whoIs(cell, groups.get(cell));
  return face.sequences.flatMap((laid): readonly Finding[] => {
    const unfit = laid.unfit.map(({ member, cell, why, first }) =>
      cannotFollowInSequence.at(
        member.origin,
        { ...who(cell), why },
        {
          related: first === undefined ? [] : [{ role: 'first', values: who(cell), origin: first.origin }],
          mends:
            member.to === undefined
              ? [{ how: 'remove', values: who(cell), changes: [{ kind: 'remove', at: member.origin }] }]
              : [],
        },
      ),
    );
    // Leaves of veneer run on over whatever is beneath them.
    if (isVeneeredOneByOne(laid.sequence, laid.runs, face.design)) return unfit;
    const count = laid.runs.flat().length;
    const isKnown = laid.sequence.members.every(({ from, to }) =>
      [from, to ?? from].every((name) => isNamed(one, name)),
    );
    if (count < 2 && unfit.length === 0 && isKnown) {
      return [sequenceWithoutOrder.at(laid.sequence.origin, { sequence: labelOf(laid), count })];
    }
    const breaks = laid.sequence.isVeneered ? [] : laid.breaks;
    return [
      ...unfit,
      ...breaks.map(({ before, after, why }) =>
        sequenceInSeveralBlanks.at(
          after.member.origin,
          { sequence: labelOf(laid), before: who(before.cell), after: who(after.cell), why },
          {
            related: [{ role: 'before', values: who(before.cell), origin: before.cell.origin }],
            mends: leavingOut(after, who(after.cell)),
          },
        ),
      ),
      ...laid.runs.flatMap((run) => runFindings(one, laid, run)),
    ];
  });
}

function isNamed({ face }: TradeCase, name: string): boolean {
  return face !== undefined && cellsIn(face.root).some(({ laid }) => laid.cell.name === name);
}

function labelOf({ sequence }: LaidSequence): string {
  return sequence.name === undefined ? 'the sequence' : `sequence "${sequence.name}"`;
}

/** Only of what is named by itself: of those between two others none can be left out. */
function leavingOut(
  { member }: FrontInSequence,
  values: { readonly name?: string; readonly words: string },
): readonly Mend[] {
  if (member.to !== undefined) return [];
  return [{ how: 'leave-out', values, changes: [{ kind: 'remove', at: member.origin }] }];
}

function runFindings(one: TradeCase, laid: LaidSequence, run: readonly FrontInSequence[]): readonly Finding[] {
  const parts = run.flatMap(({ id }) => one.parts.find((part) => part.id === id) ?? []);
  const [first] = parts;
  const last = run.at(-1);
  const stock = first?.stock;
  if (stock === undefined || last === undefined || parts.length < 2) return [];
  // A front that is too large by itself is told by itself.
  if (parts.some((part) => beyondStock(part, stock) !== undefined)) return [];
  const over = beyond(one, parts, stock);
  if (over === undefined) return [];
  return [
    sequenceLargerThanStock.at(
      laid.sequence.origin,
      {
        sequence: labelOf(laid),
        count: parts.length,
        stock: stock.name,
        form: stock.form,
        axis: over.axis,
        size: over.size,
        limit: over.limit,
        difference: over.size.minus(over.limit),
      },
      {
        related: [{ role: 'stock', values: { stock: stock.name }, origin: stock.origin }],
        mends: [...otherStocks(one, stock, parts), ...withoutLast(one, stock, run, parts)],
      },
    ),
  ];
}

interface Beyond {
  readonly axis: 'length' | 'width';
  readonly size: Length;
  readonly limit: Length;
}

/** Undefined where one piece of the stock holds them in their order, or where it does not say how large it is. */
function beyond(one: TradeCase, parts: readonly UnmarkedPart[], stock: Stock): Beyond | undefined {
  const run = parts[0]?.run;
  if (run === undefined || stock.length === undefined || stock.width === undefined) return undefined;
  const { unit } = one.layout;
  const kerf = kerfOf(one.shop.machines ?? [], unit).length;
  const { length, width }: BlankSize = sizeOfBlank(
    orderedBlank(
      run,
      parts.map((part) => ({ ...part, stock })),
      kerf,
      unit,
    ),
  );
  const { ends, edges } = lostAround(stock, unit);
  const longest = stock.length.length.minus(ends.times(2));
  const widest = stock.width.length.minus(edges.times(2));
  // Stock of which nothing is left is told where it is described.
  if (!longest.isPositive() || !widest.isPositive()) return undefined;
  if (length.compare(longest) > 0) return { axis: 'length', size: length, limit: longest };
  return width.compare(widest) > 0 ? { axis: 'width', size: width, limit: widest } : undefined;
}

/** What is trimmed off each end and each edge before anything else. */
function lostAround(
  stock: Stock,
  unit: TradeCase['layout']['unit'],
): { readonly ends: Length; readonly edges: Length } {
  if (stock.form === 'board') {
    const { boardEnd, boardEdge } = usualAllowances(unit);
    return { ends: boardEnd, edges: boardEdge };
  }
  const trim = stock.trim?.length.max(Length.zero) ?? Length.zero;
  return { ends: trim, edges: trim };
}

/** Larger ones that differ in nothing else, where one place in the text names the stock of all these fronts. */
function otherStocks(one: TradeCase, stock: Stock, parts: readonly UnmarkedPart[]): readonly Mend[] {
  const at: Origin | undefined = wordsFor(one.design, stock, parts[0]?.origin ?? stock.origin);
  if (at === undefined) return [];
  return (one.shop.stocks ?? [])
    .filter((each) => each.name !== stock.name && isAlike(each, stock) && beyond(one, parts, each) === undefined)
    .slice(0, 3)
    .map((each) => ({
      how: 'use-stock',
      values: { stock: each.name },
      changes: [{ kind: 'set-name', at, name: each.name }],
    }));
}

function withoutLast(
  one: TradeCase,
  stock: Stock,
  run: readonly FrontInSequence[],
  parts: readonly UnmarkedPart[],
): readonly Mend[] {
  const last = run.at(-1);
  const name = last?.cell.name;
  if (last === undefined || name === undefined) return [];
  const others = run.filter(({ member }) => member !== last.member);
  const rest = parts.filter(({ id }) => others.some((front) => front.id === id));
  if (rest.length < 2 || beyond(one, rest, stock) !== undefined) return [];
  return leavingOut(last, { name, words: name });
}
