import type { IToken, TokenType } from 'chevrotain';
import { nearestName } from '../names/nearest.ts';
import {
  type AfterWord,
  bareStatement,
  bodyOf,
  fileNoun,
  findStatement,
  type Noun,
  type PhraseItem,
  type StatementSpec,
} from '../schema/index.ts';
import { deepestBraces, mostRepartedWords } from './limits.ts';
import { isQuote } from './name-pattern.ts';
import {
  beginsPhrase,
  isMark,
  isQuoted,
  isWord,
  matchMisspeltPhrase,
  matchPhrase,
  matchPhraseAroundWord,
  skipExpression,
  type TokenView,
} from './phrase-matching.ts';
import type { Slip } from './slips.ts';
import { isBehind, partOf, retag, spanOf, tokenAcross, zeroWidth } from './token-places.ts';

/**
 * Decides, with the vocabulary at hand, where each statement begins and what each quoted string is. Takes braces as
 * they come. It can be fed a text bit by bit, and a copy of it can be fed a guess: `oddities` tells how little sense
 * what it was fed makes.
 */
export interface TokenKinds {
  readonly head: TokenType;
  readonly begin: TokenType;
  readonly name: TokenType;
  readonly reference: TokenType;
  readonly text: TokenType;
  readonly open: TokenType;
  readonly close: TokenType;
}

interface CurrentStatement {
  readonly spec: StatementSpec;
  readonly word: IToken;
  readonly hasBody: boolean;
}

/** A pair of braces that is open. */
export interface OpenBraces {
  readonly noun: Noun;
  /** The word of the statement they belong to. */
  readonly word: IToken | undefined;
  readonly brace: IToken | undefined;
  /** A stray `{`: it and its `}` are left out, what is inside belongs to the braces around it. */
  readonly ghost: boolean;
  readonly current: CurrentStatement | undefined;
}

export class WordSorter {
  readonly #kinds: TokenKinds;
  #view: TokenView = { tokens: [], firstOnLine: [] };
  #frames: OpenBraces[] = [{ noun: fileNoun, word: undefined, brace: undefined, ghost: false, current: undefined }];
  #lastLine = -1;
  #reparted = 0;
  readonly out: IToken[] = [];
  readonly slips: Slip[] = [];
  oddities = 0;

  constructor(kinds: TokenKinds) {
    this.#kinds = kinds;
  }

  /** Stands where this one stands, with nothing sorted and no oddities. */
  fork(): WordSorter {
    const copy = new WordSorter(this.#kinds);
    copy.#frames = [...this.#frames];
    copy.#lastLine = this.#lastLine;
    return copy;
  }

  /** Open braces from the outermost in, without the text itself. */
  get open(): readonly OpenBraces[] {
    return this.#frames.slice(1);
  }

  /** Whether a `{` here would belong to a statement. */
  get mayOpen(): boolean {
    return this.#openStatement() !== undefined;
  }

  /** The word of the statement that is being read. */
  get word(): IToken | undefined {
    return this.#openStatement()?.word;
  }

  /** What the statement that is being read is. */
  get spec(): StatementSpec | undefined {
    return this.#openStatement()?.spec;
  }

  /** What the innermost braces enclose. */
  get noun(): Noun {
    return this.#frame.noun;
  }

  feed(tokens: readonly IToken[]): void {
    const firstOnLine = tokens.map((token) => {
      const first = token.startLine !== this.#lastLine;
      this.#lastLine = token.startLine ?? this.#lastLine;
      return first;
    });
    this.#view = { tokens, firstOnLine };
    let at = 0;
    // The view may grow: words that were joined are parted.
    while (at < this.#view.tokens.length) at = this.#step(at);
  }

  get #frame(): OpenBraces {
    // The text's own frame is never popped.
    return this.#frames[this.#frames.length - 1] as OpenBraces;
  }

  #setCurrent(current: CurrentStatement | undefined): void {
    this.#frames[this.#frames.length - 1] = { ...this.#frame, current };
  }

  /** Handles the token at `at` and whatever belongs to it; returns the index to go on from. */
  #step(at: number): number {
    const token = this.#view.tokens[at] as IToken;
    if (isMark(token, '}')) return this.#closingBrace(at, token);
    if (isMark(token, '{')) return this.#openingBrace(at, token);
    if (isMark(token, ',')) {
      if (this.#openStatement() !== undefined) this.out.push(token);
      return at + 1;
    }
    return (
      this.#phrase(at) ?? this.#misspeltPhrase(at) ?? (isWord(token) ? this.#word(at, token) : this.#value(at, token))
    );
  }

