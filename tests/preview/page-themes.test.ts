import type { Picture } from '@fettle/protocol';
import { describe, expect, test } from 'vitest';
import { dark, highContrast, highContrastLight, light, type OpenPage, openerOfFile, type Theme } from './open-page.ts';
import { message, picture, tooHigh, uri } from './pictures.ts';

/** The page in the colours of four kinds of theme. */

let open: OpenPage;
const opener = openerOfFile(() => open);

function show(shown: Picture): Promise<void> {
  return open.give(message(shown));
}

/** Contrast as WCAG 2 defines it; 4.5 for text, 3 for what must be seen. */
function contrast(one: string, other: string): number {
  const luminance = (colour: string) => {
    const [r = 0, g = 0, b = 0] = (colour.match(/[\d.]+/g) ?? []).map((each) => {
      const part = Number(each) / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
}

const themes: readonly (readonly [string, Theme])[] = [
  ['light', light],
  ['dark', dark],
  ['high contrast', highContrast],
  ['high contrast light', highContrastLight],
];

describe.each(themes)('in the %s theme', (_name, theme) => {
  test('text, lines and signs can be told from the ground', async () => {
    open = await opener.open({}, theme);
    await show(picture(1, { findings: [tooHigh], verdict: '1 finding' }));
    await open.give({ kind: 'caret', uri, version: 1, piece: 0, parts: ['front/dice'] });
    const colours = (await open.page.evaluate(
      `(() => {
        const of = (selector, property) => getComputedStyle(document.querySelector(selector))[property];
        return {
          ground: of('body', 'backgroundColor'),
          text: of('#verdict', 'color'),
          line: of('[data-part] rect', 'stroke'),
          lettering: of('[data-part] text', 'fill'),
          sign: of('.overlay .sign polygon', 'stroke'),
          number: of('.overlay .sign text', 'fill'),
          frame: of('.overlay .frame', 'stroke'),
        };
      })()`,
    )) as Record<string, string>;
    const ground = colours['ground'] ?? '';
    for (const name of ['text', 'line', 'lettering', 'number']) {
      expect(contrast(colours[name] ?? '', ground), name).toBeGreaterThan(4.5);
    }
    for (const name of ['sign', 'frame']) expect(contrast(colours[name] ?? '', ground), name).toBeGreaterThan(3);
  });

  test('two lines around the part show which one the words beside it are about', async () => {
    open = await opener.open({}, theme);
    await show(picture(1));
    await open.page.locator('[data-part="front/dice"] rect').hover();
    await open.page.locator('#tip').waitFor();
    const [outer, between] = (await open.page.evaluate(
      `[...document.querySelectorAll('.overlay .frame.explained')].map((line) => {
        const { stroke, strokeWidth, fill } = getComputedStyle(line);
        return { stroke, width: parseFloat(strokeWidth), fill };
      })`,
    )) as readonly { readonly stroke: string; readonly width: number; readonly fill: string }[];
    const ground = await open.page.evaluate('getComputedStyle(document.body).backgroundColor');
    expect(contrast(outer?.stroke ?? '', String(ground))).toBeGreaterThan(4.5);
    // The paper shows between them: two lines, whatever their colour.
    expect(between?.stroke).toBe(ground);
    expect((outer?.width ?? 0) - (between?.width ?? 0)).toBeGreaterThanOrEqual(4);
    expect(between?.width).toBeGreaterThanOrEqual(3);
  });
});
