import { type Block, boundsOf, type FaceOfPart, type Feature, type Length, type Part } from '@fettle/engine';
import { cross, scaled, type Vector, vector } from '../shapes/vectors.ts';
import type { ViewDirection } from '../shapes/view-direction.ts';

/**
 * A part laid on the bench: its length runs across the sheet, and everything on it is measured from one end and from one
 * edge, which have names. Exact lengths from those two and from the lower side of its thickness.
 */

export type Axis = 'x' | 'y' | 'z';

/** How a part lies. */
export interface LaidPart {
  readonly part: Part;
  readonly along: Axis;
  readonly across: Axis;
  readonly thin: Axis;
  readonly size: Readonly<Record<Local, Length>>;
}

export interface PartFrame extends LaidPart {
  /** The face that is drawn. */
  readonly face: FaceOfPart;
  /** 'lower end', 'front edge'. */
  readonly endWords: string;
  readonly edgeWords: string;
  readonly faceWords: string;
  readonly cuts: readonly PlacedCut[];
}

export type Local = 'along' | 'across' | 'thin';
export const LOCALS: readonly Local[] = ['along', 'across', 'thin'];

export interface Reach {
  readonly from: Length;
  readonly to: Length;
}

/** A feature where it lies on its part; what reaches beyond the wood ends with it. */
export interface PlacedCut extends Readonly<Record<Local, Reach>> {
  readonly feature: Feature;
  readonly isOnFace: boolean;
}

/** Which face of a part it is. */
export const FACE_WORDS: Readonly<Record<FaceOfPart, string>> = {
  '-x': 'left',
  '+x': 'right',
  '-y': 'lower',
  '+y': 'upper',
  '-z': 'front',
  '+z': 'back',
};

export function laidDown(part: Part): LaidPart {
  const { thin, blank } = part;
  const others = (['x', 'y', 'z'] as const).filter((axis) => axis !== thin);
  const [one, other] = others as [Axis, Axis];
  const isFirst =
    part.grain === one || (part.grain !== other && blank[one].size.length.compare(blank[other].size.length) >= 0);
  const [along, across] = isFirst ? [one, other] : [other, one];
  return {
    part,
    along,
    across,
    thin,
    size: { along: blank[along].size.length, across: blank[across].size.length, thin: blank[thin].size.length },
  };
}

export function frameOf(part: Part): PartFrame {
  const laid = laidDown(part);
  const { along, across, thin } = laid;
  const face = faceToDraw(part);
  return {
    ...laid,
    face,
    endWords: `${FACE_WORDS[`-${along}`]} end`,
    edgeWords: `${FACE_WORDS[`-${across}`]} edge`,
    faceWords: `${FACE_WORDS[face]} face`,
    cuts: part.features.flatMap((feature) => placedCut(part.blank, { along, across, thin }, face, feature)),
  };
}

/** The one with more cuts in it; else the one that one sees on the piece. */
function faceToDraw({ thin, features, box }: Part): FaceOfPart {
  const count = (face: FaceOfPart): number => features.filter(({ entry }) => entry === face).length;
  const [low, high] = [count(`-${thin}`), count(`+${thin}`)];
  if (low !== high) return low > high ? `-${thin}` : `+${thin}`;
  if (thin === 'z') return '-z';
  return thin === 'y' ? '+y' : box.x.start.length.isZero() ? '-x' : '+x';
}

function placedCut(
  blank: Block,
  axes: Readonly<Record<Local, Axis>>,
  face: FaceOfPart,
  feature: Feature,
): readonly PlacedCut[] {
  const bounds = boundsOf(feature.solid);
  const reach = (local: Local): Reach => {
    const { start, end } = blank[axes[local]];
    const { from, to } = bounds[axes[local]];
    return { from: from.max(start.length).minus(start.length), to: to.min(end.length).minus(start.length) };
  };
  const placed = { along: reach('along'), across: reach('across'), thin: reach('thin') };
  const isInWood = LOCALS.every((local) => placed[local].from.compare(placed[local].to) < 0);
  return isInWood ? [{ ...placed, feature, isOnFace: feature.entry === face }] : [];
}

/** The face with the edge that is measured from at the foot: the end that is measured from comes to lie left or right. */
export function faceDirection({ across, face }: PartFrame): ViewDirection {
  const towards = directionOf(face);
  const up = directionOf(`+${across}`);
  // Facing a piece, right, up and towards the viewer are a left hand.
  return { right: cross(towards, up), up, towards };
}

/** The edge that is measured from, seen from outside; the face that is drawn lies towards the top. */
export function edgeDirection(frame: PartFrame): ViewDirection {
  const { right, towards } = faceDirection(frame);
  return { right, up: towards, towards: directionOf(`-${frame.across}`) };
}

function directionOf(face: FaceOfPart): Vector {
  const axis = face.slice(1) as Axis;
  const along = vector(axis === 'x' ? 1 : 0, axis === 'y' ? 1 : 0, axis === 'z' ? 1 : 0);
  return face.startsWith('-') ? scaled(along, -1) : along;
}
