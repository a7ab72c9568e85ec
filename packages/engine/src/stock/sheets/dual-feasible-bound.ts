import { leastCost } from './cost-bound.ts';
import type { PreparedSheets, PreparedType } from './prepare-sheets.ts';

/**
 * Lower bounds from dual feasible functions: if f and g are superadditive, blanks with sizes w × l that lie in a sheet
 * W × L obey sum f(w) g(l) ≤ f(W) g(L), however they are cut. The three families are those of S. P. Fekete and
 * J. Schepers, New classes of fast lower bounds for bin packing problems, Mathematical Programming 91(1), 2001, and of
 * J. Carlier, F. Clautiaux and A. Moukrim, New reduction procedures and lower bounds for the two-dimensional bin packing
 * problem, Computers & Operations Research 34(8), 2007.
 */
export type SizeFunction = (size: number) => number;

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
  const most = types.length <= 120 ? 40 : 10;
  const turning = types.some(({ mayTurn }) => mayTurn);
  const widest = Math.max(...kinds.map(({ width }) => width));
  const longest = Math.max(...kinds.map(({ length }) => length));
  const sides = [...types.map(({ width }) => width), ...types.map(({ length }) => length)];
  const ofWidth = dualFeasibleFunctions(widest, turning ? sides : types.map(({ width }) => width), most);
  const ofLength = dualFeasibleFunctions(longest, turning ? sides : types.map(({ length }) => length), most);
  let bound = leastOver(problem, ofWidth, ofLength, fewestOf);
  if (turning) {
    const ofBoth = dualFeasibleFunctions(Math.max(widest, longest), sides, most);
    bound = Math.max(bound, leastOver(problem, ofBoth, ofBoth, meanOf));
  }
  return bound;
}

interface Sides {
  readonly fWidth: number;
  readonly fLength: number;
  readonly gWidth: number;
  readonly gLength: number;
  readonly straightFits: boolean;
  readonly turnedFits: boolean;
}

/** A blank that may turn counts as the lesser of its two ways to lie. */
function fewestOf({ fWidth, fLength, gWidth, gLength, straightFits, turnedFits }: Sides): number {
  if (!turnedFits) return fWidth * gLength;
  return straightFits ? Math.min(fWidth * gLength, fLength * gWidth) : fLength * gWidth;
}

/** A sheet and its mirror image along the diagonal obey the inequality, and so does the mean of both, turned or not. */
function meanOf({ fWidth, fLength, gWidth, gLength }: Sides): number {
  return fWidth * gLength + fLength * gWidth;
}

function leastOver(
  { kinds, types }: PreparedSheets,
  ofWidth: readonly SizeFunction[],
  ofLength: readonly SizeFunction[],
  worthOf: (sides: Sides) => number,
): number {
  const fits = (width: number, length: number) => kinds.some((kind) => width <= kind.width && length <= kind.length);
  const straight = types.map(({ width, length }) => fits(width, length));
  const turned = types.map(({ width, length, mayTurn }) => mayTurn && fits(length, width));
  const table = (functions: readonly SizeFunction[], side: (type: PreparedType) => number) =>
    functions.map((f) => types.map((type) => f(side(type))));
  const fWidths = table(ofWidth, ({ width }) => width);
  const fLengths = table(ofWidth, ({ length }) => length);
  const gWidths = table(ofLength, ({ width }) => width);
  const gLengths = table(ofLength, ({ length }) => length);
  let bound = 0;
  for (let i = 0; i < ofWidth.length; i++) {
    for (let j = 0; j < ofLength.length; j++) {
      let total = 0;
      for (let type = 0; type < types.length; type++) {
        total +=
          (types[type] as PreparedType).count *
          worthOf({
            fWidth: fWidths[i]?.[type] as number,
            fLength: fLengths[i]?.[type] as number,
            gWidth: gWidths[j]?.[type] as number,
            gLength: gLengths[j]?.[type] as number,
            straightFits: straight[type] as boolean,
            turnedFits: turned[type] as boolean,
          });
      }
      const f = ofWidth[i] as SizeFunction;
      const g = ofLength[j] as SizeFunction;
      const capacities = kinds.map(({ width, length }) =>
        worthOf({
          fWidth: f(width),
          fLength: f(length),
          gWidth: g(width),
          gLength: g(length),
          straightFits: true,
          turnedFits: false,
        }),
      );
      bound = Math.max(bound, leastCost(total, kinds, capacities));
    }
  }
  return bound;
}
