import { type LangiumDocument, type LangiumDocuments, URI, UriUtils } from 'langium';
import { isPlainText, isText, type Statement, type Text } from '../generated/ast.ts';

/** Which files a text uses, directly and through them. */

export interface UseOfFile {
  readonly statement: Statement;
  readonly path: string;
}

// Every name that is looked up asks for these; a tree is never changed once it is parsed.
const usesOfTexts = new WeakMap<Text, readonly UseOfFile[]>();

/** The `use` statements at the top of a text, with the path each names. */
export function useStatements(document: LangiumDocument): readonly UseOfFile[] {
  const root = document.parseResult.value as Text;
  let uses = usesOfTexts.get(root);
  if (uses === undefined) {
    // A file that was only heard of has no tree yet.
    const statements = isText(root) ? root.statements : [];
    uses = statements.flatMap((statement) => {
      if (statement.head?.toLowerCase() !== 'use') return [];
      const text = statement.parts.find(isPlainText);
      return text === undefined ? [] : [{ statement, path: text.text }];
    });
    usesOfTexts.set(root, uses);
  }
  return uses;
}

/** Where a path in this document points. Undefined for a path that is no path. */
export function resolveUse(document: LangiumDocument, path: string): URI | undefined {
  if (path === '' || path.includes('\0')) return undefined;
  try {
    return UriUtils.resolvePath(UriUtils.dirname(homeOf(document.uri)), path);
  } catch {
    return undefined;
  }
}

/** An older copy of a text, as a comparison shows it, lies in no folder: it is read with the files of today. */
export function isOlderCopy(uri: URI): boolean {
  return uri.scheme === 'git';
}

function homeOf(uri: URI): URI {
  return isOlderCopy(uri) ? uri.with({ scheme: 'file', query: '', fragment: '' }) : uri;
}

/** Every document this one uses, nearest first, without itself; files that are not there are left out. */
export function usedDocuments(documents: LangiumDocuments, document: LangiumDocument): LangiumDocument[] {
  const seen = new Set([document.uri.toString()]);
  const found: LangiumDocument[] = [];
  const waiting = [document];
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    for (const { path } of useStatements(next)) {
      for (const used of documentsAt(documents, next, path)) {
        if (seen.has(used.uri.toString())) continue;
        seen.add(used.uri.toString());
        found.push(used);
        waiting.push(used);
      }
    }
  }
  return found;
}

/** The loaded documents a path names: one file, or every text directly in a folder. */
export function documentsAt(documents: LangiumDocuments, document: LangiumDocument, path: string): LangiumDocument[] {
  const uri = resolveUse(document, path);
  if (uri === undefined) return [];
  if (!isFolderPath(path)) {
    const one = documents.getDocument(uri);
    return one === undefined ? [] : [one];
  }
  const folder = withoutSlash(uri);
  return documents.all
    .filter((each) => each !== document && withoutSlash(UriUtils.dirname(each.uri)) === folder)
    .toArray()
    .sort((a, b) => (a.uri.toString() < b.uri.toString() ? -1 : 1));
}

/** Whether one of the files that came, changed or went is one the document uses, directly or through others. */
export function isAffectedByFiles(
  documents: LangiumDocuments,
  document: LangiumDocument,
  changed: ReadonlySet<string>,
): boolean {
  const places = [...changed].map((uri) => ({ uri, folder: withoutSlash(UriUtils.dirname(URI.parse(uri))) }));
  return [document, ...usedDocuments(documents, document)].some((each) =>
    useStatements(each).some(({ path }) => {
      const used = resolveUse(each, path);
      if (used === undefined) return false;
      const wanted = withoutSlash(used);
      return places.some(({ uri, folder }) => (isFolderPath(path) ? folder === wanted : uri === wanted));
    }),
  );
}

function withoutSlash(uri: URI): string {
  return uri.toString().replace(/\/*$/, '');
}

/** Whether this text itself uses a file that is not there. */
export function usesMissingFile(documents: LangiumDocuments, document: LangiumDocument): boolean {
  return useStatements(document).some(({ path }) => documentsAt(documents, document, path).length === 0);
}

export function isFolderPath(path: string): boolean {
  return /[/\\]$/.test(path) || path === '.' || path === '..';
}
