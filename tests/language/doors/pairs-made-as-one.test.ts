import { cutListTable } from '@fettle/drawings';
import { describe, expect, it } from 'vitest';
import { caseWith, pieceIn } from './door-texts.ts';

/** A pair that is one panel until it is cut through: one blank, one note, and a kerf that is no wider than the gap. */

const text = (gap: string, more = '') =>
  caseWith(
    `inset, gap ${gap} { doors "front" { pair made as one }   fronts "ash" thick 3/4${more} }`,
    `board "ash" any thickness, 8 wide, 120 long
sheet "ply 1/4" nominal 1/4, actual 1/4, 96 long, 48 wide`,
  );

describe('a pair made as one', () => {
  it('is cut from one blank, leaf beside leaf', async () => {
    const { part, told } = await pieceIn(text('1/8'));
    expect(told).toEqual([]);
    expect(['leaf-left', 'leaf-right'].map((leaf) => part(`face/front/${leaf}`).run)).toEqual([
      { id: 'pair face/front', label: 'pair "front"', place: 0, order: 'across', isSplit: true },
      { id: 'pair face/front', label: 'pair "front"', place: 1, order: 'across', isSplit: true },
    ]);
  });

  it('says in the cut list how wide the panel is', async () => {
    const { evaluation } = await pieceIn(text('1/8'));
    const notes = cutListTable(evaluation).rows.flatMap(({ cells }) =>
      cells.filter((cell) => cell.includes('made as one')),
    );
    // The opening is 18-1/2" wide, less a gap of 1/8" at either side.
    expect(notes.length).toBeGreaterThan(0);
    expect(notes.every((note) => note.includes('18-1/4" wide, and then cut through: 1/8" between them'))).toBe(true);
  });

  it('loses what the kerf takes beyond the gap', async () => {
    expect((await pieceIn(text('3/32'))).told).toEqual([
      'split-wider-than-gap: "front" is cut through by a kerf of 1/8", the gap between its leaves is 3/32": each leaf loses ' +
        '1/64"; make the panel 1/32" wider, plan a gap of 1/8", or cut it with a thinner blade',
    ]);
    const thin = `machine "thin saw" kerf 3/32\n${text('3/32')}`;
    expect((await pieceIn(thin)).told).toEqual([]);
  });

  it('is never a pair of frames', async () => {
    const { codes } = await pieceIn(
      text('1/8', ', frame-and-panel { stiles 2 wide   panel "ply 1/4", in groove 3/8 deep }'),
    );
    expect(codes).toEqual(['pair-not-in-one']);
  });
});
