import type { DivisionLine, PartView, SheetView } from '@fettle/protocol';
import { build, buildSvg } from './build.ts';
import type { NumberedFinding, PageState } from './page-state.ts';
import { graveFindings, shownPiece } from './page-state.ts';
import { partName } from './part-name.ts';
import { buildPartsTable } from './parts-table.ts';
import { readSvg } from './safe-svg.ts';
import { buildTable } from './table-view.ts';

/** One sheet as elements: a drawing whose parts can be reached and chosen and whose lines can be moved, or a table. */

/**
 * A part's name as an element of the drawing has it: what is written on it stands in its name as it is written, so that
 * those who speak to their machine can call it by what they see (WCAG 2.2, 2.5.3).
 */
function drawnName(element: Element, part: PartView, findings: readonly NumberedFinding[]): string {
  const name = partName(part, findings);
  const written = (element.textContent ?? '').replace(/\s+/g, ' ').trim();
  if (bareWords(name).includes(bareWords(written))) return name;
  const mark = `, mark ${part.mark}`;
  const label = part.label.endsWith(mark) ? part.label.slice(0, -mark.length) : part.label;
  const marked = `${label} ${part.mark}`;
  const own = bareWords(marked).includes(bareWords(written)) ? marked : `${label}, ${written}`;
  return `${own}${name.slice(part.label.length)}`;
}

function bareWords(words: string): string {
  return words
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

type Drawing = Extract<SheetView, { kind: 'drawing' }>;

/** Drawings are read once and copied; null for one that cannot be read. */
const read = new WeakMap<SheetView, Element | null>();

function readDrawing(sheet: Drawing): Element | null {
  let svg = read.get(sheet);
  if (svg === undefined) {
    svg = readSvg(sheet.svg, document) ?? null;
    read.set(sheet, svg);
  }
  return svg;
}

function drawingOf(sheet: Drawing): Element | undefined {
  return readDrawing(sheet)?.cloneNode(true) as Element | undefined;
}

/** Whether the part can be seen on the sheet. */
export function drawsPart(sheet: Drawing, part: string): boolean {
  const drawn = readDrawing(sheet)?.querySelectorAll('[data-part]') ?? [];
  return [...drawn].some((element) => element.getAttribute('data-part') === part);
}

/** The drawing: one tab stop for its parts, reached by arrow keys, and one for its lines. */
function buildDrawing(sheet: Drawing, state: PageState): readonly Node[] {
  const svg = drawingOf(sheet);
  if (svg === undefined) return [build('p', { class: 'empty' }, 'This drawing cannot be shown.')];
  svg.setAttribute('data-key', `drawing ${sheet.id}`);
  svg.setAttribute('width', '100%');
  svg.setAttribute('height', '100%');
  const findings = graveFindings(state);
  const parts = new Map(shownPiece(state)?.parts.map((part) => [part.id, part]));
  const seen = new Set<string>();
  const reachable: Element[] = [];
  for (const element of svg.querySelectorAll('[data-part]')) {
    const id = element.getAttribute('data-part') ?? '';
    const part = parts.get(id);
    // The drawing makes every part a tab stop; here the whole drawing is one.
    element.removeAttribute('tabindex');
    element.removeAttribute('role');
    if (part === undefined || seen.has(id)) continue;
    seen.add(id);
    reachable.push(element);
    element.setAttribute('role', 'button');
    element.setAttribute('tabindex', '-1');
    element.setAttribute('aria-label', drawnName(element, part, findings));
    if (state.lit.includes(id)) element.setAttribute('aria-current', 'true');
  }
  const entry = reachable.find((element) => element.getAttribute('data-part') === state.chosen) ?? reachable[0];
  entry?.setAttribute('tabindex', '0');
  const moved = sheet.divisions.find(({ id }) => id === state.move?.division);
  if (moved !== undefined && state.move?.steps !== 0) awaitFigures(svg, moved);
  if (sheet.divisions.length > 0) svg.append(buildDivisions(sheet.divisions, state));
  return [svg, buildPartsTable(state, findings)];
}

/** So far from its middle, on the real piece, may a line between two spaces have its ends, in millimetres. */
const halfOfAnyDivider = 26;

/** Marks the dimensions that begin or end at a line on its way: what they say holds no more. */
function awaitFigures(svg: Element, { moves, at }: DivisionLine): void {
  const near = halfOfAnyDivider * (Number(svg.getAttribute('data-paper-per-real')) || 0.1);
  for (const measure of svg.querySelectorAll(`.measure.${moves}`)) {
    const line = measure.querySelector(':scope > line');
    const ends = [`${moves}1`, `${moves}2`].map((name) => Number(line?.getAttribute(name)));
    if (ends.some((end) => Math.abs(end - at) <= near)) measure.setAttribute('data-awaited', '');
  }
}

/** Lines between neighbours. The one that is being moved is drawn where it would go. */
function buildDivisions(divisions: readonly DivisionLine[], state: PageState): Node {
  const lines = divisions.map((division, at) => {
    const move = state.move?.division === division.id ? state.move : undefined;
    const steps = move?.steps ?? 0;
    const kinds = ['division', move === undefined ? '' : 'moving', move?.refused === true ? 'refused' : ''];
    return buildSvg(
      'g',
      {
        'data-key': `division ${division.id}`,
        'data-division': division.id,
        class: kinds.filter(Boolean).join(' '),
        role: 'slider',
        tabindex: at === 0 ? 0 : -1,
        'aria-label': division.label,
        'aria-orientation': division.moves === 'x' ? 'horizontal' : 'vertical',
        'aria-valuenow': steps,
        'aria-valuemin': -1_000_000,
        'aria-valuemax': 1_000_000,
        'aria-valuetext': move === undefined || move.sentence === '' ? division.sizes : move.sentence,
        'data-moves': division.moves,
        'data-step': division.step,
      },
      divisionLine(division, 0, 'grip'),
      divisionLine(division, 0, 'line'),
      steps === 0 ? undefined : divisionLine(division, steps, 'ghost'),
    );
  });
  return buildSvg('g', { 'data-key': 'divisions', class: 'divisions' }, ...lines);
}

function divisionLine({ moves, at, from, to, step }: DivisionLine, steps: number, name: string): Node {
  const place = at + steps * step;
  const ends = moves === 'x' ? { x1: place, y1: from, x2: place, y2: to } : { x1: from, y1: place, x2: to, y2: place };
  return buildSvg('line', { 'data-key': name, class: name, ...ends });
}

export function buildSheet(sheet: SheetView | undefined, state: PageState): readonly Node[] {
  if (sheet === undefined) {
    const words =
      state.picture === undefined
        ? 'Waiting for the first picture.'
        : shownPiece(state) === undefined
          ? 'Nothing to draw yet: the text holds no piece that can be read.'
          : 'Nothing to draw yet: the piece lacks something it cannot be drawn without.';
    return [build('p', { class: 'empty' }, words)];
  }
  switch (sheet.kind) {
    case 'drawing':
      return buildDrawing(sheet, state);
    case 'table':
      return [buildTable(sheet, state)];
    case 'later':
      return [
        build(
          'p',
          { class: 'empty' },
          shownPiece(state)?.planning === undefined ? 'Being drawn.' : 'Looking for a first plan.',
        ),
      ];
    default:
      return sheet satisfies never;
  }
}
