import type { FromPage, Picture } from '@fettle/protocol';
import { describe, expect, test } from 'vitest';
import { type OpenPage, openerOfFile } from './open-page.ts';
import { chest, message, picture, redrawn, tooHigh, uri } from './pictures.ts';

/** What one can do in the page besides looking: find, point, zoom, pan, move lines, take the sheet away. */

let open: OpenPage;
const opener = openerOfFile(() => open);

function show(shown: Picture): Promise<void> {
  return open.give(message(shown));
}

const part = (name: string) => open.page.locator(`#sheet svg [data-part="front/${name}"]`);
const line = (above: string, below: string) => open.page.locator(`[data-division="${above}|${below}"]`);
const focused = () => open.page.evaluate('document.activeElement.dataset.part ?? document.activeElement.id');

async function sent<Kind extends FromPage['kind']>(kind: Kind): Promise<readonly Extract<FromPage, { kind: Kind }>[]> {
  return (await open.sent()).filter((each): each is Extract<FromPage, { kind: Kind }> => each.kind === kind);
}

describe('the search', () => {
  test('finds parts by mark, name and material, with keys alone', async () => {
    open = await opener.open();
    await show(picture(1));
    await part('dice').focus();
    await open.page.keyboard.press('/');
    expect(await focused()).toBe('search');
    await open.page.keyboard.type('ash drawer');
    const count = open.page.locator('.count');
    expect(await count.textContent()).toBe('3');
    expect(await open.page.locator('.overlay .frame.found').count()).toBe(3);
    await open.page.keyboard.press('Enter');
    await open.page.keyboard.press('Enter');
    expect(await count.textContent()).toBe('2 of 3');
    expect(await open.page.locator('.part-note h2').textContent()).toContain('"dice"');
    expect(await open.page.locator('[role=status]').textContent()).toMatch(/^2 of 3: drawer front "dice"/);
    await open.page.keyboard.press('Shift+Enter');
    expect(await count.textContent()).toBe('1 of 3');
    // What is being looked for is not yet chosen: the text's own caret stays where it is.
    expect(await sent('choose')).toEqual([]);
    await open.page.keyboard.press('ArrowDown');
    expect(await focused()).toBe('front/cards');
  });

  test('says when there is none, goes with Escape, and survives a new picture', async () => {
    open = await opener.open();
    await show(picture(1));
    await open.page.locator('#search').focus();
    await open.page.keyboard.type('D9');
    expect(await open.page.locator('.count').textContent()).toBe('none');
    await show(picture(2));
    expect(await open.page.locator('#search').inputValue()).toBe('D9');
    expect(await focused()).toBe('search');
    await open.page.keyboard.press('Escape');
    expect(await open.page.locator('#search').inputValue()).toBe('');
    expect(await focused()).toBe('sheet');
  });
});

describe('the words beside a part', () => {
  const tip = () => open.page.locator('#tip');

  test('come under the pointer and with the focus, say what is wrong first, and go with Escape', async () => {
    open = await opener.open();
    await open.holdTime();
    await show(picture(1, { findings: [tooHigh], verdict: '1 finding' }));
    await part('blankets').hover();
    await open.pass(350);
    await tip().waitFor();
    expect(await tip().textContent()).toMatch(
      /drawer front "blankets", mark D4\s*Error 1: fronts and gaps need.*Length 80"/s,
    );
    await tip().hover();
    await open.pass(500);
    expect(await tip().isVisible()).toBe(true);
    await open.page.mouse.move(2, 2);
    await open.pass(350);
    await tip().waitFor({ state: 'hidden' });
    await open.page.locator('#sheet').focus();
    await open.page.keyboard.press('Tab');
    await tip().waitFor();
    expect(await part('cards').getAttribute('aria-describedby')).toBe('tip');
    await show(picture(2, { pieces: [chest([21, 19, 20, 30])] }));
    expect(await tip().textContent()).toContain('Width 21"');
    expect(await part('cards').getAttribute('aria-describedby')).toBe('tip');
    await open.page.keyboard.press('Escape');
    expect(await tip().isVisible()).toBe(false);
    expect(await focused()).toBe('front/cards');
  });

  test('never lie outside the window', async () => {
    open = await opener.open();
    await show(picture(1));
    for (const name of ['cards', 'blankets']) {
      await part(name).hover();
      await tip().waitFor();
      const box = await tip().boundingBox();
      if (box === null) throw new Error('not on the screen');
      expect(Math.min(box.x, box.y)).toBeGreaterThanOrEqual(0);
      expect(box.x + box.width).toBeLessThanOrEqual(900);
      expect(box.y + box.height).toBeLessThanOrEqual(700);
      await open.page.keyboard.press('Escape');
      await open.page.mouse.move(2, 2);
      await tip().waitFor({ state: 'hidden' });
    }
  });
});

