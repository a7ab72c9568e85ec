import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Picture } from '@fettle/protocol';
import { describe, expect, test } from 'vitest';
import { dark, highContrast, highContrastLight, light, type OpenPage, openerOfFile, type Theme } from './open-page.ts';
import { chest, message, picture, tooHigh, uri } from './pictures.ts';

/**
 * The page before axe-core, by the success criteria of WCAG 2.0, 2.1 and 2.2, levels A and AA, in four themes. No rule
 * is switched off.
 */

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const criteria = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

let open: OpenPage;
const opener = openerOfFile(() => open);

interface Verdict {
  readonly violations: readonly string[];
  readonly passes: number;
}

async function judge(): Promise<Verdict> {
  // Run in the page's own world, but not as a script of the page: its policy stays as it is.
  await open.page.evaluate(axe);
  return open.page.evaluate(`axe
    .run(document, { runOnly: { type: 'tag', values: ${JSON.stringify(criteria)} } })
    .then(({ violations, passes }) => ({
      violations: violations.flatMap(({ id, nodes }) => nodes.map(({ html, failureSummary }) => id + ': ' + html + ' ' + failureSummary)),
      passes: passes.length,
    }))`);
}

async function expectSound(): Promise<void> {
  const { violations, passes } = await judge();
  expect(violations).toEqual([]);
  // It did look at something.
  expect(passes).toBeGreaterThan(10);
}

const warning = { ...tooHigh, severity: 'warning', sentence: 'the slides are short', parts: ['front/dice'] } as const;
const note = { ...tooHigh, severity: 'note', sentence: 'not checked yet', parts: [] } as const;
const second = { ...chest([40, 40]), key: 'Second', name: 'Second' };

function full(version: number, change: Partial<Picture> = {}): Picture {
  const findings = [tooHigh, warning, note, { ...warning, piece: 1 }];
  return picture(version, { pieces: [chest(), second], findings, verdict: '2 findings: 10" too much', ...change });
}

const themes: readonly (readonly [string, Theme])[] = [
  ['light', light],
  ['dark', dark],
  ['high contrast', highContrast],
  ['high contrast light', highContrastLight],
];

describe.each(themes)('in the %s theme', (_name, theme) => {
  test('the drawing with findings, the words beside a part, a search and a line on its way', async () => {
    open = await opener.open({}, theme);
    await open.give(message(full(1)));
    await expectSound();
    await open.page.locator('#search').fill('ash');
    await open.page.locator('#search').press('Enter');
    await open.page.getByText('1 note').click();
    await open.page.getByText('Keys', { exact: true }).click();
    await open.page.locator('[data-part="front/maps"]').hover();
    await open.page.locator('#tip').waitFor();
    await expectSound();
    await open.page.mouse.move(2, 2);
    await open.page.locator('[data-division="cards|dice"]').focus();
    await open.page.keyboard.press('ArrowDown');
    const sentence = '"cards" has no size';
    await open.give({ kind: 'division', uri, division: 'cards|dice', steps: 1, sentence, refused: true, done: false });
    await expectSound();
  });

  test('the table, and a picture that is stale', async () => {
    open = await opener.open({ sheet: 'cut-list' }, theme);
    await open.give(message(full(1)));
    await open.give({ kind: 'caret', uri, version: 1, piece: 0, parts: ['front/dice'] });
    await expectSound();
    await open.give(message(full(2, { readable: false })));
    await expectSound();
  });
});

test('before the first picture, and with nothing to draw', async () => {
  open = await opener.open();
  await expectSound();
  await open.give(message(picture(1, { pieces: [] })));
  await expectSound();
});

describe('for those who do not see the drawing', () => {
  test('its parts stand behind it as a table, in the order of the text', async () => {
    open = await opener.open();
    await open.give(message(picture(1, { findings: [tooHigh] })));
    const table = open.page.getByRole('table', { name: 'The parts of this drawing' });
    expect(await table.getByRole('rowheader').allTextContents()).toEqual(['D1', 'D2', 'D3', 'D4']);
    const cells = await table.getByRole('row').nth(4).getByRole('cell').allTextContents();
    expect(cells).toEqual(['drawer front "blankets"', '80"', '30"', '3/4"', 'ash', tooHigh.sentence]);
    const box = await open.page.locator('.heard').boundingBox();
    expect(Math.max(box?.width ?? 9, box?.height ?? 9)).toBeLessThanOrEqual(2);
  });
});

describe('at 200 %', () => {
  test('nothing is cut off at the side, and drawing, tabs and findings are all within reach', async () => {
    open = await opener.open();
    // A window of 900 by 700 at 200 % has room for 450 by 350.
    await open.page.setViewportSize({ width: 450, height: 350 });
    await open.give(message(full(1)));
    const width = await open.page.evaluate('document.documentElement.scrollWidth');
    expect(width).toBeLessThanOrEqual(450);
    for (const reach of ['#sheet > svg', '#tab-cut-list', '#search', '#verdict', '.findings > ol > li:last-child']) {
      await open.page.locator(reach).scrollIntoViewIfNeeded();
      const box = await open.page.locator(reach).boundingBox();
      expect(box?.height, reach).toBeGreaterThan(5);
      expect((box?.x ?? -1) >= 0 && (box?.x ?? 0) + (box?.width ?? 0) <= 451, reach).toBe(true);
    }
    const drawing = await open.page.locator('#sheet').boundingBox();
    expect(drawing?.height).toBeGreaterThan(110);
  });
});
