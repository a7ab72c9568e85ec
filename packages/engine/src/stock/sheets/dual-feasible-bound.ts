import { realCell } from './cells.ts';
import { leastCost } from './cost-bound.ts';
import type { PreparedKind, PreparedSheets } from './prepare-sheets.ts';

/**
 * Lower bounds from dual feasible functions: if f and g are superadditive, blanks with sizes w × l that lie in a sheet
 * W × L obey sum f(w) g(l) ≤ f(W) g(L), however they are cut. The three families are those of S. P. Fekete and
 * J. Schepers, New classes of fast lower bounds for bin packing problems, Mathematical Programming 91(1), 2001, and of
 * J. Carlier, F. Clautiaux and A. Moukrim, New reduction procedures and lower bounds for the two-dimensional bin packing
 * problem, Computers & Operations Research 34(8), 2007.
 */
export type SizeFunction = (size: number) => number;

/** About so many sums for one choice of functions take a hundredth of a second. */
const MOST_SUMS = 300_000;

/** The functions for sizes up to `capacity`, with their parameter from `sizes`. Values are whole. */
export function dualFeasibleFunctions(
  capacity: number,
  sizes: readonly number[],
  most: number,
): readonly SizeFunction[] {
  const halves = [...new Set(sizes.filter((size) => 2 * size <= capacity))].sort((a, b) => a - b);
  const parameters =
    halves.length <= most ? halves : halves.filter((_, k) => k % Math.ceil(halves.length / most) === 0);
  return [
    (size) => size,
    ...parameters.map(
      (k): SizeFunction =>
        (x) =>
          x < k ? 0 : x > capacity - k ? capacity : x,
    ),
    ...Array.from({ length: 8 }, (_, index): SizeFunction => {
      const k = index + 1;
      return (x) => (((k + 1) * x) % capacity === 0 ? k * x : Math.floor(((k + 1) * x) / capacity) * capacity);
    }),
    ...parameters.map((k): SizeFunction => {
      const whole = Math.floor(capacity / k);
      return (x) =>
        2 * x > capacity
          ? 2 * (whole - Math.floor((capacity - x) / k))
          : 2 * x === capacity
            ? whole
            : 2 * Math.floor(x / k);
    }),
  ];
}

/** The least cost of sheets for all the types, and never more than that. Infinite if the available ones cannot do. */
export function dualFeasibleBound(problem: PreparedSheets): number {
  const { kinds, types } = problem;
  if (types.length === 0) return 0;
  // There are two functions for each parameter and nine others; every pair of them is summed over all types.
  const most = Math.max(5, Math.min(40, Math.floor((Math.sqrt(MOST_SUMS / types.length) - 9) / 2)));
  const turning = types.some(({ mayTurn }) => mayTurn);
  const widest = Math.max(...kinds.map(({ width }) => width));
  const longest = Math.max(...kinds.map(({ length }) => length));
  const sides = [...types.map(({ width }) => width), ...types.map(({ length }) => length)];
  const ofWidth = dualFeasibleFunctions(widest, turning ? sides : types.map(({ width }) => width), most);
  const ofLength = dualFeasibleFunctions(longest, turning ? sides : types.map(({ length }) => length), most);
  let bound = leastOver(problem, ofWidth, ofLength, 'fewest');
  if (turning) {
    const ofBoth = dualFeasibleFunctions(Math.max(widest, longest), sides, most);
    bound = Math.max(bound, leastOver(problem, ofBoth, ofBoth, 'mean'));
  }
  return bound;
}

/**
 * What a blank that may turn counts: the lesser of its two ways to lie, or the mean of both. The latter holds because a
 * sheet and its mirror image along the diagonal obey the inequality.
 */
type CountedAs = 'fewest' | 'mean';

