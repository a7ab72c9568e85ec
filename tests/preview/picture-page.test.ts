import type { FromPage, Picture } from '@fettle/protocol';
import { describe, expect, test } from 'vitest';
import { type OpenPage, openerOfFile } from './open-page.ts';
import { chest, message, picture, tooHigh, uri } from './pictures.ts';

/** The page of the preview in a real browser, under its real policy. */

let open: OpenPage;
const opener = openerOfFile(() => open);

function show(shown: Picture, anew = false): Promise<void> {
  return open.give(message(shown, anew));
}

const part = (name: string) => open.page.locator(`#sheet svg [data-part="front/${name}"]`);
const tab = (name: string) => open.page.getByRole('tab', { name });

/** What the page sent, without its greeting and what it looks at. */
async function choices(): Promise<readonly FromPage[]> {
  return (await open.sent()).filter(({ kind }) => kind !== 'ready' && kind !== 'look');
}

describe('what is shown', () => {
  test('greets, waits, and then shows the first picture', async () => {
    open = await opener.open();
    expect(await open.sent()).toEqual([{ kind: 'ready' }]);
    expect(await open.page.locator('#sheet').textContent()).toContain('Waiting');
    await show(picture(1));
    expect(await part('cards').count()).toBe(1);
    expect(await open.page.locator('#verdict').textContent()).toBe('fits');
  });

  test('a picture older than the one shown is dropped, unless versions count anew', async () => {
    open = await opener.open();
    await show(picture(7));
    await show(picture(6, { verdict: 'old' }));
    expect(await open.page.locator('#verdict').textContent()).toBe('fits');
    await show(picture(1, { verdict: 'opened again' }), true);
    expect(await open.page.locator('#verdict').textContent()).toBe('opened again');
  });

  test('messages that are none of ours change nothing', async () => {
    open = await opener.open();
    await show(picture(1));
    const before = await open.page.locator('#fettle-page').innerHTML();
    for (const strange of [null, 5, 'picture', {}, { kind: 'picture' }, { kind: 'picture', frame: { uri } }]) {
      await open.give(strange);
    }
    await open.give({ kind: 'caret', uri, version: 1, piece: 0, parts: [3] });
    expect(await open.page.locator('#fettle-page').innerHTML()).toBe(before);
  });

  test('a text that cannot be read leaves the last picture, marked in words', async () => {
    open = await opener.open();
    await show(picture(1));
    await show(picture(2, { readable: false, verdict: '1 finding: no closing brace' }));
    expect(await part('cards').count()).toBe(1);
    expect(await open.page.locator('.stale').textContent()).toContain('last picture that could be drawn');
    await show(picture(3));
    expect(await open.page.locator('.stale').count()).toBe(0);
  });

  test('findings are told by number, shape and words, in the drawing and in the list', async () => {
    open = await opener.open();
    const warning = {
      ...tooHigh,
      severity: 'warning',
      sentence: 'the slides are short',
      parts: ['front/cards'],
    } as const;
    await show(picture(1, { findings: [tooHigh, warning], verdict: '2 findings: 10" too much' }));
    const signs = open.page.locator('#sheet svg .overlay .sign');
    expect(await signs.allTextContents()).toEqual(expect.arrayContaining(['1', '2']));
    expect(await signs.locator('polygon').count()).toBe(2);
    const points = await open.page.evaluate(
      `[...document.querySelectorAll('.overlay .sign polygon')].map((each) => each.getAttribute('points'))`,
    );
    expect(new Set(points as string[]).size).toBe(2);
    const items = await open.page.locator('.findings > ol > li').allTextContents();
    expect(items[0]).toContain(`Error 1: ${tooHigh.sentence}`);
    expect(items[1]).toContain('Warning 2: the slides are short');
    expect(await part('blankets').getAttribute('aria-label')).toContain(tooHigh.sentence);
    const note = { ...tooHigh, severity: 'note', sentence: 'not checked yet' } as const;
    await show(picture(2, { findings: [note, warning, tooHigh], verdict: '2 findings: 10" too much' }));
    expect(await open.page.locator('.findings > ol > li').allTextContents()).toEqual(items);
    expect(await open.page.getByText('Note 3:').isVisible()).toBe(false);
    await open.page.getByText('1 note').click();
    await show(picture(3, { findings: [note, warning, tooHigh] }));
    expect(await open.page.getByText('Note 3:').isVisible()).toBe(true);
    await open.page
      .getByRole('button', { name: /Error 1/ })
      .last()
      .click();
    expect(await choices()).toEqual([{ kind: 'choose-finding', uri, version: 3, finding: 2 }]);
    // The sign lies on the front it speaks of.
    const sign = await signs.first().boundingBox();
    const front = await part('blankets').boundingBox();
    if (sign === null || front === null) throw new Error('not on the screen');
    const second = await signs.nth(1).boundingBox();
    const onFront = [sign, second].filter(
      (box) => box !== null && box.y >= front.y - 2 && box.y + box.height <= front.y + front.height + 2,
    );
    expect(onFront).toHaveLength(1);
  });

  test('a table has a caption, headings of columns and rows, and a button in every row', async () => {
    open = await opener.open();
    await show(picture(1));
    await tab('Cut list').click();
    expect(await open.page.locator('caption').textContent()).toBe('Cut list');
    expect(await open.page.locator('thead th[scope=col]').allTextContents()).toEqual(['Mark', 'Part', 'Length']);
    expect(await open.page.locator('tbody th[scope=row] button').count()).toBe(4);
    await open.page.getByRole('button', { name: /^D3: drawer front "maps"/ }).click();
    expect(await choices()).toEqual([{ kind: 'choose', uri, version: 1, piece: 0, part: 'front/maps' }]);
  });

  test('figures stand under one another at their right ends, empty columns take no room, headings span the table', async () => {
    open = await opener.open();
    const whole = chest();
    const table = {
      kind: 'table',
      id: 'shopping',
      title: 'Shopping',
      columns: ['Buy', 'Tallied', 'Length', 'Notes'],
      rows: [
        { parts: [], cells: ['ash', '', '9-7/32" + 1/64"', 'for the top'] },
        { parts: [], cells: ['maple', '', '84"', '2 of them'] },
        { kind: 'total', parts: [], cells: ['Total', '', '', ''] },
        { kind: 'heading', parts: [], cells: ['Left over', '', '', ''] },
        { parts: [], cells: ['ash', '', '12"', ''] },
      ],
    } as const;
    await show(picture(1, { pieces: [{ ...whole, sheets: [table] }] }));
    expect(await open.page.locator('thead th').allTextContents()).toEqual(['Buy', 'Length', 'Notes']);
    const heading = open.page.locator('tr.heading th');
    expect([await heading.textContent(), await heading.getAttribute('colspan')]).toEqual(['Left over', '3']);
    expect(await open.page.locator('tr.total th').textContent()).toBe('Total');
    const ends: readonly number[] = await open.page.evaluate(`
      [...document.querySelectorAll('td.number')].filter(({ textContent }) => textContent !== '').map((cell) => {
        const range = document.createRange();
        range.selectNodeContents(cell);
        return Math.round(range.getBoundingClientRect().right);
      })`);
    expect(ends).toHaveLength(3);
    expect(new Set(ends).size).toBe(1);
    // What begins with a figure and is none stays where words begin.
    expect(await open.page.locator('td', { hasText: '2 of them' }).getAttribute('class')).toBeNull();
  });

  test('several pieces are chosen by name, also two of the same name', async () => {
    open = await opener.open();
    const second = { ...chest([40, 40]), key: 'Chest (2)' };
    await show(picture(1, { pieces: [chest(), second] }));
    expect(await open.page.locator('#piece option').allTextContents()).toEqual(['Chest', 'Chest (2)']);
    await open.page.locator('#piece').selectOption('Chest (2)');
    expect(await part('maps').count()).toBe(0);
    await part('dice').click();
    expect(await choices()).toEqual([{ kind: 'choose', uri, version: 1, piece: 1, part: 'front/dice' }]);
    await show(picture(2, { pieces: [chest(), second] }));
    expect(await open.page.locator('#piece').inputValue()).toBe('Chest (2)');
  });
});

