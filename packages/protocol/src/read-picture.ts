import { type Fields, fieldsOf, isCount, isListOf, isNumber, isText } from './fields.ts';
import type { FindingsFrame } from './findings-frame.ts';
import { isPackedSvg } from './packed-svg.ts';
import type {
  DivisionLine,
  PartView,
  PictureFinding,
  PieceView,
  SheetChoice,
  SheetView,
  TableRow,
  TextSpan,
  WatchedPicture,
  WatchPictures,
} from './picture.ts';
import type { PictureFrame, SheetFrame } from './picture-frame.ts';

/**
 * Checks that what arrived is a picture through and through: the page shows nothing whose shape it has not seen to, and
 * what was kept across a reload may have been kept by an older version of the page.
 */

function isSpan(value: unknown): value is TextSpan {
  const span = fieldsOf(value);
  return Number.isSafeInteger(span?.['start']) && Number.isSafeInteger(span?.['end']);
}

function isFinding(value: unknown): value is PictureFinding {
  const finding = fieldsOf(value);
  return (
    finding !== undefined &&
    isText(finding['code']) &&
    (finding['severity'] === 'error' || finding['severity'] === 'warning' || finding['severity'] === 'note') &&
    isText(finding['sentence']) &&
    isSpan(finding['span']) &&
    (finding['piece'] === undefined || isCount(finding['piece'])) &&
    isListOf(finding['parts'], isText)
  );
}

function isPart(value: unknown): value is PartView {
  const part = fieldsOf(value);
  return (
    part !== undefined &&
    ['id', 'label', 'mark', 'material', 'derivation'].every((name) => isText(part[name])) &&
    isListOf(part['sizes'], isText) &&
    isSpan(part['span'])
  );
}

function isRow(value: unknown): value is TableRow {
  const row = fieldsOf(value);
  const kind = row?.['kind'];
  const isKnown = kind === undefined || kind === 'heading' || kind === 'total';
  return isKnown && isListOf(row?.['parts'], isText) && isListOf(row?.['cells'], isText);
}

function isDivision(value: unknown): value is DivisionLine {
  const line = fieldsOf(value);
  return (
    line !== undefined &&
    ['id', 'label', 'sizes'].every((name) => isText(line[name])) &&
    (line['moves'] === 'x' || line['moves'] === 'y') &&
    ['at', 'from', 'to', 'step'].every((name) => isNumber(line[name]))
  );
}

function isChoice(value: unknown): value is SheetChoice {
  const choice = fieldsOf(value);
  return choice !== undefined && ['of', 'tab', 'label', 'option'].every((name) => isText(choice[name]));
}

function isSheet(value: unknown): value is SheetView {
  const sheet = fieldsOf(value);
  if (sheet === undefined || !isText(sheet['id']) || !isText(sheet['title'])) return false;
  if (sheet['choice'] !== undefined && !isChoice(sheet['choice'])) return false;
  if (sheet['group'] !== undefined && !isText(sheet['group'])) return false;
  switch (sheet['kind']) {
    case 'drawing':
      return isText(sheet['svg']) && isText(sheet['description']) && isListOf(sheet['divisions'], isDivision);
    case 'table':
      return isListOf(sheet['columns'], isText) && isListOf(sheet['rows'], isRow);
    case 'later':
      return sheet['shows'] === 'drawing' || sheet['shows'] === 'table';
    default:
      return false;
  }
}

/** The same as a sheet, but for how the text of a drawing travels. */
function isSheetFrameOrId(value: unknown): value is SheetFrame | string {
  if (isText(value)) return true;
  const svg = fieldsOf(value)?.['svg'];
  return isPackedSvg(svg) ? isSheet({ ...(value as object), svg: svg.text }) : svg === undefined && isSheet(value);
}

function isPartOrId(value: unknown): value is PartView | string {
  return isText(value) || isPart(value);
}

function isFindingOrKept(value: unknown): value is FindingsFrame[number] {
  const kept = fieldsOf(value);
  if (kept?.['from'] === undefined) return isFinding(value);
  return isCount(kept['from']) && isCount(kept['count']) && Number.isSafeInteger(kept['moved']);
}

function isPieceHead(piece: Fields | undefined): piece is Fields {
  return piece !== undefined && isText(piece['key']) && isText(piece['name']) && isSpan(piece['span']);
}

function isShare(value: unknown): boolean {
  return isNumber(value) && value >= 0 && value <= 1;
}

function isPieceFrame(value: unknown): boolean {
  const piece = fieldsOf(value);
  return (
    isPieceHead(piece) &&
    (piece['stale'] === undefined || piece['stale'] === true) &&
    (piece['together'] === undefined || piece['together'] === true) &&
    (piece['planning'] === undefined || isShare(piece['planning'])) &&
    (piece['parts'] === undefined || isListOf(piece['parts'], isPartOrId)) &&
    (piece['sheets'] === undefined || isListOf(piece['sheets'], isSheetFrameOrId))
  );
}

/** A piece with everything in it. */
export function isPieceView(value: unknown): value is PieceView {
  const piece = fieldsOf(value);
  return (
    isPieceHead(piece) &&
    (piece['stale'] === undefined || piece['stale'] === true) &&
    (piece['planning'] === undefined || isShare(piece['planning'])) &&
    isListOf(piece['parts'], isPart) &&
    isListOf(piece['sheets'], isSheet)
  );
}

export function isPictureFrame(value: unknown): value is PictureFrame {
  const frame = fieldsOf(value);
  return (
    frame !== undefined &&
    isText(frame['uri']) &&
    isCount(frame['version']) &&
    typeof frame['readable'] === 'boolean' &&
    isText(frame['verdict']) &&
    isCount(frame['frame']) &&
    (frame['since'] === undefined || isCount(frame['since'])) &&
    Array.isArray(frame['pieces']) &&
    frame['pieces'].every(isPieceFrame) &&
    (frame['findings'] === undefined || isListOf(frame['findings'], isFindingOrKept))
  );
}

function isWatched(value: unknown): value is WatchedPicture {
  const watched = fieldsOf(value);
  const isShown = (each: unknown): each is { readonly piece: string; readonly sheet: string } => {
    const shown = fieldsOf(each);
    return isText(shown?.['piece']) && isText(shown['sheet']);
  };
  return isText(watched?.['uri']) && isListOf(watched['shown'], isShown) && typeof watched['afresh'] === 'boolean';
}

/** What the server is asked to watch; undefined for anything else. */
export function readWatchPictures(value: unknown): WatchPictures | undefined {
  const pictures = fieldsOf(value)?.['pictures'];
  return isListOf(pictures, isWatched) ? { pictures } : undefined;
}
