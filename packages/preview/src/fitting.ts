/**
 * What `fit` comes to: the drawing as large as the sheet allows, with the notes and all the paper where these cost it
 * little; of what would be too small to be read then, the beginning, to be read on downwards, or the middle of what is
 * one drawing.
 */

/** In the drawing's own units. */
export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Fit {
  /** What one looks at, with a little room around it. */
  readonly frame: Frame;
  /** What the sheet is to hold. */
  readonly shown: Frame;
  readonly pixelsPerUnit: number;
  /** It is read from its upper left corner on; else it lies in the middle. */
  readonly isRead: boolean;
}

/** Room around what is looked at, as a share of it. */
const margin = 0.03;
/** What is looked at may shrink to this share of its frame before the frame follows. */
const slack = 0.8;
/** Notes and paper are shown along where the drawing keeps this share of its size and its lettering can be read. */
const keptBesideNotes = 0.85;
/** Lettering smaller than this, in pixels, is not read: of several things one looks at one after the other then. */
const leastLetters = 9;
/** A thing that is looked at alone is not made larger than this makes its lettering. */
const mostLetters = 16;

function framesOf(words: string | null): readonly Frame[] {
  return (words ?? '').split(',').flatMap((each) => {
    const [x, y, width, height] = each.trim().split(' ').map(Number);
    if (x === undefined || y === undefined || width === undefined || height === undefined) return [];
    return [x, y].every(Number.isFinite) && width > 0 && height > 0 ? [{ x, y, width, height }] : [];
  });
}

function withRoom({ x, y, width, height }: Frame): Frame {
  const room = margin * Math.max(width, height);
  return { x: x - room, y: y - room, width: width + 2 * room, height: height + 2 * room };
}

/** The frame to fit: the one before as long as it still serves, so that nothing jumps while figures grow and shrink. */
function frameFor(svg: SVGSVGElement, before: Frame | undefined): Frame | undefined {
  const [looked] = framesOf(svg.getAttribute('data-focus'));
  if (looked === undefined) return undefined;
  const focus = withRoom(looked);
  if (before === undefined) return focus;
  const room = (margin * Math.max(focus.width, focus.height)) / 2;
  const holds =
    before.x <= focus.x + room &&
    before.y <= focus.y + room &&
    focus.x + focus.width - room <= before.x + before.width &&
    focus.y + focus.height - room <= before.y + before.height;
  const serves = focus.width >= before.width * slack || focus.height >= before.height * slack;
  return holds && serves ? before : focus;
}

type Room = Pick<HTMLElement, 'clientWidth' | 'clientHeight'>;

function scaleTo(sheet: Room, { width, height }: Pick<Frame, 'width' | 'height'>): number {
  return Math.min(sheet.clientWidth / width, sheet.clientHeight / height);
}

/** Whether there is something to fit: a drawing that says nothing of it is looked at whole. */
export function canFit(svg: SVGSVGElement): boolean {
  return frameFor(svg, undefined) !== undefined;
}

/** `before`: what was shown of the same sheet in the same room; it stays as long as it serves. */
export function fitFor(sheet: Room, svg: SVGSVGElement, before: Fit | undefined): Fit | undefined {
  const frame = frameFor(svg, before?.frame);
  if (frame === undefined || frame === before?.frame) return before;
  const pixelsPerUnit = scaleTo(sheet, frame);
  const letters = smallestLettering(svg);
  const items = framesOf(svg.getAttribute('data-items'));
  if (items.length > 0 && letters !== undefined && pixelsPerUnit * letters < leastLetters) {
    return { frame, isRead: true, ...beginning(sheet, frame, items, letters) };
  }
  if (svg.hasAttribute('data-dense') && letters !== undefined && pixelsPerUnit * letters < leastLetters) {
    return { frame, shown: frame, pixelsPerUnit: leastLetters / letters, isRead: false };
  }
  // Notes that were not there do not come up because a figure has grown: the drawing would shrink for them.
  if (before !== undefined && before.shown === before.frame) {
    return { frame, shown: frame, pixelsPerUnit, isRead: false };
  }
  const least = Math.max(keptBesideNotes * pixelsPerUnit, leastLetters / (letters ?? Number.POSITIVE_INFINITY));
  const shown = surroundings(svg, frame).find((wider) => scaleTo(sheet, wider) >= least);
  return { frame, shown: shown ?? frame, pixelsPerUnit: scaleTo(sheet, shown ?? frame), isRead: false };
}

