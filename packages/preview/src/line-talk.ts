import type { FromPage, ToPage } from '@fettle/protocol';
import type { PageState } from './page-state.ts';
import { shownPlace } from './page-state.ts';

/** What the page asks and hears about a line that is being moved, and how that shows. */
export interface LineTalkHost {
  state(): PageState;
  show(state: PageState): void;
  send(message: FromPage): void;
  tell(sentence: string): void;
}

/** Questions about a line on its way, at most one in so many milliseconds. */
const pace = 60;

export class LineTalk {
  readonly #host: LineTalkHost;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(host: LineTalkHost) {
    this.#host = host;
  }

  moving(division: string, steps: number): void {
    const state = this.#host.state();
    const { sentence, refused } = state.move?.division === division ? state.move : { sentence: '', refused: false };
    this.#host.show({ ...state, move: { division, steps, sentence, refused } });
    // The first question is asked at once, later ones at a pace the server can hold.
    if (this.#timer !== undefined) return;
    this.#ask(division, steps, false);
    this.#timer = setTimeout(() => {
      this.#timer = undefined;
      const { move } = this.#host.state();
      if (move !== undefined && (move.division !== division || move.steps !== steps)) {
        this.#ask(move.division, move.steps, false);
      }
    }, pace);
  }

  dropped(division: string, steps: number): void {
    this.#ask(division, steps, true);
  }

  ended(): void {
    const { move: _, ...rest } = this.#host.state();
    this.#host.show(rest);
  }

  hear({ uri, division, steps, sentence, refused, done }: Extract<ToPage, { kind: 'division' }>): void {
    const state = this.#host.state();
    const { move, picture } = state;
    if (picture?.uri !== uri) return;
    if (done) {
      // The line stays where it was let go until the new picture comes, which ends the move.
      if (refused) this.ended();
      this.#host.tell(sentence);
    } else if (move?.division === division && move.steps === steps) {
      this.#host.show({ ...state, move: { ...move, sentence, refused } });
    }
  }

  #ask(division: string, steps: number, drop: boolean): void {
    const state = this.#host.state();
    if (state.picture === undefined) return;
    const { uri, version } = state.picture;
    this.#host.send({ kind: 'move-division', uri, version, piece: shownPlace(state), division, steps, drop });
  }
}
