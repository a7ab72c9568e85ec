import { type Finding, noToolForJoint, stoppedCutNeedsBit } from '@fettle/findings';
import type { CutterEntry } from '../../design/shop.ts';
import { groupAlike } from '../../grouping.ts';
import type { Feature } from '../../joinery/feature.ts';
import { Length } from '../../length/length.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';
import { boundsOf } from '../../solids/index.ts';
import { featureWords, type JoinedCase, woodOf } from './joined-case.ts';

/** Whether the shop has a tool for each dado and each mortise: wide enough, long enough, and able to stop. */
export function toolFindings(one: JoinedCase): readonly Finding[] {
  const asked = one.parts.flatMap((part) =>
    part.features.flatMap((feature) => (isAsked(feature, one) ? [{ part, feature }] : [])),
  );
  // The shop is asked only where something is to be cut.
  const cutters = asked.length === 0 ? [] : (one.shop.cutters ?? []);
  if (cutters.length === 0) return [];
  const found = asked.flatMap(({ part, feature }) =>
    feature.kind === 'mortise'
      ? mortiseFinding(part, feature, cutters, one)
      : dadoFindings(part, feature, cutters, one),
  );
  return groupAlike(found, ({ code, origin }) => [code, origin]).map(([first]) => first);
}

/** Of the case: what is cut for backs and drawer bottoms is asked elsewhere. */
function isAsked({ joint, kind, part }: Feature, { joints }: JoinedCase): boolean {
  if (joint === undefined || part.includes('/box-')) return false;
  if (kind === 'mortise') return true;
  const of = joints.find(({ id }) => id === joint)?.kind;
  return (kind === 'dado' || kind === 'rabbet') && (of === 'dado' || of === 'tongue');
}

function dadoFindings(
  part: UnmarkedPart,
  feature: Feature,
  cutters: readonly CutterEntry[],
  one: JoinedCase,
): readonly Finding[] {
  const grooving = cutters.filter(({ form }) => form !== 'chisel');
  const width = feature.measures.width?.length ?? Length.zero;
  const depth = feature.measures.depth?.length ?? Length.zero;
  const facts = { part: part.label, what: featureWords(feature, one), width, depth };
  const narrow = grooving.filter(({ narrowest }) => narrowest.length.compare(width) <= 0);
  const [least] = [...grooving].sort((a, b) => a.narrowest.length.compare(b.narrowest.length));
  if (least === undefined) return [];
  if (narrow.length === 0) return [found(feature, { ...facts, why: 'too-wide' }, least, least.narrowest.length)];
  const deep = narrow.filter(({ deepest }) => deepest === undefined || deepest.length.compare(depth) >= 0);
  const [longest] = [...narrow].sort((a, b) => deepestOf(b).compare(deepestOf(a)));
  if (deep.length === 0 && longest !== undefined) {
    return [found(feature, { ...facts, why: 'too-shallow' }, longest, deepestOf(longest))];
  }
  const [blade] = deep;
  if (blade === undefined || !stops(part, feature) || deep.some(({ form }) => form !== 'blade')) return [];
  return [
    stoppedCutNeedsBit.at(
      feature.origin,
      { part: part.label, what: facts.what, cutter: blade.name },
      { related: [{ role: 'cutter', values: { cutter: blade.name }, origin: blade.origin }] },
    ),
  ];
}

function deepestOf({ deepest }: CutterEntry): Length {
  return deepest?.length ?? Length.zero;
}

/** It ends within the wood at its front. */
function stops(part: UnmarkedPart, { solid, runs }: Feature): boolean {
  return runs !== undefined && boundsOf(solid)[runs].from.compare(woodOf(part)[runs].from) > 0;
}

/** Chisels and bits make mortises; a shop that lists neither may well chop them by hand. */
function mortiseFinding(
  part: UnmarkedPart,
  feature: Feature,
  cutters: readonly CutterEntry[],
  one: JoinedCase,
): readonly Finding[] {
  const making = cutters.filter(({ form }) => form === 'chisel' || form === 'bit');
  if (!making.some(({ form }) => form === 'chisel')) return [];
  const width = feature.measures.width?.length ?? Length.zero;
  const depth = feature.measures.depth?.length ?? Length.zero;
  const facts = { part: part.label, what: featureWords(feature, one), width, depth };
  const fitting = making.filter(
    (each) => each.narrowest.length.compare(width) <= 0 && each.widest.length.compare(width) >= 0,
  );
  const [longest] = [...fitting].sort((a, b) => deepestOf(b).compare(deepestOf(a)));
  if (longest !== undefined) {
    const isDeep = fitting.some(({ deepest }) => deepest === undefined || deepest.length.compare(depth) >= 0);
    return isDeep ? [] : [found(feature, { ...facts, why: 'too-shallow' }, longest, deepestOf(longest))];
  }
  const [widest] = [...making].sort((a, b) => b.widest.length.compare(a.widest.length));
  const [least] = [...making].sort((a, b) => a.narrowest.length.compare(b.narrowest.length));
  if (widest === undefined || least === undefined) return [];
  return least.narrowest.length.compare(width) > 0
    ? [found(feature, { ...facts, why: 'too-wide' }, least, least.narrowest.length)]
    : [found(feature, { ...facts, why: 'too-thick' }, widest, widest.widest.length)];
}

function found(
  feature: Feature,
  facts: Omit<Parameters<typeof noToolForJoint.at>[1], 'cutter' | 'cuts'>,
  cutter: CutterEntry,
  cuts: Length,
): Finding {
  return noToolForJoint.at(
    feature.origin,
    { ...facts, cutter: cutter.name, cuts },
    { related: [{ role: 'cutter', values: { cutter: cutter.name }, origin: cutter.origin }] },
  );
}
