import type { SheetView } from '@fettle/protocol';
import { build } from './build.ts';
import type { PageState } from './page-state.ts';
import { graveFindings, partView } from './page-state.ts';
import { partName } from './part-name.ts';
import { severityWords } from './signs.ts';

/** A sheet that is a table: a row to what is alike, and in a narrow panel its long words in a row of their own below it. */

/** `state.narrow`: long words would push what stands beside them off the panel, so they go below their row. */
export function buildTable(sheet: Extract<SheetView, { kind: 'table' }>, state: PageState): Node {
  const findings = graveFindings(state);
  const all = columnsToShow(sheet);
  const below = all.filter(({ tells }) => tells && state.narrow);
  const columns = all.filter((column) => !below.includes(column));
  const head = columns.map(({ name, isNumber }) =>
    build('th', { scope: 'col', class: isNumber ? 'number' : undefined }, name),
  );
  const rows = sheet.rows.flatMap((row, at): readonly Node[] => {
    const [first = ''] = row.cells;
    if (row.kind === 'heading') {
      const words = build('th', { scope: 'colgroup', colspan: columns.length }, first);
      return [build('tr', { class: 'heading' }, words)];
    }
    const concerned = findings.filter(({ finding }) => row.parts.some((part) => finding.parts.includes(part)));
    const seen = concerned.map(({ finding, number }) => `${severityWords[finding.severity]} ${number}`).join(', ');
    const marks = seen === '' ? '' : ` (see ${seen})`;
    const part = row.parts.map((id) => partView(state, id)).find((view) => view !== undefined);
    const lit = row.parts.some((id) => state.lit.includes(id));
    const kinds = [row.kind ?? '', lit ? 'lit' : '', row.parts.includes(state.chosen) ? 'chosen' : ''].filter(Boolean);
    const head =
      part === undefined
        ? first
        : build(
            'button',
            { type: 'button', class: 'of-row', 'aria-label': `${first}: ${partName(part, findings)}` },
            first,
          );
    const main = build(
      'tr',
      { 'data-part': part?.id, class: kinds.join(' ') || undefined, 'aria-current': lit ? 'true' : undefined },
      build('th', { scope: 'row', class: first.length > longestInOnePiece ? undefined : 'whole' }, head, marks),
      ...columns.slice(1).map(({ at, isNumber }) => buildCell(row.cells[at] ?? '', isNumber)),
    );
    const told = below.filter(({ at }) => row.cells[at]);
    if (told.length === 0) return [main];
    const words = told.map(({ at, name }) => buildBelow(name, row.cells[at] ?? ''));
    return [
      main,
      build(
        'tr',
        { 'data-key': `below ${part?.id ?? at}`, 'data-part': part?.id, class: ['told', ...kinds].join(' ') },
        build('td', { class: 'told-words', colspan: columns.length }, ...words),
      ),
    ];
  });
  return build(
    'table',
    { 'data-key': `table ${sheet.id}`, class: state.narrow ? 'narrow' : undefined },
    build('caption', {}, sheet.title),
    build('thead', {}, build('tr', {}, ...head)),
    build('tbody', {}, ...rows),
  );
}

interface ShownColumn {
  readonly at: number;
  readonly name: string;
  /** Nothing but figures stand in it: they are compared at their right ends. */
  readonly isNumber: boolean;
  /** So much is told in it that in a narrow panel it has no room beside the figures. */
  readonly tells: boolean;
}

/** A column in which nothing stands takes room from the others. The first two say what the row is of, and stay. */
function columnsToShow({ columns, rows }: Extract<SheetView, { kind: 'table' }>): readonly ShownColumn[] {
  return columns.flatMap((name, at): readonly ShownColumn[] => {
    const filled = rows.flatMap(({ kind, cells }) => (kind === 'heading' || !cells[at] ? [] : [cells[at]]));
    if (at > 0 && filled.length === 0 && rows.length > 0) return [];
    const isNumber = at > 0 && filled.length > 0 && filled.every((cell) => aFigure.test(cell));
    return [{ at, name, isNumber, tells: at > 1 && !isNumber && filled.some(tellsMuch) }];
  });
}

/** '9-7/32" + 1/64"', 'about 813.437 mm', '130 lb', '118.00'. */
const aFigure = /^(about )?[−≈]?[\d.\-/]+( ?("|mm|cm|lb|kg))?( [+−] [\d/]+")?( \(exactly [^)]+\))?$/;

/** What is longer than this may be broken into lines. */
const longestInOnePiece = 12;

/**
 * A size is read in one piece, and so is each of several that make one up. What is told one thing after the other
 * stands in a line each, in a column that is wide enough to be read.
 */
function buildCell(cell: string, isNumber: boolean): Node {
  if (isNumber) return build('td', { class: 'number whole' }, cell);
  const clauses = clausesOf(cell);
  if (clauses.length > 1) {
    const lines = clauses.map((clause) => build('span', { class: 'clause' }, ...sizesInOnePiece(clause)));
    return build('td', { class: 'long' }, ...lines);
  }
  return build('td', { class: isLong(cell) ? 'long' : undefined }, ...sizesInOnePiece(cell));
}

function clausesOf(cell: string): readonly string[] {
  return cell.split(/(?<=; )/);
}

function isLong(cell: string): boolean {
  return cell.length > 3 * longestInOnePiece || clausesOf(cell).length > 1;
}

/** Sizes alone are compared with those above and below them, however many they are. */
function tellsMuch(cell: string): boolean {
  const isOnlySizes = !/\p{L}{3}/u.test(cell.replaceAll(new RegExp(aSize, 'g'), ''));
  return isLong(cell) || (cell.length > 2.5 * longestInOnePiece && !isOnlySizes);
}

/** A cell that stands below its row says itself what its column is called. */
function buildBelow(name: string, cell: string): Node {
  return build('span', { class: 'of-column' }, build('b', {}, name), ' ', ...sizesInOnePiece(cell), ' ');
}

const aSize = /(\(?\d[\d.]*(?:-\d+)?(?:\/\d+)?(?:"| mm| cm)(?: [+−] \d+\/\d+")?\)?(?: ×)?)/;

function sizesInOnePiece(words: string): readonly (Node | string)[] {
  return words.split(aSize).map((piece, at) => (at % 2 === 1 ? build('span', { class: 'whole' }, piece) : piece));
}
