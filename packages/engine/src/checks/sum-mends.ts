import type { Change, Mend } from '@fettle/findings';
import { given } from '../design/derive.ts';
import type { Cell, SizeAsked } from '../design/design.ts';
import type { AxisCell, AxisFailure, Blame } from '../layout/axis.ts';
import { plainCellLabel } from '../layout/cell-names.ts';
import { solveAxis } from '../layout/solve-axis.ts';
import type { SolvedAxis } from '../layout/solve-face.ts';
import { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { innerSizes } from './inner-sizes.ts';
import { givenAt, isSameOrigin } from './written-sizes.ts';

/**
 * Ways out when the sizes of a row or stack do not come out. Every one is tried on the solver first: a mend that does
 * not mend is not offered.
 */

/** More than this is no help: the first few have the most slack. */
const MOST_RESIZES = 4;

/** `mark`: the finest of the maker's ruler. Best first: the size that can give most, then letting it take the rest, then all alike, then the other sizes. */
export function sumMends(
  axis: SolvedAxis,
  failure: Extract<AxisFailure, { kind: 'difference' }>,
  mark: Length,
): readonly Mend[] {
  const [first, ...others] = failure.blame.filter((one) => one.mended !== undefined).slice(0, MOST_RESIZES);
  const candidates = [
    first === undefined ? undefined : resize(axis, first, failure.tooMuch),
    ...(first === undefined ? failure.blame.slice(0, 1) : [first]).map((one) => letRest(axis, one)),
    spread(axis, failure, mark),
    ...failure.blame.flatMap((one) => resizeInner(axis, one, failure.tooMuch)).slice(0, MOST_RESIZES),
    ...others.map((one) => resize(axis, one, failure.tooMuch)),
  ];
  return candidates.flatMap((candidate) =>
    candidate !== undefined && holds(axis, candidate.trial) ? [candidate.mend] : [],
  );
}

/** When the written sizes leave nothing for others: let all of them share. */
export function sharingMends(axis: SolvedAxis, blame: readonly Blame[]): readonly Mend[] {
  const written = blame.flatMap((one) => {
    const cell = cellOf(axis, one.id);
    return cell !== undefined && one.by === 'fixed' && cell.along.kind === 'fixed' ? [cell] : [];
  });
  if (written.length === 0) return [];
  const asked: SizeAsked = { kind: 'share', weight: Rational.one };
  const trial = new Map<string, SizeAsked>(written.map((cell) => [cell.id, asked]));
  if (!holds(axis, trial)) return [];
  return [
    {
      how: 'share-all',
      values: { count: axis.group.cells.length, axis: axis.direction },
      changes: written.map((cell) => ({ kind: 'set-words', at: cell.sizeOrigin, words: 'share 1' })),
    },
  ];
}

interface Candidate {
  readonly mend: Mend;
  /** What the changed cells would ask for. */
  readonly trial: ReadonlyMap<string, SizeAsked>;
}

function resize(axis: SolvedAxis, blame: Blame, tooMuch: boolean): Candidate | undefined {
  const cell = cellOf(axis, blame.id);
  const at = givenAt(blame.figure);
  if (cell === undefined || at === undefined || blame.mended === undefined || blame.by !== 'fixed') return undefined;
  const to = blame.mended;
  return {
    mend: {
      how: 'resize',
      values: {
        ...whoIs(axis, cell),
        size: to,
        change: to.minus(blame.figure.length).abs(),
        direction: tooMuch ? 'less' : 'more',
      },
      changes: [{ kind: 'set-length', at, to }],
    },
    trial: askingFor(axis, [{ at, to }]),
  };
}

/** One of the sizes that make up a row or stack, changed by what the whole of it has to change. */
function resizeInner(axis: SolvedAxis, blame: Blame, tooMuch: boolean): readonly Candidate[] {
  const outer = cellOf(axis, blame.id);
  const { mended } = blame;
  if (outer === undefined || mended === undefined || blame.by !== 'fixed') return [];
  const by = mended.minus(blame.figure.length);
  const inner = innerSizes(outer, axis.group.kind);
  const places = inner.map(({ cell }) => givenAt(cell.along.figure));
  return inner.flatMap(({ cell, group }, index): readonly Candidate[] => {
    const at = places[index];
    const to = cell.along.figure.length.plus(by);
    // A number that serves twice, or a size that others copy, would change the whole by more.
    const isAlone = at !== undefined && places.filter((one) => one !== undefined && isSameOrigin(one, at)).length === 1;
    const breaksLimit =
      (cell.atLeast !== undefined && to.compare(cell.atLeast.length) < 0) ||
      (cell.atMost !== undefined && to.compare(cell.atMost.length) > 0);
    if (!isAlone || !to.isPositive() || breaksLimit || isCopied(axis.group, cell.name)) return [];
    const place = group.cells.findIndex(({ id }) => id === cell.id);
    const said = group.cells[place];
    const words = said === undefined ? group.kind : plainCellLabel(said, group);
    return [
      {
        mend: {
          how: 'resize',
          values: {
            ...(cell.name === undefined ? { words } : { name: cell.name, words }),
            size: to,
            change: by.abs(),
            direction: tooMuch ? 'less' : 'more',
          },
          changes: [{ kind: 'set-length', at, to }],
        },
        trial: new Map([[outer.id, { kind: 'fixed', basis: blame.basis, figure: given(mended, at) }]]),
      },
    ];
  });
}

function isCopied(cell: Cell, name: string | undefined): boolean {
  if (name === undefined) return false;
  if (cell.along.kind === 'same' && cell.along.as === name) return true;
  return (cell.kind === 'row' || cell.kind === 'stack') && cell.cells.some((inner) => isCopied(inner, name));
}

function letRest(axis: SolvedAxis, blame: Blame): Candidate | undefined {
  const cell = cellOf(axis, blame.id);
  if (cell === undefined || blame.by !== 'fixed' || cell.along.kind !== 'fixed') return undefined;
  return {
    mend: {
      how: 'let-rest',
      values: whoIs(axis, cell),
      changes: [{ kind: 'set-words', at: cell.sizeOrigin, words: 'rest' }],
    },
    trial: new Map([[cell.id, { kind: 'rest' }]]),
  };
}

/** The difference in equal parts over all sizes that are written as a number of their own. */
function spread(
  axis: SolvedAxis,
  failure: Extract<AxisFailure, { kind: 'difference' }>,
  mark: Length,
): Candidate | undefined {
  const written = failure.blame.flatMap((one) => {
    const at = givenAt(one.figure);
    return at !== undefined && one.by === 'fixed' ? [{ at, length: one.figure.length }] : [];
  });
  const apart = new Set(written.map(({ at }) => `${at.unit} ${at.start} ${at.end}`)).size;
  if (written.length < 2 || apart < written.length || failure.difference.compare(mark) < 0) return undefined;
  const shares = inMarks(
    written.map(({ length }) => length),
    failure.difference,
    mark,
  );
  const sizes = written.map(({ at, length }, index) => {
    const share = shares[index] ?? Length.zero;
    return { at, to: failure.tooMuch ? length.minus(share) : length.plus(share) };
  });
  if (sizes.some(({ to }) => !to.isPositive())) return undefined;
  return {
    mend: {
      how: 'spread',
      values: {
        difference: failure.difference,
        count: written.length,
        least: shares.reduce((one, other) => one.min(other)),
        most: shares.reduce((one, other) => one.max(other)),
        direction: failure.tooMuch ? 'less' : 'more',
      },
      changes: sizes.map(({ at, to }): Change => ({ kind: 'set-length', at, to })),
    },
    trial: askingFor(axis, sizes),
  };
}

/**
 * Shares that add up to the difference exactly, in whole marks of the ruler so that each size can still be measured: as
 * many for all, and one more for the largest, where it is seen least, as long as there are some. What is no whole mark
 * the largest bears as well.
 */
function inMarks(sizes: readonly Length[], difference: Length, mark: Length): readonly Length[] {
  const marks = difference.ratioTo(mark).floor();
  const forAll = marks.dividedBy(sizes.length).floor();
  const over = marks.minus(forAll.times(sizes.length));
  const remainder = difference.minus(mark.times(marks));
  const shares = sizes.map(() => mark.times(forAll));
  const bySize = sizes.map((size, at) => ({ size, at })).sort((a, b) => b.size.compare(a.size));
  for (const [turn, { at }] of bySize.entries()) {
    const more = Rational.of(turn).compare(over) < 0 ? mark : Length.zero;
    shares[at] = (shares[at] ?? Length.zero).plus(more).plus(turn === 0 ? remainder : Length.zero);
  }
  return shares;
}

/** What every cell whose size is written at one of these places asks for then: one number may serve several cells. */
function askingFor(
  axis: SolvedAxis,
  sizes: readonly { readonly at: Parameters<typeof isSameOrigin>[0]; readonly to: Length }[],
): ReadonlyMap<string, SizeAsked> {
  const trial = new Map<string, SizeAsked>();
  for (const { id, asked } of axis.request.cells) {
    if (asked.kind !== 'fixed') continue;
    const at = givenAt(asked.figure);
    const size = at === undefined ? undefined : sizes.find((one) => isSameOrigin(one.at, at));
    if (at !== undefined && size !== undefined) trial.set(id, { ...asked, figure: given(size.to, at) });
  }
  return trial;
}

function holds(axis: SolvedAxis, trial: ReadonlyMap<string, SizeAsked>): boolean {
  if (trial.size === 0) return false;
  const cells = axis.request.cells.map((cell): AxisCell => ({ ...cell, asked: trial.get(cell.id) ?? cell.asked }));
  const result = solveAxis({ ...axis.request, cells });
  return result.kind === 'solved' && result.clashes.length <= axis.result.clashes.length;
}

function cellOf(axis: SolvedAxis, id: string): Cell | undefined {
  return axis.group.cells.find((cell) => cell.id === id);
}

function whoIs(axis: SolvedAxis, cell: Cell): Readonly<Record<string, string>> {
  const words = plainCellLabel(cell, axis.group);
  return cell.name === undefined ? { words } : { name: cell.name, words };
}
