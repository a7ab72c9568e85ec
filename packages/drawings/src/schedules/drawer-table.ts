import { byEachOther, drawerSchedule, type Evaluation, type Figure, type ScheduledDrawer } from '@fettle/engine';
import type { Table } from '../cut-list-table.ts';
import { cleanName } from '../lettering.ts';
import { shown, unitWords } from '../shown-lengths.ts';
import { eachSetWords } from './set-words.ts';

/** The drawers of a piece as a table: what each is made to, and where its slides are set. */

const COLUMNS = ['Mark', 'Drawer', 'Opening', 'Front', 'Box', 'Runs on', 'Setting out', 'Holds'] as const;

export function drawerTable(evaluation: Evaluation): Table {
  const { design } = evaluation;
  const sizes = (...figures: readonly Figure[]): string =>
    byEachOther(...figures.map(({ length }) => shown(length, design.units)));
  return {
    title: `Drawers of ${cleanName(design.name)}, in ${unitWords(design.units)}`,
    columns: COLUMNS,
    rows: drawerSchedule(evaluation).map(({ name, parts, opening, front, box, slides, holds }) => ({
      parts: parts.map(({ id }) => id),
      cells: [
        front === undefined ? '' : cleanName(front.mark),
        name === undefined ? '' : cleanName(name),
        sizes(opening.width, opening.height),
        front === undefined ? '' : sizes(front.box.x.size, front.box.y.size, front.thickness),
        box === undefined ? '' : sizes(box.width, box.height, box.depth),
        runsOn(slides),
        eachSetWords(slides, design.units),
        holds.map(({ count, thing }) => `${count} × ${cleanName(thing)}`).join('; '),
      ],
    })),
  };
}

/** The name of its slides; wooden runners have none, and a drawer without either lies on the frame below it. */
function runsOn(slides: ScheduledDrawer['slides']): string {
  const [first] = slides;
  if (first === undefined) return 'no slides';
  const names = [...new Set(slides.flatMap(({ entry }) => entry ?? []))].map(cleanName);
  return names.length > 0 ? names.join(', ') : first.kind === 'runner' ? 'wooden runners' : first.kind;
}
