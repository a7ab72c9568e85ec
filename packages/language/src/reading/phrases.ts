import {
  type Expression,
  isComma,
  isExpression,
  isPlainText,
  isReference,
  isWord,
  type Part,
  type Statement,
} from '../generated/ast.ts';
import type { Phrase, PhraseItem, StatementSpec } from '../schema/index.ts';

/** Reads the parts of a statement as phrases of its vocabulary entry. */

export interface ReadPhrase {
  readonly phrase: Phrase;
  readonly parts: readonly Part[];
  /** What stands in the slots, in order. */
  readonly slots: readonly Part[];
}

export interface ReadParts {
  readonly phrases: readonly ReadPhrase[];
  /** Runs of parts that no phrase takes. */
  readonly unread: readonly (readonly Part[])[];
}

const cache = new WeakMap<Statement, ReadParts>();

/** Every part lies in exactly one phrase or in one unread run; commas are in neither. */
export function readParts(statement: Statement, spec: StatementSpec): ReadParts {
  const known = cache.get(statement);
  if (known !== undefined) return known;
  const phrases: ReadPhrase[] = [];
  const unread: Part[][] = [];
  let run: Part[] = [];
  const endRun = () => {
    if (run.length > 0) unread.push(run);
    run = [];
  };
  const { parts } = statement;
  for (let at = 0; at < parts.length; ) {
    const part = parts[at] as Part;
    if (isComma(part)) {
      endRun();
      at++;
      continue;
    }
    const read = longestPhrase(parts, spec, at);
    if (read === undefined) {
      run.push(part);
      at++;
    } else {
      endRun();
      phrases.push(read);
      at += read.parts.length;
    }
  }
  endRun();
  const result = { phrases, unread };
  cache.set(statement, result);
  return result;
}

function longestPhrase(parts: readonly Part[], spec: StatementSpec, at: number): ReadPhrase | undefined {
  for (const phrase of spec.phrases) {
    const slots: Part[] = [];
    const fits = phrase.items.every((item, i) => {
      const part = parts[at + i];
      if (part === undefined || !partFits(item, part)) return false;
      if (item.kind === 'slot') slots.push(part);
      return true;
    });
    if (fits) return { phrase, parts: parts.slice(at, at + phrase.items.length), slots };
  }
  return undefined;
}

export function partFits(item: PhraseItem, part: Part): boolean {
  if (item.kind === 'word') return isWord(part) && part.word.toLowerCase() === item.word;
  if (item.refers) return isReference(part);
  if (item.slot === 'path') return isPlainText(part);
  return isExpression(part);
}

export function expressionIn(read: ReadPhrase | undefined, slot = 0): Expression | undefined {
  const part = read?.slots[slot];
  return part !== undefined && isExpression(part) ? part : undefined;
}
