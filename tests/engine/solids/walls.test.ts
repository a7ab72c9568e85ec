import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Length } from '../../../packages/engine/src/length/length.ts';
import {
  AXES,
  boreAlong,
  type Depth,
  depthOf,
  gapBetween,
  insideOf,
  meets,
  movedBy,
  openFaces,
  type Solid,
  slotAlong,
  thinnestGap,
  wallBetween,
  wallTo,
  wedgeOf,
} from '../../../packages/engine/src/solids/index.ts';
import { anySmallInLarge, anySolid } from './arbitrary-solids.ts';
import { at, box, inMillimetres, mm, span } from './shorthand.ts';

/** A side of 3/4" stuff, 19.05 mm, its outer face at 0. */
const side = box([0, '19.05'], [0, 700], [0, 400]);

describe('how deep a feature goes', () => {
  const mortise = (depth: string) => box([0, depth], [100, 150], [50, 58]);
  const outer = { axis: 'x', end: 'from' } as const;
  const depth = (found: Depth) =>
    found.kind === 'reaches'
      ? found.kind
      : `${found.kind} ${inMillimetres(found.kind === 'stops-short' ? found.wall : found.by)}`;

  it('a 20 mm mortise in a 19.05 mm side breaks through by 0.95 mm', () => {
    expect(depth(depthOf(mortise('20'), side, outer))).toBe('breaks-through 19/20');
  });

  it('one of 19.05 mm just reaches the far face, one of 12 leaves 7.05', () => {
    expect(depth(depthOf(mortise('19.05'), side, outer))).toBe('reaches');
    expect(depth(depthOf(mortise('12'), side, outer))).toBe('stops-short 141/20');
  });

  it('from the other face it is the other wall', () => {
    expect(depth(depthOf(box([-1, 20], [0, 9], [0, 9]), side, { axis: 'x', end: 'to' }))).toBe('breaks-through 1');
  });

  it('a bore in an edge stands from the faces by its radius', () => {
    const bore = boreAlong('y', span(0, 30), at('9.525', 100), mm(4));
    expect(inMillimetres(wallTo({ axis: 'x', end: 'from' }, bore, side))).toBe('221/40');
    expect(inMillimetres(wallTo({ axis: 'x', end: 'to' }, bore, side))).toBe('221/40');
    expect(openFaces(bore, side)).toEqual([{ axis: 'y', end: 'from' }]);
  });
});

describe('the wall between two features', () => {
  it('of boxes, along the one axis on which they face each other', () => {
    const groove = box([0, 6], [100, 106], [0, 400]);
    const mortise = box([0, 12], [120, 150], [50, 58]);
    expect(inMillimetres(gapBetween(groove, mortise, 'y')?.wall ?? mm(0))).toBe('14');
    expect(gapBetween(groove, mortise, 'x')).toBeUndefined();
    expect(thinnestGap(mortise, groove)).toMatchObject({ axis: 'y', isExact: true });
  });

  it('is nothing where they touch, and no wall at all where they meet', () => {
    const groove = box([0, 6], [100, 106], [0, 400]);
    expect(gapBetween(groove, box([0, 6], [106, 120], [10, 20]), 'y')?.wall.isZero()).toBe(true);
    expect(gapBetween(groove, box([0, 6], [105, 120], [10, 20]), 'y')).toBeUndefined();
    expect(thinnestGap(groove, box([0, 6], [105, 120], [10, 20]))).toBeUndefined();
  });

  it('of a bore and a groove, from the bore’s nearest point', () => {
    const groove = box([0, 6], [100, 106], [0, 400]);
    const pin = boreAlong('x', span(0, 10), at(96, 50), mm('2.5'));
    expect(gapBetween(groove, pin, 'y')).toMatchObject({ isExact: true });
    expect(inMillimetres(gapBetween(groove, pin, 'y')?.wall ?? mm(0))).toBe('3/2');
  });

  it('of bores in a triangle of 3, 4 and 5, along each axis', () => {
    const one = boreAlong('x', span(0, 10), at(0, 0), mm(2));
    const other = boreAlong('x', span(5, 12), at(10, 4), mm(3));
    expect(inMillimetres(gapBetween(one, other, 'y')?.wall ?? mm(0))).toBe('7');
    // Along z they pass each other.
    expect(gapBetween(one, other, 'z')).toBeUndefined();
  });

  it('of a slope and a bore over it, never more than is there', () => {
    const wedge = wedgeOf(box([0, 40], [0, 40], [0, 40]), 'z', ['from', 'from']);
    const bore = boreAlong('z', span(0, 40), at(30, 30), mm(5));
    const gap = gapBetween(wedge, bore, 'x');
    // The slope is x + y = 40: its distance is 20 / sqrt(2) less 5, along x sqrt(2) times that.
    const wall = 20 - 5 * Math.SQRT2;
    expect(gap?.isExact).toBe(false);
    expect(gap?.wall.in('mm').toNumber()).toBeLessThanOrEqual(wall);
    expect(gap?.wall.in('mm').toNumber()).toBeGreaterThan(wall - 1e-5);
  });

  it('across its axis a slot is as wide as it was swept', () => {
    const slot = slotAlong('y', span(0, 30), at(20, 20), at(50, 20), mm(4));
    expect(inMillimetres(gapBetween(slot, box([60, 70], [0, 10], [15, 25]), 'x')?.wall ?? mm(0))).toBe('6');
  });

  it('is there exactly to the far end of it: moved by it they touch, by more they meet', () => {
    let gaps = 0;
    fc.assert(
      fc.property(anySolid, anySolid, (a, b) => {
        for (const axis of AXES) {
          const gap = gapBetween(a, b, axis);
          if (gap === undefined) continue;
          gaps += 1;
          const moved = (by: Length) => movedBy(b, { x: Length.zero, y: Length.zero, z: Length.zero, [axis]: by });
          const more = gap.wall.plus(Length.inches(1, 1_000_000));
          expect([gap.wall, gap.wall.negated()].every((by) => meets(a, moved(by)))).toBe(false);
          if (gap.isExact) expect([more, more.negated()].some((by) => meets(a, moved(by)))).toBe(true);
        }
      }),
      { numRuns: 300, endOnFailure: true },
    );
    expect(gaps).toBeGreaterThan(30);
  });
});