/** Written for speed: it is half of what a small problem waits for, and nothing is warm then. */
function leastOver(
  { kinds, types }: PreparedSheets,
  ofWidth: readonly SizeFunction[],
  ofLength: readonly SizeFunction[],
  countedAs: CountedAs,
): number {
  const fits = (width: number, length: number) => kinds.some((kind) => width <= kind.width && length <= kind.length);
  const isStraight = types.map(({ width, length }) => fits(width, length));
  const isTurned = types.map(({ width, length, mayTurn }) => mayTurn && fits(length, width));
  // One way to lie, and the other. For the fewest, what can lie in one way only does so in both.
  const isMean = countedAs === 'mean';
  const widths = types.map(({ width, length }, type) => (isMean || isStraight[type] ? width : length));
  const lengths = types.map(({ width, length }, type) => (isMean || isStraight[type] ? length : width));
  const across = types.map(({ width, length }, type) => (isMean || isTurned[type] ? length : width));
  const along = types.map(({ width, length }, type) => (isMean || isTurned[type] ? width : length));
  const canNoneTurn = !isTurned.includes(true);
  const counts = Float64Array.from(types, ({ count }) => count);
  const table = (functions: readonly SizeFunction[], sides: readonly number[]) =>
    functions.map((f) => Float64Array.from(sides, f));
  const fStraight = table(ofWidth, widths);
  const fTurned = table(ofWidth, across);
  const gStraight = table(ofLength, lengths);
  const gTurned = table(ofLength, along);
  const kindWidths = kinds.map(({ width }) => width);
  const kindLengths = kinds.map(({ length }) => length);
  const fOfKinds = table(ofWidth, kindWidths);
  const gOfKinds = table(ofLength, kindLengths);
  const fOfTurnedKinds = isMean ? table(ofWidth, kindLengths) : fOfKinds;
  const gOfTurnedKinds = isMean ? table(ofLength, kindWidths) : gOfKinds;
  const capacities = new Array<number>(kinds.length).fill(0);
  let bound = 0;
  for (let i = 0; i < ofWidth.length; i++) {
    const f = fStraight[i] as Float64Array;
    const fOfTurned = fTurned[i] as Float64Array;
    const fOfKind = fOfKinds[i] as Float64Array;
    const fOfTurnedKind = fOfTurnedKinds[i] as Float64Array;
    for (let j = 0; j < ofLength.length; j++) {
      const g = gStraight[j] as Float64Array;
      const gOfTurned = gTurned[j] as Float64Array;
      const gOfKind = gOfKinds[j] as Float64Array;
      const gOfTurnedKind = gOfTurnedKinds[j] as Float64Array;
      const total = isMean
        ? sumOf(counts, f, g) + sumOf(counts, fOfTurned, gOfTurned)
        : canNoneTurn
          ? sumOf(counts, f, g)
          : sumOfFewer(counts, f, g, fOfTurned, gOfTurned);
      let dearest = 0;
      for (let kind = 0; kind < kinds.length; kind++) {
        const straight = realCell(fOfKind, kind) * realCell(gOfKind, kind);
        const capacity = isMean ? straight + realCell(fOfTurnedKind, kind) * realCell(gOfTurnedKind, kind) : straight;
        capacities[kind] = capacity;
        if (capacity > 0) dearest = Math.max(dearest, (kinds[kind] as PreparedKind).cost / capacity);
      }
      if (total * dearest > bound) bound = Math.max(bound, leastCost(total, kinds, capacities));
    }
  }
  return bound;
}

function sumOf(counts: Float64Array, f: Float64Array, g: Float64Array): number {
  let total = 0;
  for (let type = 0; type < counts.length; type++) {
    total += realCell(counts, type) * realCell(f, type) * realCell(g, type);
  }
  return total;
}

/** The same for the way to lie in which each counts less. */
function sumOfFewer(
  counts: Float64Array,
  f: Float64Array,
  g: Float64Array,
  fTurned: Float64Array,
  gTurned: Float64Array,
): number {
  let total = 0;
  for (let type = 0; type < counts.length; type++) {
    const straight = realCell(f, type) * realCell(g, type);
    const turned = realCell(fTurned, type) * realCell(gTurned, type);
    total += realCell(counts, type) * Math.min(straight, turned);
  }
  return total;
}
