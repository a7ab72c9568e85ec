import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { pageHtml } from '@fettle/extension';
import type { FromPage, PageMemory, ToPage } from '@fettle/protocol';
import { build } from 'esbuild';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect } from 'vitest';
import { browserArguments, ensureChromium } from '../editor/set-up/browser.mjs';

/**
 * The picture page in a browser, under the very policy it has in the editor: its html comes from the extension, its
 * script and styles are bundled from the source, and a stand-in for the editor notes what the page sends and keeps.
 */

const preview = join(import.meta.dirname, '../../packages/preview/src');

async function bundle(entry: string): Promise<string> {
  const built = await build({
    entryPoints: [join(preview, entry)],
    bundle: true,
    write: false,
    platform: 'browser',
    format: 'iife',
    target: 'es2022',
    logLevel: 'warning',
  });
  return built.outputFiles[0]?.text ?? '';
}

export class PageOpener {
  readonly #browser: Browser;
  readonly #server: Server;
  readonly #address: string;

  private constructor(browser: Browser, server: Server) {
    this.#browser = browser;
    this.#server = server;
    this.#address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  }

  static async start(): Promise<PageOpener> {
    const [script, styles] = await Promise.all([bundle('page.ts'), bundle('styles.css')]);
    const server = createServer((request, response) => {
      const cspSource = `http://${request.headers.host}`;
      const [type, body] =
        request.url === '/preview.js'
          ? ['text/javascript', script]
          : request.url === '/preview.css'
            ? ['text/css', styles]
            : ['text/html', pageHtml({ cspSource, script: '/preview.js', styles: '/preview.css' })];
      response.writeHead(200, { 'content-type': `${type}; charset=utf-8` }).end(body);
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    const browser = await chromium.launch({ executablePath: ensureChromium(console.log), args: [...browserArguments] });
    return new PageOpener(browser, server);
  }

  async stop(): Promise<void> {
    await this.#browser.close();
    await new Promise((resolve) => this.#server.close(resolve));
  }

  /** A fresh page that remembers `memory`, in the colours of `theme`. */
  async open(memory?: Partial<PageMemory>, theme: Theme = light): Promise<OpenPage> {
    const context = await this.#browser.newContext({ viewport: { width: 900, height: 700 }, reducedMotion: 'reduce' });
    const page = await context.newPage();
    const problems: string[] = [];
    page.on('pageerror', (error) => problems.push(String(error)));
    page.on('console', (message) => {
      if (message.type() === 'error') problems.push(message.text());
    });
    // Runs before the page's own script, and is not subject to its policy.
    await page.addInitScript(
      `(() => {
        window.sent = [];
        window.kept = ${JSON.stringify(memory ?? null)};
        window.acquireVsCodeApi = () => ({
          postMessage: (message) => window.sent.push(message),
          getState: () => window.kept ?? undefined,
          setState: (state) => { window.kept = state; },
        });
        document.addEventListener('DOMContentLoaded', () => {
          for (const [name, value] of Object.entries(${JSON.stringify(theme)})) {
            document.documentElement.style.setProperty('--vscode-' + name, value);
          }
        });
      })()`,
    );
    await page.goto(this.#address);
    return new OpenPage(page, problems);
  }
}

/** One opener for all tests of a file. `open`: the page that the test at hand opened; it is watched and closed. */
export function openerOfFile(open: () => OpenPage): Pick<PageOpener, 'open'> {
  let opener: PageOpener | undefined;
  beforeAll(async () => {
    opener = await PageOpener.start();
  });
  afterAll(async () => {
    await opener?.stop();
  });
  afterEach(async () => {
    // Whatever a test did, the page never failed and never tried what its policy forbids.
    expect(open().problems()).toEqual([]);
    await open().close();
  });
  return {
    open: (memory, theme) => {
      if (opener === undefined) throw new Error('no page can be opened before the tests begin');
      return opener.open(memory, theme);
    },
  };
}

export type Theme = Readonly<Record<string, string>>;

export const light: Theme = {
  'editor-background': '#ffffff',
  'editor-foreground': '#222222',
  focusBorder: '#0066bb',
  'editorError-foreground': '#c01818',
  'editorWarning-foreground': '#8a6100',
  'editorInfo-foreground': '#145c9e',
  'list-inactiveSelectionBackground': '#dfe6ee',
};
export const dark: Theme = {
  'editor-background': '#1d1f21',
  'editor-foreground': '#d6d6d6',
  focusBorder: '#4a9de0',
  'editorError-foreground': '#f47067',
  'editorWarning-foreground': '#d9a441',
  'editorInfo-foreground': '#6cb6ff',
  'list-inactiveSelectionBackground': '#33373b',
};
export const highContrast: Theme = {
  'editor-background': '#000000',
  'editor-foreground': '#ffffff',
  contrastBorder: '#6fc3df',
  contrastActiveBorder: '#f38518',
  focusBorder: '#f38518',
  'editorError-foreground': '#f48771',
  'editorWarning-foreground': '#ffd370',
  'editorInfo-foreground': '#8fd3ff',
};
export const highContrastLight: Theme = {
  'editor-background': '#ffffff',
  'editor-foreground': '#000000',
  contrastBorder: '#0f4a85',
  contrastActiveBorder: '#006bbd',
  focusBorder: '#006bbd',
  'editorError-foreground': '#b5200d',
  'editorWarning-foreground': '#7a4f00',
  'editorInfo-foreground': '#0d4f94',
};

export class OpenPage {
  readonly page: Page;
  readonly #problems: string[];

  constructor(page: Page, problems: string[]) {
    this.page = page;
    this.#problems = problems;
  }

  /** Errors of the page so far, breaches of its policy among them; each is told once. */
  problems(): readonly string[] {
    return this.#problems.splice(0);
  }

  async close(): Promise<void> {
    await this.page.context().close();
  }

  /**
   * From here on no time passes in the page but what `pass` lets pass: for a test of what happens before a pause is
   * over, on a machine that may take longer than the pause.
   */
  async holdTime(): Promise<void> {
    await this.page.clock.install();
    await this.page.clock.pauseAt(Date.now() + 60_000);
  }

  async pass(milliseconds: number): Promise<void> {
    await this.page.clock.runFor(milliseconds);
  }

  /** Hands the page a message as the editor would, and waits until it has been dealt with. */
  async give(message: ToPage | unknown): Promise<void> {
    await this.page.evaluate(
      `new Promise((done) => {
        // Not by a timer: those of the page may stand still.
        const later = new MessageChannel();
        later.port1.onmessage = () => done();
        window.addEventListener('message', () => later.port2.postMessage(''), { once: true });
        window.postMessage(${JSON.stringify(message)}, '*');
      })`,
    );
  }

  async sent(): Promise<readonly FromPage[]> {
    return this.page.evaluate('window.sent');
  }

  async kept(): Promise<PageMemory> {
    return this.page.evaluate('window.kept');
  }
}
