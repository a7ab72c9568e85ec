import type { Picture, PieceView } from '@fettle/protocol';
import { describe, expect, test } from 'vitest';
import { type OpenPage, openerOfFile } from './open-page.ts';
import { chest, message, picture, tooHigh, uri } from './pictures.ts';

/** What hides what, what stands where, and what is told by more than colour. */

let open: OpenPage;
const opener = openerOfFile(() => open);

function show(shown: Picture): Promise<void> {
  return open.give(message(shown));
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

async function boxOf(selector: string): Promise<Box> {
  const box = await open.page.locator(selector).first().boundingBox();
  if (box === null) throw new Error(`${selector} is not on the screen`);
  return box;
}

function overlap(one: Box, other: Box): boolean {
  return (
    one.x < other.x + other.width &&
    other.x < one.x + one.width &&
    one.y < other.y + other.height &&
    other.y < one.y + one.height
  );
}

const part = (name: string) => open.page.locator(`#sheet svg [data-part="front/${name}"]`);

/** A drawing of which one looks at the drawers only: its sheet is three times as large. */
function onLargeSheet(focus: string): PieceView {
  const piece = chest();
  return {
    ...piece,
    sheets: piece.sheets.map((sheet) =>
      sheet.kind === 'drawing'
        ? {
            ...sheet,
            svg: sheet.svg.replace('viewBox="0 0 100 120"', `viewBox="-100 -100 300 320" data-focus="${focus}"`),
          }
        : sheet,
    ),
  };
}

describe('errors', () => {
  test('are said over the sheet: not to build from it, in words and with a sign', async () => {
    open = await opener.open();
    await show(picture(1));
    expect(await open.page.locator('.stop').count()).toBe(0);
    const room = await boxOf('[data-part="front/maps"]');
    await show(picture(2, { findings: [tooHigh], verdict: '1 finding' }));
    expect(await open.page.locator('.stop').textContent()).toBe(
      '\u26A0 Do not build from this sheet1 error stands against the piece',
    );
    expect(await boxOf('[data-part="front/maps"]')).toEqual(room);
  });

  test('never cover what is written with their signs', async () => {
    open = await opener.open();
    const piece = chest();
    // A name that ends in the corner where a sign would stand first.
    const sheets = piece.sheets.map((sheet) =>
      sheet.kind === 'drawing'
        ? { ...sheet, svg: sheet.svg.replace('<text x="50" y="88"', '<text x="80" y="78"') }
        : sheet,
    );
    await show(picture(1, { pieces: [{ ...piece, sheets }], findings: [tooHigh, { ...tooHigh, code: 'another' }] }));
    expect(await open.page.locator('.overlay .sign').count()).toBe(2);
    const signs = await open.page.locator('.overlay .sign > polygon').all();
    // Its outline is eight pixels from its middle; what the browser gives as its box counts the pen too broad.
    const boxes = await Promise.all(
      signs.map(async (sign): Promise<Box> => {
        const { x, y, width, height } = (await sign.boundingBox()) as Box;
        return { x: x + width / 2 - 8, y: y + height / 2 - 8, width: 16, height: 16 };
      }),
    );
    for (const text of await open.page.locator('#sheet svg [data-part] text').all()) {
      const words = (await text.boundingBox()) as Box;
      for (const sign of boxes) expect(overlap(sign, words)).toBe(false);
    }
    expect(overlap(boxes[0] as Box, boxes[1] as Box)).toBe(false);
  });

  test('are named in the table by severity and number', async () => {
    open = await opener.open({ sheet: 'cut-list' });
    await show(picture(1, { findings: [tooHigh] }));
    expect(await open.page.locator('tr[data-part="front/blankets"] th').textContent()).toBe('D4 (see Error 1)');
  });
});

describe('the words beside a part', () => {
  test('never lie over it while there is room beside it, and hide as little lettering as they can', async () => {
    open = await opener.open();
    await show(picture(1));
    await part('dice').hover();
    await open.page.locator('#tip').waitFor();
    const tip = await boxOf('#tip');
    expect(overlap(tip, await boxOf('[data-part="front/dice"] rect'))).toBe(false);
    // Above and below stand other names; to the left and right there is none.
    for (const name of ['cards', 'dice', 'maps', 'blankets']) {
      expect(overlap(tip, await boxOf(`[data-part="front/${name}"] text`)), name).toBe(false);
    }
  });
});

describe('a part that is drawn in several places', () => {
  test('has a frame around each, and none around what lies between', async () => {
    open = await opener.open();
    const piece = chest();
    const again =
      '<g data-part="front/cards" role="button" tabindex="0"><rect x="10" y="100" width="80" height="8"/></g>';
    const sheets = piece.sheets.map((sheet) =>
      sheet.kind === 'drawing' ? { ...sheet, svg: sheet.svg.replace('</svg>', `${again}</svg>`) } : sheet,
    );
    await show(picture(1, { pieces: [{ ...piece, sheets }] }));
    await open.give({ kind: 'caret', uri, version: 1, piece: 0, parts: ['front/cards'] });
    const frames = await open.page.locator('.overlay .frame.lit').all();
    expect(frames.length).toBe(2);
    const between = await boxOf('[data-part="front/maps"] text');
    for (const frame of frames) {
      const box = await frame.boundingBox();
      if (box === null) throw new Error('a frame is not on the screen');
      expect(overlap(box, between)).toBe(false);
    }
  });
});

describe('the search', () => {
  test('points at the one it stands at, with a thicker frame and an arrow', async () => {
    open = await opener.open();
    await show(picture(1));
    await open.page.locator('#search').fill('ash');
    expect(await open.page.locator('.overlay .pointer').count()).toBe(0);
    await open.page.locator('#search').press('Enter');
    expect(await open.page.locator('.overlay .frame.found').count()).toBe(3);
    expect(await open.page.locator('.overlay .pointer').count()).toBe(1);
    const width = (kind: string) =>
      open.page
        .locator(`.overlay .frame.${kind}`)
        .first()
        .evaluate((frame) => {
          const page = globalThis as unknown as { getComputedStyle(of: unknown): { readonly strokeWidth: string } };
          return Number.parseFloat(page.getComputedStyle(frame).strokeWidth);
        });
    expect(await width('current')).toBeGreaterThan(2 * (await width('found:not(.current)')));
  });
});

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

describe('a line on its way', () => {
  test('has its words beside it', async () => {
    open = await opener.open();
    await show(picture(1));
    await open.page.locator('[data-division="cards|dice"]').focus();
    await open.page.keyboard.press('ArrowDown');
    const steps = { kind: 'division', uri, division: 'cards|dice', steps: 1, refused: false, done: false };
    await open.give({ ...steps, sentence: '"cards" 20-1/2"' });
    const [words, ghost] = [await boxOf('.readout.near'), await boxOf('.division .ghost')];
    const middle = words.y + words.height / 2;
    expect(Math.abs(middle - ghost.y)).toBeLessThan(20);
    expect(words.x - (ghost.x + ghost.width)).toBeLessThan(30);
    expect(overlap(words, await boxOf('[data-part="front/dice"] text'))).toBe(false);
  });
});

describe('while the text is ahead of the picture', () => {
  test('the verdict says that it is being checked, but not for a moment only', async () => {
    open = await opener.open();
    await show(picture(1));
    const verdict = open.page.locator('#verdict');
    await open.give({ kind: 'edited', uri, version: 2 });
    expect(await verdict.textContent()).toBe('fits');
    await verdict.filter({ hasText: 'Checking' }).waitFor();
    await show(picture(2));
    expect(await verdict.textContent()).toBe('fits');
    await open.give({ kind: 'edited', uri, version: 3 });
    await show(picture(3));
    await open.page.waitForTimeout(600);
    expect(await verdict.textContent()).toBe('fits');
  });
});

describe('what stands below the sheet', () => {
  test('takes little room until it is given more, and that is remembered', async () => {
    open = await opener.open();
    await show(picture(1));
    const small = (await boxOf('.below')).height;
    expect(small).toBeLessThan(115);
    await open.page.getByRole('button', { name: 'More room' }).click();
    expect((await boxOf('.below')).height).toBeGreaterThan(small * 2);
    const memory = await open.kept();
    await open.close();
    open = await opener.open(memory);
    await show(picture(1));
    expect((await boxOf('.below')).height).toBeGreaterThan(small * 2);
  });

  test('a piece that is asked for is shown', async () => {
    open = await opener.open();
    const other = { ...chest([40, 40]), key: 'Box', name: 'Box' };
    await show(picture(1, { pieces: [chest(), other] }));
    await open.give({ kind: 'piece', piece: 'Box' });
    expect(await open.page.locator('#piece').inputValue()).toBe('Box');
  });
});
