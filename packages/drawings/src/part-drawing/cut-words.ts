import {
  axisOf,
  type Evaluation,
  type FaceOfPart,
  type FeatureKind,
  groupedBy,
  type Length,
  type Units,
} from '@fettle/engine';
import { cleanName } from '../lettering.ts';
import { figureOnSheet } from '../shown-lengths.ts';
import type { AlikeParts } from './alike-parts.ts';
import { FACE_WORDS, type PartFrame, type PlacedCut, type Reach } from './part-frame.ts';

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
    return `${counted} ${words}${takes.length === 0 ? '' : `, for ${takes.join(', ')}`}`;
  });
}

/** Where it is, apart from its place along the part: the drawing shows that. */
function oneWords(cut: PlacedCut, frame: PartFrame, units: Units): string {
  const { measures, entry, solid } = cut.feature;
  const figure = (length: Length): string => figureOnSheet(length, units);
  const isOnEdge = entry.slice(1) !== frame.thin;
  const width = measures.width?.length ?? lengthOf(cut.along).min(lengthOf(cut.across));
  const depth =
    measures.depth?.length ??
    (isOnEdge ? (entry.slice(1) === frame.along ? lengthOf(cut.along) : lengthOf(cut.across)) : lengthOf(cut.thin));
  const run = frame.size.along.equals(lengthOf(cut.along)) || frame.size.across.equals(lengthOf(cut.across));
  const longest = lengthOf(cut.along).max(lengthOf(cut.across));
  const where = isOnEdge ? ` in the ${edgeWords(entry, frame)}` : cut.isOnFace ? '' : ' in the other face';
  const long = solid.kind === 'cylinder' || run || isOnEdge ? '' : `, ${figure(longest)} long`;
  const across = solid.kind === 'cylinder' ? `⌀ ${figure(width)}` : `${figure(width)} wide`;
  return `${across}, ${figure(depth)} deep${long}${where}`;
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
  const sizes = [part.length, part.width, part.thickness].map(({ length }) => figureOnSheet(length, units)).join(' × ');
  const stock = part.stock === undefined ? 'material not chosen' : cleanName(part.stock.name);
  return [sizes, stock, ...(part.grain === 'none' ? [] : ['grain along the length'])].join(', ');
}

/** 'B1 left side; mirrored: B2', 'L1, L3 drawer side, 2 pieces'. */
export function headWords({ frame, same, mirrored }: AlikeParts): string {
  const { part } = frame;
  const marks = marksOf(same.map(({ mark }) => mark));
  const labels = [...new Set(same.map((each) => cleanName(each.label)))];
  const label = labels.length < 3 ? labels.join(', ') : part.role.replace('-', ' ');
  // How many is said before the name, of which a long one is cut.
  const more = [
    ...(same.length === 1 ? [] : [`${same.length} pieces`]),
    ...(mirrored.length === 0 ? [] : [`mirrored: ${marksOf(mirrored.map(({ mark }) => mark))}`]),
  ];
  return more.length === 0 ? `${marks} ${label}` : `${marks} (${more.join('; ')}) ${label}`;
}

/** At most six, then how many more. */
function marksOf(marks: readonly string[]): string {
  const shown = marks.slice(0, 6).map(cleanName);
  return marks.length > shown.length ? `${shown.join(', ')} and ${marks.length - shown.length} more` : shown.join(', ');
}

/** 'edged 1/4" at front edge'; undefined without any. */
export function edgingWords(frame: PartFrame, units: Units): string | undefined {
  const { edging } = frame.part;
  if (edging.length === 0) return undefined;
  const strips = edging.map(
    ({ at, thickness }) => `${figureOnSheet(thickness.length, units)} at ${edgeWords(at, frame)}`,
  );
  return `edged ${strips.join(', ')}, in its size`;
}
