import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { Length } from '../../../packages/engine/src/length/length.ts';
import { Rational } from '../../../packages/engine/src/length/rational.ts';
import {
  AXES,
  boundsOf,
  insideOf,
  meets,
  movedBy,
  overlapOf,
  type Solid,
  sharedVolume,
  volumeBetween,
  volumeOf,
  wallBetween,
} from '../../../packages/engine/src/solids/index.ts';
import { anyAxis, anyBox, anyConvex, anyCylinder, anySmallInLarge, anySolid, grownBy } from './arbitrary-solids.ts';
import { type Kernel, LARGEST_GAP, LEAST_GAP, LEAST_VOLUME, openKernel } from './kernel.ts';

/**
 * Ours is exact and the kernel is not: where the volume it finds is nearer to nothing than its rounding and its facets
 * can tell, the kernel has no verdict and the pair is counted as open. Such pairs touch, or all but touch.
 */

let kernel: Kernel;
beforeAll(async () => {
  kernel = await openKernel();
});

const nowhere = { x: Length.zero, y: Length.zero, z: Length.zero };

/** What the kernel's doubles may be off by, in inches or cubic inches, at sizes of a few inches. */
const ROUNDING = 1e-7;

function verdictOfKernel(a: Solid, b: Solid): boolean | undefined {
  if (kernel.common(a, 'inside', b, 'inside').volume > LEAST_VOLUME) return true;
  return kernel.gap(a, b, 'outside') > LEAST_GAP ? false : undefined;
}

/** Boxes and bores along one axis: there the wall is exact but for a root. */
function areSeenAsOne(a: Solid, b: Solid): boolean {
  if (a.kind === 'convex' || b.kind === 'convex') return false;
  return a.kind === 'box' || b.kind === 'box' || a.axis === b.axis;
}

function boundsMeet(a: Solid, b: Solid): boolean {
  const [one, other] = [boundsOf(a), boundsOf(b)];
  return AXES.every((axis) => one[axis].from.compare(other[axis].to) < 0 && other[axis].from.compare(one[axis].to) < 0);
}

describe('a geometry kernel agrees on whether two solids meet', () => {
  it.each([
    ['boxes', anyBox, anyBox, 0.1],
    ['boxes and convex solids', anyBox, anyConvex, 0.03],
    ['convex solids', anyConvex, anyConvex, 0.03],
    ['cylinders and boxes', anyCylinder, anyBox, 0.03],
    ['cylinders and convex solids', anyCylinder, anyConvex, 0.03],
    ['cylinders of all directions', anyCylinder, anyCylinder, 0.03],
  ] as const)('%s', (name, one, other, mostOpen) => {
    const runs = 300;
    const counted = { meeting: 0, apart: 0, open: 0 };
    fc.assert(
      fc.property(one, other, (a, b) => {
        // Where the boxes around them are apart nothing is asked of either: those are only let through for boxes.
        fc.pre(name === 'boxes' || boundsMeet(a, b));
        const verdict = verdictOfKernel(a, b);
        counted[verdict === undefined ? 'open' : verdict ? 'meeting' : 'apart'] += 1;
        if (verdict !== undefined) expect(meets(a, b)).toBe(verdict);
      }),
      { numRuns: runs, endOnFailure: true },
    );
    const { meeting, apart, open } = counted;
    console.log(`${name}: ${meeting} meet, ${apart} are apart, ${open} the kernel cannot tell`);
    expect(meeting).toBeGreaterThan(runs / 10);
    expect(apart).toBeGreaterThan(runs / 100);
    expect(open).toBeLessThanOrEqual(runs * mostOpen);
  });
});

