import { derive, less, plus } from '../design/derive.ts';
import type { BackDesign, CarcaseDesign } from '../design/design.ts';
import type { Span } from '../evaluation.ts';
import type { Block, PartRole } from '../parts/part.ts';
import type { Axis, UnmarkedPart } from '../parts/slab.ts';
import { AXES, type Interval } from '../solids/solid.ts';
import type { Feature } from './feature.ts';
import type { Joinery } from './join-parts.ts';
import type { Joint } from './joint.ts';
import { overlap } from './touching-parts.ts';

/**
 * The grooves or rabbets that hold the back: in whatever the back reaches into. They run from end to end, as a saw or a
 * router table cuts them.
 */

const takesBack: ReadonlySet<PartRole> = new Set<PartRole>(['side', 'stile', 'rail', 'bottom', 'top', 'stretcher']);

export function backGrooves(carcase: CarcaseDesign, parts: readonly UnmarkedPart[]): Joinery {
  const { back } = carcase;
  if (back === undefined || back.fixing === 'applied') return nothing;
  const { fixing } = back;
  // A panel, or the members of a frame.
  const members = parts.filter((part) => part.role === 'back' || part.frame === FRAMED_BACK);
  const whole = wholeOf(members);
  if (whole === undefined) return nothing;
  const held = parts.flatMap((part) => {
    if (!takesBack.has(part.role) || part.frame === FRAMED_BACK || !lieTogether(part, whole)) return [];
    const member = members.find((each) => lieTogether(part, each));
    return member === undefined ? [] : [{ holder: part, member }];
  });
  return {
    growth: [],
    joints: held.map(
      ({ holder, member }): Joint => ({
        id: `${member.id}>${holder.id}`,
        kind: fixing,
        held: member.id,
        holding: holder.id,
        at: entryOf(holder, whole),
        origin: back.origin,
        isAssumed: false,
      }),
    ),
    features: held.map(({ holder, member }) => grooveIn(holder, whole, member.id, { ...back, fixing })),
  };
}

const FRAMED_BACK = 'case/back';

function wholeOf(members: readonly UnmarkedPart[]): Pick<UnmarkedPart, 'box'> | undefined {
  const [first, ...others] = members;
  if (first === undefined) return undefined;
  return { box: others.reduce((all, { box }) => around(all, box), first.box) };
}

function around(a: Block, b: Block): Block {
  const both = (axis: Axis): Span => {
    const start = a[axis].start.length.compare(b[axis].start.length) <= 0 ? a[axis].start : b[axis].start;
    const end = a[axis].end.length.compare(b[axis].end.length) >= 0 ? a[axis].end : b[axis].end;
    return { start, end, size: derive('the whole back', [plus('where it ends', end), less('where it begins', start)]) };
  };
  return { x: both('x'), y: both('y'), z: both('z') };
}

function lieTogether(part: Pick<UnmarkedPart, 'box'>, other: Pick<UnmarkedPart, 'box'>): boolean {
  return AXES.every((axis) => overlap(part.box[axis], other.box[axis]));
}

const nothing: Joinery = { growth: [], joints: [], features: [] };

/** The inner face: the one that looks towards the middle of the back. */
function entryOf(holder: UnmarkedPart, panel: Pick<UnmarkedPart, 'box'>): Feature['entry'] {
  const axis = holder.thin;
  return holder.box[axis].start.length.compare(panel.box[axis].start.length) <= 0 ? `+${axis}` : `-${axis}`;
}

function grooveIn(
  holder: UnmarkedPart,
  panel: Pick<UnmarkedPart, 'box'>,
  held: string,
  back: BackDesign & { readonly fixing: 'groove' | 'rabbet' },
): Feature {
  const entry = entryOf(holder, panel);
  const runs: Axis = holder.thin === 'x' ? 'y' : 'x';
  const side = (axis: Axis): Interval => {
    const [wood, lies] = [holder.blank[axis], panel.box[axis]];
    if (axis === runs) return { from: wood.start.length, to: wood.end.length };
    // The whole depth: a panel may be left short of it.
    if (axis === holder.thin) {
      const face = holder.box[axis];
      return entry.startsWith('+')
        ? { from: face.end.length.minus(back.depth.length), to: face.end.length }
        : { from: face.start.length, to: face.start.length.plus(back.depth.length) };
    }
    const from = wood.start.length.max(lies.start.length);
    const to = wood.end.length.min(lies.end.length);
    // A rabbet is open towards the back edge.
    return axis === 'z' && back.fixing === 'rabbet' ? { from, to: wood.end.length.max(to) } : { from, to };
  };
  return {
    id: `${holder.id}/${back.fixing} ${held}`,
    kind: back.fixing,
    part: holder.id,
    solid: { kind: 'box', x: side('x'), y: side('y'), z: side('z') },
    entry,
    runs,
    measures: { width: panel.box.z.size, depth: back.depth },
    stage: 'on the loose part',
    joint: `${held}>${holder.id}`,
    origin: back.origin,
  };
}
