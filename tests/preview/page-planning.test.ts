import { expect, test } from 'vitest';
import { type OpenPage, openerOfFile } from './open-page.ts';
import { chest, message, picture, uri } from './pictures.ts';

/** The search for cutting plans as the page shows it: how far it is, and the way to end it. */

let open: OpenPage;
const opener = openerOfFile(() => open);

const at = (version: number, planning?: number) => ({
  ...picture(version),
  pieces: [{ ...chest(), ...(planning === undefined ? {} : { planning }) }],
});

test('says how far it is, is stopped by one button that keeps the focus meanwhile, and goes when nothing is searched for', async () => {
  open = await opener.open();
  await open.give(message(at(1, 0.25)));
  const bar = open.page.locator('.planning progress');
  expect(await bar.getAttribute('value')).toBe('25');
  const stop = open.page.locator('.planning button');
  await stop.focus();
  await open.give(message(at(1, 0.5)));
  expect(await bar.getAttribute('value')).toBe('50');
  await open.page.keyboard.press('Enter');
  expect((await open.sent()).filter(({ kind }) => kind === 'stop-planning')).toEqual([
    { kind: 'stop-planning', uri, version: 1, piece: 0 },
  ]);
  expect(await open.page.locator('[role=status]').textContent()).toContain('best plans so far');
  await open.give(message(at(1)));
  expect(await open.page.locator('.planning').count()).toBe(0);
});

test('is not shown over a picture that is the last good one', async () => {
  open = await opener.open();
  await open.give(message({ ...at(1, 0.25), readable: false }));
  expect(await open.page.locator('.planning').count()).toBe(0);
});
