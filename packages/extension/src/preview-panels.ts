import {
  type DivisionAnswer,
  type MoveDivision,
  type Picture,
  type PictureFrame,
  readPageMemory,
  type WatchedPicture,
} from '@fettle/protocol';
import * as vscode from 'vscode';
import { PreviewPanel } from './preview-panel.ts';

/** All open panels: who wants which pictures, who gets which, what the caret does, and which document a panel follows. */

export const panelType = 'fettle.picture';
/** How soon after an edit a caret move counts as part of typing, in milliseconds. */
const typing = 100;
/** At most one caret message in this time, in milliseconds. */
const caretPace = 50;

/** What the panels need of the server and of the commands. */
export interface PanelsHost {
  /** Tells the server which documents want pictures now. */
  watch(pictures: readonly WatchedPicture[]): void;
  askDivision(move: MoveDivision): Promise<DivisionAnswer>;
  pieceAt(uri: vscode.Uri, offset: number): Promise<string>;
  stopPlanning(uri: vscode.Uri, piece: string): void;
  exportSheet(
    panel: PreviewPanel,
    what: { readonly piece: string; readonly sheet: string; readonly format: 'svg' | 'csv' | 'png' },
  ): void;
}

/** `activeEditor`: one panel, of whatever text is worked on. `pinned`: a panel for each piece that was asked for. */
export type Follow = 'activeEditor' | 'pinned';

function followSetting(uri?: vscode.Uri): Follow {
  const value = vscode.workspace.getConfiguration('fettle.picture', uri ?? null).get<unknown>('follow');
  return value === 'pinned' ? 'pinned' : 'activeEditor';
}

export class PreviewPanels implements vscode.Disposable, vscode.WebviewPanelSerializer<unknown> {
  readonly #extensionUri: vscode.Uri;
  readonly #host: PanelsHost;
  readonly #panels = new Set<PreviewPanel>();
  readonly #listeners: vscode.Disposable;
  readonly #editedAt = new Map<string, number>();
  #caretTimer: ReturnType<typeof setTimeout> | undefined;

