import {
  axisOf,
  bevelDegrees,
  byEachOther,
  type Evaluation,
  type FaceOfPart,
  type Feature,
  type FeatureKind,
  groupedBy,
  Length,
  type Units,
} from '@fettle/engine';
import { cleanName } from '../lettering.ts';
import { materialWords } from '../material-words.ts';
import { figureOnSheet } from '../shown-lengths.ts';
import type { AlikeParts } from './alike-parts.ts';
import { FACE_WORDS, LOCALS, type PartFrame, type PlacedCut, type Reach } from './part-frame.ts';

/** What is cut into a part, in words: '3 dadoes 3/4" wide, 1/4" deep, for J1, J5, J9'. Cuts that are made alike stand together. */

const NAMES: Readonly<Partial<Record<FeatureKind, string>>> = { socket: 'dovetail socket' };
const PLURALS: Readonly<Partial<Record<FeatureKind, string>>> = { dado: 'dadoes', notch: 'notches' };

export function cutWords({ frame, same }: AlikeParts, evaluation: Evaluation): readonly string[] {
  const { units } = evaluation.design;
  const groups = groupedBy(frame.cuts, (cut) => oneWords(cut, frame, units));
  const marks = new Map(evaluation.parts.map((part) => [part.id, cleanName(part.mark)]));
  return [...groups].map(([words, cuts]) => {
    const { kind } = cuts[0]?.feature ?? { kind: 'notch' as const };
    const name = NAMES[kind] ?? kind.replace('-', ' ');
    const counted = cuts.length === 1 ? name : `${cuts.length} ${PLURALS[kind] ?? `${name}s`}`;
    // Where several parts are drawn as one, each takes another neighbour.
    const takes = same.length > 1 ? [] : [...new Set(cuts.flatMap((cut) => partnerOf(cut, evaluation, marks)))];
    return `${counted} ${words}${endsWords(cuts, frame)}${apartWords(cuts, units)}${takes.length === 0 ? '' : `, for ${takes.join(', ')}`}`;
  });
}

/**
 * What holds a top that lies on the case: no place of its screws is drawn, for they go where the stretchers leave room; of
 * the stretcher that they have play in, its slots.
 */
export function fixingWords({ same }: AlikeParts, { design, parts }: Evaluation): readonly string[] {
  const { top } = design.carcase;
  const [part] = same;
  if (part === undefined || top?.placement !== 'over' || top.fixing === undefined) return [];
  const { fixing } = top;
  const wood = parts.find(({ role }) => role === 'top');
  const stretchers = parts.filter(({ role }) => role === 'stretcher');
  if (part === wood) {
    if (fixing.kind === 'glued') return ['glued down'];
    const through =
      stretchers.length === 0 ? '' : ` through ${stretchers.map(({ mark }) => cleanName(mark)).join(', ')}`;
    return [`screwed on from below${through}, with slots ${fixing.where}: free to move`];
  }
  if (part.role !== 'stretcher' || wood === undefined || fixing.kind === 'glued') return [];
  const isBehind = stretchers.some(({ box }) => box.z.start.length.compare(part.box.z.start.length) < 0);
  const what = isBehind === (fixing.where === 'behind') ? 'slots' : 'holes';
  return [`${what} for the screws of ${cleanName(wood.mark)}`];
}

/** In which end, or in both; empty for what is in no end. */
function endsWords(cuts: readonly PlacedCut[], frame: PartFrame): string {
  const ends = [...new Set(cuts.flatMap(({ feature }) => (isInEnd(feature, frame) ? [feature.entry] : [])))];
  const [one] = ends;
  if (one === undefined) return '';
  return ends.length > 1 ? ' in both ends' : ` in the ${edgeWords(one, frame)}`;
}

function isInEnd({ kind, entry }: Feature, frame: PartFrame): boolean {
  return !SHOULDERS.includes(kind) && axisOf(entry) === frame.along;
}

/** How far the holes of a row are apart; empty where they are not evenly so. */
function apartWords(cuts: readonly PlacedCut[], units: Units): string {
  if (cuts[0]?.feature.kind !== 'pin-hole') return '';
  const rows = [...groupedBy(cuts, ({ across }) => across.from.exactInches).values()];
  const steps = rows.flatMap((row) => {
    const places = row.map(({ along }) => along.from).sort((a, b) => a.compare(b));
    return places.slice(1).map((place, at) => place.minus(places[at] ?? place));
  });
  const [first] = steps;
  if (first === undefined || !steps.every((step) => step.equals(first))) return '';
  return `, ${figureOnSheet(first, units)} apart`;
}

