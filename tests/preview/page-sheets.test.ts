import {
  type Drawing,
  explodedView,
  insideElevation,
  planSection,
  sideElevation,
  toSvg,
  verticalSection,
} from '@fettle/drawings';
import type { Evaluation } from '@fettle/engine';
import type { Picture, PieceView } from '@fettle/protocol';
import { describe, expect, test } from 'vitest';
import { evaluatedSideboard } from '../drawings/pieces-to-draw.ts';
import { type Box, boxOn } from './boxes.ts';
import { type OpenPage, openerOfFile } from './open-page.ts';
import { chest, message, picture, redrawn } from './pictures.ts';

/** What a sheet opens on, how one sees more of it, and how another is chosen. */

let open: OpenPage;
const opener = openerOfFile(() => open);

function show(shown: Picture): Promise<void> {
  return open.give(message(shown));
}

const boxOf = (selector: string): Promise<Box> => boxOn(open.page, selector);

/** A drawing of which one looks at the drawers only: its sheet is three times as large. */
function onLargeSheet(focus: string): PieceView {
  return redrawn(chest(), (svg) =>
    svg.replace('viewBox="0 0 100 120"', `viewBox="-100 -100 300 320" data-focus="${focus}"`),
  );
}

describe('fit', () => {
  const shown = () => boxOf('[data-part="front/cards"] rect');

  test('shows what one looks at, 1 the whole sheet, and nothing jumps while that grows a little', async () => {
    open = await opener.open();
    await show(picture(1, { pieces: [onLargeSheet('5 5 90 110')] }));
    const fitted = await shown();
    const sheet = await boxOf('#sheet');
    // 20 of 116.6 units in all of the height.
    expect(fitted.height / sheet.height).toBeCloseTo(20 / 116.6, 1);
    expect(fitted.x + fitted.width / 2).toBeCloseTo(sheet.x + sheet.width / 2, -1.3);
    await show(picture(2, { pieces: [onLargeSheet('4 5 91 110')] }));
    expect(await shown()).toEqual(fitted);
    await open.page.locator('#sheet').press('1');
    expect((await shown()).height / sheet.height).toBeCloseTo(20 / 320, 2);
    await open.page.locator('#sheet').press('0');
    expect(Math.abs((await shown()).height - fitted.height)).toBeLessThan(2);
  });

  test('what was panned stays, until it is asked for again', async () => {
    open = await opener.open();
    await show(picture(1, { pieces: [onLargeSheet('5 5 90 110')] }));
    const fitted = await shown();
    await open.page.evaluate('sheet.scrollBy(40, 30)');
    const panned = await shown();
    expect(panned).not.toEqual(fitted);
    await show(picture(2, { pieces: [onLargeSheet('5 5 90 110')] }));
    expect(await shown()).toEqual(panned);
    await open.page.locator('[data-action=zoom-fit]').click();
    expect(await shown()).toEqual(fitted);
  });
});

describe('what stands on the paper beside the drawing', () => {
  /** Notes below the drawers, which begin far to the left of them, on paper of this view box. */
  function withNotes(viewBox: string, y: number, x = -60): PieceView {
    const notes = `<g class="notes"><text x="${x}" y="${y}" font-size="6">Dimensions are finished sizes in inches</text></g>`;
    return redrawn(chest(), (svg) =>
      svg
        .replace('viewBox="0 0 100 120"', `viewBox="${viewBox}" data-focus="5 5 90 100"`)
        .replace('</svg>', `${notes}</svg>`),
    );
  }
  const opacity = (selector: string) =>
    open.page.locator(selector).evaluate((group) => {
      const page = globalThis as unknown as { getComputedStyle(of: unknown): { readonly opacity: string } };
      return Number(page.getComputedStyle(group).opacity);
    });

  test('is seen whole or not at all in the opening view, and there when one goes there', async () => {
    open = await opener.open();
    await open.page.setViewportSize({ width: 500, height: 700 });
    await show(picture(1, { pieces: [withNotes('-100 -50 300 220', 112)] }));
    expect(await opacity('.notes')).toBe(0);
    // Those who hear the sheet hear them all the same.
    expect(await open.page.locator('#sheet').ariaSnapshot()).toContain('Dimensions are finished sizes in inches');
    await open.page.evaluate('sheet.scrollBy(0, 30)');
    await expect.poll(() => opacity('.notes')).toBe(1);
    await open.page.locator('#sheet').press('0');
    await expect.poll(() => opacity('.notes')).toBe(0);
    await open.page.getByRole('button', { name: 'Whole sheet' }).click();
    expect(await opacity('.notes')).toBe(1);
  });

  test('is shown along where the drawing keeps most of its size', async () => {
    open = await opener.open();
    await show(picture(1, { pieces: [withNotes('-70 0 230 122', 119)] }));
    expect(await opacity('.notes')).toBe(1);
    const [notes, sheet] = [await boxOf('.notes text'), await boxOf('#sheet')];
    expect(notes.x).toBeGreaterThan(sheet.x);
    expect(notes.x + notes.width).toBeLessThan(sheet.x + sheet.width);
    expect(notes.y + notes.height).toBeLessThan(sheet.y + sheet.height);
  });

  test('does not come up while the text is edited: the drawing would shrink for it', async () => {
    open = await opener.open();
    await open.page.setViewportSize({ width: 500, height: 700 });
    const drawers = () => boxOf('[data-part="front/cards"] rect');
    await show(picture(1, { pieces: [withNotes('-100 -50 300 220', 112)] }));
    const before = await drawers();
    // It grows beyond its frame, and all of its paper would cost it little now.
    const grown = redrawn(withNotes('-26 -6 132 122', 112, -14), (svg) =>
      svg.replace('data-focus="5 5 90 100"', 'data-focus="-15 5 110 100"'),
    );
    await show(picture(2, { pieces: [grown] }));
    expect(await opacity('.notes')).toBe(0);
    expect((await drawers()).width / before.width).toBeGreaterThan(0.78);
    // Asked for, it comes.
    await open.page.locator('#sheet').press('1');
    await open.page.locator('#sheet').press('0');
    expect(await opacity('.notes')).toBe(1);
  });

  test('another sheet begins where it fits, not in its corner', async () => {
    open = await opener.open();
    await show(picture(1, { pieces: [onLargeSheet('5 5 90 110')] }));
    const fitted = await boxOf('[data-part="front/cards"] rect');
    await open.page.getByRole('tab', { name: 'Cut list' }).click();
    await open.page.getByRole('tab', { name: 'Elevation' }).click();
    expect(await boxOf('[data-part="front/cards"] rect')).toEqual(fitted);
  });
});

