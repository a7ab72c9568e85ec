import type { Evaluation, LaidCell, Length, Part, Span } from '@fettle/engine';
import { type Chain, chainThrough, type Measured, type PlainChain, withoutRepeats } from '../dimension-chains.ts';
import { FRONTS } from '../parts-in-view.ts';

/** Which sizes a section carries, as chains of exact stretches along one axis. Knows nothing of paper. */

export type Axis = 'x' | 'y' | 'z';

/**
 * Fronts that are cut, the gaps between them and what bounds the face, in one chain; with what stands between inset
 * fronts, so that each gap is a stretch of its own.
 */
export function frontsChain(evaluation: Evaluation, cut: readonly Part[], axis: 'x' | 'y'): PlainChain {
  // The members and panels of a framed door reach into each other: between them there is no end of the door.
  const fronts = cut.filter(
    ({ role, frame, cell }) => FRONTS.includes(role) || (frame !== undefined && cell !== undefined),
  );
  const face = evaluation.layout.carcase?.face[axis];
  if (fronts.length === 0 || face === undefined) return { id: `fronts-${axis}`, stretches: [] };
  const beside = cut.filter(
    (part) =>
      !fronts.includes(part) &&
      fronts.some((front) => overlap(part.box.z, front.box.z)) &&
      isWithin(part.box[axis], face),
  );
  const places = [face, ...[...fronts, ...beside].map((part) => part.box[axis])].flatMap(ends);
  // An overlay front laps the bounds of the face: they would only cut its size in two.
  const isInFront = (place: Length): boolean =>
    fronts.some(({ box }) => box[axis].start.length.compare(place) < 0 && place.compare(box[axis].end.length) < 0);
  return chainThrough(
    `fronts-${axis}`,
    places.filter((place) => !isInFront(place)),
  );
}

function overlap(a: Span, b: Span): boolean {
  return a.start.length.compare(b.end.length) < 0 && b.start.length.compare(a.end.length) < 0;
}

function isWithin(inner: Span, outer: Span): boolean {
  return inner.start.length.compare(outer.start.length) >= 0 && inner.end.length.compare(outer.end.length) <= 0;
}

/** Openings along an axis and what lies between them, from one end of the piece to the other. */
export function openingsChain(
  evaluation: Evaluation,
  cells: readonly LaidCell[],
  axis: 'x' | 'y',
  of = '',
): PlainChain {
  const { carcase } = evaluation.layout;
  const id = `openings-${axis}${of}`;
  if (carcase === undefined) return { id, stretches: [] };
  return chainThrough(id, [
    ...ends(carcase.outside[axis]),
    ...ends(carcase.body[axis]),
    ...ends(carcase.interior[axis]),
    ...cells.flatMap((cell) => ends(cell.opening[axis])),
  ]);
}

/** Where the rails of a frame stand, from the lower end of its stiles to the upper one; empty without rails between them. */
export function railsChain(parts: readonly Part[], frame: string): PlainChain {
  const members = parts.filter((part) => part.frame === frame);
  const places = members.flatMap(({ role, box }) => (role === 'stile' || role === 'rail' ? ends(box.y) : []));
  return chainThrough(`rails-${frame}`, members.some(({ role }) => role === 'rail') ? places : []);
}

/** Drawer boxes in their openings: what is left free before each, the box, and what is left free behind it. */
export function boxesChain(cells: readonly LaidCell[], parts: readonly Part[], axis: 'x' | 'y'): PlainChain {
  const places = cells.flatMap((cell) => {
    const box = parts.filter((part) => part.cell === cell.cell.id && part.role.startsWith('drawer-s'));
    const reach = reachOf(box, axis);
    return reach === undefined ? [] : [...ends(cell.opening[axis]), ...reach];
  });
  return chainThrough(`boxes-${axis}`, places);
}

/**
 * From the front to the back through one opening: front, what lies free behind it, drawer box, back and what stands
 * behind the back.
 */
export function depthChain(evaluation: Evaluation, cut: readonly Part[], cell: LaidCell | undefined): PlainChain {
  const { carcase } = evaluation.layout;
  if (carcase === undefined) return { id: 'depth', stretches: [] };
  const own = cut.filter((part) => cell !== undefined && part.cell === cell.cell.id);
  const front = own.find((part) => FRONTS.includes(part.role));
  const box = reachOf(
    evaluation.parts.filter((part) => part.cell === cell?.cell.id && part.role.startsWith('drawer-s')),
    'z',
  );
  const back = cut.find((part) => part.role === 'back');
  return chainThrough('depth', [
    ...ends(carcase.outside.z),
    ...ends(carcase.body.z),
    ...(front === undefined ? [] : ends(front.box.z)),
    ...(box ?? []),
    ...(back === undefined ? [] : ends(back.box.z)),
  ]);
}

export function wholeChain(evaluation: Evaluation, axis: Axis): PlainChain {
  const { carcase } = evaluation.layout;
  return chainThrough(`whole-${axis}`, carcase === undefined ? [] : ends(carcase.outside[axis]));
}

/** Chains without a stretch are dropped, and what a wider chain says at the same place is not said twice. */
export function chains(
  measures: Measured,
  list: readonly PlainChain[],
  captions: readonly string[] = [],
): readonly Chain[] {
  const named = list.map((chain, at): Chain => ({ ...chain, caption: captions[at] ?? '', measures: [measures] }));
  return withoutRepeats(named.filter(({ stretches }) => stretches.length > 0));
}

function reachOf(parts: readonly Part[], axis: Axis): readonly Length[] | undefined {
  const [first, ...rest] = parts;
  if (first === undefined) return undefined;
  let [low, high] = [first.box[axis].start.length, first.box[axis].end.length];
  for (const part of rest) {
    low = low.min(part.box[axis].start.length);
    high = high.max(part.box[axis].end.length);
  }
  return [low, high];
}

function ends({ start, end }: Span): readonly Length[] {
  return [start.length, end.length];
}
