/**
 * VS Code for the web, served as static files, with two extensions beside it: ours, exactly the files that are shipped,
 * and one that holds a folder in memory. Nothing runs behind it but this server of files; the language server is a worker
 * in the browser and every file it reads comes through the editor.
 */
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join, normalize, sep } from 'node:path';
import { listFiles, PackageManager } from '@vscode/vsce';
import { type BrowserContext, chromium } from 'playwright-core';
import { EditorWindow } from '../editor-window.ts';
import { browserArguments, ensureChromium } from '../set-up/browser.mjs';
import { setUpWebEditor } from '../set-up/web-editor.mjs';

const repository = new URL('../../../', import.meta.url).pathname;
const screenshots = join(repository, 'out/screenshots');
const virtualFolder = join(import.meta.dirname, 'virtual-folder');

const kinds: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.cjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ttf': 'font/ttf',
  '.wasm': 'application/wasm',
};

const settings = {
  'workbench.startupEditor': 'none',
  'workbench.reduceMotion': 'on',
  'telemetry.telemetryLevel': 'off',
  'editor.minimap.enabled': false,
  'editor.emptySelectionClipboard': false,
  'window.commandCenter': false,
  'workbench.layoutControl.enabled': false,
  'workbench.tips.enabled': false,
  'workbench.colorTheme': 'Default Light Modern',
};

export class WebEditorServer {
  readonly #server: Server;
  readonly #state: string;
  readonly #executablePath: string;
  #windows = 0;

  private constructor(server: Server, state: string, executablePath: string) {
    this.#server = server;
    this.#state = state;
    this.#executablePath = executablePath;
  }

