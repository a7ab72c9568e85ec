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

  /** The titles of all sheets, as they stand. */
  async sheetTitles(): Promise<readonly string[]> {
    return await this.#frame.getByRole('tab').allInnerTexts();
  }

  async showSheet(title: string): Promise<void> {
    await this.#frame.getByRole('tab', { name: title, exact: true }).click();
    await this.#frame.getByRole('tab', { name: title, exact: true, selected: true }).waitFor();
    await this.#frame.locator('#sheet:not([aria-busy])').waitFor();
  }

  /** Height of a part on the screen, in pixels, for comparing with another's. */
  async heightOf(name: string): Promise<number> {
    // The area of the part itself: the rims of its lettering reach beyond it.
    const box = await this.part(name).locator('rect').first().boundingBox();
    if (box === null) throw new Error(`${name} is not on the screen`);
    return box.height;
  }

  /** The whole text the page shows. */
  async text(): Promise<string> {
    return (await this.#frame.locator('#fettle-page').textContent()) ?? '';
  }

  /** A line between two spaces by the beginning of its name, as it is read out. */
  line(name: string): Locator {
    return this.#frame.locator(`#sheet svg [data-division][aria-label^="${name.replaceAll('"', '\\"')}"]`);
  }

  /** Waits until the line's neighbours are said to be of these sizes. */
  async waitForSizes(name: string, sizes: string): Promise<void> {
    await this.line(name)
      .and(this.#frame.locator(`[aria-valuetext="${sizes.replaceAll('"', '\\"')}"]`))
      // A line has no area, and so by the browser's reckoning is never to be seen.
      .waitFor({ state: 'attached' });
  }

  /** Moves a line by keys, and lets it go. */
  async moveLineByKeys(name: string, ...keys: readonly string[]): Promise<void> {
    await this.line(name).focus();
    for (const key of [...keys, 'Enter']) await this.line(name).press(key);
  }

  /** What the page says it has just done, or what a line that is being moved comes to. */
  readout(words: string | RegExp): Locator {
    return this.#frame.locator('.readout').filter({ hasText: words });
  }

  get tip(): Locator {
    return this.#frame.locator('#tip');
  }

  /** Looks for parts, and goes to the first of them. */
  async search(words: string): Promise<void> {
    await this.#frame.locator('#search').fill(words);
    await this.#frame.locator('#search').press('Enter');
  }

  async press(button: string): Promise<void> {
    await this.#frame.getByRole('button', { name: button, exact: true }).click();
  }

  async choosePiece(name: string): Promise<void> {
    await this.#frame.locator('#piece').selectOption(name);
  }

  /** The word over the drawing that it may not be what the text says. */
  stale(words: string | RegExp): Locator {
    return this.#frame.locator('.stale').filter({ hasText: words });
  }

  /** Accessibility rules broken on the page as it stands, by name and element. */
  async brokenRules(axe: string, criteria: readonly string[]): Promise<readonly string[]> {
    await this.#frame.evaluate(axe);
    return await this.#frame.evaluate(
      `axe.run(document, { runOnly: { type: 'tag', values: ${JSON.stringify(criteria)} } }).then(({ violations }) =>
        violations.flatMap(({ id, nodes }) => nodes.map(({ html, failureSummary }) => id + ': ' + html + ' ' + failureSummary)))`,
    );
  }
}
