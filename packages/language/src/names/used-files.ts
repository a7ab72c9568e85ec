import { type LangiumDocument, type LangiumDocuments, type URI, UriUtils } from 'langium';
import { isPlainText, type Statement, type Text } from '../generated/ast.ts';

/** Which files a text uses, directly and through them. */

/** The `use` statements at the top of a text, with the path each names. */
export function useStatements(document: LangiumDocument): { readonly statement: Statement; readonly path: string }[] {
  const root = document.parseResult.value as Text;
  return root.statements.flatMap((statement) => {
    if (statement.head?.toLowerCase() !== 'use') return [];
    const text = statement.parts.find(isPlainText);
    return text === undefined ? [] : [{ statement, path: text.text }];
  });
}

/** Where a path in this document points. Undefined for a path that is no path. */
export function resolveUse(document: LangiumDocument, path: string): URI | undefined {
  if (path === '' || path.includes('\0')) return undefined;
  try {
    return UriUtils.resolvePath(UriUtils.dirname(document.uri), path);
  } catch {
    return undefined;
  }
}

/** Every document this one uses, nearest first, without itself; files that are not there are left out. */
export function usedDocuments(documents: LangiumDocuments, document: LangiumDocument): LangiumDocument[] {
  const seen = new Set([document.uri.toString()]);
  const found: LangiumDocument[] = [];
  const waiting = [document];
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    for (const { path } of useStatements(next)) {
      const uri = resolveUse(next, path);
      if (uri === undefined || seen.has(uri.toString())) continue;
      seen.add(uri.toString());
      const used = documents.getDocument(uri);
      if (used === undefined) continue;
      found.push(used);
      waiting.push(used);
    }
  }
  return found;
}
