import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boreAlong,
  boundsOf,
  meets,
  movedBy,
  prismOf,
  type Solid,
  slotAlong,
  wedgeOf,
} from '../../../packages/engine/src/solids/index.ts';
import { anyPoint, anySolid } from './arbitrary-solids.ts';
import { at, box, mm, span } from './shorthand.ts';

const block = box([0, 100], [0, 100], [0, 100]);

function expectMeets(a: Solid, b: Solid, expected: boolean): void {
  expect(meets(a, b)).toBe(expected);
  expect(meets(b, a)).toBe(expected);
}

describe('what only touches does not meet', () => {
  it('boxes in a face, an edge and a corner', () => {
    expectMeets(block, box([100, 120], [0, 100], [0, 100]), false);
    expectMeets(block, box([100, 120], [100, 120], [0, 100]), false);
    expectMeets(block, box([100, 120], [100, 120], [100, 120]), false);
    expectMeets(block, box(['99.999', 120], ['99.999', 120], ['99.999', 120]), true);
  });

  it('the two halves of a mitre', () => {
    expectMeets(wedgeOf(block, 'y', ['from', 'from']), wedgeOf(block, 'y', ['to', 'to']), false);
    const proud = movedBy(wedgeOf(block, 'y', ['to', 'to']), { x: mm('-0.001'), y: mm(0), z: mm(0) });
    expectMeets(wedgeOf(block, 'y', ['from', 'from']), proud, true);
  });

  it('a bore and the face beside it, whichever way it is drilled', () => {
    for (const axis of ['y', 'z'] as const) {
      const bore = (x: string) => boreAlong(axis, span(10, 90), at(x, 50), mm(5));
      expectMeets(block, bore('105'), false);
      expectMeets(block, bore('104.999'), true);
    }
    expectMeets(block, boreAlong('x', span(100, 120), at(50, 50), mm(5)), false);
    expectMeets(block, boreAlong('x', span('99.999', 120), at(50, 50), mm(5)), true);
  });

  it('a bore past an edge, in a triangle of 3, 4 and 5', () => {
    expectMeets(block, boreAlong('z', span(0, 100), at(103, 104), mm(5)), false);
    expectMeets(block, boreAlong('z', span(0, 100), at(103, 104), mm('5.000001')), true);
  });

  it('bores side by side, in a triangle of 5, 12 and 13', () => {
    const bore = boreAlong('z', span(0, 40), at(0, 0), mm(6));
    expectMeets(bore, boreAlong('z', span(30, 80), at(5, 12), mm(7)), false);
    expectMeets(bore, boreAlong('z', span(30, 80), at(5, 12), mm('7.000001')), true);
    expectMeets(bore, boreAlong('z', span(40, 80), at(0, 0), mm(6)), false);
  });

  it('slots at an angle, whose rims lie a fraction of a root of two apart', () => {
    // Their spines run at 45 degrees and are 10 * sqrt(2) = 14.142... apart.
    const slot = slotAlong('z', span(0, 10), at(0, 0), at(50, 50), mm(7));
    const beside = (radius: string) => slotAlong('z', span(0, 10), at(20, 0), at(70, 50), mm(radius));
    expectMeets(slot, beside('7.142'), false);
    expectMeets(slot, beside('7.143'), true);
  });
});

describe('bores at right angles', () => {
  const along = (from: number, to: number) => boreAlong('x', span(from, to), at(0, 0), mm(5));

  it('meet where their axes are less than both radii apart', () => {
    expectMeets(along(-50, 50), boreAlong('y', span(-50, 50), at(0, 8), mm(3)), false);
    expectMeets(along(-50, 50), boreAlong('y', span(-50, 50), at(0, '7.999'), mm(3)), true);
  });

  it('meet only at the rim where one ends beside the other', () => {
    // The first ends 3 before the second's axis: there the second is 4 deep on either side; it lies 8 away, and the
    // first is 5 deep at its own middle, so the two lack nothing but a hair.
    const upright = (z: string) => boreAlong('y', span(-50, 50), at(3, z), mm(5));
    expectMeets(along(-50, 0), upright('9'), false);
    expectMeets(along(-50, 0), upright('8.999'), true);
  });

  it('meet only at both rims where each ends beside the other', () => {
    const upright = (z: string) => boreAlong('y', span(3, 50), at(3, z), mm(5));
    // Both are cut 3 off their axes: 4 deep and 4 deep.
    expectMeets(along(-50, 0), upright('8'), false);
    expectMeets(along(-50, 0), upright('7.999'), true);
  });

  it('a slot meets a bore through its round end', () => {
    const slot = (radius: string) => slotAlong('x', span(-50, 50), at(0, 0), at(30, 40), mm(radius));
    const bore = boreAlong('z', span(45, 90), at(0, 30), mm(2));
    expectMeets(slot('5'), bore, false);
    expectMeets(slot('5.001'), bore, true);
  });
});

describe('whatever the solids', () => {
  const settings = { numRuns: 400, endOnFailure: true };

  it('whether they meet does not depend on which is named first', () => {
    fc.assert(
      fc.property(anySolid, anySolid, (a, b) => meets(a, b) === meets(b, a)),
      settings,
    );
  });

  it('nor on where both stand', () => {
    fc.assert(
      fc.property(anySolid, anySolid, anyPoint, (a, b, by) => meets(a, b) === meets(movedBy(a, by), movedBy(b, by))),
      settings,
    );
  });

  it('a solid meets itself, and its like beside it only touches', () => {
    fc.assert(
      fc.property(anySolid, (solid) => {
        expect(meets(solid, movedBy(solid, { x: mm(0), y: mm(0), z: mm(0) }))).toBe(true);
        for (const axis of ['x', 'y', 'z'] as const) {
          const { from, to } = boundsOf(solid)[axis];
          const beside = movedBy(solid, { x: mm(0), y: mm(0), z: mm(0), [axis]: to.minus(from) });
          expect(meets(solid, beside)).toBe(false);
        }
      }),
      settings,
    );
  });
});

describe('what is no solid', () => {
  it('meets nothing it could be asked about, and throws nothing', () => {
    const flat = box([5, 5], [0, 10], [0, 10]);
    expectMeets(block, flat, false);
    expectMeets(block, boreAlong('x', span(5, 5), at(50, 50), mm(5)), false);
    expectMeets(block, { kind: 'convex', corners: [], faces: [[0, 1, 2]] }, false);
    expectMeets(block, prismOf('x', span(0, 10), []), false);
  });
});
