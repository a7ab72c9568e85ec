import type { PartView, PictureFinding, SheetView } from '@fettle/protocol';
import { build } from './build.ts';
import type { PageState } from './page-state.ts';
import { partView, shownPiece } from './page-state.ts';
import { readSvg } from './safe-svg.ts';

/** One sheet as elements: a drawing whose parts can be reached and chosen, or a table. */

function findingsOf(findings: readonly PictureFinding[], part: string): readonly PictureFinding[] {
  return findings.filter((finding) => finding.parts.includes(part));
}

/** A part's name for those who do not see the picture, with what is wrong with it. */
function partName(part: PartView, findings: readonly PictureFinding[]): string {
  const sentences = findingsOf(findings, part.id).map((finding) => finding.sentence);
  return [part.label, ...sentences].join('. ');
}

/** The drawing: one tab stop, the parts in it reached by arrow keys. */
function buildDrawing(sheet: Extract<SheetView, { kind: 'drawing' }>, state: PageState): Node {
  const svg = readSvg(sheet.svg, document);
  if (svg === undefined) return build('p', { class: 'empty' }, 'This drawing cannot be shown.');
  svg.setAttribute('data-key', `drawing ${sheet.id}`);
  svg.setAttribute('role', 'group');
  svg.setAttribute('aria-label', sheet.description);
  svg.setAttribute('width', '100%');
  svg.setAttribute('height', '100%');
  const findings = state.picture?.findings ?? [];
  const seen = new Set<string>();
  const reachable: Element[] = [];
  for (const element of svg.querySelectorAll('[data-part]')) {
    const id = element.getAttribute('data-part') ?? '';
    const part = partView(state, id);
    if (part === undefined || seen.has(id)) continue;
    seen.add(id);
    reachable.push(element);
    element.setAttribute('role', 'button');
    element.setAttribute('tabindex', '-1');
    element.setAttribute('aria-label', partName(part, findings));
    if (state.lit.includes(id)) element.setAttribute('aria-current', 'true');
    // The whole outline answers to the pointer, also where nothing is painted.
    element.setAttribute('pointer-events', 'all');
  }
  const entry = reachable.find((element) => element.getAttribute('data-part') === state.chosen) ?? reachable[0];
  entry?.setAttribute('tabindex', '0');
  return svg;
}

function buildTable(sheet: Extract<SheetView, { kind: 'table' }>, state: PageState): Node {
  const findings = state.picture?.findings ?? [];
  const head = sheet.columns.map((column) => build('th', { scope: 'col' }, column));
  const rows = sheet.rows.map((row) => {
    const [first = '', ...rest] = row.cells;
    const part = partView(state, row.part);
    const marks = findingsOf(findings, row.part).map((finding) => ` (see ${findings.indexOf(finding) + 1})`);
    const name = part === undefined ? undefined : `${first}: ${partName(part, findings)}`;
    const kinds = [state.lit.includes(row.part) ? 'lit' : '', row.part === state.chosen ? 'chosen' : ''];
    return build(
      'tr',
      {
        'data-part': row.part,
        class: kinds.filter(Boolean).join(' ') || undefined,
        'aria-current': state.lit.includes(row.part) ? 'true' : undefined,
      },
      build('th', { scope: 'row' }, build('button', { type: 'button', 'aria-label': name }, first), marks.join('')),
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
