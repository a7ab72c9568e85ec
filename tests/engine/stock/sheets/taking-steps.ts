import { type SheetSearch, searchSheets } from '../../../../packages/engine/src/stock/sheets/search-sheets.ts';
import type { SheetProblem } from '../../../../packages/engine/src/stock/sheets/sheet-problem.ts';

/** The answers of the first steps of a search: never more than `most`, fewer if it is done before. */
export function answersOf(problem: SheetProblem, most: number, seed = 1): readonly SheetSearch[] {
  const answers: SheetSearch[] = [];
  const search = searchSheets(problem, seed);
  while (answers.length < most) {
    const { value, done } = search.next();
    answers.push(value);
    if (done === true) break;
  }
  return answers;
}

export function lastAnswer(problem: SheetProblem, most: number, seed = 1): SheetSearch {
  const answer = answersOf(problem, most, seed).at(-1);
  if (answer === undefined) throw new Error('a search answers at least once');
  return answer;
}
