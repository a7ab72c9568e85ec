import type { Evaluation } from '../evaluation.ts';
import { groupAlike } from '../grouping.ts';
import { type Feature, type FeatureKind, isHoleOfHardware } from '../joinery/feature.ts';
import type { Length } from '../length/length.ts';
import type { Part } from '../parts/part.ts';
import { AXES, type Axis, boundsOf, type Interval } from '../solids/index.ts';
import { type BevelSetup, bevelSetups } from './bevels.ts';
import { type Diagonal, diagonalsOf } from './diagonals.ts';
import { type HoleRow, holeRows } from './hole-rows.ts';
import { endOrEdge, type ReferenceEdge } from './reference-edges.ts';

export type { ReferenceEdge } from './reference-edges.ts';

/**
 * The joints of a piece by how one sets a machine for them: each setting once, with all the parts that are cut at it;
 * where the middles of holes are marked; rows of holes
 * for shelf pins and hardware; a fence with strips for rows of dadoes; and the diagonals to square by.
 */
export interface Setups {
  readonly machine: readonly MachineSetup[];
  readonly marks: readonly CentreMarks[];
  readonly rows: readonly HoleRow[];
  readonly fences: readonly FencePlan[];
  readonly bevels: readonly BevelSetup[];
  readonly diagonals: readonly Diagonal[];
}

export interface MachineSetup {
  readonly kind: FeatureKind;
  readonly width: Length;
  readonly depth: Length;
  /** From the reference to the nearer side of the cut; zero where it is open there. */
  readonly fence: Length;
  readonly from: ReferenceEdge;
  /** Where it ends inside the part; empty where it runs through. */
  readonly stops: readonly CutStop[];
  readonly parts: readonly string[];
}

export interface CutStop {
  /** From that end or edge to where the cut ends. */
  readonly at: Length;
  readonly from: `${'left' | 'right' | 'lower' | 'upper' | 'front' | 'back'} ${'end' | 'edge'}`;
}

export interface CentreMarks {
  readonly kind: FeatureKind;
  readonly diameter: Length;
  readonly depth: Length;
  readonly from: ReferenceEdge;
  /** In order, each from the reference. */
  readonly middles: readonly Length[];
  readonly parts: readonly string[];
}

/** A fence is set once; then a strip is laid before it for each further dado. The same for left and right. */
export interface FencePlan {
  /** What the distances are taken from. */
  readonly from: 'upper face of the bottom' | 'lower end';
  /** From there to the middle of each dado, from below. */
  readonly middles: readonly Length[];
  /** The first of them, then what each strip adds. */
  readonly inserts: readonly Length[];
  /** From the lower end of the part itself, as it is cut, to the nearer side of the first dado. */
  readonly fence: Length;
  readonly parts: readonly string[];
}

export function setupsOf(evaluation: Evaluation): Setups {
  return {
    machine: machineSetups(evaluation.parts),
    marks: centreMarks(evaluation.parts),
    rows: holeRows(evaluation.parts),
    fences: fencePlans(evaluation),
    bevels: bevelSetups(evaluation.parts),
    diagonals: diagonalsOf(evaluation),
  };
}

const cutByFence: ReadonlySet<FeatureKind> = new Set<FeatureKind>(['dado', 'groove', 'rabbet', 'socket']);
const marked: ReadonlySet<FeatureKind> = new Set<FeatureKind>(['dowel-hole', 'mortise', 'screw-hole']);

function machineSetups(parts: readonly Part[]): readonly MachineSetup[] {
  const cuts = parts.flatMap((part) =>
    part.features.flatMap((feature) => {
      const { width, depth } = feature.measures;
      if (!cutByFence.has(feature.kind) || width === undefined || depth === undefined) return [];
      const across = acrossOf(feature);
      if (across === undefined) return [];
      const { fence, from } = fenceAt(part, across, boundsOf(feature.solid)[across]);
      const stops = stopsOf(feature, part);
      return [{ kind: feature.kind, width: width.length, depth: depth.length, fence, from, stops, part: part.id }];
    }),
  );
  const groups = groupAlike(cuts, ({ kind, width, depth, fence, from, stops }) => [
    kind,
    width,
    depth,
    fence,
    from,
    ...stops.flatMap((stop) => [stop.at, stop.from]),
  ]);
  return groups
    .map(([first, ...others]) => {
      const { part, ...setting } = first;
      return { ...setting, parts: distinct([part, ...others.map((each) => each.part)]) };
    })
    .sort((a, b) => b.width.compare(a.width) || b.depth.compare(a.depth) || a.fence.compare(b.fence));
}

/** The axis along which a cut is as wide as the cutter. */
function acrossOf({ entry, runs }: Feature): Axis | undefined {
  return runs === undefined ? undefined : AXES.find((axis) => axis !== runs && axis !== entry.slice(1));
}

const ENDS = { x: ['left', 'right'], y: ['lower', 'upper'], z: ['front', 'back'] } as const;

/** At which of the two ends of its way a cut has not run out of the part. */
function stopsOf({ solid, runs }: Feature, part: Part): readonly CutStop[] {
  if (runs === undefined) return [];
  const { from, to } = boundsOf(solid)[runs];
  const { start, end } = part.blank[runs];
  const side = endOrEdge(part, runs);
  const [first, last] = ENDS[runs];
  const stops: readonly CutStop[] = [
    { at: from.minus(start.length), from: `${first} ${side}` },
    { at: end.length.minus(to), from: `${last} ${side}` },
  ];
  return stops.filter(({ at }) => at.isPositive());
}

