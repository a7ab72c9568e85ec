import type { Noun, Phrase, StatementSpec } from './phrase.ts';
import { fileNoun } from './piece.ts';

/** Where each word and each phrase of small words is at home, for a word that stands in the wrong place. */

interface Homes {
  /** Braces that may hold the statement, in the reader's words. */
  readonly statements: ReadonlyMap<string, readonly string[]>;
  /** Statements that may say the phrase; only phrases without values, which mean the same wherever they are said. */
  readonly phrases: ReadonlyMap<string, readonly string[]>;
  /** Phrases that a word begins and a value goes on with, each with the statement that may say it. */
  readonly begun: ReadonlyMap<string, readonly BegunPhrase[]>;
}

export interface BegunPhrase {
  readonly phrase: Phrase;
  /** In the reader's words. */
  readonly home: string;
}

let gathered: Homes | undefined;

export function homesOfStatement(word: string): readonly string[] {
  return homes().statements.get(word.toLowerCase()) ?? [];
}

export function homesOfPhrase(words: string): readonly string[] {
  return homes().phrases.get(words.toLowerCase()) ?? [];
}

/** The phrases with values that begin with a word, such as `gap <length>`, wherever they may be said. */
export function phrasesBegunBy(word: string): readonly BegunPhrase[] {
  return homes().begun.get(word.toLowerCase()) ?? [];
}

/** All words that begin such a phrase. */
export function wordsThatBegin(): Iterable<string> {
  return homes().begun.keys();
}

/** Braces in the reader's words: `'face'`, `a file`. */
export function nounWords(noun: Noun): string {
  return noun.id === 'file' ? 'a file' : `'${noun.id}'`;
}

function homes(): Homes {
  if (gathered !== undefined) return gathered;
  const statements = new Map<string, { readonly checked: boolean; readonly home: string }[]>();
  const phrases = new Map<string, Set<string>>();
  const begun = new Map<string, BegunPhrase[]>();
  const seen = new Set<Noun>();
  const waiting: Noun[] = [fileNoun];
  for (let noun = waiting.shift(); noun !== undefined; noun = waiting.shift()) {
    if (seen.has(noun)) continue;
    seen.add(noun);
    for (const [word, spec] of noun.statements) {
      statements.set(word, [...(statements.get(word) ?? []), { checked: spec.checked, home: nounWords(noun) }]);
      addPhrases(spec, phrases, begun);
      const body = spec.body?.();
      if (body !== undefined) waiting.push(body);
    }
  }
  gathered = {
    // What is computed comes before what is only kept: 'door' is a front before it is a door of the room.
    statements: new Map([...statements].map(([word, found]) => [word, preferChecked(found)])),
    phrases: new Map([...phrases].map(([words, found]) => [words, [...found]])),
    begun,
  };
  return gathered;
}

function addPhrases(spec: StatementSpec, phrases: Map<string, Set<string>>, begun: Map<string, BegunPhrase[]>): void {
  const home = `'${spec.word}'`;
  for (const phrase of spec.phrases) {
    const [first] = phrase.items;
    if (!phrase.checked) continue;
    if (phrase.items.every((item) => item.kind === 'word')) {
      phrases.set(phrase.pattern, (phrases.get(phrase.pattern) ?? new Set()).add(home));
    } else if (first?.kind === 'word') {
      begun.set(first.word, [...(begun.get(first.word) ?? []), { phrase, home }]);
    }
  }
}

function preferChecked(found: readonly { readonly checked: boolean; readonly home: string }[]): readonly string[] {
  const checked = found.filter((each) => each.checked);
  return [...new Set((checked.length > 0 ? checked : found).map((each) => each.home))];
}
