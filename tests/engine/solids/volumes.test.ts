import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Length } from '../../../packages/engine/src/length/length.ts';
import { Rational } from '../../../packages/engine/src/length/rational.ts';
import {
  boreAlong,
  boxOf,
  intervalOf,
  meets,
  pairsNearer,
  pairsThatMeet,
  remainingVolume,
  type Solid,
  sharedVolume,
  slotAlong,
  type Volume,
  volumeBetween,
  volumeOf,
} from '../../../packages/engine/src/solids/index.ts';
import { anySolid } from './arbitrary-solids.ts';

/** Inches here: volumes are in cubic inches. */
const inches = (n: number, d = 1) => Length.inches(n, d);
const span = (from: number, to: number) => intervalOf(inches(from), inches(to));
const box = (x: [number, number], y: [number, number], z: [number, number]) =>
  boxOf(span(...x), span(...y), span(...z));

function told({ flat, timesPi }: Volume): string {
  return `${flat.least.equals(flat.most) ? flat.least : `${flat.least} to ${flat.most}`} + ${timesPi} pi`;
}

describe('volumes', () => {
  it('of a box, a bore and slots, by the school formulas', () => {
    expect(told(volumeOf(box([0, 2], [1, 4], [0, 5])))).toBe('30 + 0 pi');
    expect(told(volumeOf(boreAlong('x', span(0, 3), [inches(9), inches(9)], inches(1, 2))))).toBe('0 + 3/4 pi');
    const slot = (to: [Length, Length]) => slotAlong('z', span(0, 2), [inches(0), inches(0)], to, inches(1));
    expect(told(volumeOf(slot([inches(5), inches(0)])))).toBe('20 + 2 pi');
    expect(told(volumeOf(slot([inches(3), inches(4)])))).toBe('20 + 2 pi');
    expect(told(volumeOf(slot([inches(0), inches(0)])))).toBe('0 + 2 pi');
  });

  it('of a slot at 45 degrees lie between bounds of its root', () => {
    const { least, most } = volumeBetween(
      volumeOf(slotAlong('z', span(0, 1), [inches(0), inches(0)], [inches(1), inches(1)], inches(1))),
    );
    expect(least.toNumber()).toBeCloseTo(2 * Math.SQRT2 + Math.PI, 6);
    expect(most.minus(least).sign()).toBe(1);
    expect(most.minus(least).compare(Rational.of(1, 1_000_000))).toBe(-1);
  });

  it('that two share are exact wherever a bore leaves a box by its end', () => {
    const block = box([0, 4], [0, 4], [0, 4]);
    const bore = boreAlong('x', span(-1, 3), [inches(2), inches(2)], inches(1));
    expect(told(sharedVolume(bore, block))).toBe('0 + 3 pi');
    expect(told(sharedVolume(block, bore))).toBe('0 + 3 pi');
    expect(told(sharedVolume(block, box([3, 5], [3, 5], [1, 2])))).toBe('1 + 0 pi');
    expect(told(sharedVolume(block, box([4, 5], [3, 5], [1, 2])))).toBe('0 + 0 pi');
  });

  it('that a bore shares with a face it is cut open by lie close about the half of it', () => {
    const { least, most } = volumeBetween(
      sharedVolume(box([0, 4], [0, 4], [0, 4]), boreAlong('x', span(0, 4), [inches(0), inches(2)], inches(1))),
    );
    expect(least.toNumber()).toBeLessThan(2 * Math.PI);
    expect(most.toNumber()).toBeGreaterThan(2 * Math.PI);
    expect(most.toNumber() / least.toNumber()).toBeLessThan(1.03);
  });
});

describe('a part is its blank less its features', () => {
  const blank = box([0, 20], [0, 4], [0, 1]);

  it('a board with a groove, a bore through it and a mortise longer than the board is thick', () => {
    const left = remainingVolume(blank, [
      box([0, 20], [0, 1], [0, 1]),
      boreAlong('z', span(-1, 3), [inches(4), inches(2)], inches(1, 2)),
      box([8, 10], [2, 3], [-2, 5]),
    ]);
    expect(left.kind === 'volume' && told(left.volume)).toBe('58 + -1/4 pi');
    // 80 - 20 - 2 is 58, less a quarter of pi.
    const { least, most } = volumeBetween(left.kind === 'volume' ? left.volume : volumeOf(blank));
    expect(least.toNumber()).toBeCloseTo(58 - Math.PI / 4, 9);
    expect(least.compare(most)).toBe(-1);
  });

  it('says which features meet rather than take them away twice', () => {
    const features = [box([0, 2], [0, 2], [0, 1]), box([5, 6], [0, 4], [0, 1]), box([1, 3], [1, 3], [0, 1])];
    expect(remainingVolume(blank, features)).toEqual({ kind: 'features-meet', pairs: [[0, 2]] });
  });
});

describe('pairs out of many', () => {
  const settings = { numRuns: 60, endOnFailure: true };

  it('that meet are those that meet when every two are asked', () => {
    fc.assert(
      fc.property(fc.array(anySolid, { maxLength: 12 }), (solids) => {
        const expected = everyTwo(solids).filter(([i, j]) => meets(at(solids, i), at(solids, j)));
        expect(pairsThatMeet(solids)).toEqual(expected);
      }),
      settings,
    );
  });

  it('that are near leave out none that would meet if the one grew by the reach', () => {
    const reach = inches(1, 4);
    const boxes = fc.array(
      anySolid.filter((solid) => solid.kind === 'box'),
      { maxLength: 12 },
    );
    fc.assert(
      fc.property(boxes, (solids) => {
        const grown = solids.map((solid) =>
          solid.kind === 'box' ? boxOf(wider(solid.x), wider(solid.y), wider(solid.z)) : solid,
        );
        const wanted = everyTwo(solids).filter(([i, j]) => meets(at(grown, i), at(solids, j)));
        const found = pairsNearer(solids, reach).map(([i, j]) => `${i} ${j}`);
        for (const [i, j] of wanted) expect(found).toContain(`${i} ${j}`);
      }),
      settings,
    );
    function wider({ from, to }: { from: Length; to: Length }) {
      return { from: from.minus(reach), to: to.plus(reach) };
    }
  });

  it('that are clearly apart are left out', () => {
    const solids = [box([0, 1], [0, 1], [0, 1]), box([2, 3], [0, 1], [0, 1]), box([5, 6], [0, 1], [0, 1])];
    expect(pairsNearer(solids, inches(3, 2))).toEqual([[0, 1]]);
    expect(pairsNearer(solids, inches(2))).toEqual([
      [0, 1],
      [1, 2],
    ]);
    expect(pairsThatMeet([])).toEqual([]);
  });

  function everyTwo(solids: readonly Solid[]): [number, number][] {
    return solids.flatMap((_, i) => solids.slice(i + 1).map((_, offset): [number, number] => [i, i + 1 + offset]));
  }

  function at(solids: readonly Solid[], index: number): Solid {
    const found = solids[index];
    if (found === undefined) throw new Error(`no solid ${index}`);
    return found;
  }
});