describe('what a new picture leaves alone', () => {
  test('the elements of parts that stay, with focus on them', async () => {
    open = await opener.open();
    await show(picture(1));
    await part('maps').focus();
    await open.page.evaluate(`document.querySelector('[data-part="front/maps"]').marked = true`);
    await show(picture(2, { pieces: [chest([10, 30, 20, 30])] }));
    expect(await open.page.evaluate('document.activeElement.dataset.part')).toBe('front/maps');
    expect(await open.page.evaluate('document.activeElement.marked')).toBe(true);
    expect(await part('cards').locator('rect').getAttribute('height')).toBe('10');
  });

  test('focus, when the focused part is gone, goes to the sheet that held it', async () => {
    open = await opener.open();
    await show(picture(1));
    await part('blankets').focus();
    await show(picture(2, { pieces: [chest([20, 20, 20])] }));
    expect(await open.page.evaluate('document.activeElement.id')).toBe('sheet');
  });

  test('zoom and scroll, also across a stay in hiding', async () => {
    open = await opener.open();
    await show(picture(1));
    for (let times = 0; times < 5; times++) await open.page.getByRole('button', { name: 'Zoom in' }).click();
    await open.page.evaluate('sheet.scrollTo(120, 260)');
    await show(picture(2, { pieces: [chest([10, 30, 20, 30])] }));
    const place = () => open.page.evaluate('[sheet.scrollLeft, sheet.scrollTop]');
    expect(await place()).toEqual([120, 260]);
    await expect.poll(async () => (await open.kept()).scroll).toEqual({ left: 120, top: 260 });
    const memory = await open.kept();
    expect(memory.zoom).toBeCloseTo(1.25 ** 5, 5);
    const width = await open.page.locator('#sheet > svg').getAttribute('width');
    await open.close();
    open = await opener.open(memory);
    await show(picture(2));
    expect(await place()).toEqual([120, 260]);
    expect(await open.page.locator('#sheet > svg').getAttribute('width')).toBe(width);
  });

  test('the room the drawing has, whatever comes and goes around it', async () => {
    open = await opener.open();
    await show(picture(1));
    const room = await part('maps').boundingBox();
    await part('cards').click();
    expect(await part('maps').boundingBox()).toEqual(room);
    await show(picture(2, { readable: false, findings: [tooHigh], verdict: '1 finding' }));
    expect(await open.page.locator('.stale').isVisible()).toBe(true);
    expect(await part('maps').boundingBox()).toEqual(room);
  });

  test('the sheet that was open', async () => {
    open = await opener.open();
    await show(picture(1));
    await tab('Cut list').click();
    await show(picture(2));
    expect(await tab('Cut list').getAttribute('aria-selected')).toBe('true');
    const memory = await open.kept();
    await open.close();
    open = await opener.open(memory);
    await show(picture(2));
    expect(await open.page.locator('table').count()).toBe(1);
  });
});

