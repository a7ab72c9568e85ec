import type { Picture, SheetView } from '@fettle/protocol';
import { build } from './build.ts';
import type { NumberedFinding, PageState } from './page-state.ts';
import {
  foundParts,
  graveFindings,
  numberedFindings,
  otherTroubles,
  partView,
  shownErrors,
  shownPiece,
  shownPlace,
  shownSheet,
  whyStale,
} from './page-state.ts';
import { buildSheetChoice, buildSheetList, buildTabs, tabOf } from './sheet-tabs.ts';
import { buildSheet, drawsPart } from './sheet-view.ts';
import { severityWords, signIcon } from './signs.ts';

/** The whole page as a detached tree, made afresh from the state; `patch` then brings the live page to it. */

function buildPieceChoice(picture: Picture, place: number): Node | undefined {
  if (picture.pieces.length < 2) return undefined;
  const options = picture.pieces.map(({ key }, at) =>
    build('option', { value: key, selected: at === place ? '' : undefined }, key),
  );
  return build('label', { class: 'piece' }, 'Piece ', build('select', { id: 'piece' }, ...options));
}

function actionButton(action: string, name: string, key: string | undefined, face: string): Node {
  return build(
    'button',
    {
      type: 'button',
      'data-action': action,
      'aria-label': name,
      'aria-keyshortcuts': key,
      title: key === undefined ? name : `${name} (${key})`,
    },
    face,
  );
}

function buildZoom(zoom: number | 'fit'): Node {
  const shown = zoom === 'fit' ? 'Fit' : `${Math.round(zoom * 100)} %`;
  return build(
    'div',
    { role: 'group', 'aria-label': 'Zoom', class: 'zoom' },
    actionButton('zoom-out', 'Zoom out', '-', '\u2212'),
    // What it says stands in its name too, for those who speak to their machine.
    actionButton('zoom-fit', zoom === 'fit' ? 'Fit the drawing' : `${shown}: fit the drawing`, '0', shown),
    actionButton('zoom-in', 'Zoom in', '+', '+'),
    actionButton('zoom-sheet', 'Whole sheet', '1', 'Whole sheet'),
  );
}

/** What can be taken from the sheet: each kind of sheet has its own forms. A button's name says of which sheet. */
function buildExports(sheet: SheetView): Node {
  const button = (action: string, face: string, key?: string) =>
    actionButton(action, `${face}: ${sheet.title}`, key, face);
  const shows = sheet.kind === 'later' ? sheet.shows : sheet.kind;
  switch (shows) {
    case 'drawing':
      return build(
        'div',
        { role: 'group', 'aria-label': 'Save the sheet', class: 'exports' },
        button('export-svg', 'Save SVG'),
        button('export-png', 'Save PNG'),
      );
    case 'table':
      return build(
        'div',
        { role: 'group', 'aria-label': 'Save the sheet', class: 'exports' },
        button('copy-table', 'Copy table', 'c'),
        button('export-csv', 'Save CSV'),
      );
    default:
      return shows satisfies never;
  }
}

function buildSearch(state: PageState): Node {
  const found = foundParts(state);
  const at = found.findIndex(({ id }) => id === state.chosen);
  const words =
    state.query === '' ? '' : found.length === 0 ? 'none' : `${at < 0 ? '' : `${at + 1} of `}${found.length}`;
  return build(
    'div',
    { role: 'search', class: 'search' },
    build('input', {
      id: 'search',
      type: 'search',
      placeholder: 'Find a part',
      'aria-label': 'Find a part by mark, name or material',
      'aria-keyshortcuts': '/',
      title: 'Mark, name or material (/). Enter: next, Shift+Enter: the one before, Escape: back',
      autocomplete: 'off',
      spellcheck: 'false',
    }),
    build('output', { for: 'search', class: 'count' }, words),
  );
}

function buildFinding({ finding, place, number }: NumberedFinding): Node {
  return build(
    'li',
    { 'data-key': `${place} ${finding.code}` },
    build(
      'button',
      { type: 'button', 'data-finding': place },
      signIcon(finding.severity, number),
      build('span', { class: 'severity' }, `${severityWords[finding.severity]} ${number}: `),
      build('span', {}, finding.sentence),
    ),
  );
}

