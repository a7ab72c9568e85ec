import { brokenAround } from './broken-lines.ts';
import { clearOfFronts, isCoveredByFronts } from './clear-of-fronts.ts';
import { arrowBox, type Lettering, letteringInside } from './front-lettering.ts';
import { centredText, cleanName, LETTER_HEIGHTS_MM, textBox } from './lettering.ts';
import { type Pens, penMm } from './line-types.ts';
import type { LabelZone, MovedLabel } from './moved-labels.ts';
import { boxOnPaper, type PartInView, type Projection, type PullInView, type ViewOfParts } from './parts-in-view.ts';
import {
  type Arrow,
  type Box,
  boxesOverlap,
  type Group,
  type Line,
  line,
  type Point,
  type Primitive,
  type Text,
} from './primitives.ts';
import { shapedOutline } from './shaped-outline.ts';
import { paperLine } from './views/composed-view.ts';
import type { EdgeStretch } from './visible-edges.ts';

/**
 * Draws the parts of a view, each as one group: outline, hidden edges, swing, grain arrow and lettering. Knows nothing
 * of dimensions or of the sheet.
 */

export interface PartLettering {
  readonly inside: ReadonlyMap<string, Lettering>;
  readonly arrows: ReadonlyMap<string, Arrow>;
  /** Marks standing on their part, between its hidden edges. */
  readonly onHidden: ReadonlyMap<string, Text>;
  readonly moved: readonly MovedLabel[];
  readonly frontsWithoutArrow: number;
  readonly boxes: readonly Box[];
}

/** Fragments of a longer edge below this length on paper are specks, seen through a gap. */
const SPECK_MM = 0.6;

/** A dot has to stand on what is left of a part between fronts. */
const DOT_ROOM_MM = 1;

export function letterParts({ parts, pulls }: ViewOfParts, to: Projection): PartLettering {
  const inside = new Map<string, Lettering>();
  const arrows = new Map<string, Arrow>();
  const moved: MovedLabel[] = [];
  const boxes: Box[] = [];
  let frontsWithoutArrow = 0;
  const hidden = parts.filter((entry) => !isDrawnSolid(entry.edges.seen, to) && entry.edges.hidden.length > 0);
  const dashed = hidden.map((entry) => boxOnPaper(entry.slab, to));
  const pullBoxes = pulls.map(({ slab }) => boxOnPaper(slab, to));
  const fronts = parts.filter(({ isFront }) => isFront).map(({ slab }) => slab);
  for (const { part, name, slab, edges, isFront } of parts) {
    if (!isFront && !isDrawnSolid(edges.seen, to)) continue;
    const box = boxOnPaper(isFront ? slab : clearOfFronts(slab, fronts, DOT_ROOM_MM / to.factor), to);
    const words = cleanName(name);
    const mark = cleanName(part.mark);
    const grain = isFront && part.grain !== 'none' && part.grain !== 'z' ? part.grain : undefined;
    const { lettering, arrow } = letteringInside(
      box,
      words,
      mark,
      grain,
      dashed,
      isFront ? pullBoxes.filter((pull) => boxesOverlap(pull, box)) : [],
    );
    if (lettering !== undefined) {
      inside.set(part.id, lettering);
      boxes.push(lettering.box);
    } else if (
      (words !== '' || mark !== '') &&
      part.role !== 'divider-rail' &&
      (isFront || !isCoveredByFronts(slab, fronts))
    )
      // What fronts cover has its mark on the inside elevation. Beside a foot stand the dimensions: its mark is enough.
      moved.push({ id: part.id, mark, name: part.role === 'foot' ? '' : words, box });
    if (grain === undefined) continue;
    if (arrow === undefined) frontsWithoutArrow += 1;
    else {
      arrows.set(part.id, arrow);
      boxes.push(arrowBox(arrow));
    }
  }
  const onHidden = marksOnHidden(parts, to, boxes);
  for (const text of onHidden.values()) boxes.push(textBox(text));
  return { inside, arrows, onHidden, moved, frontsWithoutArrow, boxes };
}

/**
 * A mark for each part that is hidden, where it stays inside one front and touches no other lettering. It stands on the
 * middle of its part, between the dashed lines: beside them it would be taken for something on the front. What is
 * hidden behind the joint of two fronts, as dividers are, has its mark on the inside elevation.
 */
