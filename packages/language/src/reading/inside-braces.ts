import type { Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import type { Phrase } from '../schema/index.ts';
import { partFits } from './phrases.ts';

/**
 * Whether these are words of the thing itself, such as `hinged left` of a door or `gap 1/8` of a face, that stand inside its braces instead of
 * before them. They are no misspelt statement, however near one they come.
 */
export function saysWhatHoldsIt(statement: Statement): boolean {
  const { $container: holder } = statement;
  if (holder.$type !== 'Statement' || statement.statements.length > 0) return false;
  const { spec } = specOf(holder as Statement);
  return spec.phrases.some((phrase) => phrase.checked && isSaidBy(phrase, statement));
}

/** Whether the statement, its head and all that follows, is this phrase: `hinged left`, `gap 1/8`. */
export function isSaidBy({ items }: Phrase, { head, parts }: Pick<Statement, 'head' | 'parts'>): boolean {
  const [first, ...others] = items;
  return (
    first?.kind === 'word' &&
    first.word === head?.toLowerCase() &&
    others.length === parts.length &&
    others.every((item, at) => {
      const part = parts[at];
      return part !== undefined && partFits(item, part);
    })
  );
}