describe('the outline of the part that the words are about', () => {
  const tip = () => open.page.locator('#tip');
  const outline = () => open.page.locator('.overlay .frame.explained').first();
  /** It lies outside the part, by no more than some pixels. */
  const around = async (name: string) => {
    const offs = (await open.page.evaluate(
      `(() => {
        const edges = (rect) => {
          const [x, y, width, height] = ['x', 'y', 'width', 'height'].map((side) => Number(rect.getAttribute(side)));
          return [-x, -y, x + width, y + height];
        };
        const frame = edges(document.querySelector('.overlay .frame.explained'));
        const scale = document.querySelector('#sheet > svg').getScreenCTM().a;
        return edges(document.querySelector('[data-part="front/${name}"] rect'))
          .map((edge, at) => (frame[at] - edge) * scale);
      })()`,
    )) as readonly number[];
    for (const off of offs) {
      expect(off).toBeGreaterThan(3.5);
      expect(off).toBeLessThan(8);
    }
  };

  test('goes with the words: under the pointer, with the focus, through a new picture and a zoom', async () => {
    open = await opener.open();
    await show(picture(1));
    expect(await outline().count()).toBe(0);
    await part('blankets').hover();
    await tip().waitFor();
    await around('blankets');
    await open.page.mouse.move(2, 2);
    await tip().waitFor({ state: 'hidden' });
    expect(await outline().count()).toBe(0);
    await open.page.locator('#sheet').focus();
    await open.page.keyboard.press('Tab');
    await tip().waitFor();
    await around('cards');
    await show(picture(2, { pieces: [chest([30, 15, 20, 25])] }));
    await around('cards');
    await open.page.keyboard.press('ArrowDown');
    await around('dice');
    expect(await open.page.locator('.overlay .explained-part').count()).toBe(1);
    await open.page.keyboard.press('Escape');
    expect(await outline().count()).toBe(0);
  });

  test('follows an outline that is not square to the sheet, and lies outside it', async () => {
    open = await opener.open();
    const slanted = redrawn(chest(), (svg) =>
      svg.replace(/<rect class="edge" x="10" y="10"[^>]*>/, '<polygon points="20,10 80,10 90,30 10,30" fill="none"/>'),
    );
    await show(picture(1, { pieces: [slanted] }));
    await open.page.locator('#sheet').focus();
    await open.page.keyboard.press('Tab');
    await tip().waitFor();
    const points = (await outline().getAttribute('points')) ?? '';
    const [[x1 = 0, y1 = 0] = [], [x2 = 0, y2 = 0] = [], [x3 = 0, y3 = 0] = [], [x4 = 0, y4 = 0] = []] = points
      .split(' ')
      .map((pair) => pair.split(',').map(Number));
    expect([x1 < 20, y1 < 10, x2 > 80, y2 < 10, x3 > 90, y3 > 30, x4 < 10, y4 > 30]).not.toContain(false);
    expect(y1).toBeCloseTo(y2, 6);
    expect(20 - x1).toBeCloseTo(x2 - 80, 6);
  });

  test('is around the row in a table', async () => {
    open = await opener.open({ sheet: 'cut-list' });
    await show(picture(1));
    await open.page.locator('tr[data-part="front/maps"] button').focus();
    await open.page.keyboard.press('Tab');
    await open.page.keyboard.press('Shift+Tab');
    await tip().waitFor();
    const explained = open.page.locator('tr[data-explained]');
    expect(await explained.getAttribute('data-part')).toBe('front/maps');
    expect(
      await open.page.evaluate('getComputedStyle(document.querySelector("tr[data-explained]")).outlineStyle'),
    ).toBe('double');
    await open.page.keyboard.press('Escape');
    expect(await explained.count()).toBe(0);
  });
});

