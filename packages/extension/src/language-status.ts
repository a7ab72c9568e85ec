import * as vscode from 'vscode';

/** Whether the language server runs, beside the name of the language; from there it is restarted. */
export class LanguageStatus implements vscode.Disposable {
  readonly #item: vscode.LanguageStatusItem;

  constructor() {
    this.#item = vscode.languages.createLanguageStatusItem('fettle.server', { language: 'fettle' });
    this.#item.name = 'Fettle: Language Server';
    this.starting();
  }

  starting(): void {
    this.#item.busy = true;
    this.#item.severity = vscode.LanguageStatusSeverity.Information;
    this.#item.text = 'Starting to check';
    this.#item.detail = 'language server';
    this.#item.command = { command: 'fettle.showLog', title: 'Show the Log' };
  }

  running(): void {
    this.#item.busy = false;
    this.#item.severity = vscode.LanguageStatusSeverity.Information;
    this.#item.text = 'Checks while you write';
    this.#item.command = { command: 'fettle.restartServer', title: 'Restart' };
  }

  stopped(): void {
    this.#item.busy = false;
    this.#item.severity = vscode.LanguageStatusSeverity.Error;
    this.#item.text = 'Does not check';
    this.#item.command = { command: 'fettle.restartServer', title: 'Restart' };
  }

  dispose(): void {
    this.#item.dispose();
  }
}
