import type { Statement } from '../../generated/ast.ts';
import {
  type Asked,
  around,
  isCell,
  phrasesOf,
  type Refactoring,
  rangeOfPhrase,
  sizePhrase,
  wordOf,
} from './refactoring.ts';

/** Afterwards the fronts lie on the case instead of inside it, or the other way round; the piece is as large as before. */
export function turnTheFit({ statement }: Asked): Refactoring | undefined {
  const face = around(statement, (each) => wordOf(each) === 'face');
  // Asked for at the face itself: further in, the light bulb has enough to offer.
  if (face === undefined || face !== statement) return undefined;
  const fits = phrasesOf(face).filter(({ phrase }) => /^(inset|overlay full)$/.test(phrase.pattern));
  const [fit] = fits;
  if (fit === undefined || fits.length > 1) return undefined;
  // Fronts larger by their laps no longer add up where every size of a row or stack is written.
  if (!leavesRoom(face)) return undefined;
  const isInset = fit.phrase.pattern === 'inset';
  // What an inset front would leave to be seen of an edge means nothing.
  if (!isInset && phrasesOf(face).some(({ phrase }) => phrase.pattern.startsWith('reveal '))) return undefined;
  return {
    title: isInset
      ? 'Let the fronts lie on the case, its outside kept'
      : 'Let the fronts lie inside the case, its outside kept',
    kind: 'refactor.rewrite',
    edits: [{ ...rangeOfPhrase(fit), words: isInset ? 'overlay full' : 'inset' }],
  };
}

function leavesRoom(group: Statement): boolean {
  const cells = group.statements.filter(isCell);
  const isWritten = (each: Statement) => /^(front|opening) /.test(sizePhrase(each)?.phrase.pattern ?? '');
  if (cells.length > 0 && cells.every(isWritten)) return false;
  return cells.every(leavesRoom);
}
