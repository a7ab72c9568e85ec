import { build } from './build.ts';
import type { NumberedFinding, PageState } from './page-state.ts';
import { shownPiece } from './page-state.ts';

/** The drawing for those who do not see it: a table of its parts, heard and not seen, in the order of the text. */

const columns = ['Mark', 'Part', 'Length', 'Width', 'Thickness', 'Material', 'Findings'];

export function buildPartsTable(state: PageState, findings: readonly NumberedFinding[]): Node {
  const rows = (shownPiece(state)?.parts ?? []).map(({ id, mark, label, sizes, material }) => {
    const wrong = findings.filter(({ finding }) => finding.parts.includes(id)).map(({ finding }) => finding.sentence);
    const name = label.endsWith(`, mark ${mark}`) ? label.slice(0, -`, mark ${mark}`.length) : label;
    const cells = [name, sizes[0] ?? '', sizes[1] ?? '', sizes[2] ?? '', material || 'not chosen', wrong.join('. ')];
    return build(
      'tr',
      { 'data-key': `heard ${id}` },
      build('th', { scope: 'row' }, mark),
      ...cells.map((cell) => build('td', {}, cell)),
    );
  });
  // A table keeps the size of its cells whatever it is told; what is around it does not.
  const table = build(
    'table',
    {},
    build('caption', {}, 'The parts of this drawing'),
    build('thead', {}, build('tr', {}, ...columns.map((column) => build('th', { scope: 'col' }, column)))),
    build('tbody', {}, ...rows),
  );
  return build('div', { class: 'heard', 'data-key': 'heard' }, table);
}
