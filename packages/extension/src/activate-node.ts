import type { ExtensionContext } from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { provideCheckTask } from './check-task.ts';
import { startExtension } from './extension.ts';
import type { LanguageSession } from './language-session.ts';

/** Entry on the desktop and on remote machines: the server is a process of its own. */

let session: LanguageSession | undefined;

export function activate(context: ExtensionContext): void {
  const module = context.asAbsolutePath('dist/server.js');
  const run = { module, transport: TransportKind.ipc };
  session = startExtension(
    context,
    async (options) => new LanguageClient('fettle', 'Fettle', { run, debug: run }, options),
  );
  context.subscriptions.push(provideCheckTask(process.execPath, context.asAbsolutePath('dist/cli.cjs')));
}

export async function deactivate(): Promise<void> {
  await session?.stop();
}
