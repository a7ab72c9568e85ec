import { boundsOf, type Evaluation, hungLeaves, type Length, type PlacedHardware } from '@fettle/engine';
import type { Flat } from '../shapes/view-direction.ts';
import { realMm } from '../shown-lengths.ts';
import type { Fitting } from '../views/fittings.ts';

/** Hinges, pulls and the way of open doors, as a section shows them beside the parts. */

/** From above, with everything over `place` taken away; the doors that are cut there with their way to a right angle. */
export function fittingsFromAbove(evaluation: Evaluation, place: Length): readonly Fitting[] {
  const isBelow = ({ from }: { readonly from: Length }) => from.compare(place) < 0;
  return distinct([
    ...swings(evaluation, place),
    ...pulls(evaluation).flatMap(({ id, x, y, z, front }) => {
      const role = isBelow(y) ? 'behind' : isBelow(front.y) ? 'hidden' : undefined;
      return role === undefined ? [] : [rectangle(id, 'pull', role, x, z)];
    }),
    ...gains(evaluation).flatMap(({ id, x, y, z }) => (isBelow(y) ? [rectangle(id, 'hinge', 'hidden', x, z)] : [])),
  ]);
}

/** From the right, with everything right of `place` taken away. */
export function fittingsFromRight(evaluation: Evaluation, place: Length): readonly Fitting[] {
  const isLeft = ({ from }: { readonly from: Length }) => from.compare(place) < 0;
  return distinct([
    ...pulls(evaluation).flatMap(({ id, x, y, z, front }) => {
      const role = isLeft(x) ? 'behind' : isLeft(front.x) ? 'hidden' : undefined;
      return role === undefined ? [] : [rectangle(id, 'pull', role, z, y)];
    }),
    ...gains(evaluation).flatMap(({ id, x, y, z }) => (isLeft(x) ? [rectangle(id, 'hinge', 'hidden', z, y)] : [])),
  ]);
}

interface Stretch {
  readonly from: Length;
  readonly to: Length;
}

interface Placed {
  readonly id: string;
  readonly x: Stretch;
  readonly y: Stretch;
  readonly z: Stretch;
}

interface PlacedPull extends Placed {
  /** What it is on: where that is cut, its pulls are shown on either side of the cut. */
  readonly front: { readonly x: Stretch; readonly y: Stretch };
}

function pulls({ hardware, parts }: Evaluation): readonly PlacedPull[] {
  return hardware.flatMap(({ id, kind, outline, standsOut, on }: PlacedHardware): readonly PlacedPull[] => {
    if (kind !== 'pull' || outline === undefined || standsOut === undefined) return [];
    const [front] = parts
      .filter((part) => on.includes(part.id))
      .sort((a, b) => a.box.z.start.length.compare(b.box.z.start.length));
    if (front === undefined) return [];
    const { x, y, z } = front.box;
    const face = z.start.length;
    return [
      {
        id,
        x: outline.x,
        y: outline.y,
        z: { from: face.minus(standsOut), to: face },
        front: { x: { from: x.start.length, to: x.end.length }, y: { from: y.start.length, to: y.end.length } },
      },
    ];
  });
}

/** What doors are cut out for their hinges. */
function gains({ hardware, parts }: Evaluation): readonly Placed[] {
  const hinges = hardware.filter(({ kind, cell }) => kind === 'hinge' && cell !== undefined).map(({ id }) => id);
  return parts.flatMap(({ features }) =>
    features
      .filter(
        ({ id, kind }) => (kind === 'gain' || kind === 'cup-hole') && hinges.some((hinge) => id.startsWith(hinge)),
      )
      .map(({ id, solid }) => ({ id, ...boundsOf(solid) })),
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
