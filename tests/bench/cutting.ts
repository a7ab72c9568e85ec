import { measureCuttingLengths, measureOneLengthProblem } from './cutting-lengths.ts';
import { measureCuttingSheets, measureOneSheetProblem } from './cutting-sheets.ts';

/** `npm run bench -- cutting`: cutting plans against published problems. Run from a bundle; its argument is the repository. */

const [bundle = '', repository, job, set = '', place = '0', mayTurn = 'false'] = process.argv.slice(1);
if (repository === undefined) throw new Error('say where the repository is');
if (job === 'one-length') measureOneLengthProblem(repository, set, Number(place));
else if (job === 'one-sheet') measureOneSheetProblem(repository, set, Number(place), mayTurn === 'true');
else {
  measureCuttingLengths(repository, bundle);
  measureCuttingSheets(repository, bundle);
}
