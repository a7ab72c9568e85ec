import type { FromPage, Picture } from '@fettle/protocol';
import { describe, expect, test } from 'vitest';
import { type OpenPage, openerOfFile } from './open-page.ts';
import { message, picture, tooHigh, uri } from './pictures.ts';

/** The page without a pointer, and without seeing it. */

let open: OpenPage;
const opener = openerOfFile(() => open);

function show(shown: Picture): Promise<void> {
  return open.give(message(shown));
}

const part = (name: string) => open.page.locator(`#sheet svg [data-part="front/${name}"]`);

/** What the page sent, without its greeting and what it looks at. */
async function choices(): Promise<readonly FromPage[]> {
  return (await open.sent()).filter(({ kind }) => kind !== 'ready' && kind !== 'look');
}

describe('keys', () => {
  test('one stop for the tabs, one for the drawing; arrows move inside each, Enter chooses', async () => {
    open = await opener.open();
    await show(picture(1));
    const { keyboard } = open.page;
    await keyboard.press('Tab');
    expect(await open.page.evaluate('document.activeElement.dataset.sheet')).toBe('elevation');
    await keyboard.press('ArrowRight');
    expect(await open.page.evaluate('document.activeElement.dataset.sheet')).toBe('cut-list');
    expect(await open.page.locator('table').count()).toBe(1);
    await keyboard.press('Home');
    expect(await open.page.locator('#sheet > svg').count()).toBe(1);
    // The search, four ways to zoom, two to export, and the sheet itself.
    for (let times = 0; times < 9; times++) await keyboard.press('Tab');
    const focused = () => open.page.evaluate('document.activeElement.dataset.part');
    expect(await focused()).toBe('front/cards');
    await keyboard.press('ArrowDown');
    expect(await focused()).toBe('front/dice');
    await keyboard.press('End');
    expect(await focused()).toBe('front/blankets');
    await keyboard.press('ArrowDown');
    expect(await focused()).toBe('front/blankets');
    await keyboard.press('ArrowUp');
    await keyboard.press('Enter');
    expect(await choices()).toEqual([{ kind: 'choose', uri, version: 1, piece: 0, part: 'front/maps' }]);
    expect(await focused()).toBe('front/maps');
    expect(await open.page.locator('[role=status]').textContent()).toContain('drawer front "maps"');
  });

  test('plus, minus and nought zoom, and the middle stays in the middle', async () => {
    open = await opener.open();
    await show(picture(1));
    const { keyboard } = open.page;
    await part('dice').focus();
    await keyboard.press('+');
    await keyboard.press('+');
    const middle = '(sheet.scrollTop + sheet.clientHeight / 2) / sheet.scrollHeight';
    expect(await open.page.evaluate(middle)).toBeCloseTo(0.5, 1);
    expect(await open.page.locator('[data-action=zoom-fit]').textContent()).toBe('156 %');
    await keyboard.press('-');
    expect(await open.page.locator('[data-action=zoom-fit]').textContent()).toBe('125 %');
    await keyboard.press('0');
    expect(await open.page.locator('#sheet > svg').getAttribute('width')).toBe('100%');
  });

  test('a finding is chosen from the list and lights its parts', async () => {
    open = await opener.open();
    await show(picture(1, { findings: [tooHigh], verdict: '1 finding' }));
    await open.page
      .getByRole('button', { name: /10" too much/ })
      .last()
      .press('Enter');
    expect(await choices()).toEqual([{ kind: 'choose-finding', uri, version: 1, finding: 0 }]);
    expect(await part('blankets').getAttribute('aria-current')).toBe('true');
  });

  test('everything that can be clicked can be reached, and has a name', async () => {
    open = await opener.open();
    await show(picture(1, { findings: [tooHigh] }));
    const nameless = await open.page.evaluate(
      `[...document.querySelectorAll('button, select, [role=button], [role=tab]')].filter((each) =>
        (each.getAttribute('aria-label') ?? each.closest('label')?.textContent ?? each.textContent).trim() === '').length`,
    );
    expect(nameless).toBe(0);
  });
});

describe('what is said aloud', () => {
  test('a changed verdict, once typing pauses, and nothing that came and went', async () => {
    open = await opener.open();
    await open.holdTime();
    await show(picture(1));
    await open.pass(900);
    await show(picture(2, { verdict: '1 finding: 10" too much' }));
    await open.pass(699);
    await show(picture(3));
    await open.pass(900);
    const said = open.page.locator('[role=status]');
    expect(await said.textContent()).toBe('');
    await show(picture(4, { verdict: '1 finding: 10" too much' }));
    await open.pass(700);
    expect(await said.textContent()).toBe('1 finding: 10" too much');
  });
});
