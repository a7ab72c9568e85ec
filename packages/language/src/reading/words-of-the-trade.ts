import { type Mend, type Origin, wordBelongsElsewhere } from '@fettle/findings';
import { isExpression, type Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import { nearestName } from '../names/nearest.ts';
import { sameWords } from '../schema/trade-words.ts';
import { homesOfStatement, phrasesBegunBy, wordsThatBegin } from '../schema/where-words-belong.ts';
import { isSaidBy } from './inside-braces.ts';
import { endOfHead, originOf, type ReadContext } from './reader.ts';

/** Statements that begin with a word of the trade, which the language says otherwise or elsewhere. */

/** More would be a list, not a sentence. */
export const mostHomes = 3;
/** A value that goes into a sentence whole. */
export const mostLetters = 20;

/** Directions, by what the size along them is called. */
const directionOf: Readonly<Record<string, string>> = { width: 'wide', height: 'high', depth: 'deep' };

/** `width 30` is short for `size 30 wide`, where a size may be told and none is. */
export function sizeAsItsName({ head, parts, statements }: Statement, beside: readonly string[]): readonly string[] {
  const direction = directionOf[head?.toLowerCase() ?? ''];
  const [size] = parts;
  if (direction === undefined || size === undefined || parts.length > 1 || statements.length > 0) return [];
  const value = size.$cstNode?.text ?? '';
  return isExpression(size) && beside.includes('size') && value.length <= mostLetters
    ? [`size ${value} ${direction}`]
    : [];
}

interface Elsewhere {
  readonly belongs: readonly string[];
  /** The language's own word for it. */
  readonly called?: string;
  /** What it would read there. */
  readonly words?: string;
}

/** Says where the thing belongs, in the language's own words; false where it may be anything. */
export function saidElsewhereIn(
  context: ReadContext,
  statement: Statement,
  at: Origin,
  place: string,
  beside: readonly string[],
): boolean {
  const elsewhere = calledElsewhere(statement, beside);
  if (elsewhere === undefined) return false;
  const { words, ...facts } = elsewhere;
  const head = statement.head ?? '';
  const remove = { kind: 'remove', at: originOf(context, statement) } as const;
  const there = words === undefined ? undefined : theOneBeside(statement, elsewhere.belongs);
  const mends: Mend[] = [{ how: 'remove', values: { words: head }, changes: [remove] }];
  if (there !== undefined && words !== undefined) {
    mends.unshift({
      how: 'say-there',
      values: { words, word: there.head ?? '' },
      changes: [
        remove,
        {
          kind: 'insert-words',
          after: endOfHead(context, there),
          words: `${there.parts.length === 0 ? '' : ','} ${words}`,
        },
      ],
    });
  }
  context.findings.push(wordBelongsElsewhere.at(at, { words: head, place, nearest: '', ...facts }, { mends }));
  return true;
}

/**
 * Where something belongs that has another word elsewhere (`legs` of a piece are `feet` of its case), or that another
 * statement says of itself (`gap 1/8` is said of a face). Undefined where it may be anything.
 */
function calledElsewhere(statement: Statement, beside: readonly string[]): Elsewhere | undefined {
  const head = statement.head?.toLowerCase() ?? '';
  if (homesOfStatement(head).length > 0) return undefined;
  for (const called of sameWords(head)) {
    const belongs = homesOfStatement(called).slice(0, mostHomes);
    if (belongs.length > 0) return { belongs, called };
  }
  const direction = directionOf[head];
  // Told in a second statement, it would be complained of again.
  if (
    direction !== undefined &&
    beside.includes('size') &&
    statementsBeside(statement).some((each) => each.head === 'size')
  ) {
    return { belongs: ["'size'"], called: direction };
  }
  const word = phrasesBegunBy(head).length > 0 ? head : nearestName(head, wordsThatBegin(), 1);
  if (word === undefined) return undefined;
  const homes = new Set(
    phrasesBegunBy(word).flatMap(({ phrase, home }) =>
      isSaidBy(phrase, { head: word, parts: statement.parts }) ? [home] : [],
    ),
  );
  if (homes.size === 0 || homes.size > mostHomes) return undefined;
  const values = statement.parts.map((part) => part.$cstNode?.text ?? '');
  return { belongs: [...homes], words: [word, ...values].join(' '), ...(word === head ? {} : { called: word }) };
}

function statementsBeside({ $container }: Statement): readonly Statement[] {
  return $container.statements;
}

/** The one statement beside this one that it belongs to; undefined where there is none, or more than one. */
function theOneBeside(statement: Statement, belongs: readonly string[]): Statement | undefined {
  const [one, ...others] = statementsBeside(statement).filter(
    (each) => each !== statement && specOf(each).exact && belongs.includes(`'${each.head?.toLowerCase()}'`),
  );
  return others.length === 0 ? one : undefined;
}
