import { nothingToMake, sizeIncomplete } from '@fettle/findings';
import type { Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import { readParts } from './phrases.ts';
import { headOrigin, type ReadContext } from './reader.ts';
import { bracesWereGuessed } from './slip-findings.ts';

/** What a piece lacks before anything of it can be worked out, its pattern taken into account. */
export function judgeWhole(
  context: ReadContext,
  piece: Statement,
  found: {
    readonly pattern: Statement | undefined;
    readonly size: Statement | undefined;
    readonly hasParts: boolean;
  },
): void {
  const phrases = readParts(piece, specOf(piece).spec).phrases;
  // A pattern that nothing declares has its own finding, and brings whatever is missing here.
  const lostPattern = found.pattern === undefined && phrases.some((read) => read.phrase.pattern === 'from <pattern>');
  const cst = piece.$cstNode;
  const guessed = cst !== undefined && bracesWereGuessed(context.unit.document, cst.offset, cst.end);
  if (lostPattern || guessed || hasLostWords(piece)) return;
  if (!found.hasParts) {
    context.findings.push(nothingToMake.at(headOrigin(context, piece), { name: piece.name ?? 'piece' }));
    return;
  }
  const missing = missingSizes(found.size);
  if (missing.length === 0) return;
  const own = found.size !== undefined && found.size.$container === piece ? found.size : piece;
  const last = missing.at(-1) ?? '';
  const words = missing.length === 1 ? last : `${missing.slice(0, -1).join(', ')} and ${last}`;
  context.findings.push(sizeIncomplete.at(headOrigin(context, own), { missing: words }));
}

/** Words of the piece that mean nothing have their own finding; what they were meant for may be what is missing. */
function hasLostWords(piece: Statement): boolean {
  return (
    piece.statements.some((each) => specOf(each).spec.word === '') ||
    readParts(piece, specOf(piece).spec).unread.length > 0
  );
}

function missingSizes(size: Statement | undefined): string[] {
  const read = size === undefined ? undefined : readParts(size, specOf(size).spec);
  if (read !== undefined && read.unread.length > 0) return [];
  const said = new Set(read?.phrases.map(({ phrase }) => phrase.pattern));
  return (
    [
      ['<length> wide', 'width'],
      ['<length> high', 'height'],
      ['<length> deep', 'depth'],
    ] as const
  ).flatMap(([pattern, word]) => (said.has(pattern) ? [] : [word]));
}