describe('the caret', () => {
  test('lights the parts whose words hold it, and no others', async () => {
    open = await opener.open();
    await show(picture(1));
    await open.give({ kind: 'caret', uri, version: 1, piece: 0, parts: ['front/dice'] });
    expect(await part('dice').getAttribute('aria-current')).toBe('true');
    expect(await open.page.locator('#sheet [aria-current]').count()).toBe(1);
    expect(await open.page.locator('.overlay .frame.lit').count()).toBe(1);
    expect(await open.page.locator('.part-note').textContent()).toContain('drawer front "dice"');
    await open.give({ kind: 'caret', uri, version: 1, piece: 0, parts: [] });
    expect(await open.page.locator('#sheet [aria-current]').count()).toBe(0);
    // Nothing goes back to the editor: the two do not chase each other.
    expect(await choices()).toEqual([]);
  });

  test('of another version or document is not followed', async () => {
    open = await opener.open();
    await show(picture(2));
    await open.give({ kind: 'caret', uri, version: 1, piece: 0, parts: ['front/dice'] });
    await open.give({ kind: 'caret', uri: `${uri}x`, version: 2, piece: 0, parts: ['front/dice'] });
    expect(await open.page.locator('#sheet [aria-current]').count()).toBe(0);
  });

  test('scrolls only when the part is out of sight', async () => {
    open = await opener.open({ zoom: 4 });
    await show(picture(1));
    const top = () => open.page.evaluate('sheet.scrollTop');
    await open.page.evaluate('sheet.scrollTo(0, 0)');
    await open.give({ kind: 'caret', uri, version: 1, piece: 0, parts: ['front/blankets'] });
    const down = await top();
    expect(down).toBeGreaterThan(100);
    await open.give({ kind: 'caret', uri, version: 1, piece: 0, parts: [] });
    await open.give({ kind: 'caret', uri, version: 1, piece: 0, parts: ['front/blankets'] });
    expect(await top()).toBe(down);
  });
});
