import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type ConvexSolid,
  convexAround,
  dovetailOf,
  insideOf,
  meets,
  movedBy,
  prismOf,
  taperOf,
  volumeOf,
  wedgeOf,
  whyNotSolid,
} from '../../../packages/engine/src/solids/index.ts';
import { anyConvex, anyPoint, anySolid } from './arbitrary-solids.ts';
import { at, box, mm, span } from './shorthand.ts';

const block = box([0, 100], [0, 60], [0, 20]);

/** In cubic millimetres. */
function volume(solid: Parameters<typeof volumeOf>[0]): string {
  return volumeOf(solid).flat.least.times(16_387_064).dividedBy(1000).toString();
}

describe('what the makers make is sound', () => {
  it('a wedge is half of its box, at whichever corner it is left', () => {
    for (const axis of ['x', 'y', 'z'] as const) {
      for (const one of ['from', 'to'] as const) {
        for (const other of ['from', 'to'] as const) {
          const wedge = wedgeOf(block, axis, [one, other]);
          expect(whyNotSolid(wedge)).toBeUndefined();
          expect(volume(wedge)).toBe('60000');
          expect(insideOf(wedge, block)).toBe(true);
        }
      }
    }
  });

  it('a prism takes its outline either way round', () => {
    const outline = [at(0, 0), at(40, 0), at(30, 20), at(10, 20)];
    for (const axis of ['x', 'y', 'z'] as const) {
      for (const around of [outline, outline.toReversed()]) {
        const prism = prismOf(axis, span(0, 10), around);
        expect(whyNotSolid(prism)).toBeUndefined();
        expect(volume(prism)).toBe('6000');
      }
    }
  });

  it('a leg tapered on two sides from 40 to 20 over 300, by the formula for a frustum', () => {
    const leg = taperOf(
      'y',
      { at: mm(300), sides: [span(0, 40), span(0, 40)] },
      { at: mm(0), sides: [span(0, 20), span(0, 20)] },
    );
    expect(whyNotSolid(leg)).toBeUndefined();
    // 300 / 3 * (40² + 20² + 40 * 20)
    expect(volume(leg)).toBe('280000');
  });

  it('a dovetail fits the socket that is cut from the same numbers, and cannot be pulled out', () => {
    const tail = dovetailOf({
      axis: 'z',
      along: span(0, 12),
      across: 'y',
      middle: mm(30),
      narrow: { at: mm(100), width: mm(20) },
      wide: { at: mm(112), width: mm(24) },
    });
    expect(whyNotSolid(tail)).toBeUndefined();
    expect(volume(tail)).toBe(`${((20 + 24) / 2) * 12 * 12}`);
    // The wood beside the tail, on its upper side.
    const pin = prismOf('z', span(0, 12), [at(100, 40), at(112, 42), at(112, 60), at(100, 60)]);
    expect(meets(tail, pin)).toBe(false);
    expect(meets(movedBy(tail, { x: mm(-1), y: mm(0), z: mm(0) }), pin)).toBe(true);
    expect(meets(movedBy(tail, { x: mm(0), y: mm(0), z: mm(-1) }), pin)).toBe(false);
  });

  it('the convex solid around points holds them all and needs no others', () => {
    fc.assert(
      fc.property(fc.array(anyPoint, { minLength: 4, maxLength: 10 }), (points) => {
        const solid = convexAround(points);
        if (whyNotSolid(solid) !== undefined) {
          // Then they lie in one plane, and there is nothing to be around.
          expect(solid.corners).toEqual([]);
          return;
        }
        for (const left of solid.corners) expect(points).toContain(left);
        const again = convexAround(solid.corners);
        expect(volumeOf(again)).toEqual(volumeOf(solid));
        for (const point of points) expect(volumeOf(convexAround([...solid.corners, point]))).toEqual(volumeOf(solid));
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });

  it('whatever solid is made and moved', () => {
    fc.assert(
      fc.property(anySolid, anyPoint, (solid, by) => {
        expect(whyNotSolid(solid)).toBeUndefined();
        expect(whyNotSolid(movedBy(solid, by))).toBeUndefined();
        expect(volumeOf(movedBy(solid, by))).toEqual(volumeOf(solid));
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });
});

describe('why something is no solid', () => {
  const cube = convexAround([0, 10].flatMap((x) => [0, 10].flatMap((y) => [0, 10].map((z) => corner(x, y, z)))));

  function corner(x: number | string, y: number | string, z: number | string) {
    return { x: mm(x), y: mm(y), z: mm(z) };
  }

  const changed = (change: Partial<ConvexSolid>): ConvexSolid => ({ ...cube, ...change });

  it('a box or a bore without extent, a bore without radius', () => {
    expect(whyNotSolid(box([0, 10], [5, 5], [0, 10]))).toEqual({ kind: 'no-extent', axis: 'y' });
    const bore = { kind: 'cylinder', axis: 'x', along: span(0, 5), centre: at(0, 0), radius: mm(0) } as const;
    expect(whyNotSolid(bore)).toEqual({ kind: 'no-radius' });
    expect(whyNotSolid({ ...bore, radius: mm(-2) })).toEqual({ kind: 'no-radius' });
    expect(whyNotSolid({ ...bore, radius: mm(2), along: span(5, 5) })).toEqual({ kind: 'no-extent', axis: 'x' });
  });

  it('a face that is missing, doubled, turned about, bent, or too short', () => {
    expect(whyNotSolid(cube)).toBeUndefined();
    expect(whyNotSolid(changed({ faces: cube.faces.slice(1) }))).toMatchObject({ kind: 'not-closed' });
    expect(whyNotSolid(changed({ faces: [...cube.faces, ...cube.faces.slice(0, 1)] }))).toMatchObject({
      kind: 'not-closed',
    });
    const [first = [], ...others] = cube.faces;
    expect(whyNotSolid(changed({ faces: [first.toReversed(), ...others] }))).toMatchObject({ kind: 'not-closed' });
    expect(whyNotSolid(changed({ faces: cube.faces.map((face) => face.toReversed()) }))).toMatchObject({
      kind: 'not-convex',
    });
    expect(whyNotSolid(changed({ faces: [[0, 1], ...others] }))).toMatchObject({ kind: 'face-without-area' });
    const bent = cube.corners.map((each, index) => (index === 0 ? { ...each, x: each.x.plus(mm('0.001')) } : each));
    expect(whyNotSolid(changed({ corners: bent }))).toMatchObject({ kind: 'face-not-flat' });
  });

  it('a corner that is missing, doubled or not used', () => {
    expect(whyNotSolid(changed({ corners: cube.corners.slice(0, 7) }))).toMatchObject({ kind: 'corner-missing' });
    expect(whyNotSolid(changed({ corners: [...cube.corners, ...cube.corners.slice(0, 1)] }))).toMatchObject({
      kind: 'corner-repeated',
    });
    expect(whyNotSolid(changed({ corners: [...cube.corners, corner(5, 5, 5)] }))).toEqual({
      kind: 'corner-unused',
      corner: 8,
    });
    expect(whyNotSolid({ kind: 'convex', corners: [], faces: [] })).toEqual({ kind: 'too-few-corners' });
  });

  it('a hollow in an outline, and one that crosses itself', () => {
    const hollow = prismOf('x', span(0, 5), [at(0, 0), at(20, 0), at(20, 20), at(15, 5)]);
    expect(whyNotSolid(hollow)).toMatchObject({ kind: 'not-convex' });
    const star = [at(0, 10), at(6, -8), at(-10, 3), at(10, 3), at(-6, -8)];
    expect(whyNotSolid(prismOf('x', span(0, 5), star))).toBeDefined();
    expect(whyNotSolid(prismOf('x', span(0, 5), [at(0, 0), at(1, 0)]))).toBeDefined();
  });

  it('one face in two pieces', () => {
    const faces = cube.faces.flatMap((face, index) => {
      const [a = 0, b = 0, c = 0, d = 0] = face;
      return index === 0
        ? [
            [a, b, c],
            [a, c, d],
          ]
        : [face];
    });
    expect(whyNotSolid(changed({ faces }))).toMatchObject({ kind: 'faces-in-one-plane' });
  });

  it('whatever numbers stand where corners should', () => {
    fc.assert(
      fc.property(
        anyConvex,
        fc.array(fc.array(fc.oneof(fc.integer({ min: -2, max: 9 }), fc.double()), { maxLength: 5 }), { maxLength: 8 }),
        anySolid,
        (solid, faces, other) => {
          const odd = { ...solid, faces };
          whyNotSolid(odd);
          meets(odd, other);
          insideOf(odd, other);
          insideOf(other, odd);
          volumeOf(odd);
        },
      ),
      { numRuns: 200, endOnFailure: true },
    );
  });
});
