import {
  dadoTooDeep,
  type Finding,
  jointBreaksThrough,
  jointThroughEdging,
  type Mend,
  wallTooThin,
} from '@fettle/findings';
import type { Figure } from '../../design/figure.ts';
import { groupAlike } from '../../grouping.ts';
import type { Feature } from '../../joinery/feature.ts';
import { Length } from '../../length/length.ts';
import { downToMark } from '../../length/ruler-marks.ts';
import { exactSource } from '../../length/trade-formats.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';
import { AXES, depthOf, meets, wallTo } from '../../solids/index.ts';
import { THINNEST_WALL } from '../../tables/joinery-limits.ts';
import { DEEPEST_GROOVE, GROOVE_DEPTH, limitIn } from '../../tables/trade-limits.ts';
import { givenAt, sizeMend } from '../written-sizes.ts';
import { entryFace, featureWords, isClosed, isHousing, type JoinedCase, woodOf } from './joined-case.ts';

/** What a cut leaves of its part: behind it, beside it, and of the strip on its edge. The worst of each statement. */
export function depthFindings(one: JoinedCase): readonly Finding[] {
  const cuts = one.parts.flatMap((part) =>
    part.features.filter(({ joint }) => joint !== undefined).map((feature): Cut => ({ part, feature })),
  );
  return [
    ...perStatement(cuts, (cut) => breaksThrough(cut, one)),
    ...perStatement(cuts, (cut) => tooDeep(cut, one)),
    ...perStatement(cuts, (cut) => thinWall(cut, one)),
    ...perStatement(cuts, (cut) => throughEdging(cut, one)),
  ];
}

interface Cut {
  readonly part: UnmarkedPart;
  readonly feature: Feature;
}

function perStatement(cuts: readonly Cut[], find: (cut: Cut) => Finding | undefined): readonly Finding[] {
  const found = cuts.flatMap((cut) => find(cut) ?? []);
  return groupAlike(found, ({ code, origin }) => [code, origin]).map(([first]) => first);
}

function goesIn({ feature }: Cut): boolean {
  return feature.through === undefined && (isClosed(feature) || isHousing(feature));
}

function breaksThrough(cut: Cut, one: JoinedCase): Finding | undefined {
  const { part, feature } = cut;
  if (!goesIn(cut) || isOfBack(feature)) return undefined;
  const wood = woodOf(part);
  const entry = entryFace(feature);
  const depth = depthOf(feature.solid, wood, entry);
  if (depth.kind === 'stops-short') return undefined;
  const thickness = wood[entry.axis].to.minus(wood[entry.axis].from);
  const by = depth.kind === 'reaches' ? Length.zero : depth.by;
  return jointBreaksThrough.at(
    feature.origin,
    { part: part.label, what: featureWords(feature, one), depth: thickness.plus(by), thickness, by },
    { mends: isHousing(feature) ? shallower(feature.measures.depth, thickness, one.mark) : [] },
  );
}

function shallower(depth: Figure | undefined, thickness: Length, mark: Length): readonly Mend[] {
  return sizeMend('shallower', givenAt(depth), downToMark(thickness.times(GROOVE_DEPTH), mark));
}

/** Grooves of backs and drawer bottoms have a check of their own; those in the edges of a frame are as deep as it tells. */
function tooDeep(cut: Cut, one: JoinedCase): Finding | undefined {
  const { part, feature } = cut;
  const { depth } = feature.measures;
  const { kind } = feature;
  if ((kind !== 'dado' && kind !== 'rabbet' && kind !== 'groove') || depth === undefined) return undefined;
  if (kind !== 'groove' && givenAt(depth) === undefined) return undefined;
  const { axis } = entryFace(feature);
  const thickness = part.box[axis].size.length;
  const limit = thickness.times(DEEPEST_GROOVE);
  // Corner joints of drawers go as deep as they must; what is written for their partitions is asked like any dado.
  const isOfBox = part.role.startsWith('drawer') && (kind !== 'dado' || givenAt(depth) === undefined);
  if (isOfBox || isOfBack(feature)) return undefined;
  if (depth.length.compare(limit) <= 0 || depth.length.compare(thickness) >= 0) return undefined;
  return dadoTooDeep.at(
    feature.origin,
    {
      part: part.label,
      cut: kind,
      across: axis === part.thin ? 'thick' : 'wide',
      depth: depth.length,
      thickness,
      limit,
    },
    { mends: shallower(depth, thickness, one.mark) },
  );
}

function isOfBack({ joint }: Feature): boolean {
  return joint?.startsWith('case/back') === true;
}

function thinWall(cut: Cut, one: JoinedCase): Finding | undefined {
  const { part, feature } = cut;
  if (!isClosed(feature)) return undefined;
  const wood = woodOf(part);
  const entry = entryFace(feature);
  const limit = limitIn(THINNEST_WALL, one.unit);
  const faces = AXES.flatMap((axis) => (['from', 'to'] as const).map((end) => ({ axis, end })))
    .filter(({ axis }) => axis !== entry.axis || feature.through === undefined)
    .filter(({ axis, end }) => axis !== entry.axis || end !== entry.end)
    .map((face) => ({ face, left: wallTo(face, feature.solid, wood) }))
    // Nothing left behind it is told as breaking through; an open side is a joint at the very edge.
    .filter(({ face, left }) => left.compare(limit) < 0 && (face.axis === entry.axis ? left.isPositive() : true))
    .filter(({ left }) => !left.isZero());
  const [worst] = faces.sort((a, b) => a.left.compare(b.left));
  if (worst === undefined) return undefined;
  const where = worst.face.axis === entry.axis ? 'behind it' : 'beside it';
  const left = worst.left.max(Length.zero);
  return wallTooThin.at(feature.origin, { part: part.label, what: featureWords(feature, one), where, left, limit });
}

/** Source: Architectural Woodwork Standards, 1st ed., 2009, 10-4.4.4.5. */
function throughEdging({ part, feature }: Cut, one: JoinedCase): Finding | undefined {
  if (!isHousing(feature) && feature.kind !== 'mortise' && feature.kind !== 'dowel-hole') return undefined;
  const strip = part.edging.find(({ solid }) => meets(solid, feature.solid));
  if (strip === undefined) return undefined;
  const size = strip.thickness.length.times(3).dividedBy(2);
  const mends: readonly Mend[] =
    strip.at === '-z' && feature.runs === 'z'
      ? [
          {
            how: 'stop',
            values: { size },
            changes: [
              {
                kind: 'insert-words',
                after: feature.origin,
                words: `, stopped ${exactSource(size, one.unit)} from front`,
              },
            ],
          },
        ]
      : [];
  return jointThroughEdging.at(
    feature.origin,
    { part: part.label, what: featureWords(feature, one), edging: strip.thickness.length },
    { mends, related: [{ role: 'other', values: {}, origin: strip.origin }] },
  );
}
