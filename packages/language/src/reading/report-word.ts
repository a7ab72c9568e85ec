import { type Mend, type Origin, unknownWord, wordBelongsElsewhere } from '@fettle/findings';
import { isOnlyNear } from '../names/nearest.ts';
import type { ReadContext } from './reader.ts';
import { mostHomes } from './words-of-the-trade.ts';

/** What is said of words that mean nothing where they stand, and what may be written instead. */

export interface UnreadWords {
  readonly at: Origin;
  /** What goes with the words if they go. */
  readonly whole: Origin;
  readonly words: string;
  readonly place: string;
  /** The known word that is nearest; empty where none is. */
  readonly nearest: string;
  /** Where they belong, if the language knows them at all. */
  readonly homes: readonly string[];
  /** The words that may stand here. */
  readonly known: readonly string[];
  /** What they may be short for. */
  readonly shortFor?: readonly string[];
  /** Phrases that they begin and do not end. */
  readonly goesOn?: readonly string[];
  /** The words that may begin a statement behind them. */
  readonly beside?: readonly string[];
  /** How they come to where they belong. */
  readonly move?: Mend;
}

export function reportWord(context: ReadContext, unread: UnreadWords): void {
  const { at, whole, words, place, nearest, homes, known, shortFor = [], goesOn = [], beside = [], move } = unread;
  // What was read as its neighbour counts as such, so taking it out would leave a gap.
  const mends = shortFor.map(
    (each): Mend => ({
      how: 'use-nearest',
      values: { word: each },
      changes: [{ kind: 'set-words', at, words: each }],
    }),
  );
  const mend: Mend =
    nearest === ''
      ? { how: 'remove', values: { words }, changes: [{ kind: 'remove', at: whole }] }
      : {
          how: 'use-nearest',
          safe: homes.length === 0 && isOnlyNear(words, nearest, known),
          values: { word: nearest },
          changes: [{ kind: 'set-words', at, words: nearest }],
        };
  const belongs = homes.filter((each) => each !== place).slice(0, mostHomes);
  const meant = [...shortFor, ...goesOn];
  const begun = nearest === '' && meant.length === 0 ? wordsBegun(words, [...known, ...beside]) : [];
  context.findings.push(
    belongs.length === 0
      ? unknownWord.at(
          at,
          {
            words,
            place,
            nearest,
            ...(meant.length === 0 ? {} : { meant }),
            ...(begun.length === 0 ? {} : { begun }),
          },
          { mends: [...mends, mend] },
        )
      : wordBelongsElsewhere.at(
          at,
          { words, place, belongs, nearest },
          { mends: move === undefined ? [mend] : [move, mend] },
        ),
  );
}

/** The words that one may be on the way to, the shortest first. */
function wordsBegun(typed: string, known: readonly string[]): readonly string[] {
  if (!/^[a-z][a-z-]*$/i.test(typed)) return [];
  const letters = typed.toLowerCase();
  const words = [...new Set(known)].filter((each) => each.startsWith(letters) && each !== letters);
  return words.sort((a, b) => a.length - b.length || (a < b ? -1 : 1));
}
