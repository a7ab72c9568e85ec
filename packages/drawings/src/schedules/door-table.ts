import { byEachOther, doorSchedule, type Evaluation, inPounds, type ScheduledDoor } from '@fettle/engine';
import type { Table } from '../cut-list-table.ts';
import { cleanName } from '../lettering.ts';
import { isInch, shown, unitWords } from '../shown-lengths.ts';
import { eachSetWords, setWords } from './set-words.ts';

/** The leaves of doors and the lids of a piece as a table: what each is made to, how it hangs, and where its hinges are. */

const COLUMNS = ['Mark', 'Door', 'Size', 'Hangs', 'Weight', 'Hinges', 'Setting out', 'Pulls'] as const;

export function doorTable(evaluation: Evaluation): Table {
  const { design } = evaluation;
  return {
    title: `Doors of ${cleanName(design.name)}, in ${unitWords(design.units)}`,
    columns: COLUMNS,
    rows: doorSchedule(evaluation).map((door) => ({
      parts: door.leaf.parts.map(({ id }) => id),
      cells: [
        [...new Set(door.leaf.parts.map(({ mark }) => cleanName(mark)))].join(', '),
        cleanName(door.leaf.label),
        byEachOther(
          ...[door.leaf.width, door.leaf.height, door.leaf.thickness].map(({ length }) => shown(length, design.units)),
        ),
        door.hangs === undefined ? 'not said' : `on its ${door.hangs} edge`,
        weightWords(door, evaluation),
        hingeWords(door),
        eachSetWords(door.hinges, design.units),
        door.pulls.map(({ entry, set }) => `${cleanName(entry ?? 'pull')}: ${setWords(set, design.units)}`).join('; '),
      ],
    })),
  };
}

/** To a tenth: the averages that it comes from are no better. */
function weightWords({ kilograms }: ScheduledDoor, { design }: Evaluation): string {
  if (kilograms === undefined) return '';
  const inches = isInch(design.units);
  const amount = (inches ? inPounds(kilograms) : kilograms).toNumber();
  return `about ${Number(amount.toFixed(1))} ${inches ? 'lb' : 'kg'}`;
}

function hingeWords({ hinges, hingeEntry }: ScheduledDoor): string {
  const names = [...new Set(hinges.flatMap(({ entry }) => entry ?? []))];
  const name = (names.length === 0 ? [hingeEntry ?? ''] : names).map(cleanName).join(', ');
  return hinges.length === 0 ? name : `${hinges.length} × ${name === '' ? 'hinge' : name}`;
}
