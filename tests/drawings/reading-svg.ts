import { DOMParser, type Element } from '@xmldom/xmldom';

/** Reads an SVG back as any viewer would and measures it. Fails at once on anything that is not well-formed XML. */

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export function readSvg(svg: string): Element {
  const parser = new DOMParser({
    onError: (level, message) => {
      throw new Error(`${level}: ${message}`);
    },
  });
  const root = parser.parseFromString(svg, 'image/svg+xml').documentElement;
  if (root === null) throw new Error('no root element');
  return root;
}

export function elements(root: Element, name: string): Element[] {
  return Array.from(root.getElementsByTagName(name));
}

export function withClass(root: Element, tag: string, word: string): Element[] {
  return elements(root, tag).filter((element) => classes(element).includes(word));
}

export function classes(element: Element): readonly string[] {
  return (element.getAttribute('class') ?? '').split(' ');
}

export function number(element: Element, attribute: string): number {
  const value = Number(element.getAttribute(attribute) ?? Number.NaN);
  if (!Number.isFinite(value)) throw new Error(`<${element.tagName}> has no number ${attribute}`);
  return value;
}

export function partGroups(root: Element): Map<string, Element> {
  const groups = new Map<string, Element>();
  for (const group of elements(root, 'g')) {
    const id = group.getAttribute('data-part');
    if (id !== null) groups.set(id, group);
  }
  return groups;
}

export function rectBox(rect: Element): Box {
  const left = number(rect, 'x');
  const top = number(rect, 'y');
  return { left, top, right: left + number(rect, 'width'), bottom: top + number(rect, 'height') };
}

/** The exact area of a part. */
export function surfaceOf(group: Element): Box {
  const [surface] = withClass(group, 'rect', 'surface');
  if (surface === undefined) throw new Error(`${group.getAttribute('id')} has no surface`);
  return rectBox(surface);
}

/**
 * Room a text takes, guessed without the product's own tables: digits of a common sans-serif face are 0.556 of its
 * nominal size wide, narrow letters and signs on average 0.34, others 0.57, ideographs 1; capitals reach 0.72 above the baseline, descenders 0.21 below.
 */
export function textBoxOf(text: Element): Box {
  const size = number(text, 'font-size');
  const words = text.textContent ?? '';
  let width = 0;
  for (const character of words) {
    if (/[0-9]/.test(character)) width += 0.556;
    else if (/[\s.,:;'"/()\-ijlrtf|]/.test(character)) width += 0.34;
    else width += /[\u2e80-\uffef]/.test(character) ? 1 : 0.57;
  }
  width *= size;
  const anchor = text.getAttribute('text-anchor');
  const before = anchor === 'middle' ? width / 2 : anchor === 'end' ? width : 0;
  const x = number(text, 'x');
  const y = number(text, 'y');
  const up = 0.72 * size;
  const down = 0.21 * size;
  return text.hasAttribute('transform')
    ? { left: x - up, right: x + down, top: y + before - width, bottom: y + before }
    : { left: x - before, right: x - before + width, top: y - up, bottom: y + down };
}

export function overlaps(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

export function isInside(inner: Box, outer: Box, tolerance = 0.002): boolean {
  return (
    inner.left >= outer.left - tolerance &&
    inner.right <= outer.right + tolerance &&
    inner.top >= outer.top - tolerance &&
    inner.bottom <= outer.bottom + tolerance
  );
}

/** Paper over real size. */
export function scaleOf(root: Element): number {
  return number(root, 'data-paper-per-real');
}
