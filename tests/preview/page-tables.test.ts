import type { Picture, PieceView, SheetView } from '@fettle/protocol';
import { describe, expect, test } from 'vitest';
import { type Box, boxOn } from './boxes.ts';
import { type OpenPage, openerOfFile } from './open-page.ts';
import { chest, message, picture } from './pictures.ts';

/** Tables in panels of different widths. The rows are as the sideboard of the examples has them. */

let open: OpenPage;
const opener = openerOfFile(() => open);

function show(shown: Picture): Promise<void> {
  return open.give(message(shown));
}

const boxOf = (selector: string): Promise<Box> => boxOn(open.page, selector);

type Table = Extract<SheetView, { kind: 'table' }>;

const edges = 'all round: ash 1/8", mitred, before veneer';
const partition =
  'notch 1/4" deep; 3 × dado 1/4" deep; 12 × screw hole 1/2" deep; 54 × pin hole 3/8" deep; held by dado';
const runners =
  'left runner between "cards" and "dice"; right runner between "cards" and "dice"; left runner between "dice" and "maps"';

const cutList: Table = {
  kind: 'table',
  id: 'cut-list',
  title: 'Cut list',
  columns: [
    ...['Mark', 'Part', 'Quantity', 'Thickness', 'Width', 'Length', 'Material', 'Grain', 'Cut first to', 'Edges'],
    'Notes',
  ],
  rows: [
    ['D1', 'top', '1', '7/8"', '17"', '60"', 'ash', 'length', 'rough 5/4 × 17-1/4" × 61"', '', ''],
    ['D2', 'partition beside "left"', '1', '3/4"', '15-1/2"', '29-1/8"', 'ash panel', 'length', '', '', partition],
    [
      ...['D3', 'left door "left"; left door "right"', '2', '1/2"', '9-7/32" + 1/64"', '28-7/16"', 'ash panel 1/2'],
      ...['length', 'core 8-31/32" + 1/64" × 28-3/16"', edges, '2 × gain 1/32" deep; screw hole'],
    ],
    [
      'J3, J4, J7, J8, J11',
      runners,
      '6',
      '3/4"',
      '2-1/2"',
      '11"',
      'poplar',
      'length',
      '',
      '',
      'glued to the front rail',
    ],
    ['D4', 'plain shelf', '1', '3/4"', '14-7/8"', '18-5/8"', 'ash panel', 'length', '', '', ''],
  ].map((cells) => ({ parts: partsOf(cells[0] ?? ''), cells })),
};

const shopping: Table = {
  kind: 'table',
  id: 'shopping',
  title: 'Shopping',
  columns: [
    ...['Buy', 'Quantity', 'Thickness', 'Width', 'Length', 'Board feet', 'Tallied', 'Price', 'Per', 'Cost', 'Notes'],
  ],
  rows: [
    ['ash panel 1/2', '1', '1/2"', '48"', '96"', '', '', '118.00', 'each', '118.00', '27 % waste; proved least'],
    [
      ...['poplar', '1', '1-1/4"', '13-7/16"', '67-11/16"', '12.50', '12.50', '4.00', 'board foot', '128.00'],
      '29 % waste; at most 0.7 board feet above the least possible',
    ],
    ['edging of ash', '500-3/16"', '1/8"', '1/2"', '', '', '', '', '', '', ''],
  ].map((cells) => ({ parts: [], cells })),
};

function partsOf(mark: string): readonly string[] {
  const part = chest().parts.find((each) => each.mark === mark);
  return part === undefined ? [] : [part.id];
}

function withTables(): PieceView {
  const piece = chest();
  const [drawing] = piece.sheets;
  if (drawing === undefined) throw new Error('a drawing');
  return { ...piece, sheets: [drawing, cutList, shopping] };
}

async function opened(table: string, width: number): Promise<void> {
  open = await opener.open();
  await open.page.setViewportSize({ width, height: 700 });
  await show(picture(1, { pieces: [withTables()] }));
  await open.page.locator(`#tab-${table}`).click();
}

const room = (): Promise<{ readonly needed: number; readonly there: number }> =>
  open.page.evaluate('({ needed: sheet.scrollWidth, there: sheet.clientWidth })');

describe('a table in a narrow panel', () => {
  test.each(['cut-list', 'shopping'])('the %s needs no scrolling sideways', async (table) => {
    await opened(table, 660);
    const { needed, there } = await room();
    expect(needed).toBeLessThanOrEqual(there);
  });

  test('has long words below their row, under their own heading, and no row for those without', async () => {
    await opened('cut-list', 660);
    const heads = await open.page.locator('#sheet thead th').allTextContents();
    expect(heads).toEqual(['Mark', 'Part', 'Quantity', 'Thickness', 'Width', 'Length', 'Material', 'Grain']);
    const below = open.page.locator('#sheet tr[data-part="front/dice"] + tr.told');
    expect(await below.locator('td').getAttribute('colspan')).toBe(String(heads.length));
    expect(await below.locator('b').allTextContents()).toEqual(['Notes']);
    expect((await below.textContent())?.trim()).toBe(`Notes ${partition}`);
    expect(await open.page.locator('#sheet tr.told').count()).toBe(4);
    expect(await open.page.locator('#sheet tr[data-part="front/blankets"] + tr').count()).toBe(0);
    // It is of the part as its row is.
    await below.click();
    expect(await open.sent()).toContainEqual(expect.objectContaining({ kind: 'choose', part: 'front/dice' }));
  });

  test('has its columns again where there is room, and the row one looks at stays', async () => {
    const many = [1, 2, 3, 4, 5, 6].flatMap((turn) =>
      cutList.rows.map((row) => ({ ...row, parts: turn === 4 ? row.parts : [] })),
    );
    open = await opener.open();
    await open.page.setViewportSize({ width: 660, height: 700 });
    const piece = chest();
    await show(picture(1, { pieces: [{ ...piece, sheets: [{ ...cutList, rows: many }] }] }));
    const row = '#sheet tr[data-part="front/cards"]';
    const belowHeads = async () => (await boxOf(row)).y - (await boxOf('#sheet thead th')).y;
    await open.page.evaluate(`new Promise((done) => {
      sheet.addEventListener('scroll', () => requestAnimationFrame(done), { once: true });
      sheet.scrollBy(0, document.querySelector('${row}').getBoundingClientRect().top - 150);
    })`);
    const before = await belowHeads();
    expect(before).toBeGreaterThan(30);
    await open.page.setViewportSize({ width: 1300, height: 700 });
    await open.page.locator('#sheet tr.told').first().waitFor({ state: 'detached' });
    expect(await open.page.locator('#sheet thead th').allTextContents()).toEqual(cutList.columns);
    expect(Math.abs((await belowHeads()) - before)).toBeLessThan(60);
    await open.page.setViewportSize({ width: 660, height: 700 });
    await open.page.locator('#sheet tr.told').first().waitFor();
    expect(Math.abs((await belowHeads()) - before)).toBeLessThan(60);
  });
});
