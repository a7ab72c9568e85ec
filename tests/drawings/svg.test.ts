import { elevation, toSvg } from '@fettle/drawings';
import { describe, expect, it } from 'vitest';
import { evaluatedSideboard, gallery, named } from './pieces-to-draw.ts';
import { elements, number, partGroups, readSvg } from './reading-svg.ts';

/** What a page, a file and a screen reader may rely on, whatever the names are. */

const page = toSvg(elevation(evaluatedSideboard()));
const file = toSvg(elevation(evaluatedSideboard()), { standalone: true });

describe('in a page', () => {
  it('passes the strictest security policy: no styles, no scripts, no links', () => {
    const root = readSvg(page);
    for (const element of elements(root, '*')) {
      expect(['style', 'script', 'a', 'image', 'use', 'foreignObject']).not.toContain(element.tagName);
      for (const attribute of Array.from(element.attributes)) {
        expect(attribute.name).not.toMatch(/^(style|on.*|href|xlink:.*)$/);
      }
    }
    expect(page).not.toMatch(/url\(/);
  });

  it('takes its colours from the page', () => {
    const root = readSvg(page);
    const colours = elements(root, '*').flatMap((element) => [
      element.getAttribute('fill'),
      element.getAttribute('stroke'),
    ]);
    const used = new Set(colours.filter((colour) => colour !== null && colour !== 'none'));
    expect(used.size).toBeGreaterThan(1);
    for (const colour of used) expect(colour).toMatch(/^var\(--fettle-[a-z]+, (currentColor|none)\)$/);
  });

  it('makes every part focusable and gives it a name', () => {
    const groups = partGroups(readSvg(page));
    expect(groups.size).toBeGreaterThan(15);
    for (const group of groups.values()) {
      expect(group.getAttribute('tabindex')).toBe('0');
      expect(group.getAttribute('role')).toBe('button');
      expect(group.getAttribute('aria-label')).toMatch(/^.+, mark [A-Z]+\d*$/);
    }
    expect(groups.get('cards/front')?.getAttribute('aria-label')).toContain('drawer front "cards"');
  });

  it('gives dashed parts something broader to click on', () => {
    const shelf = partGroups(readSvg(page)).get('left/shelf-1');
    const reaches =
      shelf === undefined ? [] : elements(shelf, 'line').filter((line) => line.getAttribute('class') === 'reach');
    expect(reaches.length).toBeGreaterThan(0);
    for (const reach of reaches) expect(number(reach, 'stroke-width')).toBeGreaterThan(2);
  });

  it('has a title and a description that it is labelled by', () => {
    const root = readSvg(page);
    const byId = (attribute: string) =>
      elements(root, '*').find((element) => element.getAttribute('id') === root.getAttribute(attribute))?.textContent;
    expect(byId('aria-labelledby')).toBe('Front elevation of Games sideboard');
    expect(byId('aria-describedby')).toContain('60" wide, 34" high and 17" deep over all');
  });
});

describe('as a file', () => {
  it('stands alone: size in millimetres, colours of its own', () => {
    const root = readSvg(file);
    expect(root.getAttribute('width')).toBe('279.4mm');
    expect(root.getAttribute('height')).toBe('215.9mm');
    expect(file).not.toContain('var(');
    expect(file).not.toContain('currentColor');
    expect(elements(root, 'style')).toHaveLength(1);
  });
});

it('every letter has a rim in the colour of its ground, behind it', () => {
  const root = readSvg(file);
  expect(root.getAttribute('paint-order')).toBe('stroke');
  const texts = elements(root, 'text');
  const grounds = new Map(texts.map((text) => [text.textContent, text.getAttribute('stroke')]));
  expect(grounds.get('cards')).toBe('#f7f0e2');
  expect(grounds.get('Games sideboard')).toBe('#ffffff');
  for (const text of texts) {
    expect(Number(text.getAttribute('stroke-width'))).toBeGreaterThan(0.8);
    expect(text.getAttribute('fill')).not.toBe(text.getAttribute('stroke'));
  }
});

it.each(Object.entries(gallery))('gives unique ids, short numbers and the same bytes twice: %s', (_, make) => {
  const svg = toSvg(elevation(make()));
  const ids = elements(readSvg(svg), '*')
    .map((element) => element.getAttribute('id'))
    .filter((id) => id !== null);
  expect(new Set(ids).size).toBe(ids.length);
  for (const id of ids) expect(id).toMatch(/^[A-Za-z][\w.-]*$/);
  for (const element of elements(readSvg(svg), '*')) {
    for (const name of ['x', 'y', 'x1', 'y1', 'x2', 'y2', 'width', 'height', 'points', 'cx', 'cy', 'transform']) {
      expect(element.getAttribute(name) ?? '').not.toMatch(/\.\d{4}|NaN|Infinity|undefined|-0(?![.\d])/);
    }
  }
  // Made-up origins differ between two runs; nothing of them may reach the file.
  expect(toSvg(elevation(make())) === svg).toBe(true);
});

describe('names', () => {
  const hostile = [
    '</text><script>alert(1)</script>',
    '"><img src=x onerror=alert(1)>',
    "' onload='alert(1)",
    '&lt;b&gt; &amp; ]]> <!-- --> <?x?>',
    'nul \u0000 bell \u0007 escape \u001b del \u007f end \uffff',
    'half \ud800 character \udc00 here',
    'right \u202e to left \u2066 isolate',
    'two\nlines\tand\r\nmore',
    '',
    ' ',
    '😀 drawer 👩‍👩‍👧',
    'constructor',
    '__proto__',
  ];

  it.each(hostile)('%j stays a name', (name) => {
    for (const options of [{}, { standalone: true }]) {
      const root = readSvg(toSvg(elevation(named(name)), options));
      const tags = new Set(elements(root, '*').map((element) => element.tagName));
      for (const tag of ['script', 'img', 'b', 'a']) expect(tags).not.toContain(tag);
      for (const element of elements(root, '*')) {
        for (const attribute of Array.from(element.attributes)) expect(attribute.name).not.toMatch(/^on/);
      }
      // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for.
      expect(root.textContent ?? '').not.toMatch(/[\u0000-\u0008\u000b-\u001f\u202a-\u202e\u2066-\u2069]/);
    }
  });

  it('come out of the file as they went in, where they are ordinary', () => {
    const root = readSvg(toSvg(elevation(named('Tom & Ann\'s <"best">'))));
    expect(elements(root, 'text').map((text) => text.textContent)).toContain('Tom & Ann\'s <"best">');
    expect([...partGroups(root).keys()].some((id) => id.startsWith('row/Tom & Ann\'s <"best">/'))).toBe(true);
  });

  it('of 100,000 characters are cut with an ellipsis and do not swell the lettering', () => {
    const root = readSvg(toSvg(elevation(named('blanket '.repeat(12_500)))));
    const longest = elements(root, 'text')
      .map((text) => text.textContent ?? '')
      .sort((a, b) => b.length - a.length)[0];
    expect(longest?.length).toBeLessThan(160);
    expect(elements(root, 'text').some((text) => (text.textContent ?? '').endsWith('…'))).toBe(true);
    for (const element of elements(root, '*')) expect((element.getAttribute('id') ?? '').length).toBeLessThan(120);
  });
});
