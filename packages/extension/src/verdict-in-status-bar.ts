import type { Verdict } from '@fettle/protocol';
import * as vscode from 'vscode';

/** The verdict on the document in the active editor, in the status bar. */
export class VerdictInStatusBar implements vscode.Disposable {
  readonly #item: vscode.StatusBarItem;
  readonly #verdicts = new Map<string, Verdict>();
  readonly #listeners: vscode.Disposable;

  constructor() {
    this.#item = vscode.window.createStatusBarItem('fettle.verdict', vscode.StatusBarAlignment.Left, 10);
    this.#item.name = 'Fettle: Verdict';
    this.#item.command = 'workbench.actions.view.problems';
    this.#listeners = vscode.Disposable.from(
      this.#item,
      vscode.window.onDidChangeActiveTextEditor(() => this.#show()),
      vscode.workspace.onDidCloseTextDocument((document) => {
        this.#verdicts.delete(document.uri.toString());
        this.#show();
      }),
    );
  }

  dispose(): void {
    this.#listeners.dispose();
  }

  receive(verdict: Verdict): void {
    this.#verdicts.set(vscode.Uri.parse(verdict.uri).toString(), verdict);
    this.#show();
  }

  /** The server is gone: what it last said no longer holds. */
  forget(): void {
    this.#verdicts.clear();
    this.#show();
  }

  /** The page of a preview may be what is active; the verdict stays until another text is. */
  #show(): void {
    const editor = vscode.window.activeTextEditor;
    const verdict = editor === undefined ? undefined : this.#verdicts.get(editor.document.uri.toString());
    if (verdict === undefined) {
      this.#item.hide();
      return;
    }
    const sign = verdict.errors > 0 || !verdict.readable ? 'error' : verdict.warnings > 0 ? 'warning' : 'check';
    this.#item.text = `$(${sign}) ${verdict.verdict}`;
    this.#item.tooltip = 'What Fettle says of this text. Choose to see the findings';
    this.#item.accessibilityInformation = { label: `Fettle: ${verdict.verdict}` };
    this.#item.show();
  }
}
