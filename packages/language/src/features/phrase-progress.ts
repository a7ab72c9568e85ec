import type { IToken } from 'chevrotain';
import type { Noun, Phrase, StatementSpec } from '../schema/index.ts';
import { isMark, isQuoted, isWord, matchPhrase, skipExpression } from '../tokens/phrase-matching.ts';

/** How far the phrases of a half-written statement have come, and what may follow. */

export interface Continuation {
  readonly phrase: Phrase;
  /** The item that comes next. */
  readonly next: number;
}

export interface PhraseProgress {
  readonly continuations: readonly Continuation[];
  /** A phrase has begun and waits for its next item. */
  readonly isWithin: boolean;
}

/** `parts` are the tokens behind the statement's word and name. A phrase that is said already is not offered again. */
export function phraseProgress(spec: StatementSpec, parts: readonly IToken[], noun: Noun): PhraseProgress {
  const view = { tokens: parts, firstOnLine: parts.map(() => false) };
  const said = new Set<Phrase>();
  let longer: Continuation[] = [];
  for (let at = 0; at < parts.length; ) {
    longer = [];
    if (isMark(parts[at], ',')) {
      at++;
      continue;
    }
    const match = matchPhrase(view, spec, at, noun);
    const begun = begunAt(spec, parts, at);
    if (match === undefined && begun.length > 0) return { continuations: begun, isWithin: true };
    if (match !== undefined) said.add(match.phrase);
    if (match?.end === parts.length) longer = begun;
    at = match?.end ?? at + 1;
  }
  const fresh = spec.asWritten.filter((phrase) => !said.has(phrase)).map((phrase) => ({ phrase, next: 0 }));
  return { continuations: [...longer, ...fresh], isWithin: false };
}

/** Phrases whose first items take all tokens from `start` on, and that want more. */
function begunAt(spec: StatementSpec, parts: readonly IToken[], start: number): Continuation[] {
  return spec.asWritten.flatMap((phrase) => {
    let at = start;
    for (const [index, item] of phrase.items.entries()) {
      if (at >= parts.length) return [{ phrase, next: index }];
      const token = parts[at];
      if (item.kind === 'word') {
        if (!isWord(token) || token.image.toLowerCase() !== item.word) return [];
        at++;
      } else if (item.refers || item.slot === 'path') {
        if (!isQuoted(token)) return [];
        at++;
      } else {
        const end = skipExpression(parts, at);
        if (end === undefined) return [];
        at = end;
      }
    }
    return [];
  });
}