/** Upright from the lower end; from front to back and from left to right from the nearer one, so that pairs agree. */
function fenceAt(part: Part, across: Axis, cut: Interval): { readonly fence: Length; readonly from: ReferenceEdge } {
  const { start, end } = part.blank[across];
  const before = cut.from.minus(start.length);
  const after = end.length.minus(cut.to);
  const isNearStart = before.compare(after) <= 0;
  const nearer = atLeastNothing(isNearStart ? before : after);
  if (across === part.thin) return { fence: nearer, from: 'face' };
  const side = endOrEdge(part, across);
  if (across === 'y') return { fence: atLeastNothing(before), from: `lower ${side}` };
  if (across === 'x') return { fence: nearer, from: `nearer ${side}` };
  return { fence: nearer, from: isNearStart ? `front ${side}` : `back ${side}` };
}

function atLeastNothing(length: Length): Length {
  return length.isNegative() ? length.minus(length) : length;
}

function centreMarks(parts: readonly Part[]): readonly CentreMarks[] {
  const rows = parts.flatMap((part) =>
    groupAlike(
      part.features.filter(
        (feature) => marked.has(feature.kind) && !isHoleOfHardware(feature) && feature.measures.depth !== undefined,
      ),
      ({ kind, joint, entry, measures }) => [kind, joint, entry, measures.width?.length, measures.depth?.length],
    ).flatMap((holes) => {
      const along = lineOf(holes, part);
      const [first] = holes;
      const { width, depth } = first.measures;
      if (along === undefined || width === undefined || depth === undefined) return [];
      const start = part.blank[along].start.length;
      const middles = holes
        .map(({ solid }) => boundsOf(solid)[along])
        .map(({ from, to }) => from.plus(to).dividedBy(2).minus(start))
        .sort((a, b) => a.compare(b));
      const side = endOrEdge(part, along);
      const from: ReferenceEdge =
        along === part.thin
          ? 'face'
          : along === 'y'
            ? `lower ${side}`
            : along === 'z'
              ? `front ${side}`
              : `nearer ${side}`;
      return [{ kind: first.kind, diameter: width.length, depth: depth.length, from, middles, part: part.id }];
    }),
  );
  return groupAlike(rows, ({ kind, diameter, depth, from, middles }) => [kind, diameter, depth, from, middles]).map(
    ([first, ...others]) => {
      const { part, ...row } = first;
      return { ...row, parts: distinct([part, ...others.map((each) => each.part)]) };
    },
  );
}

/** The axis along which the holes of a row lie; of one alone, the longer way across its face. */
function lineOf(holes: readonly Feature[], part: Part): Axis | undefined {
  const [first, second] = holes;
  if (first === undefined) return undefined;
  const free = AXES.filter((axis) => axis !== first.entry.slice(1));
  if (second !== undefined) {
    const [a, b] = [boundsOf(first.solid), boundsOf(second.solid)];
    return free.find((axis) => !a[axis].from.equals(b[axis].from));
  }
  return [...free].sort((a, b) => part.blank[b].size.length.compare(part.blank[a].size.length))[0];
}

const betweenUprights: ReadonlySet<Part['role']> = new Set<Part['role']>(['divider-rail', 'divider-panel', 'shelf']);

/** For uprights that take dividers in dadoes or in dovetail sockets. */
function fencePlans({ parts, joints, layout, design }: Evaluation): readonly FencePlan[] {
  const byId = new Map(parts.map((part) => [part.id, part]));
  const heldBy = new Map(joints.map(({ id, held }) => [id, byId.get(held)]));
  const hasBottom = design.carcase.bottom !== undefined;
  const plans = parts.flatMap((part) => {
    const dadoes = part.features.filter(({ kind, joint, runs }) => {
      const held = joint === undefined ? undefined : heldBy.get(joint);
      return (
        (kind === 'dado' || kind === 'socket') && runs === 'z' && held !== undefined && betweenUprights.has(held.role)
      );
    });
    // Dadoes for what lies on either side of an upright are often at one height.
    const places = groupAlike(
      dadoes.map(({ solid }) => boundsOf(solid).y),
      (place) => [place.from, place.to],
    )
      .map(([place]) => place)
      .sort((a, b) => a.from.compare(b.from));
    const [lowest] = places;
    const lowerEnd = part.blank.y.start.length;
    const from = (hasBottom ? layout.carcase?.interior.y.start.length : undefined) ?? lowerEnd;
    if (lowest === undefined) return [];
    const middles = places.map((place) => place.from.plus(place.to).dividedBy(2).minus(from));
    const inserts = middles.map((middle, at) => (at === 0 ? middle : middle.minus(middles[at - 1] as Length)));
    const named: FencePlan['from'] = hasBottom ? 'upper face of the bottom' : 'lower end';
    return [{ from: named, middles, inserts, fence: lowest.from.minus(lowerEnd), part: part.id }];
  });
  return groupAlike(plans, ({ from, middles, fence }) => [from, middles, fence]).map(([first, ...others]) => {
    const { part, ...plan } = first;
    return { ...plan, parts: [part, ...others.map((each) => each.part)] };
  });
}

function distinct(ids: readonly string[]): readonly string[] {
  return [...new Set(ids)];
}
