import { fieldsOf, isCount, isListOf, isText } from './fields.ts';
import type { PictureFrame } from './picture-frame.ts';
import type { SheetFileFormat } from './picture-requests.ts';
import { isPictureFrame } from './read-picture.ts';

/** The messages between extension and page, and the checks each end makes on what it receives. */

/** Extension to page. */
export type ToPage =
  | {
      readonly kind: 'picture';
      /** When it is not readable its pieces are the last good ones. */
      readonly frame: PictureFrame;
      /** The text was closed and opened again, so its versions count from the start: this picture is never too old. */
      readonly anew: boolean;
      /** Key of the one piece this panel belongs to; empty when it shows them all. */
      readonly only: string;
    }
  /** The caret stands in the words of these parts of one piece; none when it stands elsewhere. */
  | {
      readonly kind: 'caret';
      readonly uri: string;
      readonly version: number;
      readonly piece: number;
      readonly parts: readonly string[];
    }
  /** The text has become this version; its picture will come. */
  | { readonly kind: 'edited'; readonly uri: string; readonly version: number }
  /** This piece, by key, is to be shown. */
  | { readonly kind: 'piece'; readonly piece: string }
  /** Whether there is a server: without one the picture is the last there was. */
  | { readonly kind: 'server'; readonly running: boolean }
  /** What becomes, or came, of moving a line; `done` once the text was changed or nothing more will happen. */
  | {
      readonly kind: 'division';
      readonly uri: string;
      readonly division: string;
      readonly steps: number;
      readonly sentence: string;
      readonly refused: boolean;
      readonly done: boolean;
    }
  /** Something that was asked for in the page has been done, or not, in words. */
  | { readonly kind: 'told'; readonly sentence: string }
  /** The page is to render this drawing, `width` pixels wide, and to send it back as `png` or `png-failed`. */
  | { readonly kind: 'draw-png'; readonly request: number; readonly svg: string; readonly width: number }
  | { readonly kind: 'cancel-png'; readonly request: number };

export type PageExportFormat = SheetFileFormat | 'png';
const formats: readonly PageExportFormat[] = ['svg', 'csv', 'png'];

/** What is asked about one place in one picture. */
interface AboutPicture {
  readonly uri: string;
  readonly version: number;
  /** Its place in the picture's list of pieces. */
  readonly piece: number;
}

/** Page to extension. Check before acting on it. Ids of parts are unique in their piece only, so the piece is named too. */
export type FromPage =
  /** The page has loaded, or lost what it had: it wants everything. */
  | { readonly kind: 'ready' }
  | (AboutPicture & { readonly kind: 'choose'; readonly part: string })
  /** A finding was chosen in the page: by its place in the picture's list. */
  | { readonly kind: 'choose-finding'; readonly uri: string; readonly version: number; readonly finding: number }
  /** What is looked at now, by key and id. */
  | { readonly kind: 'look'; readonly uri: string; readonly piece: string; readonly sheet: string }
  /** A line was moved so many marks of the ruler; `drop`: let go there, so that the text is to follow. */
  | (AboutPicture & {
      readonly kind: 'move-division';
      readonly division: string;
      readonly steps: number;
      readonly drop: boolean;
    })
  | (AboutPicture & { readonly kind: 'copy-table'; readonly sheet: string })
  /** The plans that were found are good enough. */
  | (AboutPicture & { readonly kind: 'stop-planning' })
  | (AboutPicture & { readonly kind: 'export'; readonly sheet: string; readonly format: PageExportFormat })
  | { readonly kind: 'png'; readonly request: number; readonly bytes: Uint8Array }
  | { readonly kind: 'png-failed'; readonly request: number; readonly sentence: string };

/** Marks of the ruler that one drag may cover: more than any piece has. */
const mostSteps = 1_000_000;

/** Reads a message from the page; `undefined` for anything that is not one of ours. Extra fields are dropped. */
export function readFromPage(value: unknown): FromPage | undefined {
  const message = fieldsOf(value);
  if (message === undefined) return undefined;
  const { kind, uri, version, piece, part, sheet, finding, division, steps, drop, request } = message;
  switch (kind) {
    case 'ready':
      return { kind };
    case 'png':
      return isCount(request) && message['bytes'] instanceof Uint8Array
        ? { kind, request, bytes: message['bytes'] }
        : undefined;
    case 'png-failed':
      return isCount(request) && isText(message['sentence'])
        ? { kind, request, sentence: message['sentence'] }
        : undefined;
    default:
  }
  if (!isText(uri)) return undefined;
  if (kind === 'look') return isText(piece) && isText(sheet) ? { kind, uri, piece, sheet } : undefined;
  if (!isCount(version)) return undefined;
  if (kind === 'choose-finding') return isCount(finding) ? { kind, uri, version, finding } : undefined;
  if (!isCount(piece)) return undefined;
  const about = { uri, version, piece };
  switch (kind) {
    case 'choose':
      return isText(part) ? { kind, ...about, part } : undefined;
    case 'move-division': {
      const fits = Number.isSafeInteger(steps) && Math.abs(steps as number) <= mostSteps;
      return fits && isText(division) && typeof drop === 'boolean'
        ? { kind, ...about, division, steps: steps as number, drop }
        : undefined;
    }
    case 'stop-planning':
      return { kind, ...about };
    case 'copy-table':
      return isText(sheet) ? { kind, ...about, sheet } : undefined;
    case 'export': {
      const format = formats.find((each) => each === message['format']);
      return isText(sheet) && format !== undefined ? { kind, ...about, sheet, format } : undefined;
    }
    default:
      return undefined;
  }
}

/** Reads a message to the page; `undefined` for other traffic on the window's message event, and for what is not whole. */
export function readToPage(value: unknown): ToPage | undefined {
  const message = fieldsOf(value);
  if (message === undefined) return undefined;
  const { kind, uri, version, piece, parts, frame, division, sentence, request, svg, width, steps } = message;
  switch (kind) {
    case 'picture':
      return isPictureFrame(frame)
        ? { kind, frame, anew: message['anew'] === true, only: isText(message['only']) ? message['only'] : '' }
        : undefined;
    case 'caret':
      return isText(uri) && isCount(version) && isCount(piece) && isListOf(parts, isText)
        ? { kind, uri, version, piece, parts }
        : undefined;
    case 'edited':
      return isText(uri) && isCount(version) ? { kind, uri, version } : undefined;
    case 'piece':
      return isText(piece) ? { kind, piece } : undefined;
    case 'server':
      return typeof message['running'] === 'boolean' ? { kind, running: message['running'] } : undefined;
    case 'division':
      return isText(uri) && isText(division) && isText(sentence) && Number.isSafeInteger(steps)
        ? {
            kind,
            uri,
            division,
            steps: steps as number,
            sentence,
            refused: message['refused'] === true,
            done: message['done'] === true,
          }
        : undefined;
    case 'told':
      return isText(sentence) ? { kind, sentence } : undefined;
    case 'draw-png':
      return isCount(request) && isText(svg) && isCount(width) && width > 0 ? { kind, request, svg, width } : undefined;
    case 'cancel-png':
      return isCount(request) ? { kind, request } : undefined;
    default:
      return undefined;
  }
}
