/** What is asked in the box at the top of the window, as a reader answers it: by keys and clicks. */
import type { Locator, Page } from 'playwright-core';

export class Questions {
  readonly #page: Page;

  constructor(page: Page) {
    this.#page = page;
  }

  /** Runs a command that asks something in turn, by its title. */
  async ask(title: string): Promise<void> {
    await this.#page.keyboard.press('F1');
    await this.#input.fill(`>${title}`);
    await this.#row(title).click();
  }

  /** Waits for the question at that place among them. */
  async at(step: number, steps: number): Promise<void> {
    await this.#box
      .locator('.quick-input-title')
      .filter({ hasText: `New Piece (${step}/${steps})` })
      .waitFor();
  }

  async answerWords(words: string): Promise<void> {
    await this.#input.fill(words);
    await this.#page.keyboard.press('Enter');
  }

  /** Writes words that cannot be used and answers what is said of them; the question stays. */
  async refused(words: string): Promise<string> {
    await this.#input.fill(words);
    await this.#page.keyboard.press('Enter');
    const message = this.#box.locator('.quick-input-message');
    await this.#box.locator('.monaco-inputbox.error, .quick-input-filter .error').first().waitFor();
    return ((await message.textContent()) ?? '').trim();
  }

  async choose(label: string): Promise<void> {
    await this.#row(label).click();
  }

  async chooseSeveral(labels: readonly string[]): Promise<void> {
    for (const label of labels) await this.#row(label).click();
    await this.#box
      .getByRole('button', { name: 'OK' })

      .first()
      .click();
  }

  async goBack(): Promise<void> {
    await this.#box.locator('.quick-input-titlebar a.action-label[aria-label^="Back"]').click();
  }

  /** What stands in the box now. */
  async words(): Promise<string> {
    return await this.#input.inputValue();
  }

  #row(label: string): Locator {
    return this.#box.locator('.quick-input-list .monaco-list-row').filter({ hasText: label }).first();
  }

  get #box(): Locator {
    return this.#page.locator('.quick-input-widget');
  }

  get #input(): Locator {
    return this.#box.locator('input.input');
  }
}
