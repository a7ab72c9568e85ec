/**
 * One window of the real editor, driven as a reader would: by keys, clicks and what is on the screen. Every wait is for
 * something to be seen; none is for time to pass. Knows how VS Code's page is built, so that the stories need not.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { PreviewPage } from './preview-page.ts';
import { type Severity, squiggledWords } from './squiggles.ts';

/** How long anything may take to be seen, on a slow and busy machine. */
export const patienceMs = 90_000;
/** How often something that cannot announce itself is looked at. */
const lookEveryMs = 50;

export type Theme = 'light' | 'dark' | 'high contrast' | 'high contrast light';

const themes: Readonly<Record<Theme, { readonly setting: string; readonly sign: string }>> = {
  light: { setting: 'Default Light Modern', sign: 'vs' },
  dark: { setting: 'Default Dark Modern', sign: 'vs-dark' },
  'high contrast': { setting: 'Default High Contrast', sign: 'hc-black' },
  'high contrast light': { setting: 'Default High Contrast Light', sign: 'hc-light' },
};

export type Trust = 'trusted' | 'restricted';

const answers: Readonly<Record<Trust, string>> = {
  trusted: 'Yes, I trust the authors',
  restricted: "No, I don't trust the authors",
};

export class EditorWindow {
  readonly #page: Page;
  readonly #folder: string;
  readonly #screenshots: string;

  constructor(page: Page, folder: string, screenshots: string) {
    this.#page = page;
    this.#folder = folder;
    this.#screenshots = screenshots;
    page.setDefaultTimeout(patienceMs);
  }

  /** Opens the editor, says whether the folder's authors are trusted, and makes room for text and picture. */
  async open(address: string, trust: Trust): Promise<void> {
    await this.#page.goto(address);
    await this.#page.locator('.monaco-workbench').waitFor();
    await this.#page.getByRole('button', { name: answers[trust] }).click();
    await this.#page.locator('.monaco-dialog-box').waitFor({ state: 'detached' });
    const sideBar = this.#page.locator('.part.sidebar');
    await sideBar.waitFor();
    await this.#page.keyboard.press('Control+B');
    await sideBar.waitFor({ state: 'hidden' });
  }

  /** Loads the window again, as its own command does; the folder is trusted already. */
  async reload(): Promise<void> {
    const loaded = this.#page.waitForEvent('load');
    await this.runCommand('Developer: Reload Window');
    await loaded;
    await this.#page.locator('.monaco-workbench').waitFor();
  }

  async openFile(name: string): Promise<void> {
    await this.#page.keyboard.press('Control+P');
    await this.#quickInput.fill(name);
    const row = this.#page.locator('.quick-input-list .monaco-list-row').filter({ hasText: name }).first();
    await row.click();
    await this.#page.locator(`.tab.active[data-resource-name="${name}"]`).waitFor();
    await this.#text.locator('.view-line').first().waitFor();
    await this.#focusText();
  }

  /** Runs a command by the title it has in the command palette. */
  async runCommand(title: string): Promise<void> {
    await this.#page.keyboard.press('F1');
    await this.#quickInput.fill(`>${title}`);
    await this.#page.locator('.quick-input-list .monaco-list-row').filter({ hasText: title }).first().click();
    await this.#page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
  }

  /** Installs an extension into the browser, by the editor's own command for those who make one. */
  async installExtensionFrom(location: string): Promise<void> {
    await this.#page.keyboard.press('F1');
    await this.#quickInput.fill('>Developer: Install Extension from Location');
    await this.#page.locator('.quick-input-list .monaco-list-row').first().click();
    const place = this.#page.getByPlaceholder('Location of the web extension');
    await place.fill(location);
    await place.press('Enter');
    await this.#page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
  }

  /** Selects the first place, from the top, where the open text reads so. */
  async select(words: string): Promise<void> {
    await this.#focusText();
    await this.#page.keyboard.press('Control+Home');
    await this.#page.keyboard.press('Control+F');
    const find = this.#text.locator('.find-widget.visible');
    await find.locator('textarea').first().fill(words);
    await find
      .locator('.matchesCount')
      .filter({ hasText: /^1 (of|\/)/ })
      .waitFor();
    await this.#page.keyboard.press('Escape');
    await find.waitFor({ state: 'hidden', timeout: 2_000 }).catch(async () => {
      // The first one closed what was offered while typing.
      await this.#page.keyboard.press('Escape');
      await find.waitFor({ state: 'hidden' });
    });
    await this.#page
      .locator('#status\\.editor\\.selection')
      .filter({ hasText: `(${words.length} selected)` })
      .waitFor();
  }

  /** Puts the caret before the first place where the text reads so, by a key, as a reader does. */
  async placeCaret(words: string): Promise<void> {
    await this.select(words);
    await this.#page.keyboard.press('ArrowLeft');
    await this.#page.locator('#status\\.editor\\.selection').filter({ hasNotText: 'selected' }).waitFor();
  }

