import { isWord, type Part, type Statement } from '../generated/ast.ts';
import type { Phrase, StatementSpec } from '../schema/index.ts';
import { partFits, readParts } from './phrases.ts';

/** More than these would be a list, and none of them likelier than another. */
const MOST_OFFERED = 3;

/**
 * What words that no phrase takes are most likely short for, in full: a phrase that they begin (`opens 110`), one of
 * which they leave a word out, or one with a word too many (`3/4 from the wall`). Empty where nothing or too much is.
 */
export function phrasesHalfSaid(statement: Statement, spec: StatementSpec, run: readonly Part[]): readonly string[] {
  if (run.length < 2 || run.length > 8) return [];
  const said = new Set(readParts(statement, spec).phrases.map(({ phrase }) => phrase.pattern));
  const open = spec.phrases.filter(({ checked, pattern }) => checked && !said.has(pattern));
  const begun = distinct(open.flatMap((phrase) => (isBegunBy(phrase, run) ? filled(phrase, run) : [])));
  const meant = begun.length > 0 ? begun : distinct(open.flatMap((phrase) => oneWordOff(phrase, run)));
  return meant.length > MOST_OFFERED ? [] : meant;
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
