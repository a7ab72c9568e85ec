import { Length, Rational } from '@fettle/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fingers, tails } from '../../../packages/engine/src/joinery/corner-fingers.ts';
import { boxOf, type Solid, volumeOf, whyNotSolid } from '../../../packages/engine/src/solids/index.ts';

/** What the side loses and what the end loses fill the corner exactly, so that the two fit without a gap. */

const sixteenths = (n: number) => Length.inches(n, 16);
const upTo = (size: number) => ({ from: Length.zero, to: sixteenths(size) });
const cornerOf = (height: number, side: number, end: number) => boxOf(upTo(side), upTo(height), upTo(end));

function cubicInches(solids: readonly Solid[]): Rational {
  return solids.reduce((sum, solid) => sum.plus(volumeOf(solid).flat.least), Rational.zero);
}

const corner = fc.record({
  height: fc.integer({ min: 24, max: 200 }),
  side: fc.integer({ min: 6, max: 16 }),
  end: fc.integer({ min: 6, max: 16 }),
  outer: fc.constantFrom('from' as const, 'to' as const),
  slope: fc.constantFrom(6, 8),
});

describe('the cuts of a corner', () => {
  it('of dovetails are sound solids and fill it', () => {
    fc.assert(
      fc.property(corner, ({ height, side, end, outer, slope }) => {
        const box = cornerOf(height, side, end);
        const cuts = tails(box, { pin: sixteenths(4), pitch: sixteenths(24), slope, outer });
        const all = [...cuts.side, ...cuts.end];
        expect(all.map(whyNotSolid).filter((fault) => fault !== undefined)).toEqual([]);
        expect(cubicInches(all).toString()).toBe(cubicInches([box]).toString());
      }),
    );
  });
  it('of box joints fill it', () => {
    fc.assert(
      fc.property(corner, ({ height, side, end }) => {
        const box = cornerOf(height, side, end);
        const cuts = fingers(box, sixteenths(side));
        expect(cubicInches([...cuts.side, ...cuts.end]).toString()).toBe(cubicInches([box]).toString());
      }),
    );
  });
  // Worked by hand: a side 4-1/2" high has three tails 1-1/2" apart, 1-1/4" wide at its end; in an end of 1/2" a slope
  // of 1 in 8 takes 1/16" off each flank.
  it('of 4-1/2" has three tails, 1-1/4" wide at the end and 1-1/8" at the base', () => {
    const cuts = tails(cornerOf(72, 8, 8), { pin: sixteenths(4), pitch: sixteenths(24), slope: 8, outer: 'from' });
    expect(cuts.end).toHaveLength(3);
    const [lowest] = cuts.end;
    if (lowest?.kind !== 'convex') throw new Error('a tail slopes');
    const places = (z: Length) => lowest.corners.filter((each) => each.z.equals(z)).map(({ y }) => y.exactInches);
    expect([...new Set(places(Length.zero))]).toEqual(['1/8', '11/8']);
    expect([...new Set(places(sixteenths(8)))]).toEqual(['3/16', '21/16']);
  });
});
