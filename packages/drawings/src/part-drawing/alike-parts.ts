import type { Length, Part, Solid } from '@fettle/engine';
import { frameOf, LOCALS, type Local, type PartFrame } from './part-frame.ts';

/**
 * Parts that are made alike are drawn once: also those that only have to be turned about to be the same. A part that is
 * the mirror image of another one is drawn with it and named so.
 */

export interface AlikeParts {
  readonly frame: PartFrame;
  /** The one that is drawn first. */
  readonly same: readonly Part[];
  readonly mirrored: readonly Part[];
}

/** Along which of its sizes a part is turned over. */
type Turned = Readonly<Record<Local, boolean>>;

const ALL_TURNS: readonly Turned[] = [false, true].flatMap((along) =>
  [false, true].flatMap((across) => [false, true].map((thin) => ({ along, across, thin }))),
);

/** In the order of their marks. */
export function alikeParts(parts: readonly Part[]): readonly AlikeParts[] {
  const found: { frame: PartFrame; same: Part[]; mirrored: Part[] }[] = [];
  const known = new Map<string, { readonly group: (typeof found)[number]; readonly isMirrored: boolean }>();
  const sorted = [...parts].sort((a, b) => a.mark.localeCompare(b.mark, 'en', { numeric: true }));
  for (const part of sorted) {
    const frame = frameOf(part);
    const before = known.get(keyOf(frame, STRAIGHT));
    if (before !== undefined) {
      (before.isMirrored ? before.group.mirrored : before.group.same).push(part);
      continue;
    }
    const group = { frame, same: [part], mirrored: [] };
    found.push(group);
    // Turned about twice it is the same piece of wood; once or thrice its mirror image.
    for (const turned of [...ALL_TURNS].sort((a, b) => (times(a) % 2) - (times(b) % 2))) {
      const key = keyOf(frame, turned);
      if (!known.has(key)) known.set(key, { group, isMirrored: times(turned) % 2 === 1 });
    }
  }
  return found;
}

const STRAIGHT: Turned = { along: false, across: false, thin: false };

function times(turned: Turned): number {
  return LOCALS.filter((local) => turned[local]).length;
}

function keyOf({ part, along, across, thin, size }: PartFrame, turned: Turned): string {
  const axes = { along, across, thin } as const;
  const origins = LOCALS.map((local) => part.blank[axes[local]].start.length);
  const place = (local: Local, at: Length): string => {
    const from = at.minus(origins[LOCALS.indexOf(local)] ?? at);
    return (turned[local] ? size[local].minus(from) : from).exactInches;
  };
  const cuts = part.features.map(({ kind, solid }) => `${kind} ${solidKey(solid, axes, place)}`).sort();
  const edging = part.edging.map(({ at, thickness }) => {
    const local = LOCALS.find((each) => axes[each] === at.slice(1)) ?? 'along';
    return `${local}${at.startsWith('-') === turned[local] ? '+' : '-'}${thickness.length.exactInches}`;
  });
  return JSON.stringify([
    part.stock?.name ?? null,
    part.role,
    part.grain === 'none',
    ...LOCALS.map((local) => size[local].exactInches),
    ...cuts,
    ...edging.sort(),
  ]);
}

function solidKey(
  solid: Solid,
  axes: Readonly<Record<Local, 'x' | 'y' | 'z'>>,
  place: (local: Local, at: Length) => string,
): string {
  switch (solid.kind) {
    case 'box':
      return LOCALS.flatMap((local) =>
        [place(local, solid[axes[local]].from), place(local, solid[axes[local]].to)].sort(),
      ).join(' ');
    case 'convex':
      return solid.corners
        .map((corner) => LOCALS.map((local) => place(local, corner[axes[local]])).join(','))
        .sort()
        .join(' ');
    case 'cylinder': {
      const { axis, along, centre, sweptTo = centre, radius } = solid;
      const across = (['x', 'y', 'z'] as const).filter((each) => each !== axis);
      const local = (name: 'x' | 'y' | 'z'): Local => LOCALS.find((each) => axes[each] === name) ?? 'along';
      const centres = [centre, sweptTo].map((each) =>
        across.map((name, at) => `${local(name)}${place(local(name), each[at === 0 ? 0 : 1])}`).join(','),
      );
      const ends = [place(local(axis), along.from), place(local(axis), along.to)].sort();
      return [local(axis), ...ends, radius.exactInches, ...centres.sort()].join(' ');
    }
    default: {
      const unknown: never = solid;
      return unknown;
    }
  }
}
