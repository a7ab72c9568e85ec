import { describe, expect, test } from 'vitest';
import { highContrast, highContrastLight, type OpenPage, openerOfFile } from './open-page.ts';
import { chest, message, picture, redrawn } from './pictures.ts';

/** Drawn lines in high contrast, and what stands below of a part that is chosen. */

let open: OpenPage;
const opener = openerOfFile(() => open);

const dashed =
  '<line class="hidden" x1="5" y1="5" x2="95" y2="5" stroke="var(--fettle-quiet, #777)" stroke-width="0.13" stroke-dasharray="2 1"/>';

describe.each([
  ['dark', highContrast, 'vscode-high-contrast', 'rgb(255, 255, 255)'],
  ['light', highContrastLight, 'vscode-high-contrast vscode-high-contrast-light', 'rgb(0, 0, 0)'],
] as const)('in the %s theme of high contrast', (_name, theme, classes, foreground) => {
  test('thin and dashed lines are as strong as any', async () => {
    open = await opener.open({}, theme);
    await open.page.evaluate(`document.body.className = '${classes}'`);
    await open.give(
      message(picture(1, { pieces: [redrawn(chest(), (svg) => svg.replace('</svg>', `${dashed}</svg>`))] })),
    );
    const line = await open.page.evaluate(`(() => {
      const { stroke, strokeWidth, strokeDasharray, vectorEffect } = getComputedStyle(document.querySelector('.hidden'));
      return { stroke, strokeWidth, isDashed: strokeDasharray !== 'none', vectorEffect };
    })()`);
    const strong = { stroke: foreground, strokeWidth: '1px', isDashed: true, vectorEffect: 'non-scaling-stroke' };
    expect(line).toEqual(strong);
  });
});

describe('what is known of the part that is chosen', () => {
  test('keeps each size with its terms, and offers the way to it only where it is drawn', async () => {
    open = await opener.open();
    const piece = chest();
    const [first, ...others] = piece.parts;
    if (first === undefined) throw new Error('a part');
    const derivation = 'Length 80": less\n  a gap of 1/8"\nWidth 20": written here';
    const unseen = { ...first, id: 'back', label: 'back, mark B', mark: 'B' };
    await open.give(
      message(picture(1, { pieces: [{ ...piece, parts: [{ ...first, derivation }, ...others, unseen] }] })),
    );
    await open.page.locator('#sheet svg [data-part="front/cards"]').first().click();
    const sizes = open.page.locator('.part-note .size');
    expect(await sizes.allTextContents()).toEqual(['Length 80": less\n  a gap of 1/8"', 'Width 20": written here']);
    expect(await open.page.evaluate(`getComputedStyle(document.querySelector('.size')).breakInside`)).toBe('avoid');
    expect(await open.page.locator('[data-action=zoom-part]').count()).toBe(1);
    await open.page.locator('#search').fill('back');
    await open.page.locator('#search').press('Enter');
    expect(await open.page.locator('.part-note').textContent()).toContain('not on this sheet');
    expect(await open.page.locator('[data-action=zoom-part]').count()).toBe(0);
  });
});

describe('the frame of the part that is chosen', () => {
  test('lies under the numbers of the cuts', async () => {
    open = await opener.open();
    const cut =
      '<g class="stock"><circle class="symbol" cx="10" cy="14" r="3" fill="none" stroke="#777"/><text x="10" y="15" font-size="3">89</text></g>';
    await open.give(
      message(picture(1, { pieces: [redrawn(chest(), (svg) => svg.replace('</svg>', `${cut}</svg>`))] })),
    );
    await open.page.locator('#sheet svg [data-part="front/cards"]').first().click();
    const order = await open.page.locator('.overlay > *').evaluateAll((all) => all.map(({ tagName }) => tagName));
    expect(order).toEqual(['rect', 'circle', 'text']);
    expect(await open.page.locator('.overlay > text').textContent()).toBe('89');
  });
});
