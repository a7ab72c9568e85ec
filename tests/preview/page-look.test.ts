import type { Picture, PieceView } from '@fettle/protocol';
import { describe, expect, test } from 'vitest';
import { type Box, boxOn, overlap } from './boxes.ts';
import { type OpenPage, openerOfFile } from './open-page.ts';
import { chest, message, picture, redrawn, tooHigh, uri } from './pictures.ts';

/** What hides what, what stands where, and what is told by more than colour. */

let open: OpenPage;
const opener = openerOfFile(() => open);

function show(shown: Picture): Promise<void> {
  return open.give(message(shown));
}

const boxOf = (selector: string): Promise<Box> => boxOn(open.page, selector);

const part = (name: string) => open.page.locator(`#sheet svg [data-part="front/${name}"]`);

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

describe('the words beside a part, in a drawing full of figures', () => {
  /** Dimensions of every drawer to its right and of the chest above it; the sheet has room to the left. */
  function dimensioned(): PieceView {
    const piece = chest();
    const lane = (x: number) =>
      [10, 31, 52, 73]
        .map(
          (top) =>
            `<g class="measure y"><line x1="${x}" y1="${top}" x2="${x}" y2="${top + 20}" stroke="var(--fettle-ink)"/><text x="${x + 1}" y="${top + 12}" font-size="5" fill="var(--fettle-ink)">20</text></g>`,
        )
        .join('');
    const wide = `<g class="measure x"><line x1="10" y1="4" x2="90" y2="4" stroke="var(--fettle-ink)"/><text x="50" y="3" font-size="5" fill="var(--fettle-ink)">80</text></g>`;
    return redrawn(piece, (svg) =>
      svg
        .replace('viewBox="0 0 100 120"', 'viewBox="-90 -10 220 130"')
        .replace('</svg>', `${lane(96)}${lane(106)}${wide}</svg>`),
    );
  }

  test('cover neither the part nor a dimension, and can be walked to across other parts', async () => {
    open = await opener.open();
    const derivation =
      'Length 80": written\nWidth 20": 90" less 70"\n  90": written in line 4\n    70": written in line 5';
    const { parts, ...rest } = dimensioned();
    await open.holdTime();
    await show(picture(1, { pieces: [{ ...rest, parts: parts.map((each) => ({ ...each, derivation })) }] }));
    await part('dice').hover({ position: { x: 10, y: 10 } });
    await open.pass(350);
    await open.page.locator('#tip').waitFor();
    const tip = await boxOf('#tip');
    expect(overlap(tip, await boxOf('[data-part="front/dice"] rect'))).toBe(false);
    for (const line of await open.page.locator('.measure > *').all()) {
      expect(overlap(tip, (await line.boundingBox()) as Box)).toBe(false);
    }
    // What its sizes are made of, and no more: the rest stands below once it is chosen.
    expect(await open.page.locator('#tip .derivation').textContent()).toBe(
      'Length 80": written\nWidth 20": 90" less 70"',
    );
    // Slowly, and not by the shortest way: what lies between takes nothing away.
    const from = await boxOf('[data-part="front/dice"] rect');
    const [x, y] = [from.x + 10, from.y + 10];
    const [toX, toY] = [tip.x + tip.width / 2, tip.y + tip.height / 2];
    for (let step = 1; step <= 8; step++) {
      await open.page.mouse.move(x + ((toX - x) * step) / 8, y + ((toY - y) * step) / 8);
      await open.pass(100);
    }
    await open.pass(600);
    expect(await open.page.locator('#tip strong').textContent()).toContain('"dice"');
  });
});

