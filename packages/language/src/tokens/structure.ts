import { createTokenInstance, type IToken, type TokenType } from 'chevrotain';
import { nearestName } from '../names/nearest.ts';
import { bareStatement, bodyOf, fileNoun, findStatement, type Noun, type StatementSpec } from '../schema/index.ts';
import { deepestBraces, mostTokens } from './limits.ts';
import {
  beginsPhrase,
  isMark,
  isQuoted,
  isWord,
  matchPhrase,
  skipExpression,
  type TokenView,
} from './phrase-matching.ts';
import type { Slip } from './slips.ts';

/**
 * The structure pass: between lexer and parser it decides, with the vocabulary at hand, where each statement begins and
 * what each quoted string is, and it repairs braces by the indentation of the lines. Whatever text it is given, the
 * tokens it returns form a tree the grammar accepts; what it had to mend or leave out is told as slips.
 */
export interface Structured {
  readonly tokens: IToken[];
  readonly slips: readonly Slip[];
}

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
  readonly indent: number;
  hasBody: boolean;
}

interface Frame {
  readonly noun: Noun;
  /** Indentation of the line on which the braces were opened; -1 for the file itself. */
  readonly indent: number;
  readonly line: number;
  readonly word: IToken | undefined;
  /** A stray `{`: it and its `}` are left out, what is inside belongs to the braces around it. */
  readonly ghost: boolean;
  current: CurrentStatement | undefined;
}

export function structure(raw: readonly IToken[], kinds: TokenKinds): Structured {
  return new StructurePass(
    raw.length > mostTokens ? raw.slice(0, mostTokens) : raw,
    kinds,
    raw.length > mostTokens,
  ).run();
}

class StructurePass {
  readonly #tokens: readonly IToken[];
  readonly #kinds: TokenKinds;
  readonly #view: TokenView;
  readonly #indents: readonly number[];
  readonly #out: IToken[] = [];
  readonly #slips: Slip[] = [];
  /** Braces do not balance: indentation decides. While they do balance they are trusted, however lines are indented. */
  readonly #repairing: boolean;
  #frames: Frame[] = [{ noun: fileNoun, indent: -1, line: -1, word: undefined, ghost: false, current: undefined }];

  constructor(tokens: readonly IToken[], kinds: TokenKinds, cut: boolean) {
    this.#tokens = tokens;
    this.#kinds = kinds;
    const firstOnLine: boolean[] = [];
    const indents: number[] = [];
    let line = -1;
    let indent = 0;
    for (const token of tokens) {
      const first = token.startLine !== line;
      if (first) indent = (token.startColumn ?? 1) - 1;
      firstOnLine.push(first);
      indents.push(indent);
      line = token.startLine ?? line;
    }
    this.#view = { tokens, firstOnLine };
    this.#indents = indents;
    this.#repairing = !bracesBalance(tokens);
    if (cut) {
      const last = tokens.at(-1);
      this.#slips.push({ kind: 'too-long', ...spanOf(last), limit: mostTokens });
    }
  }

