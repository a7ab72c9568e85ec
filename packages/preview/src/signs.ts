import type { PictureFinding } from '@fettle/protocol';
import { buildSvg } from './build.ts';
import type { NumberedFinding } from './page-state.ts';

/**
 * Signs of findings and frames of lit parts, laid over the drawing. A sign tells its severity by shape and by the
 * number it shares with the list below, never by colour alone. Knows nothing of how the drawing is built: it measures
 * the parts on the screen.
 */

export type Severity = PictureFinding['severity'];

export const severityWords: Readonly<Record<Severity, string>> = { error: 'Error', warning: 'Warning', note: 'Note' };

/** The outline of a sign around (0, 0), of radius 1: an octagon, a triangle, a circle. */
function outline(severity: Severity): SVGElement {
  switch (severity) {
    case 'error':
      return buildSvg('polygon', { points: '-.41,-1 .41,-1 1,-.41 1,.41 .41,1 -.41,1 -1,.41 -1,-.41' });
    case 'warning':
      return buildSvg('polygon', { points: '0,-1.15 1.25,.95 -1.25,.95' });
    case 'note':
      return buildSvg('circle', { r: 1 });
    default:
      return severity satisfies never;
  }
}

function signShape(severity: Severity, number: number): readonly SVGElement[] {
  const label = buildSvg('text', { 'text-anchor': 'middle', y: severity === 'warning' ? 0.7 : 0.45 }, String(number));
  return [outline(severity), label];
}

/** The same sign for the list of findings, as a small picture of its own. */
export function signIcon(severity: Severity, number: number): SVGElement {
  return buildSvg(
    'svg',
    { class: `sign ${severity}`, viewBox: '-1.4 -1.4 2.8 2.8', 'aria-hidden': 'true' },
    ...signShape(severity, number),
  );
}

interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A place where a part is drawn: its outline where that is not square to the sheet, and the box around it. */
export interface Place extends Box {
  /** The corners of its outline, as a polygon has them. */
  readonly points?: string;
}

/**
 * Where each part lies, in the drawing's own units. A part that is drawn in several places, as one glued up from pieces
 * is in a cutting plan, lies in each of them and not in what is between; its lettering and leaders are no part of it.
 */
function measureParts(svg: SVGSVGElement): ReadonlyMap<string, readonly Place[]> {
  const drawn = new Map<string, SVGGraphicsElement[]>();
  for (const element of svg.querySelectorAll<SVGGraphicsElement>('[data-part]')) {
    const part = element.getAttribute('data-part') ?? '';
    drawn.set(part, [...(drawn.get(part) ?? []), element]);
  }
  return new Map([...drawn].map(([part, elements]) => [part, measureAll(svg, elements)]));
}

/** The places of one part alone. */
export function placesOf(svg: SVGSVGElement, part: string): readonly Place[] {
  const drawn = [...svg.querySelectorAll<SVGGraphicsElement>('[data-part]')];
  return measureAll(
    svg,
    drawn.filter((element) => element.getAttribute('data-part') === part),
  );
}

function measureAll(svg: SVGSVGElement, elements: readonly SVGGraphicsElement[]): readonly Place[] {
  const toDrawing = svg.getScreenCTM()?.inverse();
  let places: readonly Place[] = [];
  if (toDrawing === undefined) return places;
  for (const shape of elements.flatMap(shapesOf)) {
    const points = shape.tagName === 'polygon' ? shape.getAttribute('points') : null;
    places = together(places, { ...measure(shape, toDrawing), ...(points === null ? {} : { points }) });
  }
  return places;
}

/** Its area where that is drawn, else its lines. */
function shapesOf(element: SVGGraphicsElement): readonly Element[] {
  const areas = [...element.querySelectorAll(':scope > rect, :scope > polygon')];
  if (areas.length > 0) return areas;
  const lines = [...element.querySelectorAll(':scope > :not(text, .leader)')];
  return lines.length > 0 ? lines : [element];
}

/** The places and one more, which takes in those that it meets. */
function together(places: readonly Place[], more: Place): readonly Place[] {
  const met = places.filter((place) => overlap(place, more));
  const apart = places.filter((place) => !overlap(place, more));
  return [...apart, met.length === 0 ? more : [...met, more].map(boxOf).reduce(around)];
}

function boxOf({ left, top, right, bottom }: Box): Box {
  return { left, top, right, bottom };
}

/** The box around two. */
function around(one: Box, other: Box): Box {
  return {
    left: Math.min(one.left, other.left),
    top: Math.min(one.top, other.top),
    right: Math.max(one.right, other.right),
    bottom: Math.max(one.bottom, other.bottom),
  };
}

/** Where something is written, in the drawing's own units. */
function measureLettering(svg: SVGSVGElement): readonly Box[] {
  const toDrawing = svg.getScreenCTM()?.inverse();
  if (toDrawing === undefined) return [];
  return [...svg.querySelectorAll('text')].map((text) => measure(text, toDrawing));
}

/** The box around what is on the screen, in the drawing's own units. */
function measure(seen: Element, toDrawing: DOMMatrix): Box {
  const { left, top, right, bottom } = seen.getBoundingClientRect();
  const one = new DOMPoint(left, top).matrixTransform(toDrawing);
  const other = new DOMPoint(right, bottom).matrixTransform(toDrawing);
  return { left: one.x, top: one.y, right: other.x, bottom: other.y };
}

function overlap(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}

/**
 * Where signs may stand at a part: along its upper edge from the right corner inwards, along its lower edge, up its
 * sides; then just outside it. The first place is taken where there is no better one.
 */
