import type { Picture } from '@fettle/protocol';

/**
 * Says politely what changed for those who do not see it. Waits until typing pauses, so that a verdict that comes and
 * goes between two keys is not read out.
 */
export class Announcer {
  readonly #region: HTMLElement;
  #said = '';
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(region: HTMLElement) {
    this.#region = region;
  }

  /** The first picture says nothing: its verdict stands on the page that was just opened. */
  picture(picture: Picture): void {
    const words = picture.readable
      ? picture.verdict
      : 'The text cannot be read just now; the picture is the last good one';
    if (this.#said === '') this.#said = words;
    if (words === this.#said) {
      this.#cancel();
      return;
    }
    this.#later(() => {
      this.#said = words;
      this.#region.textContent = words;
    });
  }

  chosen(words: string): void {
    this.#region.textContent = words;
  }

  #later(say: () => void): void {
    this.#cancel();
    this.#timer = setTimeout(say, 700);
  }

  #cancel(): void {
    clearTimeout(this.#timer);
  }
}