  run(): Structured {
    let at = 0;
    while (at < this.#tokens.length) at = this.#step(at);
    while (this.#frames.length > 1) this.#closeMissing(this.#tokens.length);
    return { tokens: this.#out, slips: this.#slips };
  }

  get #frame(): Frame {
    // The file's own frame is never popped.
    return this.#frames[this.#frames.length - 1] as Frame;
  }

  /** Handles the token at `at` and whatever belongs to it; returns the index to go on from. */
  #step(at: number): number {
    const token = this.#tokens[at] as IToken;
    if (this.#repairing && this.#view.firstOnLine[at] === true && !isMark(token, '}')) this.#closeByIndent(at);
    if (isMark(token, '}')) return this.#closingBrace(at, token);
    if (isMark(token, '{')) return this.#openingBrace(at, token);
    if (isMark(token, ',')) {
      if (this.#openStatement() !== undefined) this.#out.push(token);
      return at + 1;
    }
    return this.#phrase(at) ?? (isWord(token) ? this.#word(at, token) : this.#value(at, token));
  }

  /** The statement that may still take words: it has no body yet. */
  #openStatement(): CurrentStatement | undefined {
    const current = this.#frame.current;
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

  #word(at: number, token: IToken): number {
    const { noun } = this.#frame;
    const current = this.#openStatement();
    const word = token.image.toLowerCase();
    const first = this.#view.firstOnLine[at] === true;
    if (noun.statements.has(word)) return this.#begin(at, token, noun.statements.get(word) as StatementSpec);
    if (current !== undefined) {
      const body = current.spec.body?.();
      const inside = body?.statements.has(word) === true;
      const deeper = first && (this.#indents[at] ?? 0) > current.indent;
      if (this.#repairing && body !== undefined && inside && (!first || deeper)) {
        this.#openMissing(current, body, at);
        return at;
      }
      if (beginsPhrase(current.spec, word)) return this.#small(at, token);
      const nearSmall = nearestName(word, phraseWords(current.spec));
      const nearHead = nearestName(word, [...noun.statements.keys()]);
      if (!first && (nearHead === undefined || nearSmall !== undefined)) return this.#small(at, token);
    }
    return this.#begin(at, token, findStatement(noun, word).spec);
  }

  #small(at: number, token: IToken): number {
    this.#out.push(token);
    return at + 1;
  }

  #begin(at: number, token: IToken, spec: StatementSpec): number {
    this.#out.push(retag(token, this.#kinds.head));
    this.#frame.current = { spec, word: token, indent: this.#indents[at] ?? 0, hasBody: false };
    const next = this.#tokens[at + 1];
    if (!isQuoted(next) || (spec.declares === undefined && spec.phrases.length > 0)) return at + 1;
    this.#noteUnclosed(next);
    this.#out.push(next);
    return at + 2;
  }

  #value(at: number, token: IToken): number {
    const { noun } = this.#frame;
    const end = skipExpression(this.#tokens, at);
    if (end === undefined) {
      this.#slips.push({ kind: 'stray-mark', ...spanOf(token), mark: token.image });
      return at + 1;
    }
    const bare = bareStatement(noun);
    const startsBare = noun.bare !== undefined && matchPhrase(this.#view, bare, at, noun) !== undefined;
    if (this.#openStatement() === undefined || startsBare) {
      this.#out.push(zeroWidth(this.#kinds.begin, token.startOffset, token));
      this.#frame.current = { spec: bare, word: token, indent: this.#indents[at] ?? 0, hasBody: false };
      const match = this.#phrase(at);
      if (match !== undefined) return match;
    }
    this.#emit(at, end, isQuoted(token) && end === at + 1 ? [at] : []);
    return end;
  }

  #emit(from: number, to: number, texts: readonly number[]): void {
    for (let at = from; at < to; at++) {
      const token = this.#tokens[at] as IToken;
      if (!isQuoted(token)) {
        this.#out.push(token);
        continue;
      }
      this.#noteUnclosed(token);
      this.#out.push(retag(token, texts.includes(at) ? this.#kinds.text : this.#kinds.reference));
    }
  }

  #noteUnclosed(token: IToken): void {
    if (token.image.length < 2 || !/["“”]$/.test(token.image)) {
      this.#slips.push({ kind: 'name-not-closed', ...spanOf(token) });
    }
  }

  #openingBrace(at: number, token: IToken): number {
    const current = this.#openStatement();
    const next = this.#tokens[at + 1];
    const indent = this.#indents[at] ?? 0;
    if (current === undefined || (this.#repairing && this.#looksStray(at, current, next))) {
      this.#slips.push({ kind: 'stray-brace', ...spanOf(token), brace: '{' });
      // While repairing its partner is missing too, so nothing waits for one.
      if (!this.#repairing) this.#pushGhost(indent, token);
      return at + 1;
    }
    if (this.#frames.length > deepestBraces) {
      this.#slips.push({ kind: 'too-deep', ...spanOf(token), limit: deepestBraces });
      this.#pushGhost(indent, token);
      return at + 1;
    }
    this.#out.push(token);
    this.#push(bodyOf(current.spec), current, indent, token.startLine ?? 0);
    return at + 1;
  }

  /** A `{` that was put where none belongs: nothing that the body may hold follows it, and no deeper line. */
  #looksStray(at: number, current: CurrentStatement, next: IToken | undefined): boolean {
    if (next === undefined) return false;
    if (this.#view.firstOnLine[at + 1] === true) {
      return !isMark(next, '}') && (this.#indents[at + 1] ?? 0) <= (this.#indents[at] ?? 0);
    }
    if (isMark(next, '}')) return false;
    const body = bodyOf(current.spec);
    if (isWord(next)) return !body.statements.has(next.image.toLowerCase());
    return body.bare === undefined || matchPhrase(this.#view, body.bare, at + 1, body) === undefined;
  }

  #closingBrace(at: number, token: IToken): number {
    if (this.#repairing) {
      const indent = this.#indents[at] ?? 0;
      if (this.#view.firstOnLine[at] === true) {
        while (this.#frames.length > 1 && this.#frame.indent > indent) this.#closeMissing(at);
        if (this.#frame.indent < indent) return this.#strayClose(at, token);
      } else if (this.#frame.line !== token.startLine && !this.#dedentFollows(at)) {
        return this.#strayClose(at, token);
      }
    }
    if (this.#frames.length === 1) return this.#strayClose(at, token);
    const frame = this.#frames.pop() as Frame;
    if (!frame.ghost) {
      this.#out.push(token);
      this.#frame.current = undefined;
    }
    return at + 1;
  }

  #dedentFollows(at: number): boolean {
    let next = at + 1;
    while (isMark(this.#tokens[next], '}') && this.#view.firstOnLine[next] !== true) next++;
    if (this.#tokens[next] === undefined) return true;
    return this.#view.firstOnLine[next] === true && (this.#indents[next] ?? 0) <= this.#frame.indent;
  }

  #strayClose(at: number, token: IToken): number {
    this.#slips.push({ kind: 'stray-brace', ...spanOf(token), brace: '}' });
    return at + 1;
  }

  #closeByIndent(at: number): void {
    const line = this.#tokens[at]?.startLine ?? 0;
    while (this.#frames.length > 1 && this.#frame.indent >= (this.#indents[at] ?? 0) && this.#frame.line < line) {
      this.#closeMissing(at);
    }
  }

  #closeMissing(at: number): void {
    const frame = this.#frames.pop() as Frame;
    if (frame.ghost) return;
    const before = this.#tokens[at - 1] as IToken;
    const closeAt = (before.endOffset ?? before.startOffset) + 1;
    this.#out.push(zeroWidth(this.#kinds.close, closeAt, before));
    this.#slips.push({ kind: 'brace-not-closed', ...spanOf(frame.word), word: frame.word?.image ?? '', closeAt });
    this.#frame.current = undefined;
  }

  #openMissing(current: CurrentStatement, body: Noun, at: number): void {
    const before = this.#tokens[at - 1] as IToken;
    const openAt = (before.endOffset ?? before.startOffset) + 1;
    this.#out.push(zeroWidth(this.#kinds.open, openAt, before));
    this.#slips.push({ kind: 'brace-not-opened', ...spanOf(current.word), word: current.word.image, openAt });
    this.#push(body, current, current.indent, current.word.startLine ?? 0);
  }

  #push(noun: Noun, opener: CurrentStatement, indent: number, line: number): void {
    opener.hasBody = true;
    this.#frames.push({ noun, indent, line, word: opener.word, ghost: false, current: undefined });
  }

  #pushGhost(indent: number, token: IToken): void {
    const { noun, current } = this.#frame;
    this.#frames.push({ noun, indent, line: token.startLine ?? 0, word: token, ghost: true, current });
  }
}

function phraseWords(spec: StatementSpec): string[] {
  return spec.phrases.flatMap((phrase) => phrase.items.flatMap((item) => (item.kind === 'word' ? [item.word] : [])));
}

function bracesBalance(tokens: readonly IToken[]): boolean {
  let depth = 0;
  for (const token of tokens) {
    if (isMark(token, '{')) depth++;
    else if (isMark(token, '}') && --depth < 0) return false;
  }
  return depth === 0;
}

function spanOf(token: IToken | undefined): { start: number; end: number } {
  if (token === undefined) return { start: 0, end: 0 };
  return { start: token.startOffset, end: token.startOffset + token.image.length };
}

function retag(token: IToken, kind: TokenType): IToken {
  return { ...token, tokenType: kind, tokenTypeIdx: kind.tokenTypeIdx as number };
}

/** A token that takes no room, placed at `offset` on the line of `beside`. */
function zeroWidth(kind: TokenType, offset: number, beside: IToken): IToken {
  const line = beside.endLine ?? beside.startLine ?? 1;
  const column = (beside.startColumn ?? 1) + (offset - beside.startOffset);
  return createTokenInstance(kind, '', offset, offset, line, line, column, column);
}
