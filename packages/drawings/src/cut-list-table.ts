import { type CutListRow, cutList, type Evaluation } from '@fettle/engine';
import Papa from 'papaparse';
import { cleanName } from './lettering.ts';
import { shown, unitWords } from './shown-lengths.ts';

/** The cut list as a table for people, and as CSV for whatever reads tables. Knows nothing of how it is shown. */

export interface Table {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly TableRow[];
}

export interface TableRow {
  /** Ids of the parts this row stands for, first the one a click should find. */
  readonly parts: readonly string[];
  /** As many as there are columns. */
  readonly cells: readonly string[];
}

const COLUMNS = ['Mark', 'Part', 'Quantity', 'Length', 'Width', 'Thickness', 'Material', 'Grain', 'Notes'] as const;

export function cutListTable(evaluation: Evaluation): Table {
  const { design, parts } = evaluation;
  return {
    title: `Cut list of ${cleanName(design.name)}, finished sizes in ${unitWords(design.units)}`,
    columns: COLUMNS,
    rows: cutList(parts).map((row) => ({
      parts: row.parts,
      cells: [
        row.marks.map(cleanName).join(', '),
        row.labels.map(cleanName).join('; '),
        `${row.quantity}`,
        shown(row.length.length, design.units),
        shown(row.width.length, design.units),
        shown(row.thickness.length, design.units),
        row.stock === undefined ? '' : cleanName(row.stock),
        row.grain === 'none' ? 'any' : 'along length',
        notesOf(row),
      ],
    })),
  };
}

function notesOf(row: CutListRow): string {
  const notes: string[] = [];
  if (row.stock === undefined) notes.push('material not chosen');
  for (const figure of [row.length, row.width, row.thickness]) {
    if (!figure.length.isPositive()) notes.push('size is not more than nothing');
    if (figure.reason.kind === 'assumed') notes.push(`assumed: ${figure.reason.because}`);
    if (figure.reason.kind === 'measured') notes.push('as measured');
  }
  return [...new Set(notes)].join('; ');
}

/**
 * Comma-separated, with a heading row, lines ended by CR LF (RFC 4180). A cell that a spreadsheet would take for a
 * formula gets an apostrophe before it.
 */
export function cutListCsv(table: Table): string {
  const csv = Papa.unparse(
    { fields: [...table.columns], data: table.rows.map((row) => [...row.cells]) },
    { newline: '\r\n', escapeFormulae: true },
  );
  return `${csv}\r\n`;
}