describe('a geometry kernel agrees', () => {
  it('on where the one begins to meet the other: a hundredth of an inch before, and after', () => {
    const counted = { meeting: 0, apart: 0, open: 0 };
    const hair = Length.inches(1, 100);
    fc.assert(
      fc.property(anySolid, anySolid, anyAxis, (a, b, axis) => {
        const { by, towards, isExact } = overlapOf(a, b)?.parting[axis] ?? {};
        fc.pre(by !== undefined && by.compare(hair) > 0);
        const moved = (way: Length): Solid =>
          movedBy(b, { ...nowhere, [axis]: towards === 'lower' ? way.negated() : way });
        const verdicts = [
          { verdict: verdictOfKernel(a, moved(by.plus(hair))), expected: false },
          // What is not exact may be more than is needed.
          ...(isExact ? [{ verdict: verdictOfKernel(a, moved(by.minus(hair))), expected: true }] : []),
        ];
        for (const { verdict, expected } of verdicts) {
          counted[verdict === undefined ? 'open' : verdict ? 'meeting' : 'apart'] += 1;
          if (verdict !== undefined) expect(verdict).toBe(expected);
        }
      }),
      { numRuns: 300, endOnFailure: true },
    );
    const { meeting, apart, open } = counted;
    console.log(`nearly touching: ${meeting} meet, ${apart} are apart, ${open} the kernel cannot tell`);
    expect(meeting).toBeGreaterThan(60);
    expect(apart).toBeGreaterThan(120);
    expect(open).toBeLessThan(30);
  });

  it('on the thinnest wall between two, in whatever direction', () => {
    const counted = { exact: 0, bound: 0 };
    fc.assert(
      fc.property(anySolid, anySolid, (a, b) => {
        const wall = wallBetween(a, b);
        fc.pre(wall !== undefined && wall.thickness.approximateInches < LARGEST_GAP);
        if (wall === undefined) return;
        const thickness = wall.thickness.approximateInches;
        expect(thickness).toBeLessThanOrEqual(kernel.gap(a, b, 'inside') + ROUNDING);
        const isBound = [a.kind, b.kind].includes('cylinder') && !wall.isExact && !areSeenAsOne(a, b);
        counted[isBound ? 'bound' : 'exact'] += 1;
        if (!isBound) expect(thickness).toBeGreaterThanOrEqual(kernel.gap(a, b, 'outside') - ROUNDING);
      }),
      { numRuns: 300, endOnFailure: true },
    );
    expect(counted.exact).toBeGreaterThan(30);
    expect(counted.bound).toBeGreaterThan(3);
  });

  it('on the volume of each solid', () => {
    fc.assert(
      fc.property(anySolid, (solid) => {
        const { least, most } = volumeBetween(volumeOf(solid));
        expect(most.toNumber()).toBeGreaterThanOrEqual(kernel.volume(solid, 'inside') - ROUNDING);
        expect(least.toNumber()).toBeLessThanOrEqual(kernel.volume(solid, 'outside') + ROUNDING);
      }),
      { numRuns: 300, endOnFailure: true },
    );
  });

  it('on how much two share, and how far that reaches', () => {
    let compared = 0;
    fc.assert(
      fc.property(anySolid, anySolid, (a, b) => {
        const overlap = overlapOf(a, b);
        if (overlap === undefined) return;
        const [smaller, larger] = [kernel.common(a, 'inside', b, 'inside'), kernel.common(a, 'outside', b, 'outside')];
        if (smaller.volume < LEAST_VOLUME) return;
        compared += 1;
        const { least, most } = volumeBetween(sharedVolume(a, b));
        expect(most.toNumber()).toBeGreaterThanOrEqual(smaller.volume - ROUNDING);
        expect(least.toNumber()).toBeLessThanOrEqual(larger.volume + ROUNDING);
        for (const [index, axis] of AXES.entries()) {
          const { from, to, isExact } = overlap.shared[axis];
          expect(from.approximateInches).toBeLessThanOrEqual((smaller.low[index] ?? 0) + ROUNDING);
          expect(to.approximateInches).toBeGreaterThanOrEqual((smaller.high[index] ?? 0) - ROUNDING);
          if (!isExact) continue;
          expect(from.approximateInches).toBeGreaterThanOrEqual((larger.low[index] ?? 0) - ROUNDING);
          expect(to.approximateInches).toBeLessThanOrEqual((larger.high[index] ?? 0) + ROUNDING);
        }
      }),
      { numRuns: 300, endOnFailure: true },
    );
    expect(compared).toBeGreaterThan(30);
  });

  it('on what lies wholly within what', () => {
    const counted = { within: 0, without: 0, open: 0 };
    fc.assert(
      fc.property(anySmallInLarge, ([small, large]) => {
        const surelyOut = kernel.volume(small, 'inside') - kernel.common(small, 'inside', large, 'outside').volume;
        // A corner that is out by a hair has no volume to speak of: within is only what would be if it were larger.
        const larger = grownBy(Rational.of(21, 20), small);
        const perhapsOut = kernel.volume(larger, 'outside') - kernel.common(larger, 'outside', large, 'inside').volume;
        if (surelyOut > ROUNDING) {
          counted.without += 1;
          expect(insideOf(small, large)).toBe(false);
        } else if (perhapsOut < LEAST_VOLUME) {
          counted.within += 1;
          expect(insideOf(small, large)).toBe(true);
        } else counted.open += 1;
      }),
      { numRuns: 400, endOnFailure: true },
    );
    const { within, without, open } = counted;
    console.log(`within: ${within}, not within: ${without}, ${open} the kernel cannot tell`);
    expect(within).toBeGreaterThan(40);
    expect(without).toBeGreaterThan(40);
    expect(open).toBeLessThan(60);
  });
});
