import type { PartView, SheetView } from '@fettle/protocol';
import { build } from './build.ts';
import type { NumberedFinding, PageState } from './page-state.ts';
import { graveFindings, partView, shownPiece } from './page-state.ts';
import { readSvg } from './safe-svg.ts';

/** One sheet as elements: a drawing whose parts can be reached and chosen, or a table. */

/** A part's name for those who do not see the picture, with what is wrong with it. */
function partName(part: PartView, findings: readonly NumberedFinding[]): string {
  const concerned = findings.filter(({ finding }) => finding.parts.includes(part.id));
  return [part.label, ...concerned.map(({ finding }) => finding.sentence)].join('. ');
}

/** The drawing: one tab stop, the parts in it reached by arrow keys. */
function buildDrawing(sheet: Extract<SheetView, { kind: 'drawing' }>, state: PageState): Node {
  const svg = readSvg(sheet.svg, document);
  if (svg === undefined) return build('p', { class: 'empty' }, 'This drawing cannot be shown.');
  svg.setAttribute('data-key', `drawing ${sheet.id}`);
  svg.setAttribute('width', '100%');
  svg.setAttribute('height', '100%');
  const findings = graveFindings(state.picture);
  const seen = new Set<string>();
  const reachable: Element[] = [];
  for (const element of svg.querySelectorAll('[data-part]')) {
    const id = element.getAttribute('data-part') ?? '';
    const part = partView(state, id);
    // The drawing makes every part a tab stop; here the whole drawing is one.
    element.removeAttribute('tabindex');
    if (part === undefined || seen.has(id)) continue;
    seen.add(id);
    reachable.push(element);
    element.setAttribute('role', 'button');
    element.setAttribute('tabindex', '-1');
    element.setAttribute('aria-label', partName(part, findings));
    if (state.lit.includes(id)) element.setAttribute('aria-current', 'true');
  }
  const entry = reachable.find((element) => element.getAttribute('data-part') === state.chosen) ?? reachable[0];
  entry?.setAttribute('tabindex', '0');
  return svg;
}

function buildTable(sheet: Extract<SheetView, { kind: 'table' }>, state: PageState): Node {
  const findings = graveFindings(state.picture);
  const head = sheet.columns.map((column) => build('th', { scope: 'col' }, column));
  const rows = sheet.rows.map((row) => {
    const [first = '', ...rest] = row.cells;
    const concerned = findings.filter(({ finding }) => row.parts.some((part) => finding.parts.includes(part)));
    const marks = concerned.map(({ number }) => ` (see ${number})`).join('');
    const part = row.parts.map((id) => partView(state, id)).find((view) => view !== undefined);
    const lit = row.parts.some((id) => state.lit.includes(id));
    const kinds = [lit ? 'lit' : '', row.parts.includes(state.chosen) ? 'chosen' : ''].filter(Boolean);
    const head =
      part === undefined
        ? first
        : build('button', { type: 'button', 'aria-label': `${first}: ${partName(part, findings)}` }, first);
    return build(
      'tr',
      { 'data-part': part?.id, class: kinds.join(' ') || undefined, 'aria-current': lit ? 'true' : undefined },
      build('th', { scope: 'row' }, head, marks),
      ...rest.map((cell) => build('td', {}, cell)),
    );
  });
  return build(
    'table',
    { 'data-key': `table ${sheet.id}` },
    build('caption', {}, sheet.title),
    build('thead', {}, build('tr', {}, ...head)),
    build('tbody', {}, ...rows),
  );
}

export function buildSheet(sheet: SheetView | undefined, state: PageState): Node {
  if (sheet === undefined) {
    const words =
      state.picture === undefined
        ? 'Waiting for the first picture.'
        : shownPiece(state) === undefined
          ? 'Nothing to draw yet: the text holds no piece that can be read.'
          : 'Nothing to draw yet: the piece lacks something it cannot be drawn without.';
    return build('p', { class: 'empty' }, words);
  }
  switch (sheet.kind) {
    case 'drawing':
      return buildDrawing(sheet, state);
    case 'table':
      return buildTable(sheet, state);
    default:
      return sheet satisfies never;
  }
}
