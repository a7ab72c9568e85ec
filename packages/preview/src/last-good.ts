import type { PieceView } from '@fettle/protocol';
import type { PageState } from './page-state.ts';
import { shownPiece, shownSheet, whyStale } from './page-state.ts';

/**
 * The last good state of the piece shown, with its one sheet, for a reload while the text is broken. Taken once typing
 * pauses, so that no key waits for it.
 */

/** In milliseconds. */
const keepAfter = 1000;
const mostCharacters = 500_000;

export class LastGood {
  readonly #state: () => PageState;
  readonly #onNews: () => void;
  #last: PieceView | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(last: PieceView | undefined, state: () => PageState, onNews: () => void) {
    this.#last = last;
    this.#state = state;
    this.#onNews = onNews;
  }

  of(piece: string | undefined): PieceView | undefined {
    return this.#last?.key === piece ? this.#last : undefined;
  }

  keepSoon(): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#keep(), keepAfter);
  }

  #keep(): void {
    const state = this.#state();
    const piece = shownPiece(state);
    const sheet = shownSheet(state);
    if (piece === undefined || sheet === undefined || sheet.kind === 'later') return;
    if (whyStale(state) !== undefined || piece.parts.length === 0) return;
    if (this.#last?.parts === piece.parts && this.#last.sheets[0] === sheet) return;
    const last = { ...piece, sheets: [sheet] };
    if (JSON.stringify(last).length > mostCharacters) return;
    this.#last = last;
    this.#onNews();
  }
}
