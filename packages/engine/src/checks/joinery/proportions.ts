import {
  dowelDoesNotSuit,
  dowelHoldsTooLittle,
  type Finding,
  jointNotThere,
  stopLeavesNoJoint,
  tenonOffAThird,
  tongueTooThick,
} from '@fettle/findings';
import type { PieceDesign } from '../../design/design.ts';
import type { JoinDesign } from '../../design/join-design.ts';
import { groupAlike } from '../../grouping.ts';
import { axisOf } from '../../joinery/feature.ts';
import type { Joint } from '../../joinery/joint.ts';
import { originKey, saidJoins } from '../../joinery/said-joins.ts';
import { Length } from '../../length/length.ts';
import { Rational } from '../../length/rational.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';
import {
  LEAST_DOWEL_IN_END,
  LEAST_DOWEL_IN_FACE,
  THICKEST_DOWEL,
  THICKEST_TENON,
  THINNEST_DOWEL,
  THINNEST_TENON,
} from '../../tables/joinery-limits.ts';
import { givenAt } from '../written-sizes.ts';
import type { JoinedCase } from './joined-case.ts';

/** Whether what is said of a joint suits the wood that it joins, and whether there is a joint at all. */
export function proportionFindings(design: PieceDesign, one: JoinedCase): readonly Finding[] {
  const said = [...saidJoins(design)].map(([key, join]) => ({ key, join }));
  const all = design.carcase.join === undefined ? said : [...said, { key: undefined, join: design.carcase.join }];
  const found = all.flatMap(({ key, join }) => [...missing(key, join, one), ...ofJoints(join, one)]);
  return groupAlike(found, ({ code, origin }) => [code, origin]).map(([first]) => first);
}

/** What a statement asks for itself, and nothing that it meets takes. A word for the whole case may find nothing to do. */
function missing(key: string | undefined, join: JoinDesign, { joints, parts }: JoinedCase): readonly Finding[] {
  const own = parts.filter(({ origin }) => key === originKey(origin));
  const [part] = own;
  const wanted = join.kind === 'dado' ? ['dado', 'tongue'] : [join.kind];
  if (part === undefined || joints.some(({ origin, kind }) => origin === join.origin && wanted.includes(kind)))
    return [];
  return [
    jointNotThere.at(
      join.origin,
      { part: part.label, joint: jointWords[join.kind] },
      { mends: [{ how: 'remove', values: {}, changes: [{ kind: 'remove', at: join.origin }] }] },
    ),
  ];
}

const jointWords: Readonly<Record<JoinDesign['kind'], string>> = {
  dado: 'a dado',
  'sliding-dovetail': 'sliding dovetails',
  dowel: 'dowels',
  butt: 'screws',
  'mortise-and-tenon': 'tenons',
  'stub-tenon': 'stub tenons',
  'loose-tenon': 'loose tenons',
  mitre: 'mitres',
};

function ofJoints(join: JoinDesign, { joints, parts }: JoinedCase): readonly Finding[] {
  const byId = new Map(parts.map((part) => [part.id, part]));
  return joints
    .filter(({ origin }) => origin === join.origin)
    .flatMap((joint): readonly Finding[] => {
      const [held, holding] = [byId.get(joint.held), byId.get(joint.holding)];
      if (held === undefined || holding === undefined) return [];
      const thickness = held.thickness.length;
      switch (join.kind) {
        case 'dado': {
          const { stopped, tongue } = join;
          const depth = held.box.z.end.length.minus(holding.box.z.start.length);
          if (stopped !== undefined && stopped.length.compare(depth) >= 0) {
            return [stopLeavesNoJoint.at(join.origin, { part: held.label, stop: stopped.length, depth })];
          }
          if (tongue === undefined || tongue.length.compare(thickness) < 0) return [];
          const at = givenAt(tongue);
          const to = thickness.times(Rational.of(1, 3));
          return [
            tongueTooThick.at(
              join.origin,
              { part: held.label, tongue: tongue.length, thickness },
              {
                mends:
                  at === undefined
                    ? []
                    : [{ how: 'third', values: { size: to }, changes: [{ kind: 'set-length', at, to }] }],
              },
            ),
          ];
        }
        case 'mortise-and-tenon': {
          const tenon = join.thickness;
          if (tenon === undefined || isWithin(tenon.length.ratioTo(thickness), THINNEST_TENON, THICKEST_TENON))
            return [];
          const at = givenAt(tenon);
          const third = thickness.times(Rational.of(1, 3));
          return [
            tenonOffAThird.at(
              join.origin,
              { part: held.label, tenon: tenon.length, thickness, third },
              {
                mends:
                  at === undefined
                    ? []
                    : [{ how: 'third', values: { size: third }, changes: [{ kind: 'set-length', at, to: third }] }],
              },
            ),
          ];
        }
        case 'dowel': {
          const dowel = join.dowel?.diameter.length;
          if (dowel === undefined) return [];
          if (isWithin(dowel.ratioTo(thickness), THINNEST_DOWEL, THICKEST_DOWEL)) {
            return shallowDowels(join.origin, joint, dowel, held, holding);
          }
          const [least, most] = [thickness.times(THINNEST_DOWEL), thickness.times(THICKEST_DOWEL)];
          return [dowelDoesNotSuit.at(join.origin, { part: held.label, dowel, thickness, least, most })];
        }
        case 'butt':
        case 'sliding-dovetail':
        case 'stub-tenon':
        case 'loose-tenon':
        case 'mitre':
          return [];
        default: {
          const unknown: never = join;
          return unknown;
        }
      }
    });
}

/** What the holes of a joint leave of a dowel in either part; nothing where there is no hole. */
function shallowDowels(
  origin: JoinDesign['origin'],
  { id, at }: Joint,
  dowel: Length,
  held: UnmarkedPart,
  holding: UnmarkedPart,
): readonly Finding[] {
  const depthIn = ({ features }: UnmarkedPart): Length =>
    features.find(({ kind, joint }) => kind === 'dowel-hole' && joint === id)?.measures.depth?.length ?? Length.zero;
  // In the edge of a member of a frame there is as much wood as in an end.
  const inFace = holding.thin === axisOf(at) ? LEAST_DOWEL_IN_FACE : LEAST_DOWEL_IN_END;
  return [
    { part: held, isEnd: true, limit: dowel.times(LEAST_DOWEL_IN_END) },
    { part: holding, isEnd: false, limit: dowel.times(inFace) },
  ].flatMap(({ part, isEnd, limit }) => {
    const depth = depthIn(part);
    return depth.compare(limit) >= 0
      ? []
      : [dowelHoldsTooLittle.at(origin, { part: part.label, isEnd, depth, limit, by: limit.minus(depth) })];
  });
}

function isWithin(ratio: Rational, least: Rational, most: Rational): boolean {
  return ratio.compare(least) >= 0 && ratio.compare(most) <= 0;
}
