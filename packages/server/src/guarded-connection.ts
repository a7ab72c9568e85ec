import type { Connection } from 'vscode-languageserver';
import { ResponseError } from 'vscode-languageserver';

/**
 * The border that requests cross on their way to a feature: none is let through while edits that came before it wait to
 * be taken up, and a failure stops here, logged with the document it concerned and answered with nothing, so that a
 * broken hover takes no squiggle away. Knows nothing of what the features do.
 */

/** The requests of features; the life of the server itself (initialize, shutdown) is not guarded. */
const guarded: ReadonlySet<string> = new Set<keyof Connection>([
  'onHover',
  'onCompletion',
  'onCompletionResolve',
  'onSignatureHelp',
  'onDeclaration',
  'onDefinition',
  'onTypeDefinition',
  'onImplementation',
  'onReferences',
  'onDocumentHighlight',
  'onDocumentSymbol',
  'onWorkspaceSymbol',
  'onCodeAction',
  'onCodeLens',
  'onDocumentFormatting',
  'onDocumentRangeFormatting',
  'onDocumentOnTypeFormatting',
  'onDocumentLinks',
  'onFoldingRanges',
  'onSelectionRanges',
  'onPrepareRename',
  'onRenameRequest',
]);

type Handler = (params: unknown, ...rest: unknown[]) => unknown;

/** The uri a request speaks of, for the log. */
function subjectOf(params: unknown): string {
  const document = (params as { textDocument?: { uri?: unknown } } | undefined)?.textDocument;
  return typeof document?.uri === 'string' ? document.uri : 'no document';
}

export function describeError(error: unknown): string {
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}

function guard(connection: Connection, name: string, settled: () => Promise<void>, handler: Handler): Handler {
  return async (params, ...rest) => {
    try {
      await settled();
      return await handler(params, ...rest);
    } catch (error) {
      // Cancellations and refusals are answers, not failures.
      if (error instanceof ResponseError) throw error;
      connection.console.error(`${name} failed for ${subjectOf(params)}: ${describeError(error)}`);
      return null;
    }
  };
}

/** Features that a connection keeps one level further down, by the name they are kept under. */
const further: ReadonlySet<string> = new Set(['languages', 'inlayHint', 'semanticTokens']);
const guardedFurther: ReadonlySet<string> = new Set(['on', 'onRange', 'onLinkedEditingRange']);

/**
 * `connection`, but whatever registers a feature's handler registers a guarded one. `settled` ends once earlier edits
 * have been taken up.
 */
export function guardedConnection(connection: Connection, settled: () => Promise<void>): Connection {
  const within = <Member extends object>(outer: Member, names: ReadonlySet<string>, path: string): Member =>
    new Proxy(outer, {
      get(target, property) {
        const member: unknown = Reflect.get(target, property);
        if (typeof property !== 'string') return member;
        const name = path === '' ? property.replace(/^on/, '') : `${path}.${property}`;
        if (further.has(property) && typeof member === 'object' && member !== null) {
          return within(member, guardedFurther, name);
        }
        if (!names.has(property) || typeof member !== 'function') return member;
        return (handler: Handler, ...more: unknown[]) =>
          member.call(target, guard(connection, name, settled, handler), ...more);
      },
    });
  return within(connection as Connection & object, guarded, '');
}
