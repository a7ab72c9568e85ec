import type { Picture, PieceView } from '@fettle/protocol';
import { build } from './build.ts';
import type { NumberedFinding, PageState } from './page-state.ts';
import {
  graveFindings,
  numberedFindings,
  partView,
  pieceKeys,
  shownPiece,
  shownPlace,
  shownSheet,
} from './page-state.ts';
import { buildSheet } from './sheet-view.ts';
import { severityWords, signIcon } from './signs.ts';

/** The whole page as a detached tree, made afresh from the state; `patch` then brings the live page to it. */

function buildPieceChoice(picture: Picture, place: number): Node | undefined {
  if (picture.pieces.length < 2) return undefined;
  const options = pieceKeys(picture).map((key, at) =>
    build('option', { value: key, selected: at === place ? '' : undefined }, key),
  );
  return build('label', { class: 'piece' }, 'Piece ', build('select', { id: 'piece' }, ...options));
}

function buildTabs(piece: PieceView, shown: string): Node {
  const tabs = piece.sheets.map((sheet) =>
    build(
      'button',
      {
        type: 'button',
        role: 'tab',
        id: `tab-${sheet.id}`,
        'data-sheet': sheet.id,
        'aria-controls': 'sheet',
        'aria-selected': String(sheet.id === shown),
        tabindex: sheet.id === shown ? 0 : -1,
      },
      sheet.title,
    ),
  );
  return build('div', { role: 'tablist', 'aria-label': 'Sheets' }, ...tabs);
}

function zoomButton(action: string, name: string, key: string, face: string): Node {
  return build(
    'button',
    {
      type: 'button',
      'data-action': action,
      'aria-label': name,
      'aria-keyshortcuts': key,
      title: `${name} (${key})`,
    },
    face,
  );
}

function buildZoom(zoom: number | 'fit'): Node {
  const shown = zoom === 'fit' ? 'Fit' : `${Math.round(zoom * 100)} %`;
  return build(
    'div',
    { role: 'group', 'aria-label': 'Zoom', class: 'zoom' },
    zoomButton('zoom-out', 'Zoom out', '-', '\u2212'),
    zoomButton('zoom-fit', 'Fit the sheet', '0', shown),
    zoomButton('zoom-in', 'Zoom in', '+', '+'),
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

/** What is wrong stands open; notes, of which a text may have many, are folded away. */
function buildFindings(picture: Picture): Node {
  const notes = numberedFindings(picture).filter(({ finding }) => finding.severity === 'note');
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
    { class: 'findings', 'aria-label': 'Findings' },
    build('h2', { id: 'verdict' }, picture.verdict),
    buildList(graveFindings(picture)),
    folded,
  );
}

/** What is known of the part chosen, else of the only one whose words hold the caret. */
function buildPartNote(state: PageState): Node | undefined {
  const id = state.chosen !== '' ? state.chosen : (state.lit[0] ?? '');
  const part = partView(state, id);
  if (part === undefined) return undefined;
  return build(
    'section',
    // Long derivations scroll, so it must be reachable without a pointer.
    { class: 'part-note', 'aria-label': 'Part', tabindex: 0 },
    build('h2', {}, part.label),
    part.derivation === '' ? undefined : build('p', { class: 'derivation' }, part.derivation),
  );
}

export function buildPage(state: PageState): HTMLElement {
  const { picture } = state;
  const piece = shownPiece(state);
  const sheet = shownSheet(state);
  const stale = picture !== undefined && !picture.readable;
  return build(
    'div',
    {
      class: 'page',
      'data-stale': stale ? 'true' : undefined,
      'data-version': picture?.version,
    },
    build(
      'header',
      { class: 'bar' },
      picture === undefined ? undefined : buildPieceChoice(picture, shownPlace(state)),
      piece === undefined || piece.sheets.length === 0 ? undefined : buildTabs(piece, sheet?.id ?? ''),
      sheet?.kind === 'drawing' ? buildZoom(state.zoom) : undefined,
    ),
    stale
      ? build(
          'p',
          { class: 'stale' },
          piece === undefined
            ? '\u26A0 The text cannot be read just now.'
            : '\u26A0 The text cannot be read just now. This is the last picture that could be drawn.',
        )
      : undefined,
    build(
      'div',
      {
        id: 'sheet',
        class: `sheet ${sheet?.kind ?? 'none'}`,
        role: sheet === undefined ? undefined : 'tabpanel',
        'aria-labelledby': sheet === undefined ? undefined : `tab-${sheet.id}`,
        // A scrolling region must be reachable without a pointer.
        tabindex: 0,
      },
      buildSheet(sheet, state),
    ),
    build('div', { class: 'below' }, picture === undefined ? undefined : buildFindings(picture), buildPartNote(state)),
  );
}
