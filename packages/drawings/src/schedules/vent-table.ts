import { byEachOther, type Evaluation, ventSchedule } from '@fettle/engine';
import type { Table } from '../cut-list-table.ts';
import { cleanName } from '../lettering.ts';
import { isInch, shown, unitWords } from '../shown-lengths.ts';

/** The openings for air as a table: a row for each layer, from the front to the back, with what of it is free. */

const COLUMNS = ['Vent', 'Through', 'Mark', 'Hole', 'Corners', 'Free area'] as const;
const SQUARE_CENTIMETRES = 6.4516;

export function ventTable(evaluation: Evaluation): Table {
  const { design, parts } = evaluation;
  const marks = new Map(parts.map(({ id, mark }) => [id, cleanName(mark)]));
  const area = (inches: number) =>
    isInch(design.units)
      ? `${Number(inches.toFixed(2))} sq in`
      : `${Number((inches * SQUARE_CENTIMETRES).toFixed(1))} cm²`;
  return {
    title: `Vents of ${cleanName(design.name)}, in ${unitWords(design.units)}`,
    columns: COLUMNS,
    rows: ventSchedule(evaluation).map(({ name, what, part, hole, corners, freeSquareInches }) => ({
      parts: [part],
      cells: [
        name === undefined ? '' : cleanName(name),
        what,
        marks.get(part) ?? '',
        byEachOther(shown(hole.width.length, design.units), shown(hole.height.length, design.units)),
        corners === undefined ? 'square' : `radius ${shown(corners.length, design.units)}`,
        area(freeSquareInches),
      ],
    })),
  };
}