describe('a sheet of several things', () => {
  /** Six drawings of parts, three to a row, each 100 wide, with lettering 3 high. */
  function manyParts(): PieceView {
    const blocks = [0, 1, 2, 3, 4, 5].map((at) => ({ x: 20 + (at % 3) * 110, y: 10 + Math.floor(at / 3) * 90 }));
    const items = blocks.map(({ x, y }) => `${x} ${y} 100 70`).join(', ');
    const groups = blocks
      .map(
        ({ x, y }, at) =>
          `<g class="block"><rect x="${x}" y="${y}" width="100" height="70" fill="none" stroke="var(--fettle-ink)"/><text x="${x}" y="${y + 5}" font-size="3">part ${at}</text></g>`,
      )
      .join('');
    return redrawn(
      chest(),
      () =>
        `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 380 220" data-focus="20 10 320 160" data-items="${items}">${groups}</svg>`,
    );
  }

  async function opened(width: number): Promise<{ readonly letters: number; readonly whole: readonly boolean[] }> {
    open = await opener.open();
    await open.page.setViewportSize({ width, height: 700 });
    await show(picture(1, { pieces: [manyParts()] }));
    const sheet = await boxOf('#sheet');
    const boxes = await Promise.all((await open.page.locator('.block rect').all()).map((each) => each.boundingBox()));
    const whole = boxes.map((box) => {
      if (box === null) throw new Error('not drawn');
      return box.x >= sheet.x && box.x + box.width <= sheet.x + sheet.width && box.y >= sheet.y - 1;
    });
    const scale = await open.page.locator('#sheet > svg').evaluate((svg) => {
      const drawing = svg as unknown as { getScreenCTM(): { readonly a: number } };
      return drawing.getScreenCTM().a;
    });
    return { letters: 3 * scale, whole };
  }

  test('opens on as many columns as can be read side by side, and one goes down from there', async () => {
    const wide = await opened(1200);
    expect(wide.letters).toBeGreaterThanOrEqual(9);
    expect(wide.whole).toEqual([true, true, true, true, true, true]);
    await open.close();
    const narrow = await opened(500);
    expect(narrow.letters).toBeGreaterThanOrEqual(9);
    expect(narrow.whole).toEqual([true, false, false, true, false, false]);
  });

  test('begins at its first thing, and the whole sheet is a key away', async () => {
    await opened(500);
    const [first, sheet] = [await boxOf('.block rect'), await boxOf('#sheet')];
    expect(first.x - sheet.x).toBeLessThan(30);
    expect(first.y - sheet.y).toBeLessThan(40);
    await open.page.locator('#sheet').press('1');
    const [last] = [await open.page.locator('.block rect').last().boundingBox()];
    expect((last?.x ?? 0) + (last?.width ?? 0)).toBeLessThan(sheet.x + sheet.width);
  });
});

