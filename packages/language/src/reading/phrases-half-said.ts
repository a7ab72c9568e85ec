import { isWord, type Part, type Statement } from '../generated/ast.ts';
import type { Phrase, StatementSpec } from '../schema/index.ts';
import { samePhrases } from '../schema/trade-words.ts';
import { partFits, readParts } from './phrases.ts';
import { directions } from './sizes-half-said.ts';

/** More than these would be a list, and none of them likelier than another. */
const MOST_OFFERED = 3;

/**
 * What words that no phrase takes are most likely short for, in full: a phrase that they begin (`opens 110`), one in another
 * order (`3/4 thick`), one of which they leave a word out or have one too many (`3/4 from the wall`), or one that measures
 * in another direction (`3 high`). Empty where nothing or too much is.
 */
export function phrasesHalfSaid(statement: Statement, spec: StatementSpec, run: readonly Part[]): readonly string[] {
  if (run.length < 2 || run.length > 8) return [];
  const open = notYetSaid(statement, spec);
  for (const meaning of [begunBy, inAnotherOrder, oneWordOff, inAnotherDirection]) {
    const meant = distinct(open.flatMap((phrase) => meaning(phrase, run)));
    if (meant.length > 0) return meant.length > MOST_OFFERED ? [] : meant;
  }
  return [];
}

/** Phrases that these words begin and that go on with a value, which nobody knows: `in rabbet … deep`. */
export function phrasesToGoOnWith(statement: Statement, spec: StatementSpec, run: readonly Part[]): readonly string[] {
  if (!run.every(isWord)) return [];
  const begun = notYetSaid(statement, spec).filter((phrase) => isBegunBy(phrase, run));
  const meant = begun.map(({ items }) => items.map((item) => (item.kind === 'word' ? item.word : '…')).join(' '));
  return meant.length > MOST_OFFERED ? [] : meant;
}

/** The phrases without values of which this is one word, or what the language says for a word of the trade. */
export function phrasesOfWord(statement: Statement, spec: StatementSpec, word: string): readonly string[] {
  const open = notYetSaid(statement, spec).filter(({ items }) => items.every(({ kind }) => kind === 'word'));
  const same = samePhrases(word);
  const meant = open.filter(({ pattern }) => pattern.split(' ').includes(word) || same.includes(pattern));
  return meant.length > MOST_OFFERED ? [] : meant.map(({ pattern }) => pattern);
}

function notYetSaid(statement: Statement, spec: StatementSpec): readonly Phrase[] {
  const said = new Set(readParts(statement, spec).phrases.map(({ phrase }) => phrase.pattern));
  return spec.phrases.filter(({ checked, pattern }) => checked && !said.has(pattern));
}

function begunBy(phrase: Phrase, run: readonly Part[]): readonly string[] {
  return isBegunBy(phrase, run) ? filled(phrase, run) : [];
}

/** A value and its word changed about. Longer phrases have more orders than anyone would say. */
function inAnotherOrder(phrase: Phrase, run: readonly Part[]): readonly string[] {
  return run.length === 2 && phrase.items.length === 2 && fits(phrase.items, [...run].reverse())
    ? filled(phrase, run)
    : [];
}

function inAnotherDirection(phrase: Phrase, run: readonly Part[]): readonly string[] {
  const [size, direction] = run;
  const [slot, word] = phrase.items;
  if (size === undefined || direction === undefined || run.length > 2 || phrase.items.length !== 2) return [];
  if (!isWord(direction) || !directions.has(direction.word.toLowerCase())) return [];
  if (slot === undefined || !partFits(slot, size) || word?.kind !== 'word' || !directions.has(word.word)) return [];
  return filled(phrase, run);
}

function isBegunBy({ items }: Phrase, run: readonly Part[]): boolean {
  return items.length > run.length && fits(items.slice(0, run.length), run);
}

function oneWordOff(phrase: Phrase, run: readonly Part[]): readonly string[] {
  const { items } = phrase;
  if (items.length === run.length + 1) {
    const isOff = items.some(
      (item, at) =>
        item.kind === 'word' &&
        fits(
          items.filter((_, i) => i !== at),
          run,
        ),
    );
    return isOff ? filled(phrase, run) : [];
  }
  if (items.length !== run.length - 1) return [];
  const extra = run.findIndex(
    (part, at) =>
      isWord(part) &&
      fits(
        items,
        run.filter((_, i) => i !== at),
      ),
  );
  return extra < 0 ? [] : filled(phrase, run);
}

/** At least one of its words is said: a value alone may stand for anything. */
function fits(items: Phrase['items'], run: readonly Part[]): boolean {
  return (
    items.some(({ kind }) => kind === 'word') &&
    items.every((item, at) => {
      const part = run[at];
      return part !== undefined && partFits(item, part);
    })
  );
}

/** The phrase with the values of the run in its slots; nothing where a value is missing. */
function filled({ items }: Phrase, run: readonly Part[]): readonly string[] {
  const values = run.filter((part) => !isWord(part)).map((part) => part.$cstNode?.text ?? '');
  const slots = items.filter(({ kind }) => kind === 'slot').length;
  return slots === values.length
    ? [items.map((item) => (item.kind === 'word' ? item.word : (values.shift() ?? ''))).join(' ')]
    : [];
}

function distinct(words: readonly string[]): readonly string[] {
  return [...new Set(words)];
}