function smallestLettering(svg: SVGSVGElement): number | undefined {
  const sizes = [...svg.querySelectorAll('text[font-size]')].map((text) => Number(text.getAttribute('font-size')));
  const least = Math.min(...sizes.filter((size) => size > 0));
  return Number.isFinite(least) ? least : undefined;
}

/** As many columns as can be read side by side, the first at least; the rest lies below and beside them. */
function beginning(
  sheet: Room,
  frame: Frame,
  items: readonly Frame[],
  letters: number,
): Pick<Fit, 'shown' | 'pixelsPerUnit'> {
  const least = leastLetters / letters;
  const ends = [...new Set(items.map(({ x, width }) => x + width))].sort((one, other) => other - one);
  // A column ends where nothing reaches across.
  const columns = ends.filter((end) => items.every(({ x, width }) => x + width <= end + 0.5 || x >= end - 0.5));
  for (const end of columns) {
    const inside = items.filter(({ x, width }) => x + width <= end + 0.5);
    const [first] = inside;
    if (first === undefined) continue;
    const left = Math.min(...inside.map(({ x }) => x));
    const row = inside.filter(({ y }) => y < first.y + first.height);
    const height = Math.max(...row.map((item) => item.y + item.height)) - first.y;
    const shown = withRoom({ x: left, y: first.y, width: end - left, height });
    const wide = sheet.clientWidth / shown.width;
    if (wide < least) continue;
    const low = Math.max(least, Math.min(sheet.clientHeight / shown.height, mostLetters / letters));
    return { shown, pixelsPerUnit: Math.min(wide, low) };
  }
  return { shown: frame, pixelsPerUnit: least };
}

/** The drawing with all its paper, with all that is written around it, with some of that: the widest first. */
function surroundings(svg: SVGSVGElement, frame: Frame): readonly Frame[] {
  const { x, y, width, height } = svg.viewBox.baseVal;
  const written = furnitureOf(svg)
    .filter((group) => group.querySelector('text') !== null)
    .map((group) => withRoom(group.getBBox()));
  const around = written.length < 2 ? [] : [written.reduce(union, frame)];
  return [{ x, y, width, height }, ...around, ...written.map((each) => union(frame, each))];
}

function union(one: Frame, other: Frame): Frame {
  const x = Math.min(one.x, other.x);
  const y = Math.min(one.y, other.y);
  return {
    x,
    y,
    width: Math.max(one.x + one.width, other.x + other.width) - x,
    height: Math.max(one.y + one.height, other.y + other.height) - y,
  };
}

/** What stands on the paper beside the drawing: frame, title block, notes, keys. */
function furnitureOf(svg: SVGSVGElement): readonly SVGGraphicsElement[] {
  const [focus] = framesOf(svg.getAttribute('data-focus'));
  if (focus === undefined) return [];
  const groups = svg.querySelectorAll<SVGGraphicsElement>(':scope > g:not(.overlay, .divisions, [data-part])');
  return [...groups].filter((group) => {
    if (group.querySelector('[data-part]') !== null) return false;
    const box = group.getBBox();
    const isInside =
      box.x >= focus.x - 0.5 &&
      box.y >= focus.y - 0.5 &&
      box.x + box.width <= focus.x + focus.width + 0.5 &&
      box.y + box.height <= focus.y + focus.height + 0.5;
    return !isInside && (box.width > 0 || box.height > 0);
  });
}

/** Puts out of sight what would stand half beyond the edge of the sheet, unless the reader has `panned` there. */
export function setAside(sheet: HTMLElement, svg: SVGSVGElement, panned: boolean): void {
  for (const group of svg.querySelectorAll(':scope > [data-aside]')) group.removeAttribute('data-aside');
  const toDrawing = svg.getScreenCTM()?.inverse();
  if (panned || toDrawing === undefined) return;
  const { left, top } = sheet.getBoundingClientRect();
  const [right, bottom] = [left + sheet.clientLeft + sheet.clientWidth, top + sheet.clientTop + sheet.clientHeight];
  const low = new DOMPoint(left + sheet.clientLeft, top + sheet.clientTop).matrixTransform(toDrawing);
  const high = new DOMPoint(right, bottom).matrixTransform(toDrawing);
  for (const group of furnitureOf(svg)) {
    const { x, y, width, height } = group.getBBox();
    const isWhole = x >= low.x - 0.5 && y >= low.y - 0.5 && x + width <= high.x + 0.5 && y + height <= high.y + 0.5;
    if (!isWhole) group.setAttribute('data-aside', '');
  }
}
