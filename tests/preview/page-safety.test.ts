import type { Picture } from '@fettle/protocol';
import { describe, expect, test } from 'vitest';
import { type OpenPage, openerOfFile } from './open-page.ts';
import { chest, message, picture, tooHigh } from './pictures.ts';

/** Nothing that comes in with a name or a drawing can do anything in the page. */

let open: OpenPage;
const opener = openerOfFile(() => open);

function show(shown: Picture): Promise<void> {
  return open.give(message(shown));
}

describe('names are names', () => {
  test('markup in a label, a verdict, a sentence or a cell is shown as it is written', async () => {
    open = await opener.open();
    const nasty = '<img src=x onerror="window.hurt=1">';
    const piece = chest();
    await show(
      picture(1, {
        verdict: nasty,
        findings: [{ ...tooHigh, sentence: nasty }],
        pieces: [{ ...piece, name: nasty, parts: piece.parts.map((each) => ({ ...each, label: nasty })) }],
      }),
    );
    expect(await open.page.locator('#verdict').textContent()).toBe(nasty);
    expect(await open.page.locator('#fettle-page img').count()).toBe(0);
    expect(await open.page.evaluate('window.hurt')).toBeUndefined();
  });

  test('nothing in a drawing can run, load or point outside', async () => {
    open = await opener.open();
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" viewBox="0 0 10 10" onload="window.hurt=1">
      <script>window.hurt=1</script><style>*{display:none}</style>
      <foreignObject><body xmlns="http://www.w3.org/1999/xhtml"><iframe src="http://127.0.0.1/"/></body></foreignObject>
      <image href="http://127.0.0.1/x.png"/><a href="javascript:window.hurt=1"><rect id="kept" width="1" height="1" onclick="window.hurt=1" style="fill:red" fill="url(http://127.0.0.1/#x)"/></a>
      <use href="http://127.0.0.1/#a"/><rect id="stays" width="2" height="2" fill="url(#p)"/><animate attributeName="href"/></svg>`;
    const piece = chest();
    const [drawing, ...others] = piece.sheets;
    if (drawing?.kind !== 'drawing') throw new Error('the first sheet is a drawing');
    await show(picture(1, { pieces: [{ ...piece, sheets: [{ ...drawing, svg }, ...others] }] }));
    const left = await open.page.evaluate(
      `[...document.querySelectorAll('#sheet svg, #sheet svg *:not(.overlay)')].map((each) => each.outerHTML.split('>')[0])`,
    );
    expect((left as string[]).join('\n')).not.toMatch(
      /script|style=|foreignObject|image|<a\b|onload|onclick|127\.0\.0\.1|animate/,
    );
    expect(await open.page.locator('#stays').getAttribute('fill')).toBe('url(#p)');
    expect(await open.page.evaluate('window.hurt')).toBeUndefined();
    // The policy had its say while the drawing was only being read.
    for (const problem of open.problems()) expect(problem).toContain('Content Security Policy');
  });

  test('a drawing that is no drawing is said to be none', async () => {
    open = await opener.open();
    const piece = chest();
    const [drawing, ...others] = piece.sheets;
    if (drawing?.kind !== 'drawing') throw new Error('the first sheet is a drawing');
    await show(picture(1, { pieces: [{ ...piece, sheets: [{ ...drawing, svg: '<svg><g></svg>' }, ...others] }] }));
    expect(await open.page.locator('#sheet').textContent()).toContain('cannot be shown');
    // The browser's own report of the slip carries a style that the policy refuses.
    for (const problem of open.problems()) expect(problem).toContain('Content Security Policy');
  });
});