  /** The statement that may still take words: it has no body yet. */
  #openStatement(): CurrentStatement | undefined {
    const { current } = this.#frame;
    return current?.hasBody === false ? current : undefined;
  }

  #phrase(at: number): number | undefined {
    const current = this.#openStatement();
    if (current === undefined) return undefined;
    const match = matchPhrase(this.#view, current.spec, at, this.#frame.noun);
    if (match === undefined) return undefined;
    this.#emit(at, match.end, match.texts);
    return match.end;
  }

  #misspeltPhrase(at: number): number | undefined {
    const current = this.#openStatement();
    if (current === undefined) return undefined;
    const match =
      matchMisspeltPhrase(this.#view, current.spec, at, this.#frame.noun) ??
      matchPhraseAroundWord(this.#view, current.spec, at, this.#frame.noun);
    if (match === undefined) return undefined;
    this.oddities += 2;
    this.#emit(at, match.end, match.texts);
    return match.end;
  }

  #word(at: number, token: IToken): number {
    const { noun } = this.#frame;
    const current = this.#openStatement();
    if (this.#joinPartedWords(at, token)) return at;
    const word = token.image.toLowerCase();
    const known = noun.statements.get(word);
    if (known !== undefined) return this.#begin(at, token, known);
    this.oddities += 2;
    if (this.#splitJoinedWords(at, token)) return at;
    if (current !== undefined) {
      if (beginsPhrase(current.spec, word)) return this.#small(at, token);
      const first = this.#view.firstOnLine[at] === true;
      const nearSmall = nearestName(word, phraseWords(current.spec));
      const nearHead = nearestName(word, [...noun.statements.keys()]);
      if (!first && (nearHead === undefined || nearSmall !== undefined)) return this.#small(at, token);
    }
    return this.#begin(at, token, findStatement(noun, word, this.#afterWord(at)).spec);
  }

  /** `faceinset`, `setback`: two words whose blank was forgotten stand apart from now on. */
  #splitJoinedWords(at: number, token: IToken): boolean {
    if (this.#reparted >= mostRepartedWords) return false;
    const word = token.image.toLowerCase();
    const phrases = this.#openStatement()?.spec.phrases ?? [];
    for (let cut = 2; cut <= word.length - 2; cut++) {
      const [first, second] = [word.slice(0, cut), word.slice(cut)];
      const head = this.#frame.noun.statements.get(first);
      const inPhrase = phrases.some(({ items }) =>
        items.some((item, index) => isItem(item, first) && isItem(items[index + 1], second)),
      );
      if (!inPhrase && (head === undefined || !beginsPhrase(head, second))) continue;
      this.#reparted++;
      const { tokens, firstOnLine } = this.#view;
      const kind = token.tokenType;
      const parts = [partOf(token, 0, cut, kind), partOf(token, cut, word.length, kind)];
      this.#view = {
        tokens: [...tokens.slice(0, at), ...parts, ...tokens.slice(at + 1)],
        firstOnLine: [...firstOnLine.slice(0, at + 1), false, ...firstOnLine.slice(at + 1)],
      };
      return true;
    }
    return false;
  }

  /** `frame and panel`, `toe space`: one word whose hyphens were left out has them from now on. */
  #joinPartedWords(at: number, token: IToken): boolean {
    if (this.#reparted >= mostRepartedWords) return false;
    const { tokens, firstOnLine } = this.#view;
    const run = wordsBeside(tokens, at);
    const [first, second] = run.map(({ image }) => image.toLowerCase());
    if (first === undefined || second === undefined) return false;
    const { statements } = this.#frame.noun;
    const phrases = this.#openStatement()?.spec;
    const head = statements.get(first);
    if (head !== undefined && beginsPhrase(head, second)) return false;
    for (let count = run.length; count > 1; count--) {
      const parts = run.slice(0, count);
      const word = parts.map(({ image }) => image.toLowerCase()).join('-');
      if (!statements.has(word) && (phrases === undefined || !beginsPhrase(phrases, word))) continue;
      this.#reparted++;
      const images = parts.map(({ image }) => image);
      const joined = tokenAcross(token, parts.at(-1) ?? token, images.join('-'));
      const words = images.join(' ');
      this.slips.push({ kind: 'hyphen-left-out', ...spanOf(joined), words, word });
      this.#view = {
        tokens: [...tokens.slice(0, at), joined, ...tokens.slice(at + count)],
        firstOnLine: [...firstOnLine.slice(0, at + 1), ...firstOnLine.slice(at + count)],
      };
      return true;
    }
    return false;
  }

  #afterWord(at: number): AfterWord {
    const { tokens, firstOnLine } = this.#view;
    let end = at + 1;
    while (end < tokens.length && !firstOnLine[end] && !isMark(tokens[end], '{') && !isMark(tokens[end], '}')) end++;
    return { hasName: isQuoted(tokens[at + 1]), hasBody: isMark(tokens[end], '{') };
  }

  #small(at: number, token: IToken): number {
    this.out.push(token);
    return at + 1;
  }

  #begin(at: number, token: IToken, spec: StatementSpec): number {
    this.out.push(retag(token, this.#kinds.head));
    this.#setCurrent({ spec, word: token, hasBody: false });
    const next = this.#view.tokens[at + 1];
    if (!isQuoted(next) || (spec.declares === undefined && spec.phrases.length > 0)) return at + 1;
    this.#noteSlips(next);
    this.out.push(next);
    return at + 2;
  }

  #value(at: number, token: IToken): number {
    const { noun } = this.#frame;
    const end = skipExpression(this.#view.tokens, at);
    if (end === undefined) {
      this.oddities += 2;
      this.slips.push({ kind: 'stray-mark', ...spanOf(token), mark: token.image });
      return at + 1;
    }
    const bare = bareStatement(noun);
    const startsBare =
      noun.bare !== undefined &&
      (matchPhrase(this.#view, bare, at, noun) ?? matchMisspeltPhrase(this.#view, bare, at, noun)) !== undefined;
    if (this.#openStatement() === undefined || startsBare) {
      if (!startsBare) this.oddities += 2;
      this.out.push(zeroWidth(this.#kinds.begin, token.startOffset, token));
      this.#setCurrent({ spec: bare, word: token, hasBody: false });
      const match = this.#phrase(at) ?? this.#misspeltPhrase(at);
      if (match !== undefined) return match;
    }
    this.oddities += 1;
    this.#emit(at, end, isQuoted(token) && end === at + 1 ? [at] : []);
    return end;
  }

  #emit(from: number, to: number, texts: readonly number[]): void {
    for (let at = from; at < to; at++) {
      const token = this.#view.tokens[at] as IToken;
      if (!isQuoted(token)) {
        this.out.push(token);
        continue;
      }
      this.#noteSlips(token);
      this.out.push(retag(token, texts.includes(at) ? this.#kinds.text : this.#kinds.reference));
    }
  }

  /** What is wrong with the marks of a name: one slip at most. */
  #noteSlips(name: IToken): void {
    const { image, startOffset } = name;
    if (image.length < 2 || !isQuote(image.at(-1))) {
      this.slips.push({ kind: 'name-not-closed', ...spanOf(name) });
      return;
    }
    const inner = [...image.slice(1, -1)].findIndex(isQuote);
    if (inner >= 0) {
      const start = startOffset + 1 + inner;
      this.slips.push({ kind: 'stray-mark', start, end: start + 1, mark: image[1 + inner] ?? '' });
    }
  }

  #openingBrace(at: number, token: IToken): number {
    const current = this.#openStatement();
    if (current === undefined) {
      this.oddities += 4;
      this.slips.push({ kind: 'stray-brace', ...spanOf(token), brace: '{' });
      this.#pushGhost(token);
    } else if (this.#frames.length > deepestBraces) {
      this.slips.push({ kind: 'too-deep', ...spanOf(token), limit: deepestBraces });
      this.#pushGhost(token);
    } else {
      if (current.spec.body === undefined) this.oddities += 2;
      this.out.push(token);
      this.#setCurrent({ ...current, hasBody: true });
      const noun = bodyOf(current.spec);
      this.#frames.push({ noun, word: current.word, brace: token, ghost: false, current: undefined });
    }
    return at + 1;
  }

  #closingBrace(at: number, token: IToken): number {
    if (this.#frames.length === 1) {
      this.oddities += 4;
      this.slips.push({ kind: 'stray-brace', ...spanOf(token), brace: '}' });
      return at + 1;
    }
    const frame = this.#frames.pop() as OpenBraces;
    if (frame.ghost) {
      this.#setCurrent(frame.current);
    } else {
      this.out.push(token);
      this.#setCurrent(undefined);
    }
    return at + 1;
  }

  #pushGhost(brace: IToken): void {
    const { noun, current } = this.#frame;
    this.#frames.push({ noun, word: brace, brace, ghost: true, current });
  }
}

/** Words of the language have two hyphens at most. */
const mostHyphened = 3;

/** The words from `at` on between which nothing but a blank stands. */
function wordsBeside(tokens: readonly IToken[], at: number): readonly IToken[] {
  let end = at + 1;
  while (end < at + mostHyphened && isWord(tokens[end]) && isBehind(tokens[end - 1], tokens[end] as IToken)) end++;
  return tokens.slice(at, end);
}

function isItem(item: PhraseItem | undefined, word: string): boolean {
  return item?.kind === 'word' && item.word === word;
}

function phraseWords(spec: StatementSpec): string[] {
  return spec.phrases.flatMap((phrase) => phrase.items.flatMap((item) => (item.kind === 'word' ? [item.word] : [])));
}
