import { build } from './build.ts';
import { bestPlace } from './tip-place.ts';

/**
 * What is known of the part under the pointer, or of the one reached by keys, beside it. It can be pointed at itself,
 * stays while either is, and goes with Escape (WCAG 2.2, 1.4.13).
 */

export interface TipWords {
  readonly title: string;
  readonly lines: string;
}

/** Pointing at a part in passing shows nothing, in milliseconds. */
const patience = 350;
export class PartTip {
  readonly element = build('div', { id: 'tip', role: 'tooltip', hidden: '' });
  readonly #wordsOf: (part: string) => TipWords | undefined;
  readonly #onPart: (part: string) => void;
  #part = '';
  /** How far the pointer was from the words, and when it last came nearer. */
  #nearest = Number.POSITIVE_INFINITY;
  #approached = Number.NEGATIVE_INFINITY;
  #timer: ReturnType<typeof setTimeout> | undefined;

  /** `onPart` hears which part the words are about whenever that changes; empty for none. */
  constructor(wordsOf: (part: string) => TipWords | undefined, onPart: (part: string) => void) {
    this.#wordsOf = wordsOf;
    this.#onPart = onPart;
    this.element.addEventListener('pointerleave', () => this.hide());
    document.addEventListener('pointermove', (event) => this.#follow(event));
  }

  /** The part that the words on the screen are about; empty for none. */
  get part(): string {
    return this.#part;
  }

  /** Whether it was to be seen. */
  hide(): boolean {
    clearTimeout(this.#timer);
    const seen = !this.element.hidden;
    this.element.hidden = true;
    this.#turnTo('');
    return seen;
  }

  pointAt(anchor: Element): void {
    this.#after(() => this.show(anchor));
  }

  /** The pointer left: unless it comes to the words in time, they go. */
  pointAway(): void {
    this.#after(() => this.hide());
  }

  show(anchor: Element): void {
    clearTimeout(this.#timer);
    const part = anchor.closest('[data-part]')?.getAttribute('data-part') ?? '';
    const words = this.#wordsOf(part);
    if (words === undefined) {
      this.hide();
      return;
    }
    this.#turnTo(part);
    this.#fill(words);
    anchor.setAttribute('aria-describedby', 'tip');
    this.element.hidden = false;
    this.#place(anchor);
  }

  /** After a new picture: other words, or none when the part is gone. */
  refresh(root: ParentNode): void {
    if (this.element.hidden) return;
    const words = this.#wordsOf(this.#part);
    if (words === undefined) this.hide();
    else this.#fill(words);
    const focused = root.querySelector('[data-part]:focus, [data-part] button:focus');
    if (focused?.closest('[data-part]')?.getAttribute('data-part') === this.#part) {
      focused.setAttribute('aria-describedby', 'tip');
    }
  }

  /** Not while the pointer is at the words, or comes nearer to them. */
  #after(act: () => void): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      if (!this.element.hidden && this.element.matches(':hover')) return;
      if (!this.element.hidden && performance.now() - this.#approached < patience) this.#after(act);
      else act();
    }, patience);
  }

  #turnTo(part: string): void {
    if (part === this.#part) return;
    this.#part = part;
    this.#onPart(part);
  }

  #fill({ title, lines }: TipWords): void {
    this.element.replaceChildren(build('strong', {}, title), build('p', { class: 'derivation' }, lines));
  }

  /** Where the words cost the drawing least; what is covered matters more than how far they are from the part. */
  #place(anchor: Element): void {
    const { offsetWidth: width, offsetHeight: height } = this.element;
    const place = bestPlace(anchor, { width, height });
    this.element.style.left = `${place.left}px`;
    this.element.style.top = `${place.top}px`;
    this.#nearest = Number.POSITIVE_INFINITY;
  }

  /** Whoever is on the way to the words does not lose them to what lies between. */
  #follow({ clientX, clientY }: PointerEvent): void {
    if (this.element.hidden) return;
    const { left, right, top, bottom } = this.element.getBoundingClientRect();
    const across = Math.max(left - clientX, 0, clientX - right);
    const down = Math.max(top - clientY, 0, clientY - bottom);
    const now = Math.hypot(across, down);
    if (now < this.#nearest) this.#approached = performance.now();
    this.#nearest = now;
  }
}
