import { boundsOf, type Evaluation, hungLeaves, type Length, type Span } from '@fettle/engine';
import type { Flat } from '../shapes/view-direction.ts';
import { realMm } from '../shown-lengths.ts';
import type { Fitting } from '../views/fittings.ts';

/** Hinges, pulls and the way of open doors, as a section shows them beside the parts. */

/** Of what is cut, from above; the doors with their way to a right angle. What is over the cut is dashed. */
export function fittingsFromAbove(evaluation: Evaluation, place: Length): readonly Fitting[] {
  return distinct([
    ...swings(evaluation, place),
    ...placedFittings(evaluation).flatMap(({ id, what, x, y, z, front }) =>
      holds(front.y, place) ? [rectangle(id, what, roleOf(what, y, place), x, z)] : [],
    ),
  ]);
}

/** Of what is cut, from the right. What is right of the cut is dashed. */
export function fittingsFromRight(evaluation: Evaluation, place: Length): readonly Fitting[] {
  return distinct(
    placedFittings(evaluation).flatMap(({ id, what, x, y, z, front }) =>
      holds(front.x, place) ? [rectangle(id, what, roleOf(what, x, place), z, y)] : [],
    ),
  );
}

/** What is let into the wood is hidden by it. */
function roleOf(what: Fitting['what'], { from }: Stretch, place: Length): Fitting['role'] {
  return what === 'pull' && from.compare(place) < 0 ? 'behind' : 'hidden';
}

interface Stretch {
  readonly from: Length;
  readonly to: Length;
}

function holds({ from, to }: Stretch, place: Length): boolean {
  return from.compare(place) < 0 && place.compare(to) < 0;
}

interface PlacedFitting {
  readonly id: string;
  readonly what: 'hinge' | 'pull';
  readonly x: Stretch;
  readonly y: Stretch;
  readonly z: Stretch;
  /** The front that it is on. */
  readonly front: { readonly x: Stretch; readonly y: Stretch };
}

function placedFittings({ hardware, parts }: Evaluation): readonly PlacedFitting[] {
  return hardware.flatMap(({ id, kind, outline, standsOut }): readonly PlacedFitting[] => {
    if (kind !== 'pull' && kind !== 'hinge') return [];
    // Its id is that of its front, and which of its fittings it is.
    const frontId = id.slice(0, id.lastIndexOf('/'));
    const boxes = parts.filter((part) => part.id === frontId || part.frame === frontId).map(({ box }) => box);
    const [x, y, z] = [
      hull(boxes.map((box) => box.x)),
      hull(boxes.map((box) => box.y)),
      hull(boxes.map((box) => box.z)),
    ];
    if (x === undefined || y === undefined || z === undefined) return [];
    const front = { x, y };
    if (kind === 'hinge')
      return parts.flatMap(({ features }) =>
        features
          .filter(
            (feature) => (feature.kind === 'gain' || feature.kind === 'cup-hole') && feature.id.startsWith(`${id} `),
          )
          .map((feature) => ({ id: feature.id, what: kind, ...boundsOf(feature.solid), front })),
      );
    if (outline === undefined || standsOut === undefined) return [];
    return [{ id, what: kind, x: outline.x, y: outline.y, z: { from: z.from.minus(standsOut), to: z.from }, front }];
  });
}

function hull(spans: readonly Span[]): Stretch | undefined {
  const [first, ...others] = spans;
  if (first === undefined) return undefined;
  return others.reduce<Stretch>(
    ({ from, to }, { start, end }) => ({ from: from.min(start.length), to: to.max(end.length) }),
    { from: first.start.length, to: first.end.length },
  );
}

function rectangle(id: string, what: Fitting['what'], role: Fitting['role'], across: Stretch, up: Stretch): Fitting {
  const [left, right, low, high] = [across.from, across.to, up.from, up.to].map(realMm) as [
    number,
    number,
    number,
    number,
  ];
  const points = [
    { u: left, v: low },
    { u: right, v: low },
    { u: right, v: high },
    { u: left, v: high },
    { u: left, v: low },
  ];
  return { id, what, role, points };
}

const STEPS = 30;
const RIGHT_ANGLE = 90;

function swings({ design, layout }: Evaluation, place: Length): readonly Fitting[] {
  if (design.face === undefined || layout.carcase === undefined || layout.face === undefined) return [];
  return hungLeaves(design.face, layout.carcase, layout.face).flatMap(
    ({ id, side, leaf, deep, hinge }): readonly Fitting[] => {
      const isCut = leaf.y.start.length.compare(place) < 0 && place.compare(leaf.y.end.length) < 0;
      if (side === undefined || !isCut) return [];
      const [hung, closing] = (side === 'left' ? [leaf.x.start, leaf.x.end] : [leaf.x.end, leaf.x.start]).map(
        ({ length }) => realMm(length),
      ) as [number, number];
      const front = realMm(deep.start.length);
      const most = Math.min(hinge?.opens?.toNumber() ?? RIGHT_ANGLE, RIGHT_ANGLE);
      const way = Array.from({ length: STEPS + 1 }, (_, step): Flat => {
        const angle = (most * step * Math.PI) / (180 * STEPS);
        return { u: hung + (closing - hung) * Math.cos(angle), v: front - Math.abs(closing - hung) * Math.sin(angle) };
      });
      return [{ id: `${id} swing`, what: 'swing', role: 'swing', points: [...way, { u: hung, v: front }] }];
    },
  );
}

/** Fittings that lie in line are one to the eye. */
function distinct(fittings: readonly Fitting[]): readonly Fitting[] {
  const seen = new Set<string>();
  return fittings.filter(({ role, points }) => {
    const key = `${role} ${points.map(({ u, v }) => `${u.toFixed(3)} ${v.toFixed(3)}`).join(' ')}`;
    return !seen.has(key) && seen.add(key);
  });
}
