import type { Origin } from '@fettle/findings';
import type { DustPanelDesign, FramedDesign, TenonDesign } from '../design/construction-design.ts';
import { derive, less, plus } from '../design/derive.ts';
import type { Cell, PieceDesign } from '../design/design.ts';
import type { Figure } from '../design/figure.ts';
import { cellsWithin } from '../design/inside-design.ts';
import { groupedBy } from '../grouping.ts';
import { doorFrame } from '../layout/front-thickness.ts';
import { leafId } from '../layout/leaf-ids.ts';
import type { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { type Axis, axesAcross, type BoxSolid, type Interval } from '../solids/solid.ts';
import type { Growth } from './blanks.ts';
import type { FaceOfPart, Feature, FeatureKind } from './feature.ts';
import type { Joint } from './joint.ts';
import { touchingParts } from './touching-parts.ts';

/**
 * The joints inside a frame: stub tenons of its rails, and the grooves that its panels lie in. Grooves run from end to
 * end of a member, as they are cut. A stub tenon is as thick as the groove is wide; in a frame without a panel, a third
 * of the wood.
 */

interface FrameJoinery {
  readonly id: string;
  /** Depth of the grooves; absent where no panel lies in them. */
  readonly groove?: Figure;
  readonly tenons?: TenonDesign;
  readonly shyEachEdge?: Figure;
  readonly origin: Origin;
}

interface Meeting {
  readonly frame: FrameJoinery;
  readonly held: UnmarkedPart;
  readonly holding: UnmarkedPart;
  readonly axis: Axis;
  readonly at: FaceOfPart;
  readonly isPanel: boolean;
}

export interface FrameJoints {
  /** The frames whose members are joined here. */
  readonly frames: ReadonlySet<string>;
  readonly joints: readonly Joint[];
  readonly growth: readonly Growth[];
  /** What is cut, once the members have grown into each other. */
  readonly cut: (grown: readonly UnmarkedPart[]) => readonly Feature[];
}

const none: FrameJoints = { frames: new Set(), joints: [], growth: [], cut: () => [] };

export function joinFrames(design: PieceDesign, parts: readonly UnmarkedPart[]): FrameJoints {
  const frames = framesOf(design);
  if (frames.size === 0) return none;
  const members = groupedBy(parts, ({ frame }) => (frame !== undefined && frames.has(frame) ? frame : undefined));
  const meetings = [...members].flatMap(([id, own]) => meetingsIn(frames.get(id) as FrameJoinery, own));
  return {
    frames: new Set(frames.keys()),
    joints: meetings.map(jointOf),
    growth: growthOf(meetings),
    cut: (grown) => cutsOf(meetings, new Map(grown.map((part) => [part.id, part]))),
  };
}

function framesOf({ carcase, face }: PieceDesign): ReadonlyMap<string, FrameJoinery> {
  const frames = new Map<string, FrameJoinery>();
  const add = (id: string, framed: FramedDesign | undefined): void => {
    if (framed === undefined) return;
    const { panel, tenons, origin, glass } = framed;
    if (glass !== undefined) frames.set(id, { id, tenons, origin });
    else frames.set(id, { id, groove: panel.groove, tenons, shyEachEdge: panel.shyEachEdge, origin });
  };
  add('case/side-left', carcase.sides?.framed);
  add('case/side-right', carcase.sides?.framed);
  add('case/back', carcase.back?.framed);
  const visit = (cell: Cell): void => {
    if (cell.kind === 'front' && face !== undefined) {
      const framed = doorFrame(cell, face);
      for (let at = 0; at < cell.leaves; at++) add(leafId(cell, cell.leaves, at), framed);
    }
    for (const inner of cellsWithin(cell)) visit(inner);
    if (cell.kind !== 'row' && cell.kind !== 'stack') return;
    for (const { id, form, tenons, dustPanel, origin } of cell.dividers) {
      if (form !== 'web-frame' || (tenons === undefined && dustPanel === undefined)) continue;
      frames.set(id, { id, ...ofWebFrame(tenons, dustPanel), origin });
    }
  };
  if (face !== undefined) visit(face.root);
  return frames;
}

function ofWebFrame(
  tenons: TenonDesign | undefined,
  dustPanel: DustPanelDesign | undefined,
): Pick<FrameJoinery, 'groove' | 'tenons' | 'shyEachEdge'> {
  return {
    ...(tenons === undefined ? {} : { tenons }),
    ...(dustPanel === undefined ? {} : { groove: dustPanel.groove, shyEachEdge: dustPanel.shyEachEdge }),
  };
}

/** Whatever ends against another member is held by it; a panel is held by all that it touches. */
function meetingsIn(frame: FrameJoinery, members: readonly UnmarkedPart[]): readonly Meeting[] {
  return touchingParts(members).flatMap(({ one, other, axis }): Meeting[] => {
    if (isPanel(other)) return [{ frame, held: other, holding: one, axis, at: `+${axis}`, isPanel: true }];
    if (isPanel(one)) return [{ frame, held: one, holding: other, axis, at: `-${axis}`, isPanel: true }];
    if (endsAlong(other, axis)) return [{ frame, held: other, holding: one, axis, at: `+${axis}`, isPanel: false }];
    if (endsAlong(one, axis)) return [{ frame, held: one, holding: other, axis, at: `-${axis}`, isPanel: false }];
    return [];
  });
}

function isPanel({ role }: UnmarkedPart): boolean {
  return role === 'panel' || role === 'dust-panel';
}

/** Whether its length runs along this axis, grain or not. */
function endsAlong(part: UnmarkedPart, axis: Axis): boolean {
  if (part.grain !== 'none') return part.grain === axis;
  const other = axesAcross(part.thin).find((each) => each !== axis) ?? axis;
  return part.box[axis].size.length.compare(part.box[other].size.length) >= 0;
}

function jointOf({ frame, held, holding, at, isPanel }: Meeting): Joint {
  const kind = isPanel ? 'groove' : frame.tenons === undefined ? 'butt' : 'stub-tenon';
  const origin = isPanel ? held.origin : (frame.tenons?.origin ?? frame.origin);
  return {
    id: `${held.id}>${holding.id}`,
    kind,
    held: held.id,
    holding: holding.id,
    at,
    origin,
    isAssumed: kind === 'butt',
  };
}

function growthOf(meetings: readonly Meeting[]): readonly Growth[] {
  // One figure for all ends of a frame, so that a size tells them as one term.
  const known = new Map<FrameJoinery, { readonly tenon?: Figure; readonly panel?: Figure }>();
  return meetings.flatMap((meeting): Growth[] => {
    const { frame, held, at, axis, isPanel } = meeting;
    const by = known.get(frame) ?? reachOf(frame);
    known.set(frame, by);
    const reach = isPanel ? by.panel : by.tenon;
    if (reach === undefined) return [];
    const end: FaceOfPart = at.startsWith('+') ? `-${axis}` : `+${axis}`;
    return [{ part: held.id, at: end, by: reach, words: isPanel ? 'what lies in the groove' : 'stub tenon' }];
  });
}

function reachOf({ tenons, groove, shyEachEdge }: FrameJoinery): { readonly tenon?: Figure; readonly panel?: Figure } {
  const tenon =
    tenons &&
    derive('the tenon is short of its mortise', [
      plus('depth of the mortise', tenons.length),
      less('short of it', tenons.short),
    ]);
  const panel =
    groove &&
    derive('the panel is short of the bottom of its groove', [
      plus('depth of the groove', groove),
      ...(shyEachEdge === undefined ? [] : [less('free at each edge', shyEachEdge)]),
    ]);
  return { ...(tenon === undefined ? {} : { tenon }), ...(panel === undefined ? {} : { panel }) };
}

function cutsOf(meetings: readonly Meeting[], grown: ReadonlyMap<string, UnmarkedPart>): readonly Feature[] {
  const features = new Map<string, Feature>();
  const add = (feature: Feature | undefined): void => {
    if (feature !== undefined && !features.has(feature.id)) features.set(feature.id, feature);
  };
  const panels = new Map<FrameJoinery, UnmarkedPart>();
  for (const { frame, held, isPanel } of meetings) if (isPanel && !panels.has(frame)) panels.set(frame, held);
  for (const meeting of meetings) {
    const { frame } = meeting;
    const [held, holding] = [grown.get(meeting.held.id), grown.get(meeting.holding.id)];
    if (held === undefined || holding === undefined) continue;
    const panel = panels.get(frame);
    if (meeting.isPanel) {
      add(grooveFor(meeting, holding, meeting.held));
      continue;
    }
    if (frame.tenons === undefined) continue;
    const thick = panel === undefined ? middleThird(held) : intervalOf(panel.box[panel.thin]);
    const isInGroove = panel !== undefined && frame.groove !== undefined;
    if (isInGroove) add(grooveFor(meeting, holding, panel));
    if (!isInGroove || frame.tenons.length.length.compare(frame.groove.length) > 0) {
      add(mortiseFor(meeting, holding, thick, frame.tenons));
    }
    for (const shoulder of shouldersOf(meeting, held, thick)) add(shoulder);
  }
  return [...features.values()];
}

function middleThird(part: UnmarkedPart): Interval {
  const { start, size } = part.box[part.thin];
  const third = size.length.times(Rational.of(1, 3));
  return { from: start.length.plus(third), to: start.length.plus(third.times(2)) };
}

function intervalOf(span: { readonly start: Figure; readonly end: Figure }): Interval {
  return { from: span.start.length, to: span.end.length };
}

/** From the edge of the holding part that is met, so deep into it. */
function intoEdge({ axis, at }: Meeting, holding: UnmarkedPart, depth: Length): Interval {
  const edge = at.startsWith('+') ? holding.box[axis].end.length : holding.box[axis].start.length;
  return at.startsWith('+') ? { from: edge.minus(depth), to: edge } : { from: edge, to: edge.plus(depth) };
}

function grooveFor(meeting: Meeting, holding: UnmarkedPart, panel: UnmarkedPart): Feature | undefined {
  const { frame, axis, at } = meeting;
  if (frame.groove === undefined) return undefined;
  const runs = axesAcross(holding.thin).find((each) => each !== axis);
  // Where a member is met at its end there is no edge to groove.
  if (runs === undefined || axis === holding.thin) return undefined;
  return cut(meeting, holding, {
    id: `${holding.id}/groove ${at}`,
    kind: 'groove',
    entry: at,
    runs,
    solid: boxAlong([
      [axis, intoEdge(meeting, holding, frame.groove.length)],
      [runs, intervalOf(holding.blank[runs])],
      [holding.thin, intervalOf(panel.box[panel.thin])],
    ]),
    measures: { width: panel.thickness, depth: frame.groove },
    origin: panel.origin,
  });
}

function mortiseFor(meeting: Meeting, holding: UnmarkedPart, thick: Interval, tenons: TenonDesign): Feature {
  const { held, axis, at } = meeting;
  const runs = axesAcross(held.thin).find((each) => each !== axis) ?? held.thin;
  return cut(meeting, holding, {
    id: `${holding.id}/mortise ${held.id}`,
    kind: 'mortise',
    entry: at,
    runs,
    solid: boxAlong([
      [axis, intoEdge(meeting, holding, tenons.length.length)],
      [runs, intervalOf(held.box[runs])],
      [held.thin, thick],
    ]),
    measures: { depth: tenons.length },
    origin: tenons.origin,
  });
}

/** What is taken off both cheeks at the end of a rail. */
function shouldersOf(meeting: Meeting, held: UnmarkedPart, thick: Interval): readonly Feature[] {
  const { axis, at, frame } = meeting;
  const { tenons } = frame;
  if (tenons === undefined) return [];
  const { thin } = held;
  const runs = axesAcross(thin).find((each) => each !== axis) ?? thin;
  const end: Interval = at.startsWith('+')
    ? { from: held.blank[axis].start.length, to: held.box[axis].start.length }
    : { from: held.box[axis].end.length, to: held.blank[axis].end.length };
  const cheeks: readonly (readonly [FaceOfPart, Interval])[] = [
    [`-${thin}`, { from: held.box[thin].start.length, to: thick.from }],
    [`+${thin}`, { from: thick.to, to: held.box[thin].end.length }],
  ];
  return cheeks
    .filter(([, cheek]) => cheek.from.compare(cheek.to) < 0 && end.from.compare(end.to) < 0)
    .map(([entry, cheek]) =>
      cut(meeting, held, {
        id: `${held.id}/shoulder ${at} ${entry}`,
        kind: 'tenon-shoulder',
        entry,
        runs,
        solid: boxAlong([
          [axis, end],
          [runs, intervalOf(held.blank[runs])],
          [thin, cheek],
        ]),
        measures: {},
        origin: tenons.origin,
      }),
    );
}

function cut(
  { held, holding }: Meeting,
  part: UnmarkedPart,
  feature: Pick<Feature, 'id' | 'entry' | 'solid' | 'measures' | 'origin'> & {
    readonly kind: FeatureKind;
    readonly runs: Axis;
  },
): Feature {
  return { ...feature, part: part.id, stage: 'on the loose part', joint: `${held.id}>${holding.id}` };
}

function boxAlong(sides: readonly (readonly [Axis, Interval])[]): BoxSolid {
  const side = (axis: Axis): Interval => (sides.find(([each]) => each === axis) as readonly [Axis, Interval])[1];
  return { kind: 'box', x: side('x'), y: side('y'), z: side('z') };
}
