import { groupAlike } from '../grouping.ts';
import { axisOf, type Feature, type FeatureKind, isHoleOfHardware } from '../joinery/feature.ts';
import type { Length } from '../length/length.ts';
import type { Part } from '../parts/part.ts';
import { AXES, type Axis, boundsOf } from '../solids/index.ts';
import { endOrEdge, type ReferenceEdge } from './reference-edges.ts';

/**
 * Straight rows of holes in the faces of parts: for shelf pins, and for the screws of slides and hinges. A drilling
 * template or a fence and a stop is set once for each, for all parts that take it.
 */
export interface HoleRow {
  readonly kind: FeatureKind;
  readonly diameter: Length;
  readonly depth: Length;
  /** From this edge or end to the line that all of the middles lie on. */
  readonly line: { readonly at: Length; readonly from: ReferenceEdge };
  /** Along that line: from this end or edge to each middle, in order. */
  readonly from: ReferenceEdge;
  readonly middles: readonly Length[];
  /** From one middle to the next; absent for a single hole, and where they differ. */
  readonly pitch?: Length;
  readonly parts: readonly string[];
}

export function holeRows(parts: readonly Part[]): readonly HoleRow[] {
  const rows = parts.flatMap((part) =>
    groupAlike(part.features.filter(isInRow), ({ kind, entry, measures, solid }) => [
      kind,
      entry,
      measures.width?.length,
      measures.depth?.length,
      // A slot is no hole of a row.
      solid.kind,
    ]).flatMap((holes) => linesOf(holes, part).flatMap((line) => rowOf(line, part))),
  );
  return groupAlike(rows, ({ kind, diameter, depth, line, from, middles }) => [
    kind,
    diameter,
    depth,
    line,
    from,
    middles,
  ]).map(([first, ...others]) => ({ ...first, parts: [...new Set([first, ...others].flatMap((each) => each.parts))] }));
}

/** Holes that a joint or a cup wants are told with their own cutter. */
function isInRow(feature: Feature): boolean {
  const { width, depth } = feature.measures;
  if (width === undefined || depth === undefined) return false;
  return feature.kind === 'pin-hole' || isHoleOfHardware(feature);
}

interface Line {
  readonly along: Axis;
  readonly across: Axis;
  readonly holes: readonly [Feature, ...Feature[]];
}

/** Pins stand in rows one above the other; what is left over lies in level lines where two or more do, or upright ones. */
function linesOf(holes: readonly [Feature, ...Feature[]], part: Part): readonly Line[] {
  const [first] = holes;
  const free = AXES.filter((axis) => axis !== axisOf(first.entry));
  const upright = free.find((axis) => axis === 'y') ?? free.find((axis) => axis !== part.grain) ?? free[0];
  const level = free.find((axis) => axis !== upright);
  if (upright === undefined || level === undefined) return [];
  const inLine = (each: readonly Feature[], along: Axis, across: Axis): readonly Line[] =>
    groupAlike(each, (hole) => middleOf(hole, across)).map((group) => ({ along, across, holes: group }));
  if (first.kind === 'pin-hole') return inLine(holes, upright, level);
  const lying = inLine(holes, level, upright).filter((line) => line.holes.length > 1);
  const used = new Set(lying.flatMap((line) => line.holes));
  return [
    ...lying,
    ...inLine(
      holes.filter((hole) => !used.has(hole)),
      upright,
      level,
    ),
  ];
}

function rowOf({ along, across, holes }: Line, part: Part): readonly HoleRow[] {
  const [first] = holes;
  const { width, depth } = first.measures;
  if (width === undefined || depth === undefined) return [];
  const middles = holes
    .map((hole) => middleOf(hole, along).minus(part.blank[along].start.length))
    .sort((a, b) => a.compare(b));
  const steps = middles.slice(1).map((middle, at) => middle.minus(middles[at] ?? middle));
  const [step] = steps;
  const isEven = step !== undefined && steps.every((each) => each.equals(step));
  return [
    {
      kind: first.kind,
      diameter: width.length,
      depth: depth.length,
      line: lineAt(first, across, part),
      from: `${startWords[along]} ${endOrEdge(part, along)}`,
      middles,
      ...(isEven ? { pitch: step } : {}),
      parts: [part.id],
    },
  ];
}

/** From front to back from the nearer edge, so that a front row and a back row at one distance are one setting. */
function lineAt(hole: Feature, across: Axis, part: Part): HoleRow['line'] {
  const { start, end } = part.blank[across];
  const middle = middleOf(hole, across);
  const [before, after] = [middle.minus(start.length), end.length.minus(middle)];
  const side = endOrEdge(part, across);
  if (across !== 'z' || before.compare(after) <= 0) return { at: before, from: `${startWords[across]} ${side}` };
  return { at: after, from: `back ${side}` };
}

const startWords = { x: 'left', y: 'lower', z: 'front' } as const;

function middleOf(hole: Feature, axis: Axis): Length {
  const { from, to } = boundsOf(hole.solid)[axis];
  return from.plus(to).dividedBy(2);
}
