import type { BackDesign, CarcaseDesign } from '../design/design.ts';
import type { PartRole } from '../parts/part.ts';
import type { Axis, UnmarkedPart } from '../parts/slab.ts';
import type { Interval } from '../solids/solid.ts';
import type { Feature } from './feature.ts';
import type { Joinery } from './join-parts.ts';
import type { Joint } from './joint.ts';
import { overlap } from './touching-parts.ts';

/**
 * The grooves or rabbets that hold the back: in whatever the back reaches into. They run from end to end, as a saw or a
 * router table cuts them.
 */

const takesBack: ReadonlySet<PartRole> = new Set<PartRole>(['side', 'bottom', 'top', 'stretcher']);

export function backGrooves(carcase: CarcaseDesign, parts: readonly UnmarkedPart[]): Joinery {
  const { back } = carcase;
  const panel = parts.find((part) => part.role === 'back');
  if (back === undefined || panel === undefined || back.fixing === 'applied') return nothing;
  const { fixing } = back;
  const holders = parts.filter(
    (part) =>
      takesBack.has(part.role) && (['x', 'y', 'z'] as const).every((axis) => overlap(part.box[axis], panel.box[axis])),
  );
  return {
    growth: [],
    joints: holders.map(
      (holder): Joint => ({
        id: `${panel.id}>${holder.id}`,
        kind: fixing,
        held: panel.id,
        holding: holder.id,
        at: entryOf(holder, panel),
        origin: back.origin,
        isAssumed: false,
      }),
    ),
    features: holders.map((holder) => grooveIn(holder, panel, { ...back, fixing })),
  };
}

const nothing: Joinery = { growth: [], joints: [], features: [] };

/** The inner face: the one that looks towards the middle of the back. */
function entryOf(holder: UnmarkedPart, panel: UnmarkedPart): Feature['entry'] {
  const axis = holder.thin;
  return holder.box[axis].start.length.compare(panel.box[axis].start.length) <= 0 ? `+${axis}` : `-${axis}`;
}

function grooveIn(
  holder: UnmarkedPart,
  panel: UnmarkedPart,
  back: BackDesign & { readonly fixing: 'groove' | 'rabbet' },
): Feature {
  const entry = entryOf(holder, panel);
  const runs: Axis = holder.thin === 'x' ? 'y' : 'x';
  const side = (axis: Axis): Interval => {
    const [wood, held] = [holder.blank[axis], panel.box[axis]];
    if (axis === runs) return { from: wood.start.length, to: wood.end.length };
    const from = wood.start.length.max(held.start.length);
    const to = wood.end.length.min(held.end.length);
    // A rabbet is open towards the back edge.
    return axis === 'z' && back.fixing === 'rabbet' ? { from, to: wood.end.length.max(to) } : { from, to };
  };
  return {
    id: `${holder.id}/${back.fixing} ${panel.id}`,
    kind: back.fixing,
    part: holder.id,
    solid: { kind: 'box', x: side('x'), y: side('y'), z: side('z') },
    entry,
    runs,
    measures: { width: panel.thickness, depth: back.depth },
    stage: 'on the loose part',
    joint: `${panel.id}>${holder.id}`,
    origin: back.origin,
  };
}
