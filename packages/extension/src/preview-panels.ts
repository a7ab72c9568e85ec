import type { Picture } from '@fettle/protocol';
import { readPageMemory } from '@fettle/protocol';
import * as vscode from 'vscode';
import { PreviewPanel } from './preview-panel.ts';

/** All open panels, one a document: who wants pictures, who gets which, and what the caret does. */

export const panelType = 'fettle.picture';
/** How soon after an edit a caret move counts as part of typing, in milliseconds. */
const typing = 100;
/** At most one caret message in this time, in milliseconds. */
const caretPace = 50;

export class PreviewPanels implements vscode.Disposable, vscode.WebviewPanelSerializer<unknown> {
  readonly #extensionUri: vscode.Uri;
  readonly #watch: (uris: readonly string[]) => void;
  readonly #panels = new Map<string, PreviewPanel>();
  readonly #listeners: vscode.Disposable;
  readonly #editedAt = new Map<string, number>();
  #caretTimer: ReturnType<typeof setTimeout> | undefined;

  /** `watch` tells the server which documents want pictures now. */
  constructor(extensionUri: vscode.Uri, watch: (uris: readonly string[]) => void) {
    this.#extensionUri = extensionUri;
    this.#watch = watch;
    this.#listeners = vscode.Disposable.from(
      vscode.window.registerWebviewPanelSerializer(panelType, this),
      vscode.workspace.onDidChangeTextDocument((event) => this.#onEdit(event)),
      vscode.workspace.onDidOpenTextDocument((document) => this.#panels.get(document.uri.toString())?.countAnew()),
      vscode.workspace.onDidCloseTextDocument((document) => this.#onClose(document)),
      vscode.window.onDidChangeTextEditorSelection((event) => this.#onSelection(event)),
    );
  }

  dispose(): void {
    clearTimeout(this.#caretTimer);
    this.#listeners.dispose();
    for (const panel of [...this.#panels.values()]) panel.dispose();
  }

  show(uri: vscode.Uri): void {
    const open = this.#panels.get(uri.toString());
    if (open !== undefined) {
      open.reveal();
      return;
    }
    const title = `Picture of ${uri.path.split('/').at(-1)}`;
    const column = { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true };
    this.#adopt(vscode.window.createWebviewPanel(panelType, title, column), uri);
  }

  /** After a reload: the page kept the name of its document. */
  async deserializeWebviewPanel(panel: vscode.WebviewPanel, state: unknown): Promise<void> {
    const { uri } = readPageMemory(state);
    if (uri === '' || this.#panels.has(uri)) panel.dispose();
    else this.#adopt(panel, vscode.Uri.parse(uri));
  }

  receive(picture: Picture): void {
    this.#panels.get(vscode.Uri.parse(picture.uri).toString())?.receive(picture);
  }

  shown(uri: vscode.Uri): Picture | undefined {
    return this.#panels.get(uri.toString())?.shown;
  }

  /** Tells the server again what is wanted, as after its restart. */
  watchVisible(): void {
    this.#watch([...this.#panels.values()].filter((panel) => panel.visible).map((panel) => panel.uri.toString()));
  }

  #adopt(webviewPanel: vscode.WebviewPanel, uri: vscode.Uri): void {
    const panel = new PreviewPanel(webviewPanel, uri, this.#extensionUri);
    this.#panels.set(uri.toString(), panel);
    panel.onDidChange(() => this.watchVisible());
    panel.onDidDispose(() => {
      this.#panels.delete(uri.toString());
      this.watchVisible();
    });
    this.watchVisible();
    // A text that lies in no open folder is known to the server only while it is open; a missing one shows as such.
    vscode.workspace.openTextDocument(uri).then(undefined, () => undefined);
  }

  #onEdit(event: vscode.TextDocumentChangeEvent): void {
    const uri = event.document.uri.toString();
    const panel = this.#panels.get(uri);
    if (panel === undefined || event.contentChanges.length === 0) return;
    this.#editedAt.set(uri, Date.now());
    panel.edited(event);
  }

  #onClose(document: vscode.TextDocument): void {
    const uri = document.uri.toString();
    this.#editedAt.delete(uri);
    this.#panels.get(uri)?.countAnew();
  }

  /**
   * Only a single caret that the reader moved counts: not one that follows an edit, which is typing, and not the
   * selection that a choice in the page brought about. So picture and text never chase each other. Jumps by command
   * (to a problem, to a definition) are the reader's own too.
   */
  #onSelection(event: vscode.TextEditorSelectionChangeEvent): void {
    const { document, selection } = event.textEditor;
    const uri = document.uri.toString();
    const panel = this.#panels.get(uri);
    if (panel === undefined || event.selections.length !== 1) return;
    if (Date.now() - (this.#editedAt.get(uri) ?? 0) < typing) return;
    const byHand =
      event.kind === vscode.TextEditorSelectionChangeKind.Keyboard ||
      event.kind === vscode.TextEditorSelectionChangeKind.Mouse;
    const words = { start: document.offsetAt(selection.start), end: document.offsetAt(selection.end) };
    clearTimeout(this.#caretTimer);
    if (!byHand && panel.selected(words)) return;
    this.#caretTimer = setTimeout(() => panel.caretAt(document.offsetAt(event.textEditor.selection.active)), caretPace);
  }
}