function* signPlaces(box: Box, radius: number): Generator<{ readonly x: number; readonly y: number }> {
  const pitch = radius * 2.8;
  const inset = radius * 1.5;
  const along = Math.max(1, Math.min(30, Math.floor((box.right - box.left) / pitch)));
  const down = Math.max(1, Math.min(30, Math.floor((box.bottom - box.top) / pitch)));
  for (const y of [box.top + inset, box.bottom - inset]) {
    for (let turn = 0; turn < along; turn++) yield { x: box.right - inset - turn * pitch, y };
  }
  for (const x of [box.right - inset, box.left + inset]) {
    for (let turn = 0; turn < down; turn++) yield { x, y: box.top + inset + turn * pitch };
  }
  for (let turn = 0; turn < along; turn++) yield { x: box.right - inset - turn * pitch, y: box.top - inset };
  for (const x of [box.right + inset, box.left - inset]) yield { x, y: (box.top + box.bottom) / 2 };
}

/** A place for a sign off all that is `taken`. */
function placeSign(box: Box, radius: number, taken: readonly Box[]): Box {
  const signAt = ({ x, y }: { readonly x: number; readonly y: number }): Box => ({
    left: x - radius * 1.3,
    top: y - radius * 1.3,
    right: x + radius * 1.3,
    bottom: y + radius * 1.3,
  });
  for (const place of signPlaces(box, radius)) {
    const sign = signAt(place);
    if (!taken.some((other) => overlap(sign, other))) return sign;
  }
  return signAt({ x: box.right - radius * 1.5, y: box.top + radius * 1.5 });
}

/** Follows the outline of a part that is not square to the sheet. */
export function frameAround(place: Place, named: Readonly<Record<string, string>>): SVGElement {
  if (place.points !== undefined) return buildSvg('polygon', { ...named, points: place.points });
  return buildSvg('rect', {
    ...named,
    x: place.left,
    y: place.top,
    width: Math.max(0, place.right - place.left),
    height: Math.max(0, place.bottom - place.top),
  });
}

/** Points at the one of several that the search stands at: an arrow at its left edge, inside it where it has room. */
function pointer(box: Box, unit: number): SVGElement {
  const y = (box.top + box.bottom) / 2;
  const back = box.right - box.left > 24 * unit ? box.left + 2 * unit : box.left - 16 * unit;
  const [tip, half] = [back + 18 * unit, 10 * unit];
  return buildSvg('polygon', {
    'data-key': 'pointer',
    class: 'pointer',
    points: `${tip},${y} ${back},${y - half} ${back},${y + half}`,
  });
}

/**
 * The numbers of cuts, and words beside them, stand on the edges of parts: once more over the frames, which would
 * strike them through.
 */
export function cutNumbers(svg: SVGSVGElement): readonly Node[] {
  return [...svg.querySelectorAll('.stock > circle.symbol, .stock > text')].map((drawn) => {
    const again = drawn.cloneNode(true) as Element;
    if (again.tagName === 'circle') again.setAttribute('fill', 'var(--fettle-paper, none)');
    return again;
  });
}

export interface Marked {
  /** Those whose signs stand in the drawing. */
  readonly findings: readonly NumberedFinding[];
  readonly lit: readonly string[];
  readonly chosen: string;
  /** What the search has found. */
  readonly found: readonly string[];
}

/** The overlay for `svg`, which must be on the screen. Signs and frames keep their size at any zoom. */
export function buildOverlay(svg: SVGSVGElement, marked: Marked): SVGGElement {
  const boxes = measureParts(svg);
  const unitsPerPixel = 1 / (svg.getScreenCTM()?.a || 1);
  const radius = 8 * unitsPerPixel;
  const overlay = buildSvg('g', { 'data-key': 'overlay', class: 'overlay', 'aria-hidden': 'true' });
  const isCurrent = (part: string) => part === marked.chosen && marked.found.includes(part);
  for (const [part, places] of boxes) {
    const kinds = [
      marked.lit.includes(part) ? 'lit' : '',
      part === marked.chosen ? 'chosen' : '',
      isCurrent(part) ? 'current' : '',
      marked.found.includes(part) ? 'found' : '',
    ].filter(Boolean);
    if (kinds.length === 0) continue;
    const frames = places.map((place, at) =>
      frameAround(place, {
        'data-key': `frame ${part}${at === 0 ? '' : ` ${at}`}`,
        class: `frame ${kinds.join(' ')}`,
      }),
    );
    overlay.append(...frames);
    const [first] = places;
    if (first !== undefined && isCurrent(part)) overlay.append(pointer(first, unitsPerPixel));
  }
  if (overlay.hasChildNodes()) overlay.append(...cutNumbers(svg));
  const taken = marked.findings.length === 0 ? [] : [...measureLettering(svg)];
  for (const { finding, number } of marked.findings) {
    for (const part of new Set(finding.parts)) {
      const [box] = boxes.get(part) ?? [];
      if (box === undefined) continue;
      const sign = placeSign(box, radius, taken);
      taken.push(sign);
      const [x, y] = [(sign.left + sign.right) / 2, (sign.top + sign.bottom) / 2];
      overlay.append(
        buildSvg(
          'g',
          {
            'data-key': `sign ${number} ${part}`,
            class: `sign ${finding.severity}`,
            transform: `translate(${x} ${y}) scale(${radius})`,
          },
          ...signShape(finding.severity, number),
        ),
      );
    }
  }
  return overlay;
}
