import { fieldsOf, isCount, isNumber } from './fields.ts';
import type { PieceView } from './picture.ts';
import { isPieceView } from './read-picture.ts';

/** What the page keeps for itself across hiding and reloading. The serializer reads `uri`, `only` and `last` from it. */
export interface PageMemory {
  readonly uri: string;
  /** By key, since pieces may come and go above it. */
  readonly piece: string;
  readonly sheet: string;
  readonly zoom: number | 'fit';
  readonly scroll: { readonly left: number; readonly top: number };
  readonly chosen: string;
  /** Key of the one piece the panel belongs to; empty when it shows all of its document. */
  readonly only: string;
  /** What stands below the sheet has more room. */
  readonly tall: boolean;
  /** The last good state of the piece shown, with its one sheet: all there is to show while the text is broken. */
  readonly last?: PieceView;
}

/** Reads what the page kept; anything unknown falls back to a fresh page. */
export function readPageMemory(value: unknown): PageMemory {
  const memory = fieldsOf(value);
  const scroll = fieldsOf(memory?.['scroll']);
  const words = (name: string) => (typeof memory?.[name] === 'string' ? (memory[name] as string) : '');
  const zoom = memory?.['zoom'];
  const last = memory?.['last'];
  return {
    uri: words('uri'),
    piece: words('piece'),
    sheet: words('sheet'),
    zoom: isNumber(zoom) && zoom > 0 ? zoom : 'fit',
    scroll: {
      left: isCount(scroll?.['left']) ? scroll['left'] : 0,
      top: isCount(scroll?.['top']) ? scroll['top'] : 0,
    },
    chosen: words('chosen'),
    only: words('only'),
    tall: memory?.['tall'] === true,
    ...(isPieceView(last) ? { last } : {}),
  };
}