function buildList(findings: readonly NumberedFinding[]): Node | undefined {
  return findings.length === 0 ? undefined : build('ol', {}, ...findings.map(buildFinding));
}

/** What is wrong elsewhere in the text: a line a piece, at most so many. */
const mostOthers = 6;

function buildOthers(state: PageState): Node | undefined {
  const others = otherTroubles(state);
  if (others.length === 0 || state.only !== '') return undefined;
  const items = others
    .slice(0, mostOthers)
    .map(({ key, count }) =>
      build(
        'li',
        { 'data-key': `other ${key}` },
        build(
          'button',
          { type: 'button', 'data-piece': key },
          `${count === 1 ? '1 finding' : `${count} findings`} in ${key}`,
        ),
      ),
    );
  const more = others.length - items.length;
  const rest = more > 0 ? build('li', { 'data-key': 'more' }, `and in ${more} more`) : undefined;
  return build('ul', { class: 'others', 'aria-label': 'In other pieces' }, ...items, rest);
}

/** What the piece comes to, and whether its sheets may be built from: over both columns, so that it covers no drawing. */
function buildVerdict(state: PageState, picture: Picture): Node {
  return build(
    'div',
    { class: 'verdict heading' },
    build('h2', { id: 'verdict' }, state.checking ? 'Checking\u2026' : picture.verdict),
    buildStop(state),
    build(
      'button',
      {
        type: 'button',
        class: 'taller',
        'data-action': 'taller',
        'aria-pressed': String(state.tall),
        title: state.tall ? 'Less room for findings, more for the sheet' : 'More room for findings',
      },
      'More room',
    ),
  );
}

/** What is wrong stands open; notes, of which a text may have many, are folded away. */
function buildFindings(state: PageState): Node {
  const notes = numberedFindings(state).filter(({ finding }) => finding.severity === 'note');
  const folded =
    notes.length === 0
      ? undefined
      : build(
          'details',
          { id: 'notes' },
          build('summary', {}, notes.length === 1 ? '1 note' : `${notes.length} notes`),
          buildList(notes),
        );
  return build(
    'section',
    // Long lists scroll, so it must be reachable without a pointer.
    { class: 'findings', 'aria-label': 'Findings', tabindex: 0 },
    buildList(graveFindings(state)),
    buildOthers(state),
    folded,
    buildKeys(),
  );
}

const keys: readonly (readonly [string, string])[] = [
  ['Arrows', 'from part to part; Enter selects its words'],
  ['Z', 'zoom to the part'],
  ['/', 'find a part'],
  ['+ \u2212 0 1', 'zoom, fit the drawing, show the whole sheet'],
  ['Arrows on a line', 'move it; Shift: eight marks; Enter: now; Escape: not at all'],
  ['Page Up, Page Down on a line', 'the line before, the next'],
];

function buildKeys(): Node {
  const list = keys.flatMap(([key, what]) => [build('dt', {}, key), build('dd', {}, what)]);
  return build('details', { id: 'keys' }, build('summary', {}, 'Keys'), build('dl', {}, ...list));
}

/** What is known of the part chosen, else of the only one whose words hold the caret. */
function buildPartNote(state: PageState, sheet: SheetView | undefined): Node | undefined {
  const id = state.chosen !== '' ? state.chosen : (state.lit[0] ?? '');
  const part = partView(state, id);
  if (part === undefined) return undefined;
  return build(
    'section',
    { class: 'part-note', 'aria-label': 'Part', tabindex: 0 },
    build(
      'div',
      { class: 'heading' },
      build('h2', {}, part.label),
      build('p', { class: 'material' }, part.material === '' ? 'material not chosen' : part.material),
      buildWayTo(id, sheet),
    ),
    part.derivation === '' ? undefined : build('div', { class: 'derivation' }, ...sizesOf(part.derivation)),
  );
}

function buildWayTo(part: string, sheet: SheetView | undefined): Node | undefined {
  if (sheet?.kind !== 'drawing') return undefined;
  return drawsPart(sheet, part)
    ? actionButton('zoom-part', 'Zoom to it', 'z', 'Zoom to it')
    : build('p', { class: 'material' }, 'not on this sheet');
}

