import { type Evaluation, hardwareSchedule } from '@fettle/engine';
import type { Table } from '../cut-list-table.ts';
import { cleanName } from '../lettering.ts';
import { unitWords } from '../shown-lengths.ts';
import { kindOfHardware, setWords } from './set-words.ts';

/** All hardware of a piece as a table: a row for what is set alike, with the datums that one measures from. */

const COLUMNS = ['Fitting', 'Name in shop', 'Quantity', 'In all', 'Setting out', 'Which', 'Fixed to'] as const;
const MOST_NAMED = 8;

export function hardwareTable(evaluation: Evaluation): Table {
  const { design, parts } = evaluation;
  const marks = new Map(parts.map(({ id, mark }) => [id, cleanName(mark)]));
  return {
    title: `Hardware of ${cleanName(design.name)}, in ${unitWords(design.units)}`,
    columns: COLUMNS,
    rows: hardwareSchedule(evaluation).flatMap(({ kind, entry, count, settings }) =>
      settings.map(({ set, all }) => {
        const on = [...new Set(all.flatMap((each) => each.on))];
        return {
          parts: on,
          cells: [
            kindOfHardware(kind),
            entry === undefined ? '' : cleanName(entry),
            `${all.length}`,
            `${count}`,
            setWords(set, design.units),
            named(all.map(({ label }) => cleanName(label))),
            on.flatMap((id) => marks.get(id) ?? []).join(', '),
          ],
        };
      }),
    ),
  };
}

function named(labels: readonly string[]): string {
  const first = labels.slice(0, MOST_NAMED).join('; ');
  return labels.length > MOST_NAMED ? `${first} and ${labels.length - MOST_NAMED} more` : first;
}
