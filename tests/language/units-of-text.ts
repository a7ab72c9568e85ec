import { AstUtils, type LangiumDocument, URI } from 'langium';
import { isStatement, type Statement } from '../../packages/language/src/generated/ast.ts';
import { specOf } from '../../packages/language/src/names/declarations.ts';
import { services } from './harness/workbench.ts';

/** What a text still means: each statement by its word, its name and the words of the statements around it. */
export interface UnitOfText {
  readonly key: string;
  readonly end: number;
}

/** Parsed, and nothing more: names are linked and findings are made only when they are asked for. */
export function parsed(text: string): LangiumDocument {
  return services.shared.workspace.LangiumDocumentFactory.fromString(text, URI.parse('file:///parsed/piece.fettle'));
}

export function unitsOf(document: LangiumDocument): UnitOfText[] {
  return AstUtils.streamAllContents(document.parseResult.value)
    .filter(isStatement)
    .map((statement) => ({ key: keyOf(statement), end: statement.$cstNode?.end ?? 0 }))
    .toArray();
}

function keyOf(statement: Statement): string {
  const words = [`${specOf(statement).spec.word} "${statement.name ?? ''}"`];
  for (let at = statement.$container; isStatement(at); at = at.$container) words.push(specOf(at).spec.word);
  return words.join(' in ');
}

/** The units of `before` that `now` does not have, each counted as often as it stands. */
export function lostUnits(before: readonly UnitOfText[], now: readonly UnitOfText[]): string[] {
  const left = new Map<string, number>();
  for (const { key } of now) left.set(key, (left.get(key) ?? 0) + 1);
  return before.flatMap(({ key }) => {
    const count = left.get(key) ?? 0;
    left.set(key, count - 1);
    return count > 0 ? [] : [key];
  });
}
