import { type Picture, readFromPage, type TextSpan, type ToPage } from '@fettle/protocol';
import * as vscode from 'vscode';
import { KeptPicture } from './kept-picture.ts';
import { pageHtml } from './page-html.ts';

/** One panel beside one document: carries pictures and the caret to its page, and choices made there back to the text. */
export class PreviewPanel {
  readonly uri: vscode.Uri;
  readonly #panel: vscode.WebviewPanel;
  readonly #kept = new KeptPicture();
  /** The page has loaded and listens. Loading starts over each time the panel comes out of hiding. */
  #ready = false;
  #lit = '';
  /** What a choice in the page last selected in the text. */
  #selected: TextSpan | undefined;

  constructor(panel: vscode.WebviewPanel, uri: vscode.Uri, extensionUri: vscode.Uri) {
    this.uri = uri;
    this.#panel = panel;
    const dist = vscode.Uri.joinPath(extensionUri, 'dist');
    panel.webview.options = { enableScripts: true, localResourceRoots: [dist] };
    panel.webview.onDidReceiveMessage((message: unknown) => this.#hear(message));
    panel.onDidChangeViewState(() => {
      if (!panel.visible) this.#ready = false;
    });
    panel.webview.html = pageHtml({
      cspSource: panel.webview.cspSource,
      script: panel.webview.asWebviewUri(vscode.Uri.joinPath(dist, 'preview.js')).toString(),
      styles: panel.webview.asWebviewUri(vscode.Uri.joinPath(dist, 'preview.css')).toString(),
    });
  }

  get visible(): boolean {
    return this.#panel.visible;
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

  /** A picture from the server; one that is older than what is kept is dropped. */
  receive(picture: Picture): void {
    const uri = this.uri.toString();
    const text = vscode.workspace.textDocuments.find((document) => document.uri.toString() === uri);
    const taken = this.#kept.receive(picture, text?.version);
    if (taken !== undefined) this.#sendPicture(taken.anew);
  }

  edited(event: vscode.TextDocumentChangeEvent): void {
    const edits = event.contentChanges.map((change) => ({
      start: change.rangeOffset,
      removed: change.rangeLength,
      inserted: change.text.length,
    }));
    this.#kept.edited(event.document.version, edits);
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

  #sendPicture(anew: boolean): void {
    const picture = this.#kept.shown;
    if (picture !== undefined) this.#send({ kind: 'picture', picture, anew });
  }

  /** A hidden page receives nothing; it asks for everything when it is shown again. */
  #send(message: ToPage): void {
    if (this.#ready && this.#panel.visible) void this.#panel.webview.postMessage(message);
  }

  #hear(received: unknown): void {
    const message = readFromPage(received);
    switch (message?.kind) {
      case undefined:
        return;
      case 'ready':
        this.#ready = true;
        this.#lit = '';
        this.#sendPicture(true);
        return;
      case 'choose':
      case 'choose-finding': {
        const words = this.#kept.wordsOf(message);
        // What was chosen in the page is lit there; the next deliberate caret must not be taken for no news.
        this.#lit = '';
        if (words !== undefined) void this.#select(words);
        return;
      }
      default:
        message satisfies never;
    }
  }

  /** Shows the words in the text's own editor, where one is open, and puts the reader there. */
  async #select(words: TextSpan): Promise<void> {
    this.#selected = words;
    const document = await vscode.workspace.openTextDocument(this.uri);
    const open = vscode.window.visibleTextEditors.find((editor) => editor.document === document);
    const selection = new vscode.Range(document.positionAt(words.start), document.positionAt(words.end));
    const editor = await vscode.window.showTextDocument(document, {
      viewColumn: open?.viewColumn ?? vscode.ViewColumn.One,
      selection,
    });
    editor.revealRange(selection, vscode.TextEditorRevealType.InCenterIfOutsideViewport);
  }
}