describe('the words beside a part, where the drawing leaves no room', () => {
  test('lie below it instead of on its figures', async () => {
    open = await opener.open();
    // A figure in every corner of the paper.
    const figures = [-70, -35, 0, 35, 70, 105, 140].flatMap((x) =>
      [-5, 10, 25, 40, 55, 70, 85, 100, 115].map(
        (y) => `<text class="spread" x="${x}" y="${y}" font-size="4" fill="var(--fettle-ink)">12-3/4</text>`,
      ),
    );
    const piece = redrawn(chest(), (svg) =>
      svg.replace('viewBox="0 0 100 120"', 'viewBox="-75 -10 240 130"').replace('</svg>', `${figures.join('')}</svg>`),
    );
    await show(picture(1, { pieces: [piece] }));
    await part('dice').hover();
    await open.page.locator('#tip').waitFor();
    const tip = await boxOf('#tip');
    for (const figure of await open.page.locator('.spread').all()) {
      expect(overlap(tip, (await figure.boundingBox()) as Box)).toBe(false);
    }
    expect(tip.y + tip.height).toBeLessThanOrEqual(700);
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

describe('a line on its way', () => {
  test('takes away the figures it makes untrue, until there are new ones', async () => {
    open = await opener.open();
    const measure = (name: string, along: string, from: number, to: number) => {
      const ends = along === 'y' ? `x1="95" y1="${from}" x2="95" y2="${to}"` : `x1="${from}" y1="5" x2="${to}" y2="5"`;
      return `<g class="measure ${along}" data-key="${name}"><line ${ends} stroke="var(--fettle-ink)"/><text x="95" y="${to}" font-size="4" fill="var(--fettle-ink)">${name}</text></g>`;
    };
    const all = [
      measure('cards', 'y', 10, 30),
      measure('dice', 'y', 31, 51),
      measure('maps', 'y', 52, 72),
      measure('height', 'y', 10, 103),
      measure('width', 'x', 30, 90),
    ].join('');
    const piece = redrawn(chest(), (svg) =>
      svg.replace('</svg>', `${all}</svg>`).replace('<svg ', '<svg data-paper-per-real="0.05" '),
    );
    await show(picture(1, { pieces: [piece] }));
    const hidden = () =>
      open.page.evaluate(
        `[...document.querySelectorAll('.measure')].filter((each) => getComputedStyle(each.querySelector('text')).visibility === 'hidden').map((each) => each.dataset.key)`,
      );
    expect(await hidden()).toEqual([]);
    await open.page.locator('[data-division="cards|dice"]').focus();
    await open.page.keyboard.press('ArrowDown');
    expect(await hidden()).toEqual(['cards', 'dice']);
    await open.page.keyboard.press('Enter');
    await open.give({
      kind: 'division',
      uri,
      division: 'cards|dice',
      steps: 1,
      sentence: 'moved',
      refused: false,
      done: true,
    });
    expect(await hidden()).toEqual(['cards', 'dice']);
    await show(picture(2, { pieces: [piece] }));
    expect(await hidden()).toEqual([]);
  });

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
    await open.holdTime();
    await show(picture(1));
    const verdict = open.page.locator('#verdict');
    await open.give({ kind: 'edited', uri, version: 2 });
    await open.pass(399);
    expect(await verdict.textContent()).toBe('fits');
    await open.pass(1);
    expect(await verdict.textContent()).toBe('Checking\u2026');
    expect(await open.page.locator('.page[data-checking]').count()).toBe(1);
    await show(picture(2));
    expect(await verdict.textContent()).toBe('fits');
    expect(await open.page.locator('.page[data-checking]').count()).toBe(0);
    await open.give({ kind: 'edited', uri, version: 3 });
    await open.pass(399);
    await show(picture(3));
    await open.pass(600);
    expect(await verdict.textContent()).toBe('fits');
  });
});

describe('once a line has been let go', () => {
  test('what the figures say is marked as soon as the text has changed, until the new picture is there', async () => {
    open = await opener.open();
    const measure = '<g class="measure x"><line x1="10" y1="4" x2="90" y2="4"/><text x="50" y="3">80</text></g>';
    const piece = redrawn(chest(), (svg) => svg.replace('</svg>', `${measure}</svg>`));
    await show(picture(1, { pieces: [piece] }));
    await open.page.locator('[data-part="front/dice"]').first().click();
    const paleness = () =>
      open.page.evaluate(
        `['.measure', '.part-note .derivation'].map((words) => getComputedStyle(document.querySelector(words)).opacity)`,
      );
    await open.page.locator('[data-division="cards|dice"]').focus();
    await open.page.keyboard.press('ArrowDown');
    await open.page.keyboard.press('Enter');
    expect(await paleness()).toEqual(['1', '1']);
    // As soon as it has been told: no time passes here in which one could read what is no longer true.
    await open.give({ kind: 'edited', uri, version: 2 });
    expect(await open.page.locator('#verdict').textContent()).toBe('Checking\u2026');
    expect(await paleness()).toEqual(['0.45', '0.45']);
    await show(picture(2, { pieces: [piece] }));
    expect(await open.page.locator('#verdict').textContent()).toBe('fits');
    expect(await paleness()).toEqual(['1', '1']);
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

  test('gives what is known of a part the room that the findings leave', async () => {
    open = await opener.open();
    await open.page.setViewportSize({ width: 1000, height: 700 });
    const [piece] = [chest()];
    const derivation = Array.from({ length: 9 }, (_, at) => `Size ${at}: 3/4" less a gap of 3/32"`).join('\n');
    const parts = piece.parts.map((each) => ({ ...each, derivation }));
    await show(picture(1, { pieces: [{ ...piece, parts }] }));
    await open.page.locator('[data-part="front/dice"]').first().click();
    const [note, below] = [await boxOf('.part-note'), await boxOf('.below')];
    expect(note.width).toBeGreaterThan(0.75 * below.width);
    const lines = await open.page.locator('.part-note .derivation').evaluate((words) => {
      const element = words as unknown as { readonly clientHeight: number };
      return element.clientHeight;
    });
    // Nine lines in two columns are five high.
    expect(lines).toBeLessThan(6 * 20);
  });

  test('a piece that is asked for is shown', async () => {
    open = await opener.open();
    const other = { ...chest([40, 40]), key: 'Box', name: 'Box' };
    await show(picture(1, { pieces: [chest(), other] }));
    await open.give({ kind: 'piece', piece: 'Box' });
    expect(await open.page.locator('#piece').inputValue()).toBe('Box');
  });
});
