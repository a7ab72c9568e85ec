import { Length } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { clearsItsGap, leastBevel, sweepInWords } from '../../../packages/engine/src/hardware/closing-sweep.ts';
import { butt, caseWith, pieceIn } from './door-texts.ts';

/** How far the back of a closing edge runs beyond it: √(w² + t²) - w, worked by hand. */

const inches = (n: number, d = 1) => Length.inches(n, d);

describe('a door 9-15/64" wide and 1/2" thick', () => {
  const door = { width: inches(591, 64), thickness: inches(1, 2), gap: inches(3, 32), bevel: Length.zero };

  it('sweeps 0.0135", which is t²/2w to that many places, and wants no bevel in a gap of 3/32"', () => {
    expect(sweepInWords(door, 'in')).toBe('0.0135"');
    expect((0.5 * 0.5) / (2 * 9.234375)).toBeCloseTo(0.0135, 4);
    expect(clearsItsGap(door)).toBe(true);
  });

  it('strikes in a gap a little smaller than that', () => {
    expect(clearsItsGap({ ...door, gap: inches(135, 10000) })).toBe(false);
    expect(clearsItsGap({ ...door, gap: inches(136, 10000) })).toBe(true);
  });
});

describe('a door 10" wide and 2" thick in a gap of 1/8"', () => {
  const door = { width: inches(10), thickness: inches(2), gap: inches(1, 8), bevel: Length.zero };

  it('sweeps 0.198" and wants a bevel of 3/32": w - √((w + g)² - t²) is 0.0745"', () => {
    expect(sweepInWords(door, 'in')).toBe('0.198"');
    expect(clearsItsGap(door)).toBe(false);
    expect(clearsItsGap({ ...door, bevel: inches(74, 1000) })).toBe(false);
    expect(clearsItsGap({ ...door, bevel: inches(75, 1000) })).toBe(true);
    expect(leastBevel(door, 'in')?.exactInches).toBe('3/32');
  });

  it('says so at its hinges', async () => {
    const { told } = await pieceIn(
      caseWith(
        'inset, gap 1/8 { door "front" hinged left { hinges "butt 2" }   fronts thick 2 }',
        butt,
        '11-3/4 wide, 30 high, 12 deep',
      ),
    );
    expect(told).toEqual([
      'closing-edge-needs-bevel: the closing edge of "front", 10" wide and 2" thick, sweeps 0.198" beyond itself: its gap is 1/8"',
    ]);
  });

  it('says nothing of a bevel where the gap itself is less than nothing', async () => {
    const { told } = await pieceIn(
      caseWith(
        'inset, gap -1/8 { door "front" hinged left { hinges "butt 2" }   fronts thick 2 }',
        butt,
        '11-3/4 wide, 30 high, 12 deep',
      ),
    );
    expect(told).toEqual([expect.stringContaining('size-negative')]);
  });
});

it('in a triangle of whole numbers the edge that just clears its gap clears it', () => {
  // 3, 4 and 5: the back corner runs exactly 1" beyond the edge.
  const door = { width: inches(4), thickness: inches(3), gap: inches(1), bevel: Length.zero };
  expect(clearsItsGap(door)).toBe(true);
  expect(clearsItsGap({ ...door, gap: inches(999_999, 1_000_000) })).toBe(false);
});
