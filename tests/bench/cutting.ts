import { measureCuttingLengths, measureOneLengthProblem } from './cutting-lengths.ts';

/** `npm run bench -- cutting`: cutting plans against published problems. Run from a bundle; its argument is the repository. */

const [bundle = '', repository, job, set = '', place = '0'] = process.argv.slice(1);
if (repository === undefined) throw new Error('say where the repository is');
if (job === 'one-length') measureOneLengthProblem(repository, set, Number(place));
else measureCuttingLengths(repository, bundle);