function marksOnHidden(parts: readonly PartInView[], to: Projection, taken: readonly Box[]): ReadonlyMap<string, Text> {
  const fronts = parts.filter((entry) => entry.isFront).map((entry) => boxOnPaper(entry.slab, to));
  const marks = new Map<string, Text>();
  const boxes = [...taken];
  for (const { part, slab, edges } of parts) {
    if (isDrawnSolid(edges.seen, to) || !isMostlyDashed(edges.hidden, slab)) continue;
    const box = boxOnPaper(slab, to);
    const y = (box.top + box.bottom) / 2;
    const words = {
      role: 'mark',
      text: cleanName(part.mark),
      height: LETTER_HEIGHTS_MM.small,
      runs: 'across',
    } as const;
    const free = [0.1, 0.9, 0.3, 0.7, 0.05, 0.95, 0.2, 0.8]
      .map((share) => centredText(words, { x: box.left + share * (box.right - box.left), y }))
      .find((text) => {
        const place = textBox(text);
        return (
          fronts.some((front) => contains(front, place, 0.8)) && !boxes.some((other) => boxesOverlap(place, other, 0.8))
        );
      });
    if (free === undefined) continue;
    marks.set(part.id, free);
    boxes.push(textBox(free));
  }
  return marks;
}

/** Of some parts, such as the runners behind a rail, too little is drawn to hang a mark on. */
function isMostlyDashed(hidden: readonly EdgeStretch[], slab: PartInView['slab']): boolean {
  const dashed = hidden.reduce((sum, stretch) => sum + stretch.to - stretch.from, 0);
  return dashed > slab.x1 - slab.x0 + slab.y1 - slab.y0;
}

function contains(outer: Box, inner: Box, margin: number): boolean {
  return (
    outer.left + margin <= inner.left &&
    inner.right + margin <= outer.right &&
    outer.top + margin <= inner.top &&
    inner.bottom + margin <= outer.bottom
  );
}

/** Back to front, so that what is nearer takes the click; parts drawn only dashed come last. */
export function partGroups(
  parts: readonly PartInView[],
  to: Projection,
  pens: Pens,
  lettering: PartLettering,
  zones: readonly LabelZone[],
  writing: readonly Box[],
): readonly Group[] {
  const solid: PartInView[] = [];
  const dashed: PartInView[] = [];
  for (const entry of parts) {
    if (isDrawnSolid(entry.edges.seen, to) || entry.part.role === 'back') {
      if (entry.seen) solid.push(entry);
    } else if (entry.edges.hidden.length > 0) dashed.push(entry);
    else if (entry.seen && !entry.part.role.startsWith('drawer-')) solid.push(entry);
  }
  solid.sort((a, b) => b.slab.depth - a.slab.depth || b.slab.order - a.slab.order);
  return [...solid, ...dashed].map((entry): Group => {
    const { part, isFront } = entry;
    const box = boxOnPaper(entry.slab, to);
    const children: Primitive[] = [];
    if (!dashed.includes(entry)) children.push(...outlineOf(entry, box, to, pens));
    for (const stretch of entry.edges.hidden) {
      if (isSpeck(stretch, entry, to)) continue;
      children.push(...brokenAround(edgeLine(stretch, to, entry, 'hidden', 0), writing));
    }
    for (const swing of swingLines(entry, box)) children.push(...brokenAround(swing, writing));
    const arrow = lettering.arrows.get(part.id);
    if (arrow !== undefined) children.push(arrow);
    children.push(...(lettering.inside.get(part.id)?.texts ?? []));
    const mark = lettering.onHidden.get(part.id);
    if (mark !== undefined) children.push(mark);
    for (const zone of zones) {
      const placed = zone.placed.find((label) => label.id === part.id);
      if (placed !== undefined) children.push(...leaderTo(placed.leader, writing), placed.text);
    }
    return {
      kind: 'group',
      id: `part-${part.id}`,
      name: isFront ? `part front ${part.role}` : `part ${part.role}`,
      part: { id: part.id, origin: part.origin, label: `${cleanName(part.label)}, mark ${cleanName(part.mark)}` },
      children,
    };
  });
}

/** Pulls as they stand on their fronts, nearest of all. */
export function pullGroups(pulls: readonly PullInView[], to: Projection): readonly Group[] {
  return pulls.map(({ id, slab, isRound }): Group => {
    const { left, right, top, bottom } = boxOnPaper(slab, to);
    const centre = { x: (left + right) / 2, y: (top + bottom) / 2 };
    const outline: Primitive = isRound
      ? { kind: 'circle', role: 'edge', centre, radius: (right - left) / 2, filled: false }
      : {
          kind: 'polyline',
          role: 'edge',
          closed: true,
          points: [
            { x: left, y: top },
            { x: right, y: top },
            { x: right, y: bottom },
            { x: left, y: bottom },
          ],
        };
    return { kind: 'group', id: `hardware-${id}`, name: 'hardware pull', children: [outline] };
  });
}

