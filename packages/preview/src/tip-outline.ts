import { buildSvg } from './build.ts';
import type { Place } from './signs.ts';
import { cutNumbers, frameAround, placesOf } from './signs.ts';

/**
 * Which part the words beside it are about: two lines around it on the drawing, or around its row of a table. Two thin
 * lines with paper between them are like nothing that is drawn, and no other frame has them. They lie just outside the
 * part: what is written on it stays, and a frame that it has for another reason.
 */

/** From the part's edge to the middle of the lines, in pixels. */
const off = 4;

/** Outlines `part` and no other in `sheet`, which must be on the screen; none where it is empty. */
export function outlineExplained(sheet: Element, part: string): void {
  for (const row of sheet.querySelectorAll('tr[data-explained]')) row.removeAttribute('data-explained');
  for (const group of sheet.querySelectorAll('.explained-part')) group.remove();
  if (part === '') return;
  for (const row of sheet.querySelectorAll('tr[data-part]')) {
    if (row.getAttribute('data-part') === part) row.setAttribute('data-explained', '');
  }
  const svg = sheet.querySelector<SVGSVGElement>(':scope > svg');
  const overlay = svg?.querySelector(':scope > .overlay');
  if (!svg || !overlay) return;
  const distance = off / (svg.getScreenCTM()?.a || 1);
  const places = placesOf(svg, part).map((place) => widened(place, distance));
  const lines = ['explained', 'explained between'].flatMap((kind) =>
    places.map((place) => frameAround(place, { class: `frame ${kind}` })),
  );
  overlay.prepend(buildSvg('g', { class: 'explained-part' }, ...lines, ...cutNumbers(svg)));
}

function widened({ left, top, right, bottom, points }: Place, by: number): Place {
  const box = { left: left - by, top: top - by, right: right + by, bottom: bottom + by };
  return points === undefined ? box : { ...box, points: outsideOf(points, by) };
}

interface Corner {
  readonly x: number;
  readonly y: number;
}

/** Sharp corners are cut off at so many times the distance. */
const sharpest = 2;

/** The corners of an outline that runs `by` outside the one given, whichever way round that goes. */
function outsideOf(points: string, by: number): string {
  const corners = points
    .trim()
    .split(/\s+/)
    .map((pair) => pair.split(',').map(Number))
    .map(([x = 0, y = 0]): Corner => ({ x, y }));
  const after = (at: number) => corners[(at + 1) % corners.length] as Corner;
  const twiceArea = corners.reduce((sum, { x, y }, at) => sum + x * after(at).y - after(at).x * y, 0);
  const outwards = corners.map((corner, at): Corner => {
    const [across, down] = [after(at).x - corner.x, after(at).y - corner.y];
    const length = Math.hypot(across, down) * (twiceArea < 0 ? -1 : 1) || 1;
    return { x: down / length, y: -across / length };
  });
  const moved = corners.map(({ x, y }, at) => {
    const one = outwards[(at + corners.length - 1) % corners.length] as Corner;
    const other = outwards[at] as Corner;
    const along = { x: one.x + other.x, y: one.y + other.y };
    const square = along.x ** 2 + along.y ** 2;
    const reach = square === 0 ? 0 : Math.min((2 * by) / square, (sharpest * by) / Math.sqrt(square));
    return `${x + along.x * reach},${y + along.y * reach}`;
  });
  return moved.join(' ');
}