describe('a sheet that is of no use where it cannot be read', () => {
  const drawings: readonly (readonly [string, (evaluation: Evaluation) => Drawing])[] = [
    ['plan section', planSection],
    ['vertical section', verticalSection],
    ['inside elevation', insideElevation],
    ['side elevation', sideElevation],
    ['exploded view', explodedView],
  ];

  test.each(drawings)('opens with its %s large enough to be read, and shows all of it when asked', async (_, draw) => {
    open = await opener.open();
    await open.page.setViewportSize({ width: 600, height: 700 });
    await show(picture(1, { pieces: [redrawn(chest(), () => toSvg(draw(evaluatedSideboard())))] }));
    const letters = () =>
      open.page.evaluate(
        `Math.min(...[...document.querySelectorAll('#sheet > svg text[font-size]')].map((text) =>
          Number(text.getAttribute('font-size')) * text.ownerSVGElement.getScreenCTM().a))`,
      );
    expect(Number(await letters())).toBeGreaterThanOrEqual(8.99);
    // What is seen first is the middle of what is drawn, as far as there is paper around it.
    const middle = (await open.page.evaluate(
      `(() => {
        const svg = document.querySelector('#sheet > svg');
        const [x, y, width, height] = svg.getAttribute('data-focus').split(' ').map(Number);
        const at = new DOMPoint(x + width / 2, y + height / 2).matrixTransform(svg.getScreenCTM());
        return [at.x, at.y];
      })()`,
    )) as readonly [number, number];
    const sheet = await boxOf('#sheet');
    expect(Math.abs(middle[0] - sheet.x - sheet.width / 2)).toBeLessThan(sheet.width / 10);
    expect(Math.abs(middle[1] - sheet.y - sheet.height / 2)).toBeLessThan(sheet.height / 10);
    await open.page.locator('#sheet').press('1');
    const paper = await boxOf('.surface.paper');
    expect(paper.width).toBeLessThanOrEqual(sheet.width + 1);
    expect(paper.height).toBeLessThanOrEqual(sheet.height + 1);
  });
});

describe('the sheets', () => {
  /** The chest with so many tables that no narrow panel has room for their tabs. */
  function manySheets(): PieceView {
    const piece = chest();
    const [drawing, table] = piece.sheets;
    if (drawing === undefined || table?.kind !== 'table') throw new Error('a drawing and a table');
    const names = ['Cut list', 'Set-ups', 'Drawers', 'Doors', 'Hardware', 'Shopping', 'Cutting', 'Cut order', 'Vents'];
    const tables = names.map((title, at) => ({ ...table, id: `table-${at}`, title, group: 'Tables' }));
    return { ...piece, sheets: [{ ...drawing, group: 'Drawings' }, ...tables] };
  }

  test('have one row of tabs, with the chosen one in view, and a list of all where they have no room', async () => {
    open = await opener.open();
    await open.page.setViewportSize({ width: 560, height: 700 });
    await show(picture(1, { pieces: [manySheets()] }));
    const row = await boxOf('[role=tablist]');
    expect(row.height).toBeLessThan(40);
    await open.page.locator('#tab-elevation').press('End');
    const last = await boxOf('#tab-table-8');
    expect(last.x).toBeGreaterThan(row.x);
    expect(last.x + last.width).toBeLessThanOrEqual(row.x + row.width + 0.5);
    const list = open.page.getByRole('combobox', { name: 'All sheets' });
    expect(await list.inputValue()).toBe('table-8');
    expect(
      await list.locator('optgroup').evaluateAll((groups) => groups.map((group) => group.getAttribute('label'))),
    ).toEqual(['Drawings', 'Tables']);
    await list.selectOption('table-3');
    expect(await open.page.getByRole('tab', { selected: true }).textContent()).toBe('Doors');
    const chosen = await boxOf('#tab-table-3');
    expect(chosen.x).toBeGreaterThan(row.x);
    await open.page.setViewportSize({ width: 1200, height: 700 });
    await list.waitFor({ state: 'hidden' });
  });

  test('of one choice are chosen where the sheet is chosen that they belong to, whatever was chosen before', async () => {
    open = await opener.open();
    const piece = chest();
    const [drawing] = piece.sheets;
    if (drawing?.kind !== 'drawing') throw new Error('a drawing');
    const choices = (of: string, tab: string) =>
      ['cards', 'dice'].map((option) => ({
        ...drawing,
        id: `${of}:${option}`,
        title: `${tab}, ${option}`,
        choice: { of, tab, label: 'Opening', option },
      }));
    await show(
      picture(1, { pieces: [{ ...piece, sheets: [...choices('section', 'Section'), ...choices('plan', 'Plan')] }] }),
    );
    await open.page.locator('#sheet-choice').selectOption('section:dice');
    await open.page.getByRole('tab', { name: 'Plan' }).click();
    expect(await open.page.locator('#sheet-choice').inputValue()).toBe('plan:cards');
  });
});
