import { FettleCompletionProvider, type FettleServices, fixAllKind, selectionRanges } from '@fettle/language';
import { DocumentState, type LangiumDocument, type Module } from 'langium';
import {
  createRequestHandler,
  DefaultLanguageServer,
  type LangiumSharedServices,
  type PartialLangiumSharedServices,
} from 'langium/lsp';
import {
  CodeActionKind,
  type Connection,
  type InitializeParams,
  type InitializeResult,
  type LinkedEditingRanges,
  type Position,
  type Range,
} from 'vscode-languageserver';

/**
 * What editors ask for and Langium has no place for: selection ranges, names that are edited together, the kinds of code
 * action there are, and word that what is shown beside a text may have changed without an edit of it.
 */

class AnnouncingServer extends DefaultLanguageServer {
  protected override buildInitializeResult(params: InitializeParams): InitializeResult {
    const result = super.buildInitializeResult(params);
    return {
      ...result,
      serverInfo: { name: 'Fettle' },
      capabilities: {
        ...result.capabilities,
        completionProvider: { ...result.capabilities.completionProvider, resolveProvider: true },
        selectionRangeProvider: true,
        linkedEditingRangeProvider: true,
        codeActionProvider: {
          codeActionKinds: [
            CodeActionKind.QuickFix,
            CodeActionKind.RefactorExtract,
            CodeActionKind.RefactorRewrite,
            fixAllKind,
          ],
        },
      },
    };
  }
}

export const announcingModule: Module<LangiumSharedServices, PartialLangiumSharedServices> = {
  lsp: { LanguageServer: (services) => new AnnouncingServer(services) },
};

/** To be called before the server listens. */
export function answerMore(connection: Connection, shared: LangiumSharedServices, services: FettleServices): void {
  const { CompletionProvider } = services.lsp;
  connection.onCompletionResolve((item) =>
    CompletionProvider instanceof FettleCompletionProvider ? CompletionProvider.resolveItem(item) : item,
  );
  connection.onSelectionRanges(
    createRequestHandler(
      (_services, document, { positions }) => selectionRanges(document, positions),
      shared,
      DocumentState.Parsed,
    ),
  );
  connection.languages.onLinkedEditingRange(
    createRequestHandler(
      (_services, document, { position }) => linkedNames(services, document, position),
      shared,
      DocumentState.IndexedReferences,
    ),
  );
  refreshWithOthers(connection, shared);
}

/** Inside the quotation marks of a name: every other place of this text that says it. */
async function linkedNames(
  services: FettleServices,
  document: LangiumDocument,
  position: Position,
): Promise<LinkedEditingRanges | undefined> {
  const { textDocument } = document;
  const params = { textDocument: { uri: document.uri.toString() }, position };
  const said = await services.lsp.DocumentHighlightProvider?.getDocumentHighlight(document, params);
  const inner = (said ?? []).flatMap(({ range }): Range[] => {
    const words = textDocument.getText(range);
    if (!/^["“”].*["“”]$/.test(words) || words.length < 2) return [];
    const { start, end } = range;
    return [{ start: { ...start, character: start.character + 1 }, end: { ...end, character: end.character - 1 } }];
  });
  const own = inner.find(({ start, end }) => start.line === position.line && isWithin(start, end, position));
  if (own === undefined) return undefined;
  // An editor writes the same words to each: only where the same words stand.
  const words = textDocument.getText(own);
  const ranges = inner.filter((each) => textDocument.getText(each) === words);
  return ranges.length < 2 ? undefined : { ranges, wordPattern: '[^"“”{}\\r\\n]*' };
}

function isWithin(start: Position, end: Position, { character }: Position): boolean {
  return start.character <= character && character <= end.character;
}

/** A shop file that changes changes what stands beside the pieces that use it. Editors ask again when they are told. */
function refreshWithOthers(connection: Connection, shared: LangiumSharedServices): void {
  let [lenses, hints] = [false, false];
  shared.lsp.LanguageServer.onInitialize(({ capabilities }) => {
    lenses = capabilities.workspace?.codeLens?.refreshSupport === true;
    hints = capabilities.workspace?.inlayHint?.refreshSupport === true;
  });
  const { DocumentBuilder } = shared.workspace;
  const changed = new Set<string>();
  DocumentBuilder.onUpdate((uris) => {
    // What an update that was cut short had changed was asked for before this one.
    changed.clear();
    for (const uri of uris) changed.add(uri.toString());
  });
  DocumentBuilder.onBuildPhase(DocumentState.Validated, (built) => {
    // For a text that was edited itself its editor asks by itself.
    const others = built.some(({ uri }) => !changed.has(uri.toString()));
    changed.clear();
    if (!others) return;
    // An editor that cannot be reached needs no refreshing.
    if (lenses) void connection.sendRequest('workspace/codeLens/refresh').catch(() => undefined);
    if (hints) void connection.languages.inlayHint.refresh().catch(() => undefined);
  });
}