/** Shoulders and cheeks: how long they are along the end, and how deep they are cut from its face or edge. */
function shoulderWords(cut: PlacedCut, frame: PartFrame, figure: (length: Length) => string): string {
  const end = LOCALS.find((local) => local !== 'thin' && frame[local] === axisOf(cut.feature.entry)) ?? 'along';
  const isOnEdge = !lengthOf(cut.thin).equals(frame.size.thin) ? false : end === 'along';
  const deep = isOnEdge ? cut.across : cut.thin;
  const where = isOnEdge ? ' in the edge' : '';
  return `${figure(lengthOf(cut[end]))} long, ${figure(lengthOf(deep))} deep${where}`;
}

const SHOULDERS: readonly FeatureKind[] = ['tenon-shoulder', 'tongue-shoulder', 'tail-cheek'];

/** The narrowest and the widest of what slopes, across its slope; undefined where nothing slopes. */
function slopeWords({ feature: { solid } }: PlacedCut, figure: (length: Length) => string): string | undefined {
  if (solid.kind !== 'convex' || solid.corners.length !== 8) return undefined;
  const axis = (['x', 'y', 'z'] as const).find(
    (each) => new Set(solid.corners.map((corner) => corner[each].exactInches)).size > 2,
  );
  if (axis === undefined) return undefined;
  const places = [...new Map(solid.corners.map((corner) => [corner[axis].exactInches, corner[axis]])).values()].sort(
    (a, b) => a.compare(b),
  );
  const [low, high] = [places[0], places.at(-1)];
  const [inner, outer] = [places[1], places.at(-2)];
  if (places.length !== 4 || low === undefined || high === undefined || inner === undefined || outer === undefined) {
    return undefined;
  }
  return `${figure(outer.minus(inner))} to ${figure(high.minus(low))} wide`;
}

/** Where it is, apart from its place along the part: the drawing shows that. */
function oneWords(cut: PlacedCut, frame: PartFrame, units: Units): string {
  const { measures, entry, solid } = cut.feature;
  const figure = (length: Length): string => figureOnSheet(length, units);
  if (SHOULDERS.includes(cut.feature.kind)) return shoulderWords(cut, frame, figure);
  if (cut.feature.kind === 'bevel') return bevelWords(cut, frame, figure);
  const isOnEdge = entry.slice(1) !== frame.thin;
  const width = measures.width?.length ?? lengthOf(cut.along).min(lengthOf(cut.across));
  const depth =
    measures.depth?.length ??
    (isOnEdge ? (entry.slice(1) === frame.along ? lengthOf(cut.along) : lengthOf(cut.across)) : lengthOf(cut.thin));
  const run = frame.size.along.equals(lengthOf(cut.along)) || frame.size.across.equals(lengthOf(cut.across));
  const longest = lengthOf(cut.along).max(lengthOf(cut.across));
  // Alike cuts in both ends are told together.
  const edge = isInEnd(cut.feature, frame) ? '' : ` in the ${edgeWords(entry, frame)}`;
  const where = isOnEdge ? edge : cut.isOnFace ? '' : ' in the other face';
  const long = solid.kind === 'cylinder' || run || isOnEdge ? '' : `, ${figure(longest)} long`;
  const across =
    solid.kind === 'cylinder' ? `⌀ ${boreWords(width, units)}` : (slopeWords(cut, figure) ?? `${figure(width)} wide`);
  if (cut.feature.kind === 'vent') {
    const shortest = figure(lengthOf(cut.along).min(lengthOf(cut.across)));
    return `${byEachOther(figure(longest), shortest)}, through${cornerWords(cut.feature, figure)}`;
  }
  const isThrough = cut.feature.through === true && lengthOf(cut.thin).equals(frame.size.thin) && !isOnEdge;
  return isThrough ? `${across}, through${long}` : `${across}, ${figure(depth)} deep${long}${where}`;
}

/** A round cutter leaves its radius in every inside corner: a smaller one than that is no smaller cutter. */
function cornerWords({ measures }: Feature, figure: (length: Length) => string): string {
  const radius = measures.corner?.length;
  if (radius === undefined) return '';
  return radius.isPositive()
    ? `, corners of radius ${figure(radius)} by a cutter of at most ${figure(radius.times(2))}`
    : ', corners cut square by hand after the cutter';
}

