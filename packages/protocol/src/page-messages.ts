import type { Picture } from './picture.ts';

/** The messages between extension and page, and the checks each end makes on what it receives. */

/** Extension to page. */
export type ToPage =
  | {
      readonly kind: 'picture';
      /** When `picture.readable` is false its pieces are the last good ones. */
      readonly picture: Picture;
      /** The text was closed and opened again, so its versions count from the start: this picture is never too old. */
      readonly anew: boolean;
    }
  /** The caret stands in the words of these parts of one piece; none when it stands elsewhere. */
  | {
      readonly kind: 'caret';
      readonly uri: string;
      readonly version: number;
      readonly piece: number;
      readonly parts: readonly string[];
    };

/** Page to extension. Check before acting on it. Ids of parts are unique in their piece only, so the piece is named too. */
export type FromPage =
  | { readonly kind: 'ready' }
  | {
      readonly kind: 'choose';
      readonly uri: string;
      readonly version: number;
      /** Its place in the picture's list of pieces. */
      readonly piece: number;
      readonly part: string;
    }
  /** A finding was chosen in the page: by its place in the picture's list. */
  | { readonly kind: 'choose-finding'; readonly uri: string; readonly version: number; readonly finding: number };

/** What the page keeps for itself across hiding and reloading. The serializer reads only `uri` from it. */
export interface PageMemory {
  readonly uri: string;
  /** By name, since pieces may come and go above it. */
  readonly piece: string;
  readonly sheet: string;
  readonly zoom: number | 'fit';
  readonly scroll: { readonly left: number; readonly top: number };
  readonly chosen: string;
}

type Fields = { readonly [name: string]: unknown };

function fieldsOf(value: unknown): Fields | undefined {
  return typeof value === 'object' && value !== null ? (value as Fields) : undefined;
}

function isCount(value: unknown): value is number {
  return typeof value === 'number' && Number.isSafeInteger(value) && value >= 0;
}

/** Reads a message from the page; `undefined` for anything that is not one of ours. Extra fields are dropped. */
export function readFromPage(value: unknown): FromPage | undefined {
  const message = fieldsOf(value);
  if (message === undefined) return undefined;
  if (message['kind'] === 'ready') return { kind: 'ready' };
  const { uri, version } = message;
  if (typeof uri !== 'string' || !isCount(version)) return undefined;
  const { piece, part } = message;
  if (message['kind'] === 'choose' && isCount(piece) && typeof part === 'string') {
    return { kind: 'choose', uri, version, piece, part };
  }
  if (message['kind'] === 'choose-finding' && isCount(message['finding'])) {
    return { kind: 'choose-finding', uri, version, finding: message['finding'] };
  }
  return undefined;
}

/**
 * Reads a message to the page. The sender is our own extension, so the picture's inside is trusted to have its shape;
 * what is guarded against is other traffic on the window's message event.
 */
export function readToPage(value: unknown): ToPage | undefined {
  const message = fieldsOf(value);
  if (message?.['kind'] === 'picture') {
    const picture = fieldsOf(message['picture']);
    const complete =
      typeof picture?.['uri'] === 'string' &&
      isCount(picture['version']) &&
      typeof picture['readable'] === 'boolean' &&
      typeof picture['verdict'] === 'string' &&
      Array.isArray(picture['pieces']) &&
      Array.isArray(picture['findings']);
    if (!complete) return undefined;
    return { kind: 'picture', picture: picture as unknown as Picture, anew: message['anew'] === true };
  }
  if (message?.['kind'] === 'caret') {
    const { uri, version, piece, parts } = message;
    if (typeof uri !== 'string' || !isCount(version) || !isCount(piece) || !Array.isArray(parts)) return undefined;
    return parts.every((part) => typeof part === 'string') ? { kind: 'caret', uri, version, piece, parts } : undefined;
  }
  return undefined;
}

/** Reads what the page kept; anything unknown falls back to a fresh page. */
export function readPageMemory(value: unknown): PageMemory {
  const memory = fieldsOf(value);
  const scroll = fieldsOf(memory?.['scroll']);
  const words = (name: string) => (typeof memory?.[name] === 'string' ? (memory[name] as string) : '');
  const zoom = memory?.['zoom'];
  return {
    uri: words('uri'),
    piece: words('piece'),
    sheet: words('sheet'),
    zoom: typeof zoom === 'number' && Number.isFinite(zoom) && zoom > 0 ? zoom : 'fit',
    scroll: {
      left: isCount(scroll?.['left']) ? scroll['left'] : 0,
      top: isCount(scroll?.['top']) ? scroll['top'] : 0,
    },
    chosen: words('chosen'),
  };
}
