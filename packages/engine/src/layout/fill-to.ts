import { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';

/**
 * Finds the one level at which sizes that all grow with it add up to a given total. Exact: the total is a piecewise
 * straight line in the level, and every bend is visited once in order. Knows nothing of cells, fronts or gaps.
 */

/** A size that is `slope` times the level plus `intercept`, held between its limits. */
export interface AffineSize {
  /** Greater than zero. */
  readonly slope: Rational;
  readonly intercept: Length;
  readonly least?: Length;
  /** Not less than `least`. */
  readonly most?: Length;
}

export type Filled =
  | { readonly kind: 'filled'; readonly level: Length }
  /** Even with every size at its least the total is exceeded. */
  | { readonly kind: 'too-much' }
  /** Even with every size at its most the total is not reached. */
  | { readonly kind: 'left-over' };

/** Where the sum bends: at `level` one size leaves its least, or stops at its most. */
interface Bend {
  readonly level: Length;
  readonly slope: Rational;
  readonly intercept: Length;
}

/** Needs n log n exact comparisons. */
export function fillTo(sizes: readonly AffineSize[], total: Length): Filled {
  // The straight line of the sum below the first bend.
  let slope = Rational.zero;
  let constant = Length.zero;
  const bends: Bend[] = [];
  for (const size of sizes) {
    if (size.least === undefined) {
      slope = slope.plus(size.slope);
      constant = constant.plus(size.intercept);
    } else {
      constant = constant.plus(size.least);
      bends.push({
        level: levelOf(size, size.least),
        slope: size.slope,
        intercept: size.intercept.minus(size.least),
      });
    }
    if (size.most !== undefined) {
      bends.push({
        level: levelOf(size, size.most),
        slope: size.slope.negated(),
        intercept: size.most.minus(size.intercept),
      });
    }
  }
  bends.sort((a, b) => a.level.compare(b.level));

  for (const bend of bends) {
    if (slope.isZero()) {
      // All sizes are held: the sum does not move before this bend.
      const excess = constant.compare(total);
      if (excess === 0) return { kind: 'filled', level: bend.level };
      if (excess > 0) return { kind: 'too-much' };
    } else {
      const level = total.minus(constant).dividedBy(slope);
      if (level.compare(bend.level) <= 0) return { kind: 'filled', level };
    }
    slope = slope.plus(bend.slope);
    constant = constant.plus(bend.intercept);
  }
  if (!slope.isZero()) return { kind: 'filled', level: total.minus(constant).dividedBy(slope) };
  const excess = constant.compare(total);
  if (excess === 0) return { kind: 'filled', level: bends.at(-1)?.level ?? Length.zero };
  return { kind: excess > 0 ? 'too-much' : 'left-over' };
}

export function sizeAt(size: AffineSize, level: Length): { readonly size: Length; readonly held?: 'least' | 'most' } {
  const free = level.times(size.slope).plus(size.intercept);
  if (size.least !== undefined && free.compare(size.least) < 0) return { size: size.least, held: 'least' };
  if (size.most !== undefined && free.compare(size.most) > 0) return { size: size.most, held: 'most' };
  return { size: free };
}

function levelOf(size: AffineSize, at: Length): Length {
  return at.minus(size.intercept).dividedBy(size.slope);
}