  /** Throws with one line when something is missing. */
  static async start(): Promise<WebEditorServer> {
    const say = (line: string) => console.log(line);
    const editor = setUpWebEditor(say);
    const executablePath = ensureChromium(say);
    if (!existsSync(join(repository, 'dist/extension-web.js'))) {
      throw new Error('dist/extension-web.js is not there: run npm run package first');
    }
    const shipped = new Set(await listFiles({ cwd: repository, packageManager: PackageManager.None }));
    const server = createServer((request, response) => {
      const { port } = server.address() as AddressInfo;
      const found = answerTo(new URL(request.url ?? '/', `http://localhost:${port}`), port, editor, shipped);
      response.writeHead(found === undefined ? 404 : 200, {
        'content-type': found?.kind ?? 'text/plain',
        // Pages of a webview have origins of their own.
        'access-control-allow-origin': '*',
        'cache-control': 'no-store',
      });
      response.end(found?.content ?? '');
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    return new WebEditorServer(server, mkdtempSync(join(tmpdir(), 'fettle-web-editor-')), executablePath);
  }

  /**
   * A window on the folder in memory, with one of its files open. It is closed when `story` ends, however it ends; when it fails, what was on the
   * screen is kept as a picture named after it.
   */
  async inWindow(name: string, file: string, story: (window: EditorWindow) => Promise<void>): Promise<void> {
    mkdirSync(screenshots, { recursive: true });
    const context = await this.#browser();
    try {
      const page = await context.newPage();
      const window = new EditorWindow(page, this.#state, screenshots);
      try {
        await page.goto(`http://localhost:${(this.#server.address() as AddressInfo).port}/`);
        await page.locator('.monaco-workbench').waitFor();
        const sideBar = page.locator('.part.sidebar');
        await sideBar.waitFor();
        // The folder shows its files once the extension that holds it has been loaded. Files are not searched for in
        // such a folder, so the reader opens one by pointing at it.
        const row = page.locator('.explorer-folders-view .monaco-list-row').filter({ hasText: file });
        await row.first().dblclick();
        await page.locator(`.tab.active[data-resource-name="${file}"]`).waitFor();
        await page.keyboard.press('Control+B');
        await sideBar.waitFor({ state: 'hidden' });
        await story(window);
      } catch (error) {
        await window.screenshot(`failed-${name}`).catch(() => {});
        throw error;
      }
    } finally {
      await context.close();
    }
  }

  /** The pages of webviews are served by service workers, which a browser only allows them when told so beforehand. */
  async #browser(): Promise<BrowserContext> {
    const profile = join(this.#state, `profile-${++this.#windows}`);
    mkdirSync(join(profile, 'Default'), { recursive: true });
    const preferences = { profile: { cookie_controls_mode: 0, block_third_party_cookies: false } };
    writeFileSync(join(profile, 'Default/Preferences'), JSON.stringify(preferences));
    const hosts = '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE localhost, EXCLUDE *.localhost';
    return await chromium.launchPersistentContext(profile, {
      executablePath: this.#executablePath,
      args: [
        ...browserArguments.filter((each) => !each.startsWith('--host-resolver-rules')),
        hosts,
        '--disable-features=TrackingProtection3pcd,ThirdPartyStoragePartitioning',
      ],
      viewport: { width: 1600, height: 1000 },
      permissions: ['clipboard-read', 'clipboard-write'],
      reducedMotion: 'reduce',
    });
  }

  async stop(): Promise<void> {
    this.#server.closeAllConnections();
    await new Promise((resolve) => this.#server.close(resolve));
    rmSync(this.#state, { recursive: true, force: true, maxRetries: 5 });
  }
}

interface Found {
  readonly kind: string;
  readonly content: string | Uint8Array;
}

function answerTo(url: URL, port: number, editor: string, shipped: ReadonlySet<string>): Found | undefined {
  const path = decodeURIComponent(url.pathname);
  if (path === '/') return { kind: kinds['.html'] ?? '', content: workbenchPage(editor) };
  if (path === '/product.json') return json(product(port));
  if (path === '/folder/files.json') return json(examples());
  if (path.startsWith('/folder/')) return fileIn(virtualFolder, path.slice('/folder/'.length));
  if (path.startsWith('/static/')) return fileIn(editor, path.slice('/static/'.length));
  const ours = path.startsWith('/ext/') ? path.slice('/ext/'.length) : '';
  return shipped.has(ours) ? fileIn(repository, ours) : undefined;
}

function workbenchPage(editor: string): string {
  return readFileSync(join(editor, 'out/vs/code/browser/workbench/workbench.html'), 'utf8')
    .replaceAll('{{WORKBENCH_WEB_BASE_URL}}', '/static')
    .replaceAll('{{WORKBENCH_NLS_BASE_URL}}', '')
    .replaceAll('{{WORKBENCH_WEB_CONFIGURATION}}', '{}')
    .replaceAll('{{WORKBENCH_AUTH_SESSION}}', '');
}

function product(port: number) {
  const authority = `localhost:${port}`;
  const extension = (path: string) => ({ scheme: 'http', authority, path });
  return {
    productConfiguration: {
      nameShort: 'Web Editor',
      nameLong: 'Web Editor',
      applicationName: 'web-editor',
      dataFolderName: '.web-editor',
      version: '1.91.1',
      webviewContentExternalBaseUrlTemplate: `http://{{uuid}}.${authority}/static/out/vs/workbench/contrib/webview/browser/pre/`,
    },
    webviewEndpoint: undefined,
    additionalBuiltinExtensions: [extension('/folder'), extension('/ext')],
    folderUri: { scheme: 'workshop', path: '/' },
    configurationDefaults: settings,
  };
}

function examples(): Readonly<Record<string, string>> {
  const folder = join(repository, 'examples');
  return Object.fromEntries(
    readdirSync(folder)
      .filter((name) => name.endsWith('.fettle'))
      .map((name) => [name, readFileSync(join(folder, name), 'utf8')]),
  );
}

function json(value: unknown): Found {
  return { kind: kinds['.json'] ?? '', content: JSON.stringify(value) };
}

function fileIn(folder: string, path: string): Found | undefined {
  const file = normalize(join(folder, path));
  if (!file.startsWith(folder.endsWith(sep) ? folder : folder + sep)) return undefined;
  if (!existsSync(file) || !statSync(file).isFile()) return undefined;
  return { kind: kinds[extname(file)] ?? 'application/octet-stream', content: readFileSync(file) };
}
