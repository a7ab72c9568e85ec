import {
  type DivisionAnswer,
  type FrameState,
  type FromPage,
  frameOf,
  type MoveDivision,
  type PageMemory,
  type Picture,
  type PictureFrame,
  readFromPage,
  type TextSpan,
  type ToPage,
} from '@fettle/protocol';
import * as vscode from 'vscode';
import { KeptPicture } from './kept-picture.ts';
import { pageHtml } from './page-html.ts';
import { PngFromPage } from './png-from-page.ts';
import { tabSeparated } from './tab-separated.ts';
import { changeText, selectWords } from './words-in-editor.ts';

/** One panel: carries pictures and the caret of one document to its page, and what is done there back to the text. */

/** What a panel needs of the world around it. */
export interface PanelHost {
  /** Where a line of the picture would go. */
  askDivision(move: MoveDivision): Promise<DivisionAnswer>;
  exportSheet(
    panel: PreviewPanel,
    what: { readonly piece: string; readonly sheet: string; readonly format: 'svg' | 'csv' | 'png' },
  ): void;
  stopPlanning(panel: PreviewPanel, piece: string): void;
  /** The server must be told anew what this panel looks at; `afresh`: and send everything once more. */
  looks(panel: PreviewPanel, afresh: boolean): void;
}

export interface Looking {
  readonly piece: string;
  readonly sheet: string;
}

export class PreviewPanel {
  readonly #panel: vscode.WebviewPanel;
  readonly #host: PanelHost;
  readonly #png: PngFromPage;
  #uri: vscode.Uri;
  #only: string;
  #kept = new KeptPicture();
  #looking: Looking = { piece: '', sheet: '' };
  /** The piece that was asked for and of which the page has not heard. */
  #wished = '';
  /** The page has loaded and listens. Loading starts over each time the panel comes out of hiding. */
  #ready = false;
  #loading: (() => void)[] = [];
  /** What the page was sent last. */
  #onPage: FrameState | undefined;
  #anew = true;
  #served = true;
  #lit = '';
  /** What a choice in the page last selected in the text. */
  #selected: TextSpan | undefined;
  /** The latest question about a line: earlier answers are not waited for. */
  #moves = 0;

