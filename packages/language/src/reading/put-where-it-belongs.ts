import type { Mend } from '@fettle/findings';
import type { Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import { homesOfStatement } from '../schema/where-words-belong.ts';
import { cellWords } from './read-face.ts';
import { endOfHead, headOrigin, originOf, type ReadContext } from './reader.ts';

/**
 * A statement that stands beside the braces it belongs in, such as feet beside the case, goes into them; where there are
 * none yet, they are written around it.
 */

/** Braces that hold the parts of a piece, and say nothing else that would have to be made up. */
const holders = ['case', 'face'];

/** Doors have frames too, and one before the case changes what every front hangs on. */
const mayBeMeantOtherwise = 'frame';

/** Undefined where it has no such home here, or has one in which it could not stand beside what is there. */
export function puttingWhereItBelongs(
  context: ReadContext,
  statement: Statement,
  beside: readonly string[],
): Mend | undefined {
  const head = statement.head ?? '';
  const homes = homesOfStatement(head);
  const home = holders.find((each) => homes.includes(`'${each}'`) && beside.includes(each));
  if (home === undefined || head.toLowerCase() === mayBeMeantOtherwise) return undefined;
  const [there, ...others] = statement.$container.statements.filter((each) => specOf(each).spec.word === home);
  // A slip of the pen is mended first.
  if (others.length > 0 || (there !== undefined && !specOf(there).exact)) return undefined;
  const whole = originOf(context, statement);
  if (there === undefined) {
    const origin = headOrigin(context, statement);
    const at = { ...origin, end: origin.start + head.length };
    return {
      how: 'wrap',
      values: { words: head, word: home },
      changes: [
        { kind: 'set-words', at, words: `${home} { ${head}` },
        { kind: 'insert-words', after: whole, words: ' }' },
      ],
    };
  }
  const last = there.statements.at(-1);
  if (!hasRoomFor(head, there)) return undefined;
  const words = statement.$cstNode?.text.trim() ?? '';
  return {
    how: 'put-into',
    values: { words: head, word: home },
    changes: [
      { kind: 'remove', at: whole },
      last === undefined
        ? { kind: 'insert-words', after: endOfHead(context, there), words: ` { ${words} }` }
        : { kind: 'insert-words', after: originOf(context, last), words: `${lineBefore(last)}${words}` },
    ],
  };
}

/** Each is said once, and a face is one group of spaces. Braces without anything in them are left to the maker. */
function hasRoomFor(head: string, { statements, $cstNode }: Statement): boolean {
  const word = head.toLowerCase();
  if (statements.length === 0) return !($cstNode?.text.includes('{') ?? true);
  const isCell = cellWords.has(word);
  return !statements.some((each) => {
    const other = each.head?.toLowerCase() ?? '';
    return other === word || (isCell && cellWords.has(other));
  });
}

/** What stands before the next statement where it goes on as this one does: a line and its blanks, or three blanks. */
function lineBefore({ $cstNode }: Statement): string {
  const before = $cstNode?.root.fullText.slice(0, $cstNode.offset) ?? '';
  const blanks = /(?:^|\n)([ \t]*)$/.exec(before.slice(before.lastIndexOf('\n')))?.[1];
  return blanks === undefined ? '   ' : `\n${blanks}`;
}