describe('the thinnest wall, in whatever direction', () => {
  it('of boxes corner to corner, in triangles of whole sides', () => {
    const one = box([0, 10], [0, 10], [0, 10]);
    expect(inMillimetres(wallBetween(one, box([13, 20], [14, 20], [0, 10]))?.thickness ?? mm(0))).toBe('5');
    expect(inMillimetres(wallBetween(one, box([12, 20], [16, 20], [13, 20]))?.thickness ?? mm(0))).toBe('7');
    expect(wallBetween(one, box([10, 20], [10, 20], [10, 20]))).toMatchObject({ isExact: true });
    expect(wallBetween(one, box([9, 20], [9, 20], [9, 20]))).toBeUndefined();
  });

  it('of shelf pins set off from each other: 3 across and 4 up leave 5 less both radii', () => {
    const pin = (y: number, z: number) => boreAlong('x', span(0, 10), at(y, z), mm(2));
    expect(wallBetween(pin(0, 0), pin(3, 4))).toMatchObject({ isExact: true });
    expect(inMillimetres(wallBetween(pin(0, 0), pin(3, 4))?.thickness ?? mm(0))).toBe('1');
  });

  it('of a bore past the edge of a groove, and behind its end', () => {
    const groove = box([0, 6], [0, 10], [0, 400]);
    const wall = (bore: Solid) => inMillimetres(wallBetween(bore, groove)?.thickness ?? mm(0));
    expect(wall(boreAlong('z', span(0, 50), at(9, 14), mm(2)))).toBe('3');
    // 3 across the bore and 4 along it.
    expect(wall(boreAlong('z', span(404, 450), at(9, 14), mm(2)))).toBe('5');
  });

  it('of bores that cross, and of a bore beside a slope, is a bound', () => {
    const one = boreAlong('x', span(0, 50), at(0, 0), mm(3));
    const other = boreAlong('y', span(-20, 20), at(25, 9), mm(2));
    expect(wallBetween(one, other)).toMatchObject({ isExact: true });
    expect(inMillimetres(wallBetween(one, other)?.thickness ?? mm(0))).toBe('4');
    const wedge = wedgeOf(box([0, 40], [0, 40], [0, 40]), 'z', ['from', 'from']);
    const beside = wallBetween(wedge, boreAlong('z', span(0, 40), at(30, 30), mm(5)));
    expect(beside?.isExact).toBe(false);
    expect(beside?.thickness.in('mm').toNumber()).toBeCloseTo(10 * Math.SQRT2 - 5, 4);
    expect(beside?.thickness.in('mm').toNumber()).toBeLessThanOrEqual(10 * Math.SQRT2 - 5);
  });
});

describe('one solid within another', () => {
  const block = box([0, 100], [0, 100], [0, 100]);

  it('a bore in a wedge, to a hair', () => {
    // Centred 50 - 5 * sqrt(2) = 42.928... from both faces, it touches the slope x + y = 100.
    const wedge = wedgeOf(block, 'z', ['from', 'from']);
    const bore = (centre: string) => boreAlong('z', span(0, 100), at(centre, centre), mm(5));
    expect(insideOf(bore('46.464'), wedge)).toBe(true);
    expect(insideOf(bore('46.465'), wedge)).toBe(false);
  });

  it('a peg in a hole: the same one, a square one, one across', () => {
    const hole = boreAlong('z', span(0, 100), at(50, 50), mm(5));
    expect(insideOf(hole, hole)).toBe(true);
    expect(insideOf(box([47, 53], [46, 54], [0, 100]), hole)).toBe(true);
    expect(insideOf(box([47, 53], [46, '54.001'], [0, 100]), hole)).toBe(false);
    expect(insideOf(boreAlong('y', span(46, 54), at(50, 50), mm(3)), hole)).toBe(true);
    expect(insideOf(boreAlong('y', span(46, 54), at(50, 50), mm('3.001')), hole)).toBe(false);
    expect(insideOf(boreAlong('x', span(47, 53), at(50, 50), mm(4)), hole)).toBe(true);
    expect(insideOf(boreAlong('x', span(47, '53.001'), at(50, 50), mm(4)), hole)).toBe(false);
    expect(insideOf(boreAlong('z', span(10, 20), at(52, 50), mm(3)), hole)).toBe(true);
    expect(insideOf(boreAlong('z', span(10, 20), at('52.001', 50), mm(3)), hole)).toBe(false);
  });

  it('meets what it is within, and lies within it by its bounds', () => {
    let within = 0;
    fc.assert(
      fc.property(anySmallInLarge, ([a, b]) => {
        expect(insideOf(a, a)).toBe(true);
        if (!insideOf(a, b)) return;
        within += 1;
        expect(meets(a, b)).toBe(true);
        for (const axis of AXES) {
          for (const end of ['from', 'to'] as const) {
            if (b.kind === 'box') expect(wallTo({ axis, end }, a, b).isNegative()).toBe(false);
          }
        }
      }),
      { numRuns: 500, endOnFailure: true },
    );
    expect(within).toBeGreaterThan(20);
  });
});
