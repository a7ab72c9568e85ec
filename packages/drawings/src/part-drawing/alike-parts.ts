import type { FaceOfPart, Length, Part, Solid } from '@fettle/engine';
import { frameOf, type LaidPart, LOCALS, type Local, laidDown, type PartFrame } from './part-frame.ts';

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

/** Turned about twice it is the same piece of wood; once or thrice its mirror image. */
const SAME_FIRST = [...ALL_TURNS].sort((a, b) => (times(a) % 2) - (times(b) % 2));

const STRAIGHT: Turned = { along: false, across: false, thin: false };

function times(turned: Turned): number {
  return LOCALS.filter((local) => turned[local]).length;
}

interface Group {
  readonly same: Part[];
  readonly mirrored: Part[];
  readonly shape: Shape;
}

/** One for all: a comparison that makes its own each time takes longer than all the rest. */
const byMark = new Intl.Collator('en', { numeric: true });

/** In the order of their marks. */
export function alikeParts(parts: readonly Part[]): readonly AlikeParts[] {
  const found: Group[] = [];
  const byOutline = new Map<string, Group[]>();
  const distances: Distances = new Map();
  const sorted = [...parts].sort((a, b) => byMark.compare(a.mark, b.mark));
  for (const part of sorted) {
    const laid = laidDown(part);
    const outline = outlineOf(laid);
    const candidates = byOutline.get(outline) ?? [];
    byOutline.set(outline, candidates);
    const shape = new Shape(laid, distances);
    const turned = candidates
      .map((group) => ({ group, turn: SAME_FIRST.find((turn) => group.shape.key(turn) === shape.key(STRAIGHT)) }))
      .find(({ turn }) => turn !== undefined);
    if (turned?.turn !== undefined) {
      (times(turned.turn) % 2 === 1 ? turned.group.mirrored : turned.group.same).push(part);
      continue;
    }
    const group = { same: [part], mirrored: [], shape };
    found.push(group);
    candidates.push(group);
  }
  return found.map(({ same, mirrored, shape }) => new Alike(same, mirrored, shape.part));
}

/** How the first of them lies is worked out where it is drawn: most often one only asks how many there are. */
class Alike implements AlikeParts {
  readonly same: readonly Part[];
  readonly mirrored: readonly Part[];
  readonly #first: Part;
  #frame: PartFrame | undefined;

  constructor(same: readonly Part[], mirrored: readonly Part[], first: Part) {
    this.same = same;
    this.mirrored = mirrored;
    this.#first = first;
  }

  get frame(): PartFrame {
    this.#frame ??= frameOf(this.#first);
    return this.#frame;
  }
}

/** What is told without any reckoning; parts that differ in it are not alike. */
function outlineOf({ part, size }: LaidPart): string {
  return [
    JSON.stringify(part.stock?.name ?? null),
    part.role,
    part.grain === 'none',
    ...LOCALS.map((local) => size[local].exactInches),
    part.edging.length,
    ...part.features.map(({ kind, solid }) => `${kind} ${solid.kind}`).sort(),
  ].join();
}

/** A number for each distance that occurs: numbers are compared and put in order sooner than fractions. */
type Distances = Map<string, number>;

/** Numbers below this fit three into one exact number. */
const MOST_DISTANCES = 2 ** 17;

/** What is done to a part and where, as a text that is the same for the same work. Worked out no further than asked. */
class Shape {
  readonly #laid: LaidPart;
  readonly #distances: Distances;
  readonly #keys = new Map<Turned, string>();
  /** Distances are the same objects wherever several features begin at the same place. */
  readonly #places: Readonly<Record<Local, readonly [straight: Map<Length, number>, over: Map<Length, number>]>> = {
    along: [new Map(), new Map()],
    across: [new Map(), new Map()],
    thin: [new Map(), new Map()],
  };

  /** Shapes are compared only among those that number their distances together. */
  constructor(laid: LaidPart, distances: Distances) {
    this.#laid = laid;
    this.#distances = distances;
  }

  get part(): Part {
    return this.#laid.part;
  }

  /** `turned` is one of `ALL_TURNS` or `STRAIGHT`. */
  key(turned: Turned): string {
    let key = this.#keys.get(turned);
    if (key === undefined) {
      key = this.#work(turned);
      this.#keys.set(turned, key);
    }
    return key;
  }

  #work(turned: Turned): string {
    const { part, along, across, thin } = this.#laid;
    const axes = { along, across, thin } as const;
    const place = (local: Local, at: Length): number =>
      this.#place(local, part.blank[axes[local]].start.length, at, turned);
    const side = (face: FaceOfPart): string => {
      const local = LOCALS.find((each) => axes[each] === face.slice(1)) ?? 'along';
      return `${local}${face.startsWith('-') === turned[local] ? '+' : '-'}`;
    };
    // From which side a hole is bored tells which face of a front is the one that shows.
    const cuts = part.features
      .map(({ kind, solid, entry }) => `${kind} ${side(entry)} ${solidKey(solid, axes, place)}`)
      .sort();
    const edging = part.edging.map(({ at, thickness }) => `${side(at)}${thickness.length.exactInches}`);
    // No piece has so many; in one that had, no part is said to be like another.
    return this.#distances.size > MOST_DISTANCES ? part.id : [...cuts, ...edging.sort()].join();
  }

  #place(local: Local, origin: Length, at: Length, turned: Turned): number {
    const known = this.#places[local][turned[local] ? 1 : 0];
    let number = known.get(at);
    if (number === undefined) {
      const from = at.minus(origin);
      number = this.#numberOf(turned[local] ? this.#laid.size[local].minus(from) : from);
      known.set(at, number);
    }
    return number;
  }

  #numberOf({ exactInches }: Length): number {
    const known = this.#distances.get(exactInches);
    if (known !== undefined) return known;
    const number = this.#distances.size;
    this.#distances.set(exactInches, number);
    return number;
  }
}

function solidKey(
  solid: Solid,
  axes: Readonly<Record<Local, 'x' | 'y' | 'z'>>,
  place: (local: Local, at: Length) => number,
): string {
  const ends = (local: Local, { from, to }: { readonly from: Length; readonly to: Length }): string => {
    const [one, other] = [place(local, from), place(local, to)];
    return one < other ? `${one} ${other}` : `${other} ${one}`;
  };
  switch (solid.kind) {
    case 'box':
      return LOCALS.map((local) => ends(local, solid[axes[local]])).join(' ');
    case 'convex': {
      const { along, across, thin } = axes;
      const corners = new Float64Array(solid.corners.length);
      for (const [at, corner] of solid.corners.entries()) {
        const [one, two] = [place('along', corner[along]), place('across', corner[across])];
        corners[at] = (one * MOST_DISTANCES + two) * MOST_DISTANCES + place('thin', corner[thin]);
      }
      return corners.sort().join(' ');
    }
    case 'cylinder': {
      const { axis, along, centre, sweptTo = centre, radius } = solid;
      const across = (['x', 'y', 'z'] as const).filter((each) => each !== axis);
      const local = (name: 'x' | 'y' | 'z'): Local => LOCALS.find((each) => axes[each] === name) ?? 'along';
      const centres = [centre, sweptTo].map((each) =>
        across.map((name, at) => `${local(name)}${place(local(name), each[at === 0 ? 0 : 1])}`).join(),
      );
      return [local(axis), ends(local(axis), along), radius.exactInches, ...centres.sort()].join(' ');
    }
    default: {
      const unknown: never = solid;
      return unknown;
    }
  }
}