function isDrawnSolid(seen: readonly EdgeStretch[], to: Projection): boolean {
  return (
    seen.some((stretch) => (stretch.to - stretch.from) * to.factor >= SPECK_MM) || (seen.length > 0 && to.factor < 0.01)
  );
}

function outlineOf(entry: PartInView, box: Box, to: Projection, pens: Pens): Primitive[] {
  const surface = entry.isFront ? 'front' : 'wood';
  const shaped = shapedOutline(entry.part);
  if (shaped !== undefined) {
    return [{ kind: 'rectangle', surface, box }, ...shaped.map((stretch) => paperLine(stretch, 'edge', to))];
  }
  const whole = entry.edges.seen.length === 4 && entry.edges.hidden.length === 0 && isWhole(entry);
  if (whole) return [{ kind: 'rectangle', surface, box, outline: 'edge' }];
  const inset = Math.min(penMm('edge', pens) / 2, (box.right - box.left) / 2, (box.bottom - box.top) / 2);
  const lines = entry.edges.seen
    .filter((stretch) => !isSpeck(stretch, entry, to))
    .map((stretch) => edgeLine(stretch, to, entry, 'edge', inset));
  return [{ kind: 'rectangle', surface, box }, ...lines];
}

function isWhole({ edges, slab }: PartInView): boolean {
  return edges.seen.every((stretch) =>
    stretch.side === 'left' || stretch.side === 'right'
      ? stretch.from === slab.y0 && stretch.to === slab.y1
      : stretch.from === slab.x0 && stretch.to === slab.x1,
  );
}

function isSpeck(stretch: EdgeStretch, { slab }: PartInView, to: Projection): boolean {
  const upright = stretch.side === 'left' || stretch.side === 'right';
  const whole = upright ? slab.y1 - slab.y0 : slab.x1 - slab.x0;
  const length = stretch.to - stretch.from;
  return length * to.factor < SPECK_MM && length < whole;
}

/** `inset` moves the line inside the part, so that the border of the ink is the true edge. */
function edgeLine(stretch: EdgeStretch, to: Projection, { slab }: PartInView, role: Line['role'], inset: number): Line {
  const box = boxOnPaper(slab, to);
  const y = (real: number): number => to.y - real * to.factor;
  const x = (real: number): number => to.x + real * to.factor;
  switch (stretch.side) {
    case 'left':
      return line(role, box.left + inset, y(stretch.from), box.left + inset, y(stretch.to));
    case 'right':
      return line(role, box.right - inset, y(stretch.from), box.right - inset, y(stretch.to));
    case 'bottom':
      return line(role, x(stretch.from), box.bottom - inset, x(stretch.to), box.bottom - inset);
    case 'top':
      return line(role, x(stretch.from), box.top + inset, x(stretch.to), box.top + inset);
    default: {
      const unknown: never = stretch.side;
      return unknown;
    }
  }
}

/** Two lines that meet at the hinges, halfway along their edge (common practice; the sheet's notes say so). */
function swingLines({ hinge }: PartInView, box: Box): Line[] {
  if (hinge === undefined) return [];
  if (hinge === 'top') {
    const centre = (box.left + box.right) / 2;
    return [
      line('swing', box.left, box.bottom, centre, box.top),
      line('swing', box.right, box.bottom, centre, box.top),
    ];
  }
  const hingeX = hinge === 'left' ? box.left : box.right;
  const openX = hinge === 'left' ? box.right : box.left;
  const middle = (box.top + box.bottom) / 2;
  return [line('swing', openX, box.top, hingeX, middle), line('swing', openX, box.bottom, hingeX, middle)];
}

/** A dot on the part and a line to its label. */
export function leaderTo(points: readonly Point[], writing: readonly Box[]): Primitive[] {
  const [dot, ...rest] = points;
  if (dot === undefined) return [];
  const drawn: Primitive[] = [{ kind: 'circle', role: 'leader', centre: dot, radius: 0.5, filled: true }];
  let from = dot;
  for (const to of rest) {
    drawn.push(...brokenAround({ kind: 'line', role: 'leader', from, to }, writing));
    from = to;
  }
  return drawn;
}