describe('zoom and pan', () => {
  test('to the part that has the focus, until it fills most of the sheet', async () => {
    open = await opener.open();
    await show(picture(1));
    await part('maps').focus();
    await open.page.keyboard.press('z');
    const box = await part('maps').locator('rect').boundingBox();
    const sheet = await open.page.locator('#sheet').boundingBox();
    if (box === null || sheet === null) throw new Error('not on the screen');
    expect(Math.max(box.width / sheet.width, box.height / sheet.height)).toBeGreaterThan(0.5);
    expect(box.x + box.width / 2).toBeCloseTo(sheet.x + sheet.width / 2, -1.5);
    expect(box.y + box.height / 2).toBeCloseTo(sheet.y + sheet.height / 2, -1.5);
    await open.page.keyboard.press('0');
    expect(await open.page.locator('#sheet > svg').getAttribute('width')).toBe('100%');
  });

  test('with Ctrl and the wheel, what is under the pointer stays there', async () => {
    open = await opener.open({ zoom: 2 });
    await show(picture(1));
    const before = await part('maps').locator('rect').boundingBox();
    if (before === null) throw new Error('not on the screen');
    await open.page.mouse.move(before.x + 20, before.y + 10);
    await open.page.keyboard.down('Control');
    await open.page.mouse.wheel(0, -100);
    await open.page.keyboard.up('Control');
    const after = await part('maps').locator('rect').boundingBox();
    if (after === null) throw new Error('not on the screen');
    expect(after.width / before.width).toBeCloseTo(1.25, 1);
    expect(Math.abs(after.y + 12.5 - (before.y + 10))).toBeLessThan(6);
  });

  test('a drag moves the sheet and chooses nothing; a click chooses', async () => {
    open = await opener.open({ zoom: 4 });
    await show(picture(1));
    await open.page.evaluate('sheet.scrollTo(300, 300)');
    await open.page.mouse.move(400, 340);
    await open.page.mouse.down();
    await open.page.mouse.move(340, 290, { steps: 4 });
    await open.page.mouse.up();
    expect(await open.page.evaluate('[sheet.scrollLeft, sheet.scrollTop]')).toEqual([360, 350]);
    expect(await sent('choose')).toEqual([]);
    await part('maps').click();
    expect(await sent('choose')).toHaveLength(1);
  });
});