  /** Types over the first place where the text reads `words`, key by key. */
  async typeOver(words: string, replacement: string): Promise<void> {
    await this.select(words);
    if (replacement === '') await this.#page.keyboard.press('Delete');
    else await this.#page.keyboard.type(replacement);
    // Completion may have come up; nothing of it was asked for.
    await this.#page.keyboard.press('Escape');
  }

  /** Waits for an error whose words are underlined and whose sentence contains `sentence`; answers the words. */
  async waitForSquiggle(sentence: string): Promise<string> {
    await this.#problem(sentence).first().waitFor();
    return await this.#see('no words are underlined', async () => (await this.squiggles('error'))[0]);
  }

  /** Waits until no words are underlined as wrong and no such finding is listed. */
  async waitForNoSquiggle(sentence: string): Promise<void> {
    await this.#problem(sentence).first().waitFor({ state: 'detached' });
    await this.#see('words are still underlined', async () => {
      const words = await this.squiggles('error');
      return words.length === 0 ? true : undefined;
    });
  }

  /** Every underlined stretch of the open text that is on the screen. */
  async squiggles(severity: Severity): Promise<readonly string[]> {
    return await squiggledWords(this.#page, severity);
  }

  /** What is told of the words when a reader asks for it by key. */
  async hoverOn(words: string): Promise<string> {
    await this.placeCaret(words);
    await this.#page.keyboard.press('Control+K');
    await this.#page.keyboard.press('Control+I');
    const hover = this.#page.locator('.monaco-hover:not(.hidden) .hover-contents').filter({ hasNotText: 'Loading...' });
    await hover.first().waitFor();
    const told = (await hover.allTextContents()).join('\n').replaceAll('\u00a0', ' ');
    await this.#page.keyboard.press('Escape');
    return told;
  }

  /** Names in the outline's trail above the text, from the file down to where the caret stands. */
  async trailAt(words: string, last: string): Promise<readonly string[]> {
    await this.placeCaret(words);
    const trail = this.#page.locator('.editor-group-container .monaco-breadcrumb-item');
    await trail.last().filter({ hasText: last }).waitFor();
    return (await trail.allTextContents()).map((name) => name.trim());
  }

  /** Takes the quick fix offered at the caret whose title contains `title`. */
  async applyQuickFix(title: string): Promise<void> {
    await this.#focusText();
    await this.#page.keyboard.press('Control+.');
    const row = this.#page.locator('.action-widget .monaco-list-row').filter({ hasText: title }).first();
    // VS Code shields the list until the pointer is moved on purpose.
    await row.hover({ force: true });
    await row.click();
    await this.#page.locator('.action-widget').waitFor({ state: 'hidden' });
  }

  /** What is offered at the caret, in its order. */
  async offeredQuickFixes(): Promise<readonly string[]> {
    await this.#focusText();
    await this.#page.keyboard.press('Control+.');
    const rows = this.#page.locator('.action-widget .monaco-list-row.action');
    await rows.first().waitFor();
    const titles = await rows.allInnerTexts();
    await this.#page.keyboard.press('Escape');
    return titles;
  }

  /** Waits until the reader stands in the text with something selected, and copies it. */
  async selectedText(): Promise<string> {
    const selected = this.#page.locator('#status\\.editor\\.selection').filter({ hasText: /\(\d+ selected\)/ });
    await this.#see('the reader does not stand in the text', async () => {
      if (
        await selected.waitFor({ timeout: 5_000 }).then(
          () => true,
          () => false,
        )
      )
        return true;
      // The editor may give the focus back to the page that was clicked; the words stay selected all the same. It may
      // then take the text for focused that is not, so that the focus has to go before it can come.
      await this.#input.blur();
      await this.#page.keyboard.press('Control+1');
      await this.#input.focus();
      return undefined;
    });
    await this.#page.evaluate(() => navigator.clipboard.writeText(''));
    await this.#input.press('Control+C');
    const copied = await this.#see('nothing was copied', async () => {
      const text = await this.#page.evaluate(() => navigator.clipboard.readText());
      return text === '' ? undefined : text;
    });
    return copied.replaceAll('\r\n', '\n');
  }

  /** Saves the open text and answers what then stands on the disk. */
  async savedText(name: string): Promise<string> {
    await this.#focusText();
    await this.#page.keyboard.press('Control+S');
    await this.#page.locator(`.tab.active:not(.dirty)[data-resource-name="${name}"]`).waitFor();
    return readFileSync(join(this.#folder, name), 'utf8');
  }

  /** Answers the editor's question where a file is to be saved: beside the text, under this name. */
  async saveAs(name: string): Promise<string> {
    // The dialog fills in its own proposal some time after it has opened, over whatever was typed before; until then its
    // field, hidden or not, holds what was last written there.
    await this.#quickInput.waitFor();
    await this.#settled('no name is proposed', (proposed) => proposed.endsWith(extname(name)));
    const path = join(this.#folder, name);
    await this.#see('the name does not stay', async () => {
      await this.#quickInput.fill(path);
      return (await this.#settled('the field stays empty', () => true)) === path ? true : undefined;
    });
    await this.#page.keyboard.press('Enter');
    await this.#page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
    return join(this.#folder, name);
  }

  /** Takes back the last step in the open text. */
  async undo(): Promise<void> {
    await this.#focusText();
    await this.#page.keyboard.press('Control+Z');
  }

  async clipboard(): Promise<string> {
    return await this.#page.evaluate(() => navigator.clipboard.readText());
  }

  /** Titles of the open tabs. */
  async tabs(): Promise<readonly string[]> {
    return await this.#page.locator('.tab .label-name').allTextContents();
  }

  /** Settings of the folder. */
  set(settings: Readonly<Record<string, unknown>>): void {
    mkdirSync(join(this.#folder, '.vscode'), { recursive: true });
    writeFileSync(join(this.#folder, '.vscode/settings.json'), JSON.stringify(settings));
  }

  get mouse(): Page['mouse'] {
    return this.#page.mouse;
  }

  /** Opens the picture beside the open text and waits for its page. */
  async showPicture(): Promise<PreviewPage> {
    await this.runCommand('Fettle: Show the Picture Beside the Text');
    return await this.previewPage();
  }

  /** The picture's page, wherever VS Code has put it: it is a frame within a frame. */
  async previewPage(): Promise<PreviewPage> {
    const frame = await this.#see('there is no picture', async () => {
      for (const candidate of this.#page.frames()) {
        // A frame that is just going away cannot be asked.
        const roots = await candidate
          .locator('#fettle-page')
          .count()
          .catch(() => 0);
        if (roots > 0) return candidate;
      }
      return undefined;
    });
    return new PreviewPage(frame);
  }

  async setTheme(theme: Theme): Promise<void> {
    const { setting, sign } = themes[theme];
    mkdirSync(join(this.#folder, '.vscode'), { recursive: true });
    writeFileSync(join(this.#folder, '.vscode/settings.json'), JSON.stringify({ 'workbench.colorTheme': setting }));
    await this.#page.locator(`.monaco-workbench.${sign}`).waitFor();
  }

  /** The verdict in the status bar, once it says something of the sort. */
  async waitForVerdict(words: string | RegExp): Promise<void> {
    await this.#page.locator('.statusbar-item[id*="fettle.verdict"]').filter({ hasText: words }).waitFor();
  }

  /** A picture of the whole window, in a folder that git ignores. */
  async screenshot(name: string): Promise<void> {
    await this.#page.screenshot({ path: join(this.#screenshots, `${name}.png`) });
  }

  get #quickInput(): Locator {
    return this.#page.locator('.quick-input-widget input.input');
  }

  /** The text editor that shows the file of the active tab, or the last one that did. */
  get #text(): Locator {
    return this.#page.locator('.editor-instance .monaco-editor[data-uri]').first();
  }

  /** What takes the keys of the text. */
  get #input(): Locator {
    return this.#text.locator('textarea, .native-edit-context').first();
  }

  async #focusText(): Promise<void> {
    await this.#input.focus();
  }

  /** A row of the list of problems, which is brought up if it is not. */
  #problem(sentence: string): Locator {
    return this.#page.locator('.markers-panel .monaco-list-row').filter({ hasText: sentence });
  }

  /** Brings up the list of problems; the text keeps the focus. */
  async showProblems(): Promise<void> {
    const panel = this.#page.locator('.markers-panel');
    if (!(await panel.isVisible())) await this.runCommand('Problems: Focus on Problems View');
    await panel.waitFor();
    await this.#focusText();
  }

  /** What the field of the dialog holds, once that is as wanted and has been the same for three looks. */
  async #settled(complaint: string, isWanted: (value: string) => boolean): Promise<string> {
    const looks: string[] = [];
    return await this.#see(complaint, async () => {
      looks.push(await this.#quickInput.inputValue());
      const [last, ...before] = looks.slice(-3).reverse();
      const isSettled = before.length === 2 && before.every((each) => each === last);
      return last !== undefined && isSettled && isWanted(last) ? last : undefined;
    });
  }

  /** Looks until `look` answers something. */
  async #see<T>(complaint: string, look: () => Promise<T | undefined>): Promise<T> {
    const limit = Date.now() + patienceMs;
    for (;;) {
      const seen = await look();
      if (seen !== undefined) return seen;
      if (Date.now() > limit) throw new Error(`${complaint} after ${patienceMs / 1000} s`);
      await this.#page.waitForTimeout(lookEveryMs);
    }
  }
}
