import { axisOf, type FaceOfPart, type Feature } from '../joinery/feature.ts';
import type { Length } from '../length/length.ts';
import type { Solid } from '../solids/solid.ts';
import { type Axis, axesAcross, type Point3 } from '../solids/solid.ts';
import type { EdgingStrip, Part } from './part.ts';

/**
 * What is cut into a part and put on its edges, as words that are the same for parts that are cut alike: wherever they
 * stand and however they are turned, but not for one that is the mirror image of the other.
 */
export function cutSignature(part: Part): string {
  if (part.features.length === 0 && part.edging.length === 0) return '';
  let least: string | undefined;
  for (const axes of axesOf(part)) {
    for (const turn of turns) {
      const seen = { part, axes, turn };
      const words = [
        ...part.features.map((each) => featureWords(seen, each)),
        ...part.edging.map((each) => stripWords(seen, each)),
      ]
        .sort(byText)
        .join('|');
      if (least === undefined || words < least) least = words;
    }
  }
  return least ?? '';
}

/** Which of its own axes are turned end for end: half turns about each of them. A part along its grain, across it, through. */
type Turn = readonly [boolean, boolean, boolean];
const turns: readonly Turn[] = [
  [false, false, false],
  [false, true, true],
  [true, false, true],
  [true, true, false],
];

type OwnAxes = readonly [Axis, Axis, Axis];

/** A part as one may hold it. */
interface Held {
  readonly part: Part;
  readonly axes: OwnAxes;
  readonly turn: Turn;
}

/** The axes of the piece in the order of the part's own: along, across, through. What is square may be rolled over as well. */
function axesOf(part: Part): readonly OwnAxes[] {
  const [one, other] = axesAcross(part.thin);
  const isOne =
    part.grain === one ||
    (part.grain !== other && part.blank[one].size.length.compare(part.blank[other].size.length) >= 0);
  const [along, across] = isOne ? [one, other] : [other, one];
  const lying: OwnAxes = [along, across, part.thin];
  const isSquare = part.blank[across].size.length.equals(part.blank[part.thin].size.length);
  return isSquare ? [lying, [along, part.thin, across]] : [lying];
}

/** Whether the part's own axes turn the other way round than those of the piece: then one of them is counted backwards. */
function isMirrored([a, b]: OwnAxes): boolean {
  const after: Readonly<Record<Axis, Axis>> = { x: 'y', y: 'z', z: 'x' };
  return after[a] !== b;
}

function isTurned({ axes, turn }: Held, axis: Axis): boolean {
  const at = axes.indexOf(axis);
  const isBackwards = at === 2 && isMirrored(axes);
  return (turn[at] ?? false) !== isBackwards;
}

function placeOf(held: Held, axis: Axis, at: Length): Length {
  const { start, end } = held.part.blank[axis];
  return isTurned(held, axis) ? end.length.minus(at) : at.minus(start.length);
}

function faceWords(held: Held, face: FaceOfPart): string {
  const axis = axisOf(face);
  const isEnd = face.startsWith('+') !== isTurned(held, axis);
  return `${isEnd ? '+' : '-'}${held.axes.indexOf(axis)}`;
}

function featureWords(held: Held, { kind, entry, solid }: Feature): string {
  return `${kind} ${faceWords(held, entry)} ${solidWords(held, solid)}`;
}

function stripWords(held: Held, { at, thickness, corners, veneer, stock }: EdgingStrip): string {
  return `strip ${faceWords(held, at)} ${thickness.length.exactInches} ${corners} ${veneer} ${stock?.name ?? ''}`;
}

function solidWords(held: Held, solid: Solid): string {
  const { axes } = held;
  const at = (axis: Axis, length: Length) => placeOf(held, axis, length);
  const between = (axis: Axis, from: Length, to: Length) => {
    const ends = [at(axis, from), at(axis, to)] as const;
    return `${ends[0].min(ends[1]).exactInches}..${ends[0].max(ends[1]).exactInches}`;
  };
  switch (solid.kind) {
    case 'box':
      return axes.map((axis) => between(axis, solid[axis].from, solid[axis].to)).join(' ');
    case 'convex':
      return solid.corners
        .map((corner: Point3) => axes.map((axis) => at(axis, corner[axis]).exactInches).join(','))
        .sort(byText)
        .join(' ');
    case 'cylinder': {
      const [u, v] = axesAcross(solid.axis);
      const centre = ([first, second]: readonly [Length, Length]) =>
        axes
          .map((axis) => (axis === u ? at(u, first).exactInches : axis === v ? at(v, second).exactInches : ''))
          .join(',');
      const centres = [solid.centre, ...(solid.sweptTo === undefined ? [] : [solid.sweptTo])].map(centre).sort(byText);
      return `${between(solid.axis, solid.along.from, solid.along.to)} ${centres.join(' ')} ${solid.radius.exactInches}`;
    }
    default: {
      const unknown: never = solid;
      return unknown;
    }
  }
}

/** By code unit, so that the order is the same on every machine. */
function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
