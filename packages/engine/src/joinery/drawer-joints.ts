import { derive, plus } from '../design/derive.ts';
import type { Cell, DrawerDesign, FaceDesign } from '../design/design.ts';
import type { Figure } from '../design/figure.ts';
import { cellsWithin } from '../design/inside-design.ts';
import { groupedBy } from '../grouping.ts';
import { Rational } from '../length/rational.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { AXES, type Axis, type BoxSolid, boxOf, type End, type Interval, type Solid } from '../solids/index.ts';
import { dovetailSlope, nothingLeft, PIN_WIDTH, TAIL_PITCH } from '../tables/joinery-habits.ts';
import { usual } from '../tables/trade-habits.ts';
import { fingers, tails } from './corner-fingers.ts';
import type { FaceOfPart, Feature, FeatureKind } from './feature.ts';
import type { Joint, JointKind } from './joint.ts';
import type { AskedBy, JoineryFacts, JointPlan } from './joint-plan.ts';
import { wholeOf } from './meeting.ts';
import { overlap } from './touching-parts.ts';

/** The corners of drawer boxes, and the grooves that their bottoms lie in. */

export function drawerPlans(
  face: FaceDesign | undefined,
  parts: readonly UnmarkedPart[],
  facts: JoineryFacts,
): readonly JointPlan[] {
  if (face === undefined) return [];
  const designs = drawersOf(face);
  const boxes = groupedBy(parts, ({ cell, role }) =>
    role.startsWith('drawer-') && role !== 'drawer-front' ? cell : undefined,
  );
  return [...boxes].flatMap(([cell, box]) => {
    const drawer = designs.get(cell);
    return drawer === undefined ? [] : boxPlans(drawer, box, facts);
  });
}

function drawersOf(face: FaceDesign): ReadonlyMap<string, DrawerDesign> {
  const found = new Map<string, DrawerDesign>();
  const waiting: Cell[] = [face.root];
  for (let cell = waiting.pop(); cell !== undefined; cell = waiting.pop()) {
    waiting.push(...cellsWithin(cell));
    const drawer = cell.kind === 'front' && cell.what === 'drawer' ? (cell.drawer ?? face.drawers) : undefined;
    if (drawer !== undefined) found.set(cell.id, drawer);
  }
  return found;
}

function boxPlans(drawer: DrawerDesign, box: readonly UnmarkedPart[], facts: JoineryFacts): readonly JointPlan[] {
  const of = (role: UnmarkedPart['role']) => box.filter((part) => part.role === role);
  const [sides, ends, bottoms] = [of('drawer-side'), of('drawer-end'), of('drawer-bottom')];
  const partitions = of('drawer-partition');
  return [
    ...sides.flatMap((side) => ends.map((end) => cornerPlan(drawer, side, end, facts))),
    ...bottoms.flatMap((bottom) => [...sides, ...ends].flatMap((holder) => bottomPlan(drawer, bottom, holder))),
    ...partitions.flatMap((held) => [...sides, ...ends].flatMap((holder) => partitionPlan(drawer, held, holder))),
  ];
}

const kinds: Readonly<Record<DrawerDesign['corners'], JointKind>> = {
  dovetail: 'dovetail',
  'box-joint': 'box-joint',
  rabbet: 'drawer-rabbet',
  'lock-rabbet': 'lock-rabbet',
  butt: 'butt',
};
const half = Rational.of(1, 2);

function cornerPlan(drawer: DrawerDesign, side: UnmarkedPart, end: UnmarkedPart, facts: JoineryFacts): JointPlan {
  const isLeft = side.box.x.start.length.compare(end.box.x.start.length) <= 0;
  const at: FaceOfPart = isLeft ? '+x' : '-x';
  const isAssumed = drawer.cornersOrigin === undefined;
  const by: AskedBy = { origin: drawer.cornersOrigin ?? drawer.origin, isAssumed };
  const joint: Joint = {
    id: `${end.id}>${side.id}`,
    kind: kinds[drawer.corners],
    held: end.id,
    holding: side.id,
    at,
    origin: by.origin,
    isAssumed,
    ...(drawer.corners === 'butt' ? {} : { fit: { kind: 'snug', by: nothingLeft() } }),
  };
  return { joint, growth: [], cut: () => cornerCuts(drawer, side, end, at, joint, facts) };
}

