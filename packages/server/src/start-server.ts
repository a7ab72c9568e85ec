import { createFettleServices } from '@fettle/language';
import { DocumentState, type FileSystemProvider, Module } from 'langium';
import { startLanguageServer } from 'langium/lsp';
import type { Connection } from 'vscode-languageserver';
import { ChangedDiagnostics } from './changed-diagnostics.ts';
import { guardedConnection } from './guarded-connection.ts';
import { announcingModule, answerMore } from './more-answers.ts';
import { answerNewPiece } from './new-piece-answers.ts';
import { PictureAnswers } from './picture-answers.ts';
import { Pictures } from './pictures.ts';
import { PiecePlans } from './plans/piece-plans.ts';
import { type PlanSearcher, searchInSlices } from './plans/plan-searcher.ts';
import { Backlog, followWorkspaceFolders, schedulingModule } from './scheduling.ts';
import { followShownLengths } from './shown-lengths.ts';

/** Puts the server together; the entries choose only the connection and the files. */
export function startFettleServer(
  connection: Connection,
  files: FileSystemProvider,
  searcher: PlanSearcher = searchInSlices,
): void {
  const backlog = new Backlog();
  const published = new ChangedDiagnostics();
  const guarded = guardedConnection(published.through(connection), () => backlog.takenUp);
  const context = { connection: guarded, fileSystemProvider: () => files };
  const { shared, Fettle } = createFettleServices(context, Module.merge(schedulingModule(backlog), announcingModule));
  published.follow(shared);
  const plans = new PiecePlans(searcher, (why) => connection.console.error(`planning failed: ${why}`));
  const pictures = new Pictures(guarded, Fettle, plans);
  new PictureAnswers(connection, Fettle, plans, () => backlog.takenUp).listen();
  answerNewPiece(connection);
  followWorkspaceFolders(shared, connection);
  answerMore(guarded, shared, Fettle);
  followShownLengths(connection, shared, Fettle, () => pictures.tellAnew());
  // Each request waits for the least that can answer it, so that reading never waits for checking.
  startLanguageServer(shared, {
    DocumentSymbolProvider: DocumentState.Parsed,
    FoldingRangeProvider: DocumentState.Parsed,
    Formatter: DocumentState.Parsed,
    CompletionProvider: DocumentState.ComputedScopes,
    SignatureHelp: DocumentState.ComputedScopes,
    HoverProvider: DocumentState.Linked,
    InlayHintProvider: DocumentState.Linked,
  });
  pictures.listen();
}
