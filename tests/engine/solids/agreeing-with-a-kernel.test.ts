import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { meets, type Solid } from '../../../packages/engine/src/solids/index.ts';
import { anyBox, anyConvex, anyCylinder } from './arbitrary-solids.ts';
import { type Kernel, LEAST_VOLUME, openKernel } from './kernel.ts';

/**
 * Ours is exact and the kernel is not: where the volume it finds is nearer to nothing than its rounding and its facets
 * can tell, the kernel has no verdict and the pair is counted as open. Such pairs touch, or all but touch.
 */

let kernel: Kernel;
beforeAll(async () => {
  kernel = await openKernel();
});

function verdictOfKernel(a: Solid, b: Solid): boolean | undefined {
  const { least, most } = kernel.sharedVolume(a, b);
  if (least > LEAST_VOLUME) return true;
  return most > LEAST_VOLUME ? undefined : false;
}

function compareOn(one: fc.Arbitrary<Solid>, other: fc.Arbitrary<Solid>, runs: number) {
  const counted = { meeting: 0, apart: 0, open: 0 };
  fc.assert(
    fc.property(one, other, (a, b) => {
      const verdict = verdictOfKernel(a, b);
      counted[verdict === undefined ? 'open' : verdict ? 'meeting' : 'apart'] += 1;
      // A pair that meets by less than the kernel's least volume would be told apart from one that is apart here.
      if (verdict !== undefined) expect(meets(a, b)).toBe(verdict);
    }),
    { numRuns: runs, endOnFailure: true },
  );
  return counted;
}

describe('a geometry kernel agrees on whether two solids meet', () => {
  it.each([
    ['boxes', anyBox, anyBox, 2000, 0],
    ['boxes and convex solids', anyBox, anyConvex, 1500, 0],
    ['convex solids', anyConvex, anyConvex, 1500, 0],
    ['cylinders and boxes', anyCylinder, anyBox, 1500, 0.03],
    ['cylinders and convex solids', anyCylinder, anyConvex, 1500, 0.03],
    ['cylinders of all directions', anyCylinder, anyCylinder, 1500, 0.03],
  ] as const)('%s', (name, one, other, runs, mostOpen) => {
    const { meeting, apart, open } = compareOn(one, other, runs);
    console.log(`${name}: ${meeting} meet, ${apart} are apart, ${open} the kernel cannot tell`);
    expect(meeting).toBeGreaterThan(runs / 10);
    expect(apart).toBeGreaterThan(runs / 10);
    expect(open).toBeLessThanOrEqual(runs * mostOpen);
  });
});