describe('a line between two spaces', () => {
  const told = (steps: number, change: object) =>
    open.give({ kind: 'division', uri, division: 'cards|dice', steps, refused: false, done: false, ...change });

  test('follows the pointer in marks of the ruler, tells what it comes to, and is let go once', async () => {
    open = await opener.open();
    await show(picture(1));
    const box = await line('cards', 'dice').locator('.grip').boundingBox();
    const svg = await open.page.locator('#sheet > svg').boundingBox();
    if (box === null || svg === null) throw new Error('not on the screen');
    const perUnit = Math.min(svg.width / 100, svg.height / 120);
    // Beside the middle, where the words of the drawing stand.
    const [x, y] = [box.x + box.width / 4, box.y + box.height / 2];
    await open.page.mouse.move(x, y);
    await open.page.mouse.down();
    await open.page.mouse.move(x, y + 6 * perUnit, { steps: 5 });
    const moves = await sent('move-division');
    expect(moves.length).toBeGreaterThan(0);
    expect(moves.every(({ drop }) => !drop)).toBe(true);
    await told(12, { sentence: '"cards" 26", "dice" 14"' });
    expect(await open.page.locator('.readout').textContent()).toBe('"cards" 26", "dice" 14"');
    const ghost = await line('cards', 'dice').locator('.ghost').boundingBox();
    expect(Math.abs((ghost?.y ?? 0) + (ghost?.height ?? 0) / 2 - y - 6 * perUnit)).toBeLessThan(1.5);
    await open.page.mouse.up();
    const drops = (await sent('move-division')).filter(({ drop }) => drop);
    expect(drops).toEqual([
      { kind: 'move-division', uri, version: 1, piece: 0, division: 'cards|dice', steps: 12, drop: true },
    ]);
    // Neither the part below nor the sheet took the drag for its own.
    expect(await sent('choose')).toEqual([]);
    await told(12, { sentence: '"cards" 26", "dice" 14"', done: true });
    await show(picture(2, { pieces: [chest([26, 14, 20, 30])] }));
    expect(await open.page.locator('.ghost').count()).toBe(0);
    expect(await open.page.locator('.readout').textContent()).toBe('"cards" 26", "dice" 14"');
  });

  test('is moved by arrow keys, let go by Enter or after a pause, and left by Escape', async () => {
    open = await opener.open();
    await open.holdTime();
    await show(picture(1));
    await line('cards', 'dice').focus();
    expect(await line('cards', 'dice').getAttribute('aria-valuetext')).toBe('"cards" 20", "dice" 20"');
    const { keyboard } = open.page;
    await keyboard.press('ArrowDown');
    await keyboard.press('Shift+ArrowDown');
    await keyboard.press('ArrowUp');
    expect(await open.page.locator('.division.moving').getAttribute('aria-valuenow')).toBe('8');
    await keyboard.press('Escape');
    await open.pass(1200);
    const dropped = async () => (await sent('move-division')).filter(({ drop }) => drop).map(({ steps }) => steps);
    expect(await dropped()).toEqual([]);
    await keyboard.press('ArrowUp');
    await keyboard.press('Enter');
    await keyboard.press('ArrowDown');
    await open.pass(899);
    expect(await dropped()).toEqual([-1]);
    await open.pass(1);
    expect(await dropped()).toEqual([-1, 1]);
    await keyboard.press('PageDown');
    expect(await open.page.evaluate('document.activeElement.dataset.division')).toBe('dice|maps');
    // Across its way nothing moves.
    await keyboard.press('ArrowLeft');
    expect(await open.page.locator('.division.moving').count()).toBe(1);
  });

  test('that cannot be moved says so and goes back', async () => {
    open = await opener.open();
    await show(picture(1));
    await line('cards', 'dice').focus();
    await open.page.keyboard.press('ArrowDown');
    await told(1, { sentence: 'Neither has a size', refused: true });
    expect(await open.page.locator('.readout.refused').textContent()).toBe('Neither has a size');
    await open.page.keyboard.press('Enter');
    await told(1, { sentence: 'Neither has a size', refused: true, done: true });
    expect(await open.page.locator('.ghost').count()).toBe(0);
    expect(await open.page.locator('[role=status]').textContent()).toBe('Neither has a size');
  });

  test('answers for another line, place or document change nothing', async () => {
    open = await opener.open();
    await show(picture(1));
    await line('cards', 'dice').focus();
    await open.page.keyboard.press('ArrowDown');
    await told(2, { sentence: 'of another place' });
    await told(1, { sentence: 'of another line', division: 'dice|maps' });
    await told(1, { sentence: 'of another text', uri: `${uri}x`, done: true });
    await told(1.5, { sentence: 'of no place' });
    expect(await open.page.locator('.readout').count()).toBe(0);
    await open.page.keyboard.press('Escape');
  });
});