/** Each size with the indented lines that say what it is made of. */
function sizesOf(derivation: string): readonly Node[] {
  return derivation.split(/\n(?!\s)/).map((lines) => build('span', { class: 'size' }, lines));
}

/** Below every sheet, whatever part of it is on the screen. */
function buildStop(state: PageState): Node | undefined {
  const errors = shownErrors(state);
  if (errors === 0) return undefined;
  const words = `${errors === 1 ? '1 error stands' : `${errors} errors stand`} against the piece`;
  return build(
    'p',
    { class: 'stop' },
    build('strong', {}, '\u26A0 Do not build from this sheet'),
    build('span', {}, words),
  );
}

/** A search for cutting plans that is under way; not over what is stale, for its end would bring nothing new. */
function buildPlanning(state: PageState): Node | undefined {
  const planning = shownPiece(state)?.planning;
  if (planning === undefined || whyStale(state) !== undefined) return undefined;
  const share = `${Math.floor(planning * 100)} %`;
  return build(
    'p',
    { class: 'planning', 'data-key': 'planning' },
    build('span', {}, 'Looking for better plans '),
    build('progress', { max: '100', value: Math.floor(planning * 100), 'aria-label': 'Looking for better plans' }),
    build('span', {}, ` ${share} `),
    actionButton('stop-planning', 'Stop looking: keep the best plans so far', undefined, 'Stop'),
  );
}

/** What a line that is being moved comes to, or what has just been done. */
function buildReadout({ move, told }: PageState): Node | undefined {
  const words = move === undefined || move.sentence === '' ? told : move.sentence;
  if (words === '') return undefined;
  const kinds = ['readout', words === move?.sentence ? 'near' : '', move?.refused === true ? 'refused' : ''];
  return build('p', { class: kinds.filter(Boolean).join(' ') }, words);
}

export function buildPage(state: PageState): HTMLElement {
  const { picture } = state;
  const piece = shownPiece(state);
  const sheet = shownSheet(state);
  const stale = whyStale(state);
  return build(
    'div',
    {
      class: state.tall ? 'page tall' : 'page',
      'data-checking': state.checking ? 'true' : undefined,
      'data-stale': stale === undefined ? undefined : 'true',
      'data-version': picture?.version,
    },
    build(
      'header',
      { class: 'bar' },
      picture === undefined || state.only !== '' ? undefined : buildPieceChoice(picture, shownPlace(state)),
      piece === undefined || piece.sheets.length === 0
        ? undefined
        : build('div', { class: 'sheets' }, buildTabs(piece, sheet), buildSheetList(piece, sheet)),
      piece === undefined ? undefined : buildSheetChoice(piece, sheet),
      piece === undefined ? undefined : buildSearch(state),
      sheet?.kind === 'drawing' || (sheet?.kind === 'later' && sheet.shows === 'drawing')
        ? buildZoom(state.zoom)
        : undefined,
      sheet === undefined ? undefined : buildExports(sheet),
    ),
    stale === undefined ? undefined : build('p', { class: 'stale' }, `\u26A0 ${stale}`),
    build(
      'div',
      {
        id: 'sheet',
        class: `sheet ${(sheet?.kind === 'later' ? sheet.shows : sheet?.kind) ?? 'none'}`,
        role: sheet === undefined ? undefined : 'tabpanel',
        'aria-labelledby': sheet === undefined ? undefined : tabOf(sheet),
        'aria-busy': sheet?.kind === 'later' ? 'true' : undefined,
        // What was there stays until it comes, for a while: most sheets come before one could see that they were gone.
        'data-keep': sheet?.kind === 'later' && !state.waited ? '' : undefined,
        // A scrolling region must be reachable without a pointer.
        tabindex: 0,
      },
      ...buildSheet(sheet, state),
    ),
    buildPlanning(state),
    buildReadout(state),
    build(
      'div',
      { class: 'below' },
      picture === undefined ? undefined : buildVerdict(state, picture),
      build(
        'div',
        { class: 'columns' },
        picture === undefined ? undefined : buildFindings(state),
        buildPartNote(state, sheet),
      ),
    ),
  );
}
