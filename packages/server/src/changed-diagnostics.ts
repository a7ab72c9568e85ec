import type { LangiumSharedServices } from 'langium/lsp';
import type { Connection, Diagnostic, PublishDiagnosticsParams } from 'vscode-languageserver';

/**
 * Findings are published for a text that was edited, and for another one only when they changed: a shop file that many
 * pieces use is edited at every key, and most of them go on fitting. The edited text always hears of its own: an editor
 * moves its marks with every edit and may have lost one.
 */
export class ChangedDiagnostics {
  readonly #last = new Map<string, readonly Diagnostic[]>();
  readonly #edited = new Set<string>();

  /** To be called before the server listens, so that an edit is known of before anything is published of it. */
  follow(shared: LangiumSharedServices): void {
    shared.workspace.DocumentBuilder.onUpdate((changed, deleted) => {
      for (const uri of [...changed, ...deleted]) this.#edited.add(uri.toString());
    });
  }

  /** `connection`, but what is no news is not sent. */
  through(connection: Connection): Connection {
    const send = async (params: PublishDiagnosticsParams): Promise<void> => {
      if (this.#isNews(params)) await connection.sendDiagnostics(params);
    };
    return new Proxy(connection as Connection & object, {
      get: (target, property) => (property === 'sendDiagnostics' ? send : Reflect.get(target, property)),
    });
  }

  #isNews({ uri, diagnostics }: PublishDiagnosticsParams): boolean {
    const before = this.#last.get(uri);
    this.#last.set(uri, diagnostics);
    if (this.#edited.delete(uri) || before === undefined || before.length !== diagnostics.length) return true;
    return JSON.stringify(before) !== JSON.stringify(diagnostics);
  }
}
