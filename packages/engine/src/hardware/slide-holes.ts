import type { Origin } from '@fettle/findings';
import { derive, plus } from '../design/derive.ts';
import type { Figure } from '../design/figure.ts';
import type { SlideHole } from '../design/slide-design.ts';
import type { Span } from '../evaluation.ts';
import type { FaceOfPart, Feature } from '../joinery/feature.ts';
import type { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { holeOf } from './backing.ts';
import type { Screw } from './placed-hardware.ts';

/** The holes of a slide where it lies, and what is bored for its screws. */

const half = Rational.of(1, 2);

export interface HoleInPlace {
  /** 'front screw' */
  readonly nth: string;
  readonly y: Figure;
  readonly z: Figure;
}

/** A slide takes a handful; more is a slip of the pen. */
const MOST_HOLES = 50;

export function holesOf(told: readonly SlideHole[] | undefined, y: Span, z: Span): readonly HoleInPlace[] {
  const holes = [...(told ?? [])].slice(0, MOST_HOLES).sort((a, b) => a.fromFront.length.compare(b.fromFront.length));
  return holes.map((hole, index) => ({
    nth: screwWords(index, holes.length),
    y: heightOf(hole, y),
    z: derive('the screw', [
      plus('where the slide begins', z.start),
      plus('from its front end to the hole', hole.fromFront),
    ]),
  }));
}

function heightOf({ up }: SlideHole, y: Span): Figure {
  return derive('height of the screw', [
    plus('lower edge of the slide', y.start),
    up === undefined ? plus('height of the slide', y.size, half) : plus('up to the hole', up),
  ]);
}

function screwWords(index: number, count: number): string {
  if (count === 1) return 'screw';
  if (index === 0) return 'front screw';
  if (index === count - 1) return 'rear screw';
  return count === 3 ? 'middle screw' : `screw ${index + 1}`;
}

/** What is bored for a screw before its slide or its support is put on. */
export function pilotHole(
  screw: Screw,
  part: UnmarkedPart,
  origin: Origin,
  because = 'the screw of the slide, as its entry tells it',
): Feature {
  const figure = (length: Length): Figure => ({ length, reason: { kind: 'assumed', because } });
  return {
    id: `${part.id}/hole for ${screw.id}`,
    kind: 'screw-hole',
    part: part.id,
    solid: holeOf(screw),
    entry: opposite[screw.towards],
    measures: { width: figure(screw.diameter), depth: figure(screw.length.min(part.thickness.length)) },
    stage: 'on the loose part',
    origin,
  };
}

export const opposite: Readonly<Record<FaceOfPart, FaceOfPart>> = {
  '-x': '+x',
  '+x': '-x',
  '-y': '+y',
  '+y': '-y',
  '-z': '+z',
  '+z': '-z',
};
