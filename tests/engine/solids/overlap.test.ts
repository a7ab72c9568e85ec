import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Length } from '../../../packages/engine/src/length/length.ts';
import {
  AXES,
  boreAlong,
  boundsOf,
  meets,
  movedBy,
  type Overlap,
  overlapOf,
  slotAlong,
  wedgeOf,
} from '../../../packages/engine/src/solids/index.ts';
import { anySolid } from './arbitrary-solids.ts';
import { at, box, inMillimetres, mm, span } from './shorthand.ts';

function found(overlap: Overlap | undefined): Overlap {
  if (overlap === undefined) throw new Error('the two do not meet');
  return overlap;
}

function shared({ shared: { x, y, z } }: Overlap) {
  return [x, y, z].map(({ from, to }) => `${inMillimetres(from)} to ${inMillimetres(to)}`);
}

describe('mortises cut into adjacent faces of a square foot', () => {
  // 1-3/4", that is 44.45 mm, square; both 8 mm thick, 20 mm deep, centred on their faces; worked by hand.
  const fromTheSide = box([0, 20], [10, 60], ['18.225', '26.225']);
  const fromTheFront = box(['18.225', '26.225'], [10, 60], [0, 20]);

  it('meet by 1.775 mm in each direction across: 20 + 4 - 22.225', () => {
    const overlap = found(overlapOf(fromTheSide, fromTheFront));
    for (const axis of ['x', 'z'] as const) {
      const { from, to, isExact } = overlap.shared[axis];
      expect(inMillimetres(to.minus(from))).toBe('71/40');
      expect(isExact).toBe(true);
      expect(inMillimetres(overlap.parting[axis].by)).toBe('71/40');
    }
    expect(inMillimetres(overlap.parting.y.by)).toBe('50');
  });

  it('are parted by the least move, which says its way', () => {
    const { leastParting } = found(overlapOf(fromTheSide, fromTheFront));
    expect(leastParting).toMatchObject({ axis: 'x', towards: 'higher', isExact: true });
    const { leastParting: ofTheOther } = found(overlapOf(fromTheFront, fromTheSide));
    expect(ofTheOther).toMatchObject({ axis: 'x', towards: 'lower', isExact: true });
  });

  it('do not meet if each is 1.775 mm shallower, and then only touch', () => {
    expect(overlapOf(box([0, '18.225'], [10, 60], ['18.225', '26.225']), fromTheFront)).toBeUndefined();
  });
});

describe('what two solids share', () => {
  const block = box([0, 100], [0, 100], [0, 100]);

  it('of a mitre and a block that cuts its slope', () => {
    const wedge = wedgeOf(block, 'y', ['from', 'from']);
    const overlap = found(overlapOf(wedge, box([40, 200], [20, 30], [40, 200])));
    expect(shared(overlap)).toEqual(['40 to 60', '20 to 30', '40 to 60']);
    // To clear the slope one moves out until the near edge stands on it.
    expect(inMillimetres(overlap.parting.x.by)).toBe('20');
    expect(overlap.parting.x).toMatchObject({ towards: 'higher', isExact: true });
  });

  it('of a bore and the face it breaks out of: by how much, exactly', () => {
    const overlap = found(overlapOf(block, boreAlong('y', span(10, 90), at(50, '96'), mm(5))));
    expect(shared(overlap)).toEqual(['45 to 55', '10 to 90', '91 to 100']);
    expect(inMillimetres(overlap.parting.z.by)).toBe('9');
    expect(overlap.parting.z.isExact).toBe(true);
    expect(overlap.shared.z.isExact).toBe(true);
  });

  it('of two pairs of bores: 3, 4 and 5 exactly, roots within a hair', () => {
    const bore = boreAlong('z', span(0, 10), at(0, 0), mm(2));
    const exact = found(overlapOf(bore, boreAlong('z', span(5, 20), at(1, 4), mm(3))));
    // At 4 apart the other way, 3 is where the rims of radii 2 and 3 touch.
    expect(inMillimetres(exact.parting.x.by)).toBe('2');
    expect(exact.parting.x).toMatchObject({ towards: 'higher', isExact: true });
    const rough = found(overlapOf(bore, boreAlong('z', span(5, 20), at(1, 3), mm(3))));
    // sqrt(25 - 9) = 4 is a fraction again, along y: sqrt(25 - 1) is none.
    expect(inMillimetres(rough.parting.x.by)).toBe('3');
    expect(rough.parting.y.isExact).toBe(false);
    const y = rough.parting.y.by.in('mm').toNumber();
    expect(y).toBeGreaterThanOrEqual(Math.sqrt(24) - 3);
    expect(y).toBeLessThan(Math.sqrt(24) - 3 + 1e-5);
  });

  it('of a slot and a bore across it', () => {
    const slot = slotAlong('x', span(0, 30), at(20, 20), at(60, 20), mm(4));
    const overlap = found(overlapOf(slot, boreAlong('y', span(0, 30), at(10, 26), mm(3))));
    expect(inMillimetres(overlap.parting.z.by)).toBe('1');
    expect(overlap.parting.z).toMatchObject({ towards: 'higher', isExact: true });
    // Away from the slot's round end along y: 1 deep at the rim, sqrt(16 - 9) beside it.
    expect(overlap.parting.y.isExact).toBe(false);
    expect(overlap.parting.y.by.in('mm').toNumber()).toBeCloseTo(10 + Math.sqrt(16 - 9), 4);
  });
});

describe('whatever the solids', () => {
  const settings = { numRuns: 300, endOnFailure: true };
  const nowhere = { x: Length.zero, y: Length.zero, z: Length.zero };

  it('an overlap is told exactly when they meet, and lies within both', () => {
    fc.assert(
      fc.property(anySolid, anySolid, (a, b) => {
        const overlap = overlapOf(a, b);
        expect(overlap !== undefined).toBe(meets(a, b));
        if (overlap === undefined) return;
        for (const axis of AXES) {
          const { from, to } = overlap.shared[axis];
          expect(from.compare(to)).toBe(-1);
          for (const solid of [a, b]) {
            expect(from.compare(boundsOf(solid)[axis].from)).toBeGreaterThanOrEqual(0);
            expect(to.compare(boundsOf(solid)[axis].to)).toBeLessThanOrEqual(0);
          }
        }
      }),
      settings,
    );
  });

  it('the move that parts them does, and where it is exact anything less does not', () => {
    let exact = 0;
    let rough = 0;
    fc.assert(
      fc.property(anySolid, anySolid, (a, b) => {
        const overlap = overlapOf(a, b);
        if (overlap === undefined) return;
        for (const axis of AXES) {
          const { by, towards, isExact } = overlap.parting[axis];
          const moved = (way: Length) => movedBy(b, { ...nowhere, [axis]: towards === 'lower' ? way.negated() : way });
          expect(by.isPositive()).toBe(true);
          expect(meets(a, moved(by))).toBe(false);
          if (isExact) expect(meets(a, moved(by.minus(Length.inches(1, 1_000_000).min(by.dividedBy(2)))))).toBe(true);
          if (isExact) exact += 1;
          else rough += 1;
        }
      }),
      settings,
    );
    expect(exact).toBeGreaterThan(rough);
    expect(rough).toBeGreaterThan(0);
  });
});
