import { partDrawings, partSheets, planDrawing, planPages, toSvg } from '@fettle/drawings';
import { describe, expect, it } from 'vitest';
import { piecesOfExample, planned } from '../engine/stock/buying/evaluating.ts';
import { evaluatedSideboard } from './pieces-to-draw.ts';
import { type Box, elements, isInside, overlaps, readSvg, textBoxOf } from './reading-svg.ts';

/** What one looks at one after the other on a sheet of several things, as whoever shows the sheet reads it. */

function boxes(words: string | null): readonly Box[] {
  return (words ?? '').split(', ').map((each) => {
    const [left = Number.NaN, top = Number.NaN, width = Number.NaN, height = Number.NaN] = each.split(' ').map(Number);
    return { left, top, right: left + width, bottom: top + height };
  });
}

describe('a sheet of several things', () => {
  it('says where each part lies: all that is written of it, clear of every other, within what one looks at', () => {
    const sideboard = evaluatedSideboard();
    partSheets(sideboard).forEach((parts, at) => {
      const root = readSvg(toSvg(partDrawings(sideboard, at + 1)));
      const items = boxes(root.getAttribute('data-items'));
      const [focus] = boxes(root.getAttribute('data-focus'));
      if (focus === undefined) throw new Error('a sheet without anything to look at');
      expect(items.length).toBe(parts.length);
      items.forEach((item, turn) => {
        expect(isInside(item, focus)).toBe(true);
        for (const other of items.slice(turn + 1)) expect(overlaps(item, other)).toBe(false);
        const [group] = elements(root, 'g')
          .filter((each) => each.hasAttribute('data-part'))
          .slice(turn);
        if (group === undefined) throw new Error('a part that is not drawn');
        const written = elements(group, 'text').map(textBoxOf);
        expect(written.length).toBeGreaterThan(3);
        for (const box of written) expect(isInside(box, item)).toBe(true);
      });
    });
  });

  it('says where each board lies, and the list of what finds no room on them', { timeout: 120_000 }, async () => {
    const [sideboard] = await piecesOfExample('sideboard');
    if (sideboard === undefined) throw new Error('the sideboard is not there');
    const plan = planned(sideboard);
    planPages(plan).forEach((page, at) => {
      const root = readSvg(toSvg(planDrawing(sideboard, plan, at + 1)));
      const items = boxes(root.getAttribute('data-items'));
      const lists = elements(root, 'g').filter((group) => group.getAttribute('class') === 'beside');
      expect(items.length).toBe(page.length + lists.length);
      const stocks = elements(root, 'g').filter((group) => group.getAttribute('class') === 'stock');
      stocks.forEach((stock, turn) => {
        const [outline] = elements(stock, 'rect');
        const [x, y] = ['x', 'y'].map((name) => Number(outline?.getAttribute(name)));
        const item = items[turn];
        if (item === undefined || x === undefined || y === undefined) throw new Error('a board without its place');
        expect(x).toBeCloseTo(item.left, 3);
        expect(y).toBeGreaterThan(item.top);
        expect(y).toBeLessThan(item.bottom);
      });
      for (const [turn, list] of lists.entries()) {
        const item = items[page.length + turn];
        if (item === undefined) throw new Error('a list without its place');
        for (const text of elements(list, 'text')) expect(isInside(textBoxOf(text), item, 0.01)).toBe(true);
      }
    });
  });
});
