import { describe, expect, it } from 'vitest';
import { Length } from '../../../packages/engine/src/length/length.ts';
import { type Blank, partsInBlank, sizeOfBlank } from '../../../packages/engine/src/stock/blank.ts';

const inches = Length.inches;
const written = (values: Readonly<Record<string, unknown>>) =>
  Object.fromEntries(Object.entries(values).map(([key, value]) => [key, String(value)]));

/** Three drawer fronts whose grain runs on from one to the next, with a blade of 1/8 in between them. */
const fronts: Blank = {
  id: 'fronts',
  parts: [
    { part: 'top', width: inches(5), length: inches(30) },
    { part: 'middle', width: inches(13, 2), length: inches(30) },
    { part: 'bottom', width: inches(8), length: inches(119, 4) },
  ],
  order: 'across',
  between: [inches(1, 8), inches(1, 8)],
  allowance: { left: inches(1, 16), right: inches(1, 16), near: inches(1, 2), far: inches(1, 4) },
  mayTurn: false,
};

describe('a blank of several parts', () => {
  it('is as large as its parts, the cuts between them and its allowances', () => {
    // 5 + 6-1/2 + 8 + 2 × 1/8 + 2 × 1/16 = 19-7/8; the longest part 30 + 1/2 + 1/4.
    expect(written({ ...sizeOfBlank(fronts) })).toEqual({ width: '159/8 in', length: '123/4 in' });
  });

  it('tells where each part lies, in order', () => {
    expect(partsInBlank(fronts, false).map(({ part, x, y }) => written({ part, x, y }))).toEqual([
      { part: 'top', x: '1/16 in', y: '1/2 in' },
      { part: 'middle', x: '83/16 in', y: '1/2 in' },
      { part: 'bottom', x: '189/16 in', y: '1/2 in' },
    ]);
  });

  it('turned, its parts follow each other along the stock', () => {
    const [, middle] = partsInBlank(fronts, true);
    expect(middle && written({ ...middle })).toEqual({
      part: 'middle',
      x: '1/2 in',
      y: '83/16 in',
      width: '30 in',
      length: '13/2 in',
    });
  });

  it('with parts behind each other is as long as all of them', () => {
    const size = sizeOfBlank({ ...fronts, order: 'along' });
    // 30 + 30 + 29-3/4 + 2 × 1/8 + 1/2 + 1/4.
    expect(written({ ...size })).toEqual({ width: '65/8 in', length: '363/4 in' });
  });
});
