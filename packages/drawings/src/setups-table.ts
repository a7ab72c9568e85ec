import {
  axisOf,
  byEachOther,
  type CutStop,
  type Evaluation,
  type FaceOfPart,
  type Feature,
  type FeatureKind,
  groupedBy,
  type HoleRow,
  type Length,
  type Part,
  setupsOf,
  spacersOf,
} from '@fettle/engine';
import type { Table, TableRow } from './cut-list-table.ts';
import { cleanName } from './lettering.ts';
import { FACE_WORDS, laidDown } from './part-drawing/part-frame.ts';
import { shown, unitWords } from './shown-lengths.ts';

/**
 * The set-ups of a piece as a table: a row for each setting of a machine, for each row of marks, for each fence with its
 * strips, and for each diagonal. One does them one after the other and ticks them off.
 */

const COLUMNS = ['Set-up', 'Width or diameter', 'Depth', 'Distance', 'From', 'Notes', 'Parts'] as const;

export function setupsTable(evaluation: Evaluation): Table {
  const { design, parts } = evaluation;
  const marks = new Map(parts.map(({ id, mark }) => [id, cleanName(mark)]));
  const named = (ids: readonly string[]): string => [...new Set(ids.map((id) => marks.get(id) ?? id))].join(', ');
  const size = (length: Length): string => shown(length, design.units);
  const faces = (cuts: CutsAlike): readonly string[] => faceWords(cuts, evaluation);
  const setups = setupsOf(evaluation);
  const spacers = spacersOf(evaluation);
  const row = (ids: readonly string[], cells: readonly string[]): TableRow => ({
    parts: ids,
    cells: [...cells, named(ids)],
  });
  return {
    title: `Set-ups of ${cleanName(design.name)}, in ${unitWords(design.units)}`,
    columns: COLUMNS,
    rows: [
      ...setups.machine.map((each) =>
        row(each.parts, [
          kindWords[each.kind] ?? each.kind,
          size(each.width),
          size(each.depth),
          each.fence.isZero() ? 'none' : size(each.fence),
          each.from,
          [
            ...(each.fence.isZero() ? [`runs out at the ${each.from}`] : []),
            ...stopWords(each.stops, size),
            ...faces(each),
          ].join('; '),
        ]),
      ),
      ...setups.marks.map(({ kind, diameter, depth, from, middles, parts: ids }) => {
        const [first, ...others] = middles.map(size);
        return row(ids, [
          `mark for ${kindWords[kind] ?? kind}`,
          size(diameter),
          size(depth),
          first ?? '',
          from,
          [...others.map((each) => `then ${each}`), ...faces({ kind, parts: ids })].join('; '),
        ]);
      }),
      ...setups.rows.map((each) =>
        row(each.parts, [
          `row of ${kindWords[each.kind] ?? each.kind}`,
          size(each.diameter),
          size(each.depth),
          size(each.line.at),
          each.line.from,
          [rowWords(each, size), ...faces(each)].join('; '),
        ]),
      ),
      ...setups.fences.map(({ from, inserts, parts: ids }) => {
        const [first, ...strips] = inserts.map(size);
        return row(ids, [
          'fence to the middle',
          '',
          '',
          first ?? '',
          from,
          [...strips.map((each) => `strip ${each}`), ...faces({ kind: 'dado', parts: ids })].join('; '),
        ]);
      }),
      ...setups.bevels.map(({ off, over, degrees, parts: ids }) =>
        row(ids, ['bevel', size(over), size(off), '', 'face', `${degrees}° from square, taken off at the back`]),
      ),
      ...(spacers?.settings ?? []).map(({ height, slides, parts: ids }, index) =>
        row(ids, [
          index === 0 ? 'spacer board under slides' : 'spacer board, cut down',
          '',
          '',
          size(height.length),
          'the bottom of the case',
          slides.map(cleanName).join('; '),
        ]),
      ),
      ...(spacers === undefined || spacers.blocks.length < 2
        ? []
        : [
            row(distinctParts(spacers.settings), [
              'or blocks under slides, piled',
              '',
              '',
              '',
              'the bottom of the case',
              spacers.blocks.map(({ height }) => `block ${size(height.length)}`).join('; '),
            ]),
          ]),
      ...setups.diagonals.map(({ what, parts: ids, width, height, mark, decimal }) =>
        row(ids, [
          `square ${cleanName(what)}`,
          '',
          '',
          size(mark),
          'corner to corner',
          `${byEachOther(size(width), size(height))}, about ${decimal}`,
        ]),
      ),
    ],
  };
}

/** 'stops 1/2" from the front edge and 1/4" from the back edge' */
function stopWords(stops: readonly CutStop[], size: (length: Length) => string): readonly string[] {
  return stops.length === 0
    ? []
    : [`stops ${stops.map(({ at, from }) => `${size(at)} from the ${from}`).join(' and ')}`];
}

/** What one set-up makes; without a width and a depth all cuts of the kind. */
interface CutsAlike {
  readonly kind: FeatureKind;
  readonly width?: Length;
  readonly diameter?: Length;
  readonly depth?: Length;
  readonly parts: readonly string[];
}

/** Which faces or edges lie up: 'in the right face of B1', a clause for each. */
function faceWords({ kind, width, diameter, depth, parts: ids }: CutsAlike, { parts }: Evaluation): readonly string[] {
  const wide = width ?? diameter;
  const isMeant = (feature: Feature): boolean =>
    feature.kind === kind &&
    (wide === undefined || feature.measures.width?.length.equals(wide) === true) &&
    (depth === undefined || feature.measures.depth?.length.equals(depth) === true);
  const entered = parts
    .filter(({ id }) => ids.includes(id))
    .flatMap((part) => part.features.filter(isMeant).map(({ entry }) => ({ part, entry })));
  const sides = groupedBy(entered, ({ part, entry }) => `${FACE_WORDS[entry]} ${sideWord(part, entry)}`);
  return [...sides].map(([side, all]) => {
    const marks = [...new Set(all.map(({ part }) => cleanName(part.mark)))];
    return `in the ${side} of ${marks.join(', ')}`;
  });
}

function sideWord(part: Part, entry: FaceOfPart): 'face' | 'end' | 'edge' {
  const { along, thin } = laidDown(part);
  const axis = axisOf(entry);
  return axis === thin ? 'face' : axis === along ? 'end' : 'edge';
}

/** '13 holes 1" apart, first 2-1/4" from the lower end', or each of them where they are not even. */
function rowWords({ middles, pitch, from }: HoleRow, size: (length: Length) => string): string {
  const [first, ...others] = middles;
  if (first === undefined) return '';
  const start = `first ${size(first)} from the ${from}`;
  if (others.length === 0) return `1 hole, ${size(first)} from the ${from}`;
  if (pitch !== undefined) return `${middles.length} holes ${size(pitch)} apart, ${start}`;
  return `${middles.length} holes, ${start}, then ${others.map(size).join('; ')}`;
}

function distinctParts(settings: readonly { readonly parts: readonly string[] }[]): readonly string[] {
  return [...new Set(settings.flatMap(({ parts }) => parts))];
}

const kindWords: Partial<Readonly<Record<FeatureKind, string>>> = {
  dado: 'dado',
  groove: 'groove',
  rabbet: 'rabbet',
  socket: 'dovetail socket',
  mortise: 'mortise',
  'dowel-hole': 'dowel holes',
  'screw-hole': 'screw holes',
  'pin-hole': 'pin holes',
};
