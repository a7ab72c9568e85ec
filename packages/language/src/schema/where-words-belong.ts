import type { Noun, StatementSpec } from './phrase.ts';
import { fileNoun } from './piece.ts';

/** Where each word and each phrase of small words is at home, for a word that stands in the wrong place. */

interface Homes {
  /** Braces that may hold the statement, in the reader's words. */
  readonly statements: ReadonlyMap<string, readonly string[]>;
  /** Statements that may say the phrase; only phrases without values, which mean the same wherever they are said. */
  readonly phrases: ReadonlyMap<string, readonly string[]>;
}

let gathered: Homes | undefined;

export function homesOfStatement(word: string): readonly string[] {
  return homes().statements.get(word.toLowerCase()) ?? [];
}

export function homesOfPhrase(words: string): readonly string[] {
  return homes().phrases.get(words.toLowerCase()) ?? [];
}

/** Braces in the reader's words: `'face'`, `a file`. */
export function nounWords(noun: Noun): string {
  return noun.id === 'file' ? 'a file' : `'${noun.id}'`;
}

function homes(): Homes {
  if (gathered !== undefined) return gathered;
  const statements = new Map<string, { readonly checked: boolean; readonly home: string }[]>();
  const phrases = new Map<string, Set<string>>();
  const seen = new Set<Noun>();
  const waiting: Noun[] = [fileNoun];
  for (let noun = waiting.shift(); noun !== undefined; noun = waiting.shift()) {
    if (seen.has(noun)) continue;
    seen.add(noun);
    for (const [word, spec] of noun.statements) {
      statements.set(word, [...(statements.get(word) ?? []), { checked: spec.checked, home: nounWords(noun) }]);
      addPhrases(spec, phrases);
      const body = spec.body?.();
      if (body !== undefined) waiting.push(body);
    }
  }
  gathered = {
    // What is computed comes before what is only kept: 'door' is a front before it is a door of the room.
    statements: new Map([...statements].map(([word, found]) => [word, preferChecked(found)])),
    phrases: new Map([...phrases].map(([words, found]) => [words, [...found]])),
  };
  return gathered;
}

function addPhrases(spec: StatementSpec, phrases: Map<string, Set<string>>): void {
  for (const { pattern, items, checked } of spec.phrases) {
    if (!checked || items.some((item) => item.kind === 'slot')) continue;
    const known = phrases.get(pattern) ?? new Set();
    known.add(`'${spec.word}'`);
    phrases.set(pattern, known);
  }
}

function preferChecked(found: readonly { readonly checked: boolean; readonly home: string }[]): readonly string[] {
  const checked = found.filter((each) => each.checked);
  return [...new Set((checked.length > 0 ? checked : found).map((each) => each.home))];
}
