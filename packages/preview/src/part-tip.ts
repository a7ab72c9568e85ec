import { build } from './build.ts';

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
/** From the part to its words, in pixels. */
const distance = 8;

export class PartTip {
  readonly element = build('div', { id: 'tip', role: 'tooltip', hidden: '' });
  readonly #wordsOf: (part: string) => TipWords | undefined;
  #part = '';
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(wordsOf: (part: string) => TipWords | undefined) {
    this.#wordsOf = wordsOf;
    this.element.addEventListener('pointerleave', () => this.hide());
  }

  /** Whether it was to be seen. */
  hide(): boolean {
    clearTimeout(this.#timer);
    const seen = !this.element.hidden;
    this.element.hidden = true;
    this.#part = '';
    return seen;
  }

  pointAt(anchor: Element): void {
    this.#after(() => this.show(anchor));
  }

  /** The pointer left: unless it comes to the words in time, they go. */
  pointAway(): void {
    this.#after(() => {
      if (!this.element.matches(':hover')) this.hide();
    });
  }

  show(anchor: Element): void {
    clearTimeout(this.#timer);
    const part = anchor.closest('[data-part]')?.getAttribute('data-part') ?? '';
    const words = this.#wordsOf(part);
    if (words === undefined) {
      this.hide();
      return;
    }
    this.#part = part;
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

  #after(act: () => void): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(act, patience);
  }

  #fill({ title, lines }: TipWords): void {
    this.element.replaceChildren(build('strong', {}, title), build('p', { class: 'derivation' }, lines));
  }

  /**
   * Beside the part, never over it, never outside the window, and there where it covers the fewest of the drawing's
   * figures and names; where there is no room beside it, over its lower end.
   */
  #place(anchor: Element): void {
    const box = (anchor.querySelector(':scope > rect') ?? anchor).getBoundingClientRect();
    const { offsetWidth: width, offsetHeight: height } = this.element;
    const { innerWidth, innerHeight } = window;
    const kept = (place: number, size: number, room: number) =>
      Math.max(distance, Math.min(place, room - size - distance));
    const beside = [
      ...[box.bottom + distance, box.top - distance - height].flatMap((top) =>
        [box.left, (box.left + box.right - width) / 2, box.right - width].map((left) => ({
          left: kept(left, width, innerWidth),
          top,
        })),
      ),
      ...[box.right + distance, box.left - distance - width].flatMap((left) =>
        [box.top, (box.top + box.bottom - height) / 2, box.bottom - height].map((top) => ({
          left,
          top: kept(top, height, innerHeight),
        })),
      ),
    ].filter(({ left, top }) => left >= 0 && top >= 0 && left + width <= innerWidth && top + height <= innerHeight);
    const written = [...(anchor.closest('svg')?.querySelectorAll('text') ?? [])].map((text) =>
      text.getBoundingClientRect(),
    );
    const hidden = beside.map(
      ({ left, top }) =>
        written.filter(
          (text) => left < text.right && text.left < left + width && top < text.bottom && text.top < top + height,
        ).length,
    );
    const best = beside[hidden.indexOf(Math.min(...hidden))] ?? {
      left: kept(box.left, width, innerWidth),
      top: Math.max(0, innerHeight - height - distance),
    };
    this.element.style.left = `${best.left}px`;
    this.element.style.top = `${best.top}px`;
  }
}
