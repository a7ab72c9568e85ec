/**
 * Where the words about a part may lie on the screen: off the part, off figures, dimensions and names, as near as that
 * allows. Knows nothing of what they say.
 */

/** From the part to its words, in pixels. */
const distance = 8;
/** Places across and down the sheet that are tried besides those at the part. */
const tried = 12;

/** What it costs to cover something, or to lie far away. */
const costs = { part: 100, writing: 4, dimension: 3, otherPart: 0.3, outsideSheet: 2, farAway: 1 / 120 } as const;

interface Size {
  readonly width: number;
  readonly height: number;
}

interface Place {
  readonly left: number;
  readonly top: number;
}

interface Box extends Place {
  readonly right: number;
  readonly bottom: number;
}

export function bestPlace(anchor: Element, size: Size): Place {
  const sheet = anchor.closest('#sheet')?.getBoundingClientRect();
  const room = { left: 0, top: 0, right: window.innerWidth, bottom: window.innerHeight };
  const part = areaOf(anchor);
  const covers = thingsToCover(anchor);
  let best: { readonly place: Place; readonly cost: number } | undefined;
  for (const wished of places(part, size, sheet ?? room)) {
    const place = {
      left: kept(wished.left, size.width, room.left, room.right),
      top: kept(wished.top, size.height, room.top, room.bottom),
    };
    const cost = costOf(place, size, part, covers, sheet ?? room);
    if (best === undefined || cost < best.cost) best = { place, cost };
  }
  return best?.place ?? { left: distance, top: distance };
}

function areaOf(element: Element): DOMRect {
  return (element.querySelector(':scope > rect, :scope > polygon') ?? element).getBoundingClientRect();
}

function kept(place: number, size: number, low: number, high: number): number {
  return Math.max(low + distance, Math.min(place, high - size - distance));
}

interface Covers {
  readonly box: Box;
  readonly cost: number;
}

/** What the drawing around the part shows. */
function thingsToCover(anchor: Element): readonly Covers[] {
  const svg = anchor.closest('svg');
  if (svg === null) return [];
  const found = (selector: string, cost: number): readonly Covers[] =>
    [...svg.querySelectorAll(`${selector}:not([data-aside] *, .overlay *)`)].map((each) => ({
      box: each.getBoundingClientRect(),
      cost,
    }));
  const others = [...svg.querySelectorAll('[data-part]')].filter((each) => each !== anchor);
  return [
    ...found('text', costs.writing),
    ...found('.measure > line', costs.dimension),
    ...others.map((each) => ({ box: areaOf(each), cost: costs.otherPart })),
  ];
}

/** Around the part, below the sheet, and all over it. */
function* places(part: Box, { width, height }: Size, sheet: Box): Generator<Place> {
  for (const top of [part.bottom + distance, part.top - distance - height]) {
    for (const left of [part.left, (part.left + part.right - width) / 2, part.right - width]) yield { left, top };
  }
  for (const left of [part.right + distance, part.left - distance - width]) {
    for (const top of [part.top, (part.top + part.bottom - height) / 2, part.bottom - height]) yield { left, top };
  }
  // Below the sheet, where no drawing is covered.
  const middle = (part.left + part.right - width) / 2;
  for (const left of [middle, sheet.left, sheet.right - width]) yield { left, top: window.innerHeight - height };
  for (let down = 0; down <= tried; down++) {
    for (let across = 0; across <= tried; across++) {
      yield {
        left: sheet.left + ((sheet.right - sheet.left - width) * across) / tried,
        top: sheet.top + ((sheet.bottom - sheet.top - height) * down) / tried,
      };
    }
  }
}

function costOf({ left, top }: Place, { width, height }: Size, part: Box, covers: readonly Covers[], sheet: Box) {
  const box = { left, top, right: left + width, bottom: top + height };
  let cost = overlaps(box, part) ? costs.part : 0;
  for (const thing of covers) if (overlaps(box, thing.box)) cost += thing.cost;
  const isInside =
    box.left >= sheet.left && box.right <= sheet.right && box.top >= sheet.top && box.bottom <= sheet.bottom;
  if (!isInside) cost += costs.outsideSheet;
  const across = Math.max(part.left - box.right, 0, box.left - part.right);
  const down = Math.max(part.top - box.bottom, 0, box.top - part.bottom);
  return cost + Math.hypot(across, down) * costs.farAway;
}

function overlaps(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}
