import type { Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';

/**
 * Whether these are words of the thing itself, such as `hinged left` of a door, that stand inside its braces instead of
 * before them. They are no misspelt statement, however near one they come.
 */
export function saysWhatHoldsIt(statement: Statement): boolean {
  const { $container: holder } = statement;
  if (holder.$type !== 'Statement' || statement.statements.length > 0) return false;
  const words = statement.$cstNode?.text.trim().toLowerCase() ?? '';
  return specOf(holder as Statement).spec.phrases.some(
    ({ items, checked, pattern }) => checked && pattern === words && items.every((item) => item.kind === 'word'),
  );
}