/** '3/32" off at the back of the right edge (7.1° from square)' */
function bevelWords({ feature }: PlacedCut, frame: PartFrame, figure: (length: Length) => string): string {
  const { width, depth } = feature.measures;
  if (width === undefined || depth === undefined) return '';
  const degrees = bevelDegrees(depth.length, width.length);
  return `${figure(depth.length)} off at the back of the ${edgeWords(feature.entry, frame)} (${degrees}° from square)`;
}

/** Bits that are made in millimetres are called so, also beside inches that have no mark for them. */
function boreWords(diameter: Length, units: Units): string {
  const millimetres = diameter.in('mm');
  const marks = diameter.ratioTo(Length.of(units.ruler, units.unit));
  return units.unit !== 'mm' && millimetres.isWhole() && !marks.isWhole()
    ? `${millimetres.toString()} mm`
    : figureOnSheet(diameter, units);
}

function edgeWords(at: FaceOfPart, frame: PartFrame): string {
  return `${FACE_WORDS[at]} ${axisOf(at) === frame.along ? 'end' : 'edge'}`;
}

function lengthOf({ from, to }: Reach): Length {
  return to.minus(from);
}

function partnerOf(cut: PlacedCut, evaluation: Evaluation, marks: ReadonlyMap<string, string>): readonly string[] {
  const joint = evaluation.joints.find(({ id }) => id === cut.feature.joint);
  if (joint === undefined) return [];
  const mark = marks.get(joint.held === cut.feature.part ? joint.holding : joint.held);
  return mark === undefined ? [] : [mark];
}

/** '30-1/8" × 16-1/4" × 3/4", ash panel, grain along the length'. */
export function sizeWords({ part }: PartFrame, units: Units): string {
  const sizes = byEachOther(
    ...[part.length, part.width, part.thickness].map(({ length }) => figureOnSheet(length, units)),
  );
  return [
    sizes,
    materialWords(part.role, part.stock?.name) ?? 'material not chosen',
    ...(part.grain === 'none' ? [] : ['grain along the length']),
  ].join(', ');
}

/** 'B1 left side; mirrored: B2', 'L1, L3 drawer side, 2 pieces'. */
export function headWords({ frame, same, mirrored }: AlikeParts): string {
  const { part } = frame;
  const marks = marksOf(same.map(({ mark }) => mark));
  const labels = [...new Set(same.map((each) => cleanName(each.label)))];
  const joined = labels.join(', ');
  // What they are stands before where they are: 'left runner between "cards" and "dice"'.
  const what = [...new Set(labels.map((each) => each.replace(/ (?:between|behind|beside|of|in|under) .*$/, '')))].join(
    ', ',
  );
  const short = what.length <= LONGEST_LABEL ? what : part.role.replace('-', ' ');
  const label = labels.length === 1 || joined.length <= LONGEST_LABEL ? joined : short;
  // How many is said before the name, of which a long one is cut.
  const more = [
    ...(same.length === 1 ? [] : [`${same.length} pieces`]),
    ...(mirrored.length === 0 ? [] : [`mirrored: ${marksOf(mirrored.map(({ mark }) => mark))}`]),
  ];
  return more.length === 0 ? `${marks} ${label}` : `${marks} (${more.join('; ')}) ${label}`;
}

/** Longer ones, of several parts, would not fit over their drawing. */
const LONGEST_LABEL = 44;

/** At most six, then how many more. */
function marksOf(marks: readonly string[]): string {
  const shown = marks.slice(0, 6).map(cleanName);
  return marks.length > shown.length ? `${shown.join(', ')} and ${marks.length - shown.length} more` : shown.join(', ');
}

/** 'edged 1/4" at front edge'; undefined without any. */
export function edgingWords(frame: PartFrame, units: Units): string | undefined {
  const { edging } = frame.part;
  if (edging.length === 0) return undefined;
  const [first] = edging;
  const isAllRound =
    edging.length === 4 &&
    edging.every(({ thickness }) => thickness.length.equals(first?.thickness.length ?? thickness.length));
  const strips = edging.map(
    ({ at, thickness }) => `${figureOnSheet(thickness.length, units)} at ${edgeWords(at, frame)}`,
  );
  const where =
    isAllRound && first !== undefined ? `${figureOnSheet(first.thickness.length, units)} all round` : strips.join(', ');
  return `edged ${where}; sizes include it`;
}
