/** The page that shows the picture, as a reader sees and uses it. */
import type { Frame, Locator } from 'playwright-core';

export class PreviewPage {
  readonly #frame: Frame;

  constructor(frame: Frame) {
    this.#frame = frame;
  }

  /** Waits until a drawing is shown. */
  async waitForDrawing(): Promise<void> {
    await this.#frame.locator('#sheet > svg').waitFor();
  }

  /** A part of the drawing by the beginning of its name, as it is read out. */
  part(name: string): Locator {
    const quoted = name.replaceAll('\\', '\\\\').replaceAll('"', '\\"');
    return this.#frame.locator(`#sheet svg [data-part][role="button"][aria-label^="${quoted}"]`).first();
  }

  async clickPart(name: string): Promise<void> {
    await this.part(name).click();
  }

  /** Waits until the part is lit, because the caret stands in its words. */
  async waitForLit(name: string): Promise<void> {
    await this.part(name).and(this.#frame.locator('[aria-current="true"]')).waitFor();
  }

  /** The name, as it is read out, of everything that is lit. */
  async litParts(): Promise<readonly string[]> {
    const lit = await this.#frame.locator('#sheet svg [aria-current="true"]').all();
    return await Promise.all(lit.map(async (part) => (await part.getAttribute('aria-label')) ?? ''));
  }

  /** Waits until the picture says, or no longer says, that it is the last good one of a text that cannot be read. */
  async waitForStale(stale: boolean): Promise<void> {
    const page = this.#frame.locator(stale ? '.page[data-stale="true"]' : '.page:not([data-stale])');
    await page.waitFor();
  }

  async waitForVerdict(words: string | RegExp): Promise<void> {
    await this.#frame.locator('#verdict').filter({ hasText: words }).waitFor();
  }

  async showSheet(title: string): Promise<void> {
    await this.#frame.getByRole('tab', { name: title }).click();
    await this.#frame.getByRole('tab', { name: title, selected: true }).waitFor();
  }

  /** Height of a part on the screen, in pixels, for comparing with another's. */
  async heightOf(name: string): Promise<number> {
    const box = await this.part(name).boundingBox();
    if (box === null) throw new Error(`${name} is not on the screen`);
    return box.height;
  }

  /** The whole text the page shows. */
  async text(): Promise<string> {
    return (await this.#frame.locator('#fettle-page').textContent()) ?? '';
  }
}