describe('what can be taken away', () => {
  test('each kind of sheet in its own forms', async () => {
    open = await opener.open();
    await show(picture(3));
    await open.page.getByRole('button', { name: 'Save SVG: Elevation', exact: true }).click();
    await open.page.getByRole('button', { name: 'Save PNG: Elevation', exact: true }).click();
    await open.page.getByRole('tab', { name: 'Cut list' }).click();
    await open.page.getByRole('button', { name: 'Copy table: Cut list', exact: true }).click();
    await open.page.getByRole('button', { name: 'Save CSV: Cut list', exact: true }).click();
    // What stands on each begins with what it does, and begins its name.
    expect(await open.page.locator('.exports button').allTextContents()).toEqual(['Copy table', 'Save CSV']);
    const about = { uri, version: 3, piece: 0 };
    expect((await open.sent()).slice(2).filter(({ kind }) => kind !== 'look')).toEqual([
      { kind: 'export', ...about, sheet: 'elevation', format: 'svg' },
      { kind: 'export', ...about, sheet: 'elevation', format: 'png' },
      { kind: 'copy-table', ...about, sheet: 'cut-list' },
      { kind: 'export', ...about, sheet: 'cut-list', format: 'csv' },
    ]);
    await open.give({ kind: 'told', sentence: 'Saved as chest.csv' });
    expect(await open.page.locator('.readout').textContent()).toBe('Saved as chest.csv');
  });

  /** The bytes the page sent, as they come out of it. */
  async function png(): Promise<{ readonly signature: string; readonly width: number; readonly height: number }> {
    return open.page.evaluate(`(() => {
      const { bytes } = window.sent.find(({ kind }) => kind === 'png');
      const view = new DataView(bytes.buffer);
      return { signature: String.fromCharCode(...bytes.slice(1, 4)), width: view.getUint32(16), height: view.getUint32(20) };
    })()`);
  }

  test('a drawing is rendered by the page, under its policy, as a PNG of the width asked for', async () => {
    open = await opener.open();
    await show(picture(1));
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="100mm" viewBox="0 0 200 100"><style>.a{fill:#0b0}</style><rect class="a" width="200" height="100"/></svg>`;
    await open.give({ kind: 'draw-png', request: 7, svg, width: 400 });
    await expect.poll(async () => (await open.sent()).some(({ kind }) => kind === 'png')).toBe(true);
    expect(await png()).toEqual({ signature: 'PNG', width: 400, height: 200 });
    const colour = await open.page.evaluate(`(async () => {
      const { bytes } = window.sent.find(({ kind }) => kind === 'png');
      const image = await createImageBitmap(new Blob([bytes]));
      const context = new OffscreenCanvas(1, 1).getContext('2d');
      context.drawImage(image, 0, 0);
      return [...context.getImageData(0, 0, 1, 1).data];
    })()`);
    expect(colour).toEqual([0, 187, 0, 255]);
  });

  test('a drawing that cannot be rendered is said to be none; one that is given up is not sent', async () => {
    open = await opener.open();
    await show(picture(1));
    await open.give({ kind: 'draw-png', request: 8, svg: '<svg><g></svg>', width: 400 });
    await expect
      .poll(async () => (await sent('png-failed')).map(({ sentence }) => sentence))
      .toEqual(['the drawing cannot be rendered here']);
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="20mm" height="10mm" viewBox="0 0 2 1"/>`;
    await open.page.evaluate(`(() => {
      for (const data of [${JSON.stringify({ kind: 'draw-png', request: 9, svg, width: 400 })}, { kind: 'cancel-png', request: 9 }]) {
        window.dispatchEvent(new MessageEvent('message', { data }));
      }
    })()`);
    await open.page.waitForTimeout(300);
    expect((await open.sent()).filter((each) => 'request' in each && each.request === 9)).toEqual([]);
  });
});

describe('a picture that no longer holds', () => {
  test('says when the server has ended, until the next picture', async () => {
    open = await opener.open();
    await show(picture(1));
    await open.give({ kind: 'server', running: false });
    expect(await open.page.locator('.stale').textContent()).toContain('the language server has ended');
    expect(await part('cards').count()).toBe(1);
    await show(picture(2));
    expect(await open.page.locator('.stale').count()).toBe(0);
  });

  test('of one piece is marked there and not in the others', async () => {
    open = await opener.open();
    const second = { ...chest([40, 40]), key: 'Second', name: 'Second' };
    await show(picture(1, { pieces: [{ ...chest(), stale: true }, second] }));
    expect(await open.page.locator('.stale').textContent()).toContain('This piece cannot be read just now');
    await open.page.locator('#piece').selectOption('Second');
    expect(await open.page.locator('.stale').count()).toBe(0);
  });

  test('comes back after a reload although the text is broken', async () => {
    open = await opener.open();
    await show(picture(1));
    await expect.poll(async () => (await open.kept()).last?.key).toBe('Chest');
    const memory = await open.kept();
    await open.close();
    open = await opener.open(memory);
    expect(await part('cards').count()).toBe(1);
    expect(await open.page.locator('.stale').textContent()).toContain('last picture that could be drawn');
    await show(picture(9));
    expect(await open.page.locator('.stale').count()).toBe(0);
  });

  test('a frame that presumes what never came is asked for anew, and changes nothing', async () => {
    open = await opener.open();
    await show(picture(1));
    const before = await open.page.locator('#fettle-page').innerHTML();
    const lost = { ...(message(picture(2)) as { frame: object }).frame, since: 41, frame: 42 };
    await open.give({ kind: 'picture', frame: lost, anew: false, only: '' });
    expect(await open.page.locator('#fettle-page').innerHTML()).toBe(before);
    expect(await sent('ready')).toHaveLength(2);
  });
});

describe('a sheet that is still to be drawn', () => {
  const unfinished = () => {
    const [drawing] = chest().sheets;
    if (drawing === undefined) throw new Error('a chest has a drawing');
    return {
      ...chest(),
      sheets: [drawing, { kind: 'later', id: 'cut-list', title: 'Cut list', shows: 'table' }],
    } as const;
  };

  test('is asked for, the one before stays meanwhile, and then it is there', async () => {
    open = await opener.open();
    await show(picture(1, { pieces: [unfinished()] }));
    await open.page.getByRole('tab', { name: 'Cut list' }).click();
    expect(await part('cards').count()).toBe(1);
    expect(await open.page.locator('#sheet').getAttribute('aria-busy')).toBe('true');
    expect((await sent('look')).map(({ sheet }) => sheet)).toEqual(['elevation', 'cut-list']);
    await show(picture(1));
    expect(await open.page.locator('#sheet > table').count()).toBe(1);
    expect(await open.page.locator('#sheet').getAttribute('aria-busy')).toBeNull();
  });

  test('that takes its time is said to be on its way', async () => {
    open = await opener.open();
    await show(picture(1, { pieces: [unfinished()] }));
    await open.page.getByRole('tab', { name: 'Cut list' }).click();
    await expect.poll(() => open.page.locator('#sheet').textContent()).toBe('Being drawn.');
  });
});

describe('several pieces', () => {
  const two = () => [chest(), { ...chest([40, 40]), key: 'Second', name: 'Second' }];

  test('the panel of one piece shows only that, and does not follow the caret elsewhere', async () => {
    open = await opener.open();
    await open.give(message(picture(1, { pieces: two() }), true, 'Second'));
    expect(await open.page.locator('#piece').count()).toBe(0);
    expect(await part('maps').count()).toBe(0);
    await open.give({ kind: 'caret', uri, version: 1, piece: 0, parts: ['front/maps'] });
    expect(await part('maps').count()).toBe(0);
    expect(await sent('look')).toEqual([{ kind: 'look', uri, piece: 'Second', sheet: 'elevation' }]);
  });

  test('whoever looks at all pieces goes on doing so, whosever words the caret stands in', async () => {
    open = await opener.open();
    const [first, second] = two();
    if (first === undefined || second === undefined) throw new Error('two pieces');
    const parts = [first, second].flatMap((piece, at) =>
      piece.parts.map((each) => ({ ...each, id: `${at + 1}/${each.id}` })),
    );
    const rows = parts.map(({ id }) => ({ parts: [id], cells: [id] }));
    const sheets = [{ kind: 'table' as const, id: 'cuts', title: 'Cut order', columns: ['Part'], rows }];
    const all = { ...first, key: 'All pieces', name: 'All pieces', together: true as const, parts, sheets };
    await show(picture(1, { pieces: [first, second, all] }));
    await open.page.locator('#piece').selectOption('All pieces');
    await open.give({ kind: 'caret', uri, version: 1, piece: 1, parts: ['front/dice'] });
    expect(await open.page.locator('#piece').inputValue()).toBe('All pieces');
    expect(await open.page.locator('tr[aria-current="true"]').allTextContents()).toEqual(['2/front/dice']);
  });

  test('a piece whose name is being typed stays the one that is shown', async () => {
    open = await opener.open();
    await show(picture(1, { pieces: two() }));
    await open.page.locator('#piece').selectOption('Second');
    const [first, second] = two();
    if (first === undefined || second === undefined) throw new Error('two pieces');
    await show(picture(2, { pieces: [first, { ...second, key: 'Secon', name: 'Secon' }] }));
    expect(await open.page.locator('#piece').inputValue()).toBe('Secon');
    expect(await part('maps').count()).toBe(0);
  });

  test('what is wrong elsewhere is told in a line, which leads there', async () => {
    open = await opener.open();
    await show(picture(1, { pieces: two(), findings: [{ ...tooHigh, piece: 1, parts: [] }], verdict: '1 finding' }));
    expect(await open.page.locator('.findings > ol').count()).toBe(0);
    await open.page.getByRole('button', { name: '1 finding in Second' }).click();
    expect(await open.page.locator('#piece').inputValue()).toBe('Second');
    expect(await open.page.locator('.findings > ol > li').count()).toBe(1);
  });
});