  /** `only`: the piece the panel belongs to, by key; empty for all of its document. */
  constructor(panel: vscode.WebviewPanel, uri: vscode.Uri, only: string, extensionUri: vscode.Uri, host: PanelHost) {
    this.#panel = panel;
    this.#uri = uri;
    this.#only = only;
    this.#host = host;
    this.#png = new PngFromPage((message) => this.#send(message));
    this.#looking = { piece: only, sheet: '' };
    const dist = vscode.Uri.joinPath(extensionUri, 'dist');
    panel.webview.options = { enableScripts: true, localResourceRoots: [dist] };
    panel.webview.onDidReceiveMessage((message: unknown) => this.#hear(message));
    panel.onDidChangeViewState(() => {
      if (!panel.visible) this.#ready = false;
    });
    panel.onDidDispose(() => this.#png.giveUp());
    panel.title = this.#title();
    panel.webview.html = pageHtml({
      cspSource: panel.webview.cspSource,
      script: panel.webview.asWebviewUri(vscode.Uri.joinPath(dist, 'preview.js')).toString(),
      styles: panel.webview.asWebviewUri(vscode.Uri.joinPath(dist, 'preview.css')).toString(),
    });
  }

  get uri(): vscode.Uri {
    return this.#uri;
  }

  /** Key of the piece it belongs to; empty for all of its document. */
  get only(): string {
    return this.#only;
  }

  get visible(): boolean {
    return this.#panel.visible;
  }

  get active(): boolean {
    return this.#panel.active;
  }

  get looking(): Looking {
    return this.#looking;
  }

  /** What is shown, for commands and tests that ask. */
  get shown(): Picture | undefined {
    return this.#kept.shown;
  }

  onDidChange(listener: () => void): vscode.Disposable {
    return this.#panel.onDidChangeViewState(listener);
  }

  onDidDispose(listener: () => void): vscode.Disposable {
    return this.#panel.onDidDispose(listener);
  }

  reveal(): void {
    this.#panel.reveal(undefined, true);
  }

  dispose(): void {
    this.#panel.dispose();
  }

  /** What the page kept over a reload: where it was, and the last good picture for a text that is broken just now. */
  startFrom(memory: PageMemory): void {
    this.#looking = { piece: memory.piece, sheet: memory.sheet };
    if (memory.last !== undefined) this.#kept.startFrom(this.#uri.toString(), memory.last);
  }

  /** Shows this piece of its document, by key, from now on. */
  showPiece(piece: string): void {
    this.#looking = { ...this.#looking, piece };
    this.#wished = piece;
    this.#sendWish();
  }

  /** A page that does not listen yet hears of it when it does. */
  #sendWish(): void {
    if (this.#wished === '' || !this.#ready || !this.#panel.visible) return;
    this.#send({ kind: 'piece', piece: this.#wished });
    this.#wished = '';
  }

  /** Shows another document from now on. */
  showInstead(uri: vscode.Uri): void {
    this.#uri = uri;
    this.#kept = new KeptPicture();
    this.#looking = { piece: '', sheet: this.#looking.sheet };
    this.#lit = '';
    this.#selected = undefined;
    this.#panel.title = this.#title();
  }

  /** A frame from the server; one that is older than what is kept is dropped. */
  receive(frame: PictureFrame): void {
    const uri = this.#uri.toString();
    const text = vscode.workspace.textDocuments.find((document) => document.uri.toString() === uri);
    const received = this.#kept.receive(frame, text?.version);
    switch (received.kind) {
      case 'taken':
        this.#anew ||= received.anew;
        this.#followRename();
        this.serverRuns(true);
        this.#sendPicture();
        return;
      case 'dropped':
        return;
      case 'lost':
        this.#host.looks(this, true);
        return;
      default:
        received satisfies never;
    }
  }

  /** Without a server the picture stays, and says that it does. */
  serverRuns(running: boolean): void {
    if (this.#served === running) return;
    this.#served = running;
    this.#send({ kind: 'server', running });
  }

  edited(event: vscode.TextDocumentChangeEvent): void {
    const edits = event.contentChanges.map((change) => ({
      start: change.rangeOffset,
      removed: change.rangeLength,
      inserted: change.text.length,
    }));
    this.#kept.edited(event.document.version, edits);
    this.#send({ kind: 'edited', uri: this.#uri.toString(), version: event.document.version });
  }

  countAnew(): void {
    this.#kept.countAnew();
  }

  /** Whether this is the selection that a choice in the page brought about; the reader made it there, not in the text. */
  selected(selection: TextSpan): boolean {
    return selection.start === this.#selected?.start && selection.end === this.#selected.end;
  }

  /** The caret was moved on purpose to `offset`; the page hears of it when it stands in other parts than before. */
  caretAt(offset: number): void {
    const { piece, parts } = this.#kept.partsAt(offset);
    const lit = JSON.stringify([piece, parts]);
    const picture = this.#kept.shown;
    if (lit === this.#lit || picture === undefined) return;
    this.#lit = lit;
    this.#send({ kind: 'caret', uri: picture.uri, version: picture.version, piece, parts });
  }

  /** Something for the reader of the page, in words. Answers whether there is one: else it must be told elsewhere. */
  tell(sentence: string): boolean {
    return this.#send({ kind: 'told', sentence });
  }

  /** The table shown, for the clipboard; undefined where no table is shown. */
  tableShown(): string | undefined {
    const pieces = this.#kept.shown?.pieces ?? [];
    const piece = pieces.find(({ key }) => key === this.#looking.piece) ?? pieces[0];
    const table = piece?.sheets.find((sheet) => sheet.kind === 'table' && sheet.id === this.#looking.sheet);
    return table?.kind === 'table' ? tabSeparated(table) : undefined;
  }

  /** Settles once the page listens; rejects when it does not within ten seconds. */
  loaded(): Promise<void> {
    if (this.#ready) return Promise.resolve();
    return new Promise((resolve, reject) => {
      const timer = setTimeout(() => reject(new Error('the picture did not open')), 10_000);
      this.#loading.push(() => {
        clearTimeout(timer);
        resolve();
      });
    });
  }

  /** The drawing as a PNG, rendered in the page, which must be on the screen. Rejects when it cannot be. */
  drawPng(svg: string, width: number, token: vscode.CancellationToken): Promise<Uint8Array> {
    if (!this.#ready || !this.#panel.visible) {
      return Promise.reject(new Error('the picture must be on the screen to be drawn as PNG'));
    }
    return this.#png.draw(svg, width, token);
  }

  #title(): string {
    const file = this.#uri.path.split('/').at(-1) ?? '';
    return this.#only === '' ? `Picture of ${file}` : `Picture of ${this.#only}`;
  }

  /** The piece the panel belongs to has another name now: it is the one that stands where the old one stood. */
  #followRename(): void {
    const pieces = this.#kept.shown?.pieces ?? [];
    if (this.#only === '' || pieces.length === 0) return;
    const before = this.#onPage?.picture.pieces ?? [];
    if (pieces.some(({ key }) => key === this.#only)) return;
    const place = before.findIndex(({ key }) => key === this.#only);
    const now = pieces.length === before.length ? pieces[place] : undefined;
    if (now === undefined) return;
    this.#only = now.key;
    this.#looking = { ...this.#looking, piece: now.key };
    this.#panel.title = this.#title();
    this.#host.looks(this, false);
  }

  #sendPicture(): void {
    const picture = this.#kept.shown;
    if (picture === undefined || !this.#ready || !this.#panel.visible) return;
    const frame = frameOf(picture, this.#onPage);
    this.#onPage = { frame: frame.frame, picture };
    this.#send({ kind: 'picture', frame, anew: this.#anew, only: this.#only });
    this.#anew = false;
    this.#sendWish();
  }

  /** A hidden page receives nothing; it asks for everything when it is shown again. */
  #send(message: ToPage): boolean {
    if (!this.#ready || !this.#panel.visible) return false;
    void this.#panel.webview.postMessage(message);
    return true;
  }

  #hear(received: unknown): void {
    const message = readFromPage(received);
    switch (message?.kind) {
      case undefined:
        return;
      case 'ready':
        this.#ready = true;
        this.#lit = '';
        this.#onPage = undefined;
        this.#anew = true;
        this.#sendPicture();
        if (!this.#served) this.#send({ kind: 'server', running: false });
        for (const listener of this.#loading.splice(0)) listener();
        return;
      case 'choose':
      case 'choose-finding': {
        const words = this.#kept.wordsOf(message);
        // What was chosen in the page is lit there; the next deliberate caret must not be taken for no news.
        this.#lit = '';
        if (words === undefined) {
          this.tell('The text has changed meanwhile: try again');
          return;
        }
        this.#selected = words;
        void selectWords(this.#uri, words);
        return;
      }
      case 'look':
        if (message.uri !== this.#uri.toString()) return;
        if (message.piece === this.#looking.piece && message.sheet === this.#looking.sheet) return;
        this.#looking = { piece: message.piece, sheet: message.sheet };
        this.#host.looks(this, false);
        return;
      case 'move-division':
        void this.#moveDivision(message);
        return;
      case 'copy-table':
        void this.#copyTable(message);
        return;
      case 'export': {
        const piece = this.#kept.pieceOf(message);
        if (piece === undefined) this.tell('The text has changed meanwhile: try again');
        else this.#host.exportSheet(this, { piece: piece.key, sheet: message.sheet, format: message.format });
        return;
      }
      case 'stop-planning': {
        const piece = this.#kept.pieceOf(message);
        if (piece !== undefined) this.#host.stopPlanning(this, piece.key);
        return;
      }
      case 'png':
      case 'png-failed':
        this.#png.receive(message);
        return;
      default:
        message satisfies never;
    }
  }

  async #copyTable(message: Extract<FromPage, { kind: 'copy-table' }>): Promise<void> {
    const table = this.#kept.pieceOf(message)?.sheets.find((sheet) => sheet.id === message.sheet);
    if (table?.kind !== 'table') return;
    await vscode.env.clipboard.writeText(tabSeparated(table));
    this.tell(`The ${table.title.toLowerCase()} is on the clipboard, ${table.rows.length} rows`);
  }

  async #moveDivision(message: Extract<FromPage, { kind: 'move-division' }>): Promise<void> {
    const { uri, version, division, steps, drop } = message;
    const turn = ++this.#moves;
    const piece = this.#kept.pieceOf(message);
    const say = (sentence: string, refused: boolean): void => {
      this.#send({ kind: 'division', uri, division, steps, sentence, refused, done: drop });
    };
    if (piece === undefined) return say('The text has changed meanwhile: try again', true);
    const answer = await this.#host
      .askDivision({ uri, version, piece: piece.key, division, steps })
      .catch((): DivisionAnswer => ({ kind: 'refused', sentence: 'The language server does not answer' }));
    // While the line is being moved, only what is known of its latest place is of interest.
    if (!drop && turn !== this.#moves) return;
    switch (answer.kind) {
      case 'stale':
        return say('The text has changed meanwhile: try again', true);
      case 'refused':
        return say(answer.sentence, true);
      case 'edits': {
        const changed = !drop || (await changeText(this.#uri, version, answer.edits));
        return say(changed ? answer.sentence : 'The text could not be changed', !changed);
      }
      default:
        return answer satisfies never;
    }
  }
}
