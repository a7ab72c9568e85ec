import { realCell } from './cells.ts';
import { leastCost } from './cost-bound.ts';
import type { PreparedKind, PreparedSheets, PreparedType } from './prepare-sheets.ts';

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

/** Written for speed: it is half of what a small problem waits for. */
function leastOver(
  { kinds, types }: PreparedSheets,
  ofWidth: readonly SizeFunction[],
  ofLength: readonly SizeFunction[],
  countedAs: CountedAs,
): number {
  const fits = (width: number, length: number) => kinds.some((kind) => width <= kind.width && length <= kind.length);
  const isStraight = Uint8Array.from(types, ({ width, length }) => (fits(width, length) ? 1 : 0));
  const isTurned = Uint8Array.from(types, ({ width, length, mayTurn }) => (mayTurn && fits(length, width) ? 1 : 0));
  const counts = Float64Array.from(types, ({ count }) => count);
  const table = (functions: readonly SizeFunction[], side: (type: PreparedType) => number) =>
    functions.map((f) => Float64Array.from(types, (type) => f(side(type))));
  const fWidths = table(ofWidth, ({ width }) => width);
  const fLengths = table(ofWidth, ({ length }) => length);
  const gWidths = table(ofLength, ({ width }) => width);
  const gLengths = table(ofLength, ({ length }) => length);
  const capacities = new Array<number>(kinds.length).fill(0);
  let bound = 0;
  for (let i = 0; i < ofWidth.length; i++) {
    const fWidth = fWidths[i] as Float64Array;
    const fLength = fLengths[i] as Float64Array;
    const f = ofWidth[i] as SizeFunction;
    for (let j = 0; j < ofLength.length; j++) {
      const gWidth = gWidths[j] as Float64Array;
      const gLength = gLengths[j] as Float64Array;
      const g = ofLength[j] as SizeFunction;
      let total = 0;
      for (let type = 0; type < counts.length; type++) {
        const straight = realCell(fWidth, type) * realCell(gLength, type);
        const turned = realCell(fLength, type) * realCell(gWidth, type);
        const worth =
          countedAs === 'mean'
            ? straight + turned
            : isTurned[type] === 0
              ? straight
              : isStraight[type] === 0
                ? turned
                : Math.min(straight, turned);
        total += realCell(counts, type) * worth;
      }
      for (let kind = 0; kind < kinds.length; kind++) {
        const { width, length } = kinds[kind] as PreparedKind;
        const straight = f(width) * g(length);
        capacities[kind] = countedAs === 'mean' ? straight + f(length) * g(width) : straight;
      }
      bound = Math.max(bound, leastCost(total, kinds, capacities));
    }
  }
  return bound;
}
