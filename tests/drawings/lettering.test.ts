import { elevation, toSvg } from '@fettle/drawings';
import { describe, expect, it } from 'vitest';
import { gallery, named, pencilChest } from './pieces-to-draw.ts';
import {
  classes,
  elements,
  isInside,
  number,
  overlaps,
  partGroups,
  readSvg,
  rectBox,
  surfaceOf,
  textBoxOf,
  withClass,
} from './reading-svg.ts';

/** Nothing written on a sheet may lie over anything else written, over the piece's outline, or off the sheet. */

const pieces: Readonly<Record<string, () => ReturnType<typeof pencilChest>>> = {
  ...gallery,
  'a wide script': () => named('長い名前の引き出し、とても長い名前の引き出し'),
  'a very long name': () => named('blanket '.repeat(12_500)),
};

describe.each(Object.entries(pieces))('%s', (_, make) => {
  const root = readSvg(toSvg(elevation(make())));
  const texts = elements(root, 'text').map((text) => ({ text, box: textBoxOf(text), words: text.textContent ?? '' }));

  it('has no two texts over one another', () => {
    const clashes: string[] = [];
    texts.forEach((one, at) => {
      for (const other of texts.slice(at + 1)) {
        if (overlaps(one.box, other.box)) clashes.push(`"${one.words}" over "${other.words}"`);
      }
    });
    expect(texts.length).toBeGreaterThan(5);
    expect(clashes).toEqual([]);
  });

  it('stays on the sheet', () => {
    const sheet = { left: 0, top: 0, right: width(root), bottom: height(root) };
    expect(texts.filter(({ box }) => !isInside(box, sheet)).map(({ words }) => words)).toEqual([]);
  });

  it('keeps dimensions outside the piece', () => {
    const [outside] = withClass(root, 'rect', 'outside');
    if (outside === undefined) return expect(withClass(root, 'text', 'figure')).toEqual([]);
    const outline = rectBox(outside);
    const inside = texts.filter(({ text, box }) => classes(text).includes('figure') && overlaps(box, outline));
    expect(inside.map(({ words }) => words)).toEqual([]);
  });

  it('keeps a label either wholly inside its part or wholly outside the piece', () => {
    const [outside] = withClass(root, 'rect', 'outside');
    const outline = outside === undefined ? undefined : rectBox(outside);
    const astray: string[] = [];
    for (const group of partGroups(root).values()) {
      if (withClass(group, 'rect', 'surface').length === 0) continue;
      const surface = surfaceOf(group);
      for (const label of elements(group, 'text')) {
        const box = textBoxOf(label);
        const isOutside = outline === undefined || !overlaps(box, outline);
        if (!isInside(box, surface) && !isOutside) astray.push(label.textContent ?? '');
      }
    }
    expect(astray).toEqual([]);
  });

  it('lets no line run through lettering', () => {
    const struck: string[] = [];
    for (const line of elements(root, 'line')) {
      if (classes(line).some((word) => ['reach', 'edge', 'tick', 'rule', 'frame'].includes(word))) continue;
      const box = {
        left: Math.min(number(line, 'x1'), number(line, 'x2')),
        right: Math.max(number(line, 'x1'), number(line, 'x2')),
        top: Math.min(number(line, 'y1'), number(line, 'y2')),
        bottom: Math.max(number(line, 'y1'), number(line, 'y2')),
      };
      // Only lines along an axis: the box of an oblique one says little.
      if (box.right - box.left > 0.001 && box.bottom - box.top > 0.001) continue;
      for (const { box: other, words } of texts) {
        if (overlaps({ ...box, right: box.right + 1e-6, bottom: box.bottom + 1e-6 }, other))
          struck.push(`${classes(line)} through "${words}"`);
      }
    }
    expect(struck).toEqual([]);
  });

  it('has no letters smaller than 2.5 mm', () => {
    for (const { text } of texts) expect(number(text, 'font-size') * 0.72).toBeGreaterThanOrEqual(2.49);
  });
});

it('gives a front 1 inch high its name by a leader', () => {
  const root = readSvg(toSvg(elevation(pencilChest())));
  const front = partGroups(root).get('pencils/front');
  if (front === undefined) throw new Error('the front is drawn');
  const surface = surfaceOf(front);
  const label = elements(front, 'text').find((text) => (text.textContent ?? '').includes('pencils'));
  const [dot] = withClass(front, 'circle', 'dot');
  if (label === undefined || dot === undefined) throw new Error('label and dot are drawn');
  expect(overlaps(textBoxOf(label), surface)).toBe(false);
  const at = { x: number(dot, 'cx'), y: number(dot, 'cy') };
  expect(surface.left < at.x && at.x < surface.right && surface.top < at.y && at.y < surface.bottom).toBe(true);
});

function width(root: ReturnType<typeof readSvg>): number {
  return Number((root.getAttribute('viewBox') ?? '').split(' ')[2]);
}

function height(root: ReturnType<typeof readSvg>): number {
  return Number((root.getAttribute('viewBox') ?? '').split(' ')[3]);
}
