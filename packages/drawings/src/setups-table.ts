import {
  byEachOther,
  type Evaluation,
  type FeatureKind,
  type HoleRow,
  type Length,
  setupsOf,
  spacersOf,
} from '@fettle/engine';
import type { Table, TableRow } from './cut-list-table.ts';
import { cleanName } from './lettering.ts';
import { shown, unitWords } from './shown-lengths.ts';

/**
 * The set-ups of a piece as a table: a row for each setting of a machine, for each row of marks, for each fence with its
 * strips, and for each diagonal. One does them one after the other and ticks them off.
 */

const COLUMNS = ['Set-up', 'Width', 'Depth', 'Distance', 'From', 'Notes', 'Parts'] as const;

export function setupsTable(evaluation: Evaluation): Table {
  const { design, parts } = evaluation;
  const marks = new Map(parts.map(({ id, mark }) => [id, cleanName(mark)]));
  const named = (ids: readonly string[]): string => [...new Set(ids.map((id) => marks.get(id) ?? id))].join(', ');
  const size = (length: Length): string => shown(length, design.units);
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
          each.fence.isZero() ? 'open' : size(each.fence),
          each.from,
          '',
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
          others.map((each) => `then ${each}`).join('; '),
        ]);
      }),
      ...setups.rows.map((each) =>
        row(each.parts, [
          `row of ${kindWords[each.kind] ?? each.kind}`,
          size(each.diameter),
          size(each.depth),
          size(each.line.at),
          each.line.from,
          rowWords(each, size),
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
          strips.map((each) => `strip ${each}`).join('; '),
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
