import type { ShopOffer } from '../../design/shop.ts';
import type { Feature, FeatureKind } from '../../joinery/feature.ts';
import type { Joint } from '../../joinery/joint.ts';
import type { Length, LengthUnit } from '../../length/length.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';
import type { BoxFace, BoxSolid } from '../../solids/index.ts';

/** What the checks of joinery look at: the parts as they are cut, and how they hold to each other. */
export interface JoinedCase {
  readonly unit: LengthUnit;
  /** Of the ruler that things are set out by. */
  readonly mark: Length;
  readonly shop: ShopOffer;
  readonly parts: readonly UnmarkedPart[];
  readonly joints: readonly Joint[];
}

const kindWords: Readonly<Record<FeatureKind, string>> = {
  dado: 'dado',
  groove: 'groove',
  rabbet: 'rabbet',
  'tongue-shoulder': 'shoulder of the tongue',
  'tenon-shoulder': 'shoulder of the tenon',
  mortise: 'mortise',
  'dowel-hole': 'dowel hole',
  'screw-hole': 'screw hole',
  socket: 'socket',
  'tail-cheek': 'cheek of the dovetail',
  mitre: 'mitre',
  gain: 'hinge gain',
  recess: 'recess of the pull',
  'cup-hole': 'cup hole',
  'pin-hole': 'row of pin holes',
  notch: 'notch',
  taper: 'taper',
  bevel: 'bevel',
  vent: 'vent',
};

/** 'mortise for the front rail', 'dowel hole in its end', 'hinge gain'. */
export function featureWords(feature: Feature, { joints, parts }: Pick<JoinedCase, 'joints' | 'parts'>): string {
  const words = kindWords[feature.kind];
  const joint = joints.find(({ id }) => id === feature.joint);
  if (joint === undefined) return words;
  if (joint.held === feature.part) return `${words} in its end`;
  const held = parts.find(({ id }) => id === joint.held);
  return held === undefined ? words : `${words} for the ${held.label}`;
}

/** Round or long, and closed all around: what must not open into anything else. */
const closed: ReadonlySet<FeatureKind> = new Set<FeatureKind>([
  'mortise',
  'dowel-hole',
  'screw-hole',
  'pin-hole',
  'cup-hole',
  'gain',
  'recess',
  'vent',
]);
export function isClosed({ kind }: Feature): boolean {
  return closed.has(kind);
}

const housings: ReadonlySet<FeatureKind> = new Set<FeatureKind>(['dado', 'groove', 'rabbet']);
export function isHousing({ kind }: Feature): boolean {
  return housings.has(kind);
}

export function woodOf({ blank }: UnmarkedPart): BoxSolid {
  const side = (axis: 'x' | 'y' | 'z') => ({ from: blank[axis].start.length, to: blank[axis].end.length });
  return { kind: 'box', x: side('x'), y: side('y'), z: side('z') };
}

export function entryFace({ entry }: Feature): BoxFace {
  return { axis: entry.slice(1) as BoxFace['axis'], end: entry.startsWith('-') ? 'from' : 'to' };
}
