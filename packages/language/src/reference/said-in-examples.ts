import { AstUtils } from 'langium';
import { isStatement, type Statement, type Text } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import type { StatementSpec } from '../schema/index.ts';

/** Finds, for each statement of the vocabulary, the place where a text of the language says it best. */

const longest = 110;

/** The statement as it is written there, without what stands in its braces. */
export function saidInExamples(texts: readonly Text[]): ReadonlyMap<StatementSpec, string> {
  const found = new Map<StatementSpec, string>();
  for (const text of texts) {
    for (const statement of AstUtils.streamAllContents(text).filter(isStatement)) {
      const { spec, exact } = specOf(statement);
      const words = wordsOf(statement);
      const known = found.get(spec);
      // The fuller the better, as long as it fits a line: the first of two that say equally much.
      const better = known === undefined || (words.length <= longest && words.length > known.length);
      if (exact && better) found.set(spec, words);
    }
  }
  return found;
}

function wordsOf(statement: Statement): string {
  const start = statement.$cstNode?.offset ?? 0;
  const end = statement.parts.at(-1)?.$cstNode?.end;
  const text = statement.$cstNode?.text ?? '';
  const own = end === undefined ? (text.split('{')[0] ?? '') : text.slice(0, end - start);
  const words = own.replace(/\s+/g, ' ').trim();
  return statement.statements.length > 0 ? `${words} { … }` : words;
}