function cornerCuts(
  drawer: DrawerDesign,
  side: UnmarkedPart,
  end: UnmarkedPart,
  at: FaceOfPart,
  joint: Joint,
  facts: JoineryFacts,
): readonly Feature[] {
  const x = wholeOf(side.box, 'x');
  const z = wholeOf(end.box, 'z');
  const y = wholeOf(side.box, 'y');
  const shared = wholeOf(end.box, 'y');
  const outer: End = end.box.z.start.length.equals(side.box.z.start.length) ? 'from' : 'to';
  const inner: Interval = at === '+x' ? { from: middle(x), to: x.to } : { from: x.from, to: middle(x) };
  const cut =
    (part: UnmarkedPart, kind: FeatureKind, entry: FaceOfPart, more: CutMeasures) => (solid: Solid, nth: number) =>
      featureOf(part, kind, solid, entry, joint, `${part === side ? end.id : side.id} ${nth + 1}`, more);
  const endFace: FaceOfPart = at === '+x' ? '-x' : '+x';
  const sideEnd: FaceOfPart = outer === 'from' ? '-z' : '+z';
  switch (drawer.corners) {
    case 'butt':
      return [];
    case 'rabbet': {
      const depth = derive('half of the thickness of the side', [plus('thickness', side.thickness, half)]);
      return [boxOf(inner, y, z)].map(cut(side, 'rabbet', at, { width: end.thickness, depth, runs: 'y' }));
    }
    case 'lock-rabbet': {
      const depth = derive('half of the thickness of the side', [plus('thickness', side.thickness, half)]);
      const tongue = derive('half of the thickness of the end', [plus('thickness', end.thickness, half)]);
      const [inside, outside] = outer === 'from' ? [after(z), before(z)] : [before(z), after(z)];
      return [
        ...[boxOf(inner, y, inside)].map(cut(side, 'dado', at, { width: tongue, depth, runs: 'y' })),
        ...[boxOf(inner, y, outside)].map(cut(end, 'tongue-shoulder', sideEnd, { depth: tongue, runs: 'y' })),
      ];
    }
    case 'box-joint':
    case 'dovetail': {
      // A back that stands on the bottom is lower than the sides.
      const corner = boxOf(x, shared, z);
      const cuts =
        drawer.corners === 'box-joint'
          ? fingers(corner, side.thickness.length)
          : tails(corner, {
              pin: usual(PIN_WIDTH, facts.unit).length,
              pitch: usual(TAIL_PITCH, facts.unit).length,
              slope: dovetailSlope(side.stock?.species ?? side.stock?.name),
              outer,
            });
      return [
        ...cuts.side.map(cut(side, 'socket', sideEnd, { depth: end.thickness, through: true })),
        ...cuts.end.map(cut(end, 'socket', endFace, { depth: side.thickness, through: true })),
      ];
    }
    default: {
      const unknown: never = drawer.corners;
      return unknown;
    }
  }
}

function middle({ from, to }: Interval) {
  return from.plus(to).dividedBy(2);
}

function before(whole: Interval): Interval {
  return { from: whole.from, to: middle(whole) };
}

function after(whole: Interval): Interval {
  return { from: middle(whole), to: whole.to };
}

interface CutMeasures {
  readonly width?: Figure;
  readonly depth?: Figure;
  readonly runs?: Axis;
  readonly through?: true;
}

function featureOf(
  part: UnmarkedPart,
  kind: FeatureKind,
  solid: Solid,
  entry: FaceOfPart,
  joint: Joint,
  other: string,
  { width, depth, runs, through }: CutMeasures,
): Feature {
  return {
    id: `${part.id}/${kind} ${other}`,
    kind,
    part: part.id,
    solid,
    entry,
    ...(runs === undefined ? {} : { runs }),
    measures: { ...(width === undefined ? {} : { width }), ...(depth === undefined ? {} : { depth }) },
    stage: 'on the loose part',
    ...(through === undefined ? {} : { through }),
    joint: joint.id,
    origin: joint.origin,
  };
}

