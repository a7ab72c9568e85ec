/**
 * One running editor for a file of tests: the set-up from the cache, the packaged extension, a browser, and a fresh
 * state that goes away with it. Each test opens a window of its own on a folder of its own.
 */
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { EditorWindow, type Trust } from './editor-window.ts';
import { browserArguments, ensureChromium } from './set-up/browser.mjs';
import { setUpRealEditor } from './set-up/real-editor.mjs';
import { type RunningEditor, startEditor, unpackExtension } from './set-up/running-editor.mjs';
import { serveExtension } from './web-extension.ts';

const repository = new URL('../../', import.meta.url).pathname;
const extensionPackage = join(repository, 'out/fettle.vsix');
const screenshots = join(repository, 'out/screenshots');

/** On top of the steady ones: nothing on the screen that is not asked for, and copying means copying what is selected. */
const testSettings = {
  'editor.emptySelectionClipboard': false,
  'workbench.layoutControl.enabled': false,
  'window.commandCenter': false,
};

/** A test runner that is killed leaves its worker running; ending it ends the editor and the browser too. */
function endWithTheRunner(): void {
  process.exit(1);
}

/**
 * Where the extension lives: on the machine behind the editor, with a language server of its own process, or in the
 * browser, where its web entry runs in a worker and so does the language server.
 */
export type Home = 'machine' | 'browser';

export class RealEditorServer {
  readonly #editor: RunningEditor;
  readonly #browser: Browser;
  readonly #state: string;
  readonly #webExtension: string | undefined;
  #folders = 0;

  private constructor(editor: RunningEditor, browser: Browser, state: string, webExtension: string | undefined) {
    this.#editor = editor;
    this.#browser = browser;
    this.#state = state;
    this.#webExtension = webExtension;
  }

  /** Throws with one line when something is missing; leaves nothing running then. */
  static async start(home: Home = 'machine'): Promise<RealEditorServer> {
    if (!existsSync(extensionPackage)) throw new Error('out/fettle.vsix is not there: run npm run package first');
    const say = (line: string) => console.log(line);
    const serverMain = await setUpRealEditor(say);
    const executablePath = ensureChromium(say);
    const stateFolder = mkdtempSync(join(tmpdir(), 'fettle-editor-'));
    let editor: RunningEditor | undefined;
    try {
      const wanted = { serverMain, stateFolder, extensionPackage };
      const webExtension = home === 'browser' ? await unpackExtension(wanted) : undefined;
      const installed = home === 'machine' ? { extensionPackage } : {};
      editor = await startEditor({ serverMain, stateFolder, settings: testSettings, ...installed });
      const browser = await chromium.launch({ executablePath, args: [...browserArguments] });
      process.once('disconnect', endWithTheRunner);
      return new RealEditorServer(editor, browser, stateFolder, webExtension);
    } catch (error) {
      editor?.stop();
      rmSync(stateFolder, { recursive: true, force: true });
      throw error;
    }
  }

  /**
   * A window on a fresh folder that holds copies of the examples, or nothing. The window is closed when `story` ends,
   * however it ends; when it fails, what was on the screen is kept as a picture named after it.
   */
  async inWindow(
    name: string,
    story: (window: EditorWindow, page: Page, folder: string) => Promise<void>,
    trust: Trust = 'trusted',
    holding: 'examples' | 'nothing' = 'examples',
  ): Promise<void> {
    const folder = join(this.#state, `folder-${++this.#folders}`);
    mkdirSync(folder);
    if (holding === 'examples') cpSync(join(repository, 'examples'), folder, { recursive: true });
    mkdirSync(screenshots, { recursive: true });
    const context = await this.#browser.newContext({
      viewport: { width: 1600, height: 1000 },
      permissions: ['clipboard-read', 'clipboard-write'],
      reducedMotion: 'reduce',
    });
    try {
      const page = await context.newPage();
      const window = new EditorWindow(page, folder, screenshots);
      try {
        const address = this.#editor.addressOf(folder);
        const web = this.#webExtension;
        const location = web === undefined ? undefined : await serveExtension(context, new URL(address).origin, web);
        await window.open(address, trust);
        if (location !== undefined) await window.installExtensionFrom(location);
        await story(window, page, folder);
      } catch (error) {
        await window.screenshot(`failed-${name}`).catch(() => {});
        throw error;
      }
    } finally {
      await context.close();
    }
  }

  /** Ends the language servers of this editor's own copy of the extension, as a crash would. */
  killLanguageServers(): void {
    for (const id of readdirSync('/proc').filter((name) => /^\d+$/.test(name))) {
      const words = commandLine(id);
      if (words.some((word) => word.startsWith(this.#state) && word.endsWith('dist/server.js'))) {
        process.kill(Number(id), 'SIGKILL');
      }
    }
  }

  async stop(): Promise<void> {
    process.off('disconnect', endWithTheRunner);
    try {
      await this.#browser.close();
    } finally {
      this.#editor.stop();
      rmSync(this.#state, { recursive: true, force: true, maxRetries: 5 });
    }
  }
}

/** Empty for a process that is gone, or not ours to ask. */
function commandLine(id: string): readonly string[] {
  try {
    return readFileSync(`/proc/${id}/cmdline`, 'utf8').split('\0');
  } catch {
    return [];
  }
}