  constructor(extensionUri: vscode.Uri, host: PanelsHost) {
    this.#extensionUri = extensionUri;
    this.#host = host;
    this.#listeners = vscode.Disposable.from(
      vscode.window.registerWebviewPanelSerializer(panelType, this),
      vscode.workspace.onDidChangeTextDocument((event) => this.#onEdit(event)),
      vscode.workspace.onDidOpenTextDocument((document) => this.#each(document.uri, (panel) => panel.countAnew())),
      vscode.workspace.onDidCloseTextDocument((document) => this.#onClose(document)),
      vscode.window.onDidChangeTextEditorSelection((event) => this.#onSelection(event)),
      vscode.window.onDidChangeActiveTextEditor((editor) => this.#onActive(editor)),
    );
  }

  dispose(): void {
    clearTimeout(this.#caretTimer);
    this.#listeners.dispose();
    for (const panel of [...this.#panels]) panel.dispose();
  }

  /**
   * Opens the picture of a text, or of the piece in it that holds `offset` where every piece has a panel of its own.
   * `piece`, by key, is the one that is to be seen, wherever the caret stands.
   */
  async show(uri: vscode.Uri, offset: number, piece = ''): Promise<PreviewPanel> {
    const pinned = followSetting(uri) === 'pinned';
    const only = pinned ? piece || (await this.#host.pieceAt(uri, offset)) : '';
    const panel = this.#open(uri, only, pinned);
    if (!pinned && piece !== '') panel.showPiece(piece);
    return panel;
  }

  #open(uri: vscode.Uri, only: string, pinned: boolean): PreviewPanel {
    const open = [...this.#panels].find((panel) => panel.only === only && (!pinned || isOf(panel, uri)));
    if (open !== undefined) {
      if (!isOf(open, uri)) this.#turn(open, uri);
      open.reveal();
      return open;
    }
    const column = { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true };
    return this.#adopt(vscode.window.createWebviewPanel(panelType, 'Picture', column), uri, only);
  }

  /** After a reload: the page kept the name of its document. */
  async deserializeWebviewPanel(webviewPanel: vscode.WebviewPanel, state: unknown): Promise<void> {
    const memory = readPageMemory(state);
    const uri = memory.uri === '' ? undefined : vscode.Uri.parse(memory.uri);
    const twin = [...this.#panels].some((panel) => uri && panel.only === memory.only && isOf(panel, uri));
    if (uri === undefined || twin) webviewPanel.dispose();
    else this.#adopt(webviewPanel, uri, memory.only).startFrom(memory);
  }

  receive(frame: PictureFrame): void {
    this.#each(vscode.Uri.parse(frame.uri), (panel) => panel.receive(frame));
  }

  shown(uri: vscode.Uri): Picture | undefined {
    return [...this.#panels].find((panel) => isOf(panel, uri))?.shown;
  }

  /** The panel the reader last used: the active one, else one on the screen; of `uri` where that is given. */
  current(uri?: vscode.Uri): PreviewPanel | undefined {
    const panels = [...this.#panels].filter((panel) => uri === undefined || isOf(panel, uri));
    return panels.find((panel) => panel.active) ?? panels.find((panel) => panel.visible);
  }

  /** Tells the server again what is wanted, as after its restart. */
  watchVisible(afresh?: vscode.Uri): void {
    const wanted = new Map<string, WatchedPicture>();
    for (const panel of this.#panels) {
      if (!panel.visible) continue;
      const uri = panel.uri.toString();
      const shown = [...(wanted.get(uri)?.shown ?? []), panel.looking];
      wanted.set(uri, { uri, shown, afresh: afresh?.toString() === uri });
    }
    this.#host.watch([...wanted.values()]);
  }

  /** Pictures stay when the server goes, and say so. */
  serverRuns(running: boolean): void {
    for (const panel of this.#panels) panel.serverRuns(running);
  }

  #adopt(webviewPanel: vscode.WebviewPanel, uri: vscode.Uri, only: string): PreviewPanel {
    const icon = (theme: string) =>
      vscode.Uri.joinPath(this.#extensionUri, `packages/extension/media/file-${theme}.svg`);
    webviewPanel.iconPath = { light: icon('light'), dark: icon('dark') };
    const panel = new PreviewPanel(webviewPanel, uri, only, this.#extensionUri, {
      askDivision: (move) => this.#host.askDivision(move),
      exportSheet: (from, what) => this.#host.exportSheet(from, what),
      stopPlanning: (from, piece) => this.#host.stopPlanning(from.uri, piece),
      looks: (from, afresh) => this.watchVisible(afresh ? from.uri : undefined),
    });
    this.#panels.add(panel);
    panel.onDidChange(() => this.watchVisible());
    panel.onDidDispose(() => {
      this.#panels.delete(panel);
      this.watchVisible();
    });
    this.#begin(uri);
    return panel;
  }

  #begin(uri: vscode.Uri): void {
    this.watchVisible(uri);
    // A text that lies in no open folder is known to the server only while it is open; a missing one shows as such.
    vscode.workspace.openTextDocument(uri).then(undefined, () => undefined);
  }

  #turn(panel: PreviewPanel, uri: vscode.Uri): void {
    panel.showInstead(uri);
    this.#begin(uri);
  }

  #each(uri: vscode.Uri, act: (panel: PreviewPanel) => void): void {
    for (const panel of this.#panels) if (isOf(panel, uri)) act(panel);
  }

  #onActive(editor: vscode.TextEditor | undefined): void {
    const document = editor?.document;
    if (document?.languageId !== 'fettle' || document.uri.scheme === 'git') return;
    if (followSetting(document.uri) !== 'activeEditor') return;
    const following = [...this.#panels].find((panel) => panel.only === '' && panel.visible);
    if (following !== undefined && !isOf(following, document.uri)) this.#turn(following, document.uri);
  }

  #onEdit(event: vscode.TextDocumentChangeEvent): void {
    if (event.contentChanges.length === 0) return;
    this.#each(event.document.uri, (panel) => {
      this.#editedAt.set(event.document.uri.toString(), Date.now());
      panel.edited(event);
    });
  }

  #onClose(document: vscode.TextDocument): void {
    this.#editedAt.delete(document.uri.toString());
    this.#each(document.uri, (panel) => panel.countAnew());
  }

  /**
   * Only a single caret that the reader moved counts: not one that follows an edit, which is typing, and not the
   * selection that a choice in the page brought about. So picture and text never chase each other. Jumps by command
   * (to a problem, to a definition) are the reader's own too.
   */
  #onSelection(event: vscode.TextEditorSelectionChangeEvent): void {
    const { document, selection } = event.textEditor;
    const panels = [...this.#panels].filter((panel) => isOf(panel, document.uri));
    if (panels.length === 0 || event.selections.length !== 1) return;
    if (Date.now() - (this.#editedAt.get(document.uri.toString()) ?? 0) < typing) return;
    const byHand =
      event.kind === vscode.TextEditorSelectionChangeKind.Keyboard ||
      event.kind === vscode.TextEditorSelectionChangeKind.Mouse;
    const words = { start: document.offsetAt(selection.start), end: document.offsetAt(selection.end) };
    clearTimeout(this.#caretTimer);
    if (!byHand && panels.some((panel) => panel.selected(words))) return;
    this.#caretTimer = setTimeout(() => {
      const offset = document.offsetAt(event.textEditor.selection.active);
      for (const panel of panels) panel.caretAt(offset);
    }, caretPace);
  }
}

function isOf(panel: PreviewPanel, uri: vscode.Uri): boolean {
  return panel.uri.toString() === uri.toString();
}