/** From end to end of each side and end, as deep as the drawer says. */
function bottomPlan(drawer: DrawerDesign, bottom: UnmarkedPart, holder: UnmarkedPart): readonly JointPlan[] {
  const id = `${bottom.id}>${holder.id}`;
  if (drawer.bottomHeld === 'applied') {
    const { origin } = bottom;
    const joint = { id, kind: 'butt', held: bottom.id, holding: holder.id, at: '-y', origin, isAssumed: true } as const;
    return [{ joint, growth: [], cut: () => [] }];
  }
  if (!AXES.every((axis) => overlap(holder.box[axis], bottom.box[axis]))) return [];
  const axis = holder.thin;
  const isFirst = holder.box[axis].start.length.compare(bottom.box[axis].start.length) <= 0;
  const at: FaceOfPart = isFirst ? `+${axis}` : `-${axis}`;
  const sheet = bottom.stock?.form === 'sheet';
  const joint: Joint = {
    id,
    kind: 'groove',
    held: bottom.id,
    holding: holder.id,
    at,
    origin: bottom.origin,
    isAssumed: drawer.bottomGroove.reason.kind !== 'given',
    fit: {
      kind: sheet ? 'clearance' : 'float',
      by: derive('left short at each edge', [plus('left short of both grooves', drawer.bottomShy, half)]),
    },
  };
  const face = isFirst ? holder.box[axis].end.length : holder.box[axis].start.length;
  const depth = drawer.bottomGroove.length;
  if (!depth.isPositive()) return [];
  const into: Interval = isFirst ? { from: face.minus(depth), to: face } : { from: face, to: face.plus(depth) };
  const runs: Axis = axis === 'x' ? 'z' : 'x';
  const along = wholeOf(holder.box, runs);
  const y = wholeOf(bottom.box, 'y');
  const solid: BoxSolid = axis === 'x' ? boxOf(into, y, along) : boxOf(along, y, into);
  return [
    {
      joint,
      growth: [],
      cut: () => [
        featureOf(holder, 'groove', solid, at, joint, bottom.id, {
          width: bottom.thickness,
          depth: drawer.bottomGroove,
          runs,
        }),
      ],
    },
  ];
}

/** From the bottom of the box up through the upper edge of its wall, so that the partition is slid in from above. */
function partitionPlan(drawer: DrawerDesign, held: UnmarkedPart, holder: UnmarkedPart): readonly JointPlan[] {
  const { compartments } = drawer;
  const axis = holder.thin;
  if (compartments === undefined || !compartments.dado.length.isPositive() || held.thin === axis) return [];
  const isFirst = holder.box[axis].start.length.compare(held.box[axis].start.length) <= 0;
  const at: FaceOfPart = isFirst ? `+${axis}` : `-${axis}`;
  const joint: Joint = {
    id: `${held.id}>${holder.id}`,
    kind: 'dado',
    held: held.id,
    holding: holder.id,
    at,
    origin: compartments.origin,
    isAssumed: compartments.dado.reason.kind !== 'given',
    fit: { kind: 'snug', by: nothingLeft() },
  };
  const face = isFirst ? holder.box[axis].end.length : holder.box[axis].start.length;
  const depth = compartments.dado.length;
  const into: Interval = isFirst ? { from: face.minus(depth), to: face } : { from: face, to: face.plus(depth) };
  const across = wholeOf(held.box, held.thin);
  const y: Interval = { from: held.box.y.start.length, to: holder.box.y.end.length };
  if (y.from.compare(y.to) >= 0) return [];
  const solid: BoxSolid = axis === 'x' ? boxOf(into, y, across) : boxOf(across, y, into);
  return [
    {
      joint,
      growth: [],
      cut: () => [
        featureOf(holder, 'dado', solid, at, joint, held.id, {
          width: held.thickness,
          depth: compartments.dado,
          runs: 'y',
        }),
      ],
    },
  ];
}
