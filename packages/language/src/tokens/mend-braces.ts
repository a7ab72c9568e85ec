import type { IToken } from 'chevrotain';
import { vocabulary } from '../schema/vocabulary.ts';
import { longestMendedLine } from './limits.ts';
import { isMark, isWord } from './phrase-matching.ts';
import type { Slip } from './slips.ts';
import { type TokenKinds, WordSorter } from './sort-words.ts';
import { countBraces, isBrace, type TokenLine, toLines } from './token-lines.ts';
import { endOf, spanOf, zeroWidth } from './token-places.ts';

/**
 * Repairs braces that do not balance. The indentation of the next line says how many braces a line should leave open;
 * a line that leaves others is mended by the one brace whose loss or gain makes most sense of its words. While braces
 * balance they are trusted, however the lines are indented.
 */
export interface MendedBraces {
  /** Balanced: braces that were left out are gone, those that were missing take no room. */
  readonly tokens: readonly IToken[];
  readonly slips: readonly Slip[];
}

/** `isBeginning`: the text goes on behind its last token, so nothing is closed there. */
export function mendBraces(
  tokens: readonly IToken[],
  strays: readonly number[],
  kinds: TokenKinds,
  isBeginning = false,
): MendedBraces {
  if (isBalanced(tokens)) return { tokens, slips: [] };
  const lines = toLines(tokens, strays);
  const mender = new BraceMender(lines, kinds);
  if (isIndented(lines)) mender.byIndent();
  else mender.trust(tokens);
  if (!isBeginning) mender.end();
  return { tokens: mender.tokens, slips: mender.slips };
}

function isBalanced(tokens: readonly IToken[]): boolean {
  const { opens, closes } = countBraces(tokens);
  return opens === 0 && closes === 0;
}

/** Whether lines are indented by depth at all: most of those that end with `{` have a deeper one below. */
function isIndented(lines: readonly TokenLine[]): boolean {
  const openers = lines.slice(0, -1).flatMap((line, index) => {
    const isOpener = !line.onlyBraces && isMark(line.tokens.at(-1), '{');
    return isOpener ? [(lines[index + 1]?.indent ?? 0) > line.indent] : [];
  });
  return openers.length < 2 || openers.filter((isDeeper) => isDeeper).length * 2 >= openers.length;
}

interface Attempt {
  readonly tokens: readonly IToken[];
  readonly cost: number;
  readonly removed?: IToken;
  readonly added?: IToken;
}

class BraceMender {
  readonly tokens: IToken[] = [];
  readonly slips: Slip[] = [];
  readonly #lines: readonly TokenLine[];
  readonly #kinds: TokenKinds;
  readonly #sorter: WordSorter;
  readonly #indentOfLine: ReadonlyMap<number, number>;

  constructor(lines: readonly TokenLine[], kinds: TokenKinds) {
    this.#lines = lines;
    this.#kinds = kinds;
    this.#sorter = new WordSorter(kinds);
    this.#indentOfLine = new Map(
      lines.flatMap(({ tokens, indent }) => tokens.map((token) => [token.startLine ?? 0, indent] as const)),
    );
  }

  /** Braces count as they stand; one that closes nothing is left out. */
  trust(tokens: readonly IToken[]): void {
    for (const token of tokens) {
      if (isMark(token, '}') && this.#sorter.open.length === 0) this.#leaveOut(token);
      else this.#accept([token]);
    }
  }

  byIndent(): void {
    for (const index of this.#lines.keys()) this.#line(index);
  }

  #line(index: number): void {
    const line = this.#lines[index] as TokenLine;
    if (line.onlyBraces) {
      this.#bracesLine(line, this.#lines[index - 1], this.#lines[index + 1]);
      return;
    }
    this.#closeDeeper((indent) => indent >= line.indent);
    const wanted = this.#wanted(index);
    if (wanted === undefined || fits(line.tokens, wanted)) {
      this.#accept(line.tokens);
      return;
    }
    const isShort = line.tokens.length <= longestMendedLine;
    const best = isShort
      ? this.#bestAttempt(line, wanted, wanted === 1 ? (this.#lines[index + 1]?.tokens ?? []) : [])
      : undefined;
    if (best === undefined) {
      this.#keepPairs(line.tokens, wanted);
      return;
    }
    if (best.removed !== undefined) this.#leaveOut(best.removed);
    const at = best.added === undefined ? best.tokens.length : best.tokens.indexOf(best.added);
    this.#accept(best.tokens.slice(0, at));
    if (best.added !== undefined) this.#noteAdded(best.added);
    this.#accept(best.tokens.slice(at));
  }

  /** Closes whatever the text leaves open: one slip, for the text simply ends too early. */
  end(): void {
    const last = this.tokens.at(-1);
    const open = [...this.#sorter.open].reverse();
    const [innermost] = open;
    if (last === undefined || innermost === undefined) return;
    const closeAt = endOf(last);
    this.slips.push({
      kind: 'brace-not-closed',
      ...spanOf(innermost.word),
      word: innermost.word?.image ?? '',
      closeAt,
      around: open.slice(1).map((each) => spanOf(each.word).start),
      atEnd: true,
    });
    this.#accept(open.map(() => zeroWidth(this.#kinds.close, closeAt, last)));
  }

  /** How many braces a line should leave open; undefined for the last line, which may be half typed. */
  #wanted(index: number): 0 | 1 | undefined {
    const [line, next] = [this.#lines[index], this.#lines[index + 1]];
    const first = next?.tokens[0];
    if (line === undefined || next === undefined || first === undefined) return undefined;
    if (next.indent <= line.indent) return 0;
    const begins = isBrace(first) || (isWord(first) && vocabulary().words.has(first.image.toLowerCase()));
    return begins || countBraces(line.tokens).opens > 0 ? 1 : 0;
  }

  #bracesLine(line: TokenLine, before: TokenLine | undefined, next: TokenLine | undefined): void {
    const nextIndent = next?.indent ?? -1;
    let kept = line.tokens.find((token) => isMark(token, '}'));
    if (kept !== undefined) {
      // What follows is still inside: this brace was thrown in.
      if (nextIndent > line.indent) kept = undefined;
      else {
        this.#closeDeeper((indent) => indent > line.indent);
        if (this.#innermostIndent() !== line.indent) kept = undefined;
      }
    } else if (before?.indent === line.indent && nextIndent > line.indent && this.#sorter.mayOpen) {
      kept = line.tokens[0];
    }
    for (const token of line.tokens) {
      if (token === kept) this.#accept([token]);
      else this.#leaveOut(token);
    }
  }

  #innermostIndent(): number | undefined {
    const line = this.#sorter.open.at(-1)?.brace?.startLine;
    return line === undefined ? undefined : this.#indentOfLine.get(line);
  }

  /** Closes braces for as long as the innermost were opened on a line of such an indentation. */
  #closeDeeper(isOver: (indent: number) => boolean): void {
    for (;;) {
      const [last, innermost, indent] = [this.tokens.at(-1), this.#sorter.open.at(-1), this.#innermostIndent()];
      if (last === undefined || innermost === undefined || indent === undefined || !isOver(indent)) return;
      const closeAt = endOf(last);
      this.#accept([zeroWidth(this.#kinds.close, closeAt, last)]);
      this.slips.push({
        kind: 'brace-not-closed',
        ...spanOf(innermost.word),
        word: innermost.word?.image ?? '',
        closeAt,
        around: [],
        atEnd: false,
      });
    }
  }

  /** The line with one brace less or one more that fits and makes most sense; taking out goes before putting in. */
  #bestAttempt(line: TokenLine, wanted: 0 | 1, below: readonly IToken[]): Attempt | undefined {
    let best: Attempt | undefined;
    const attempt = (tokens: readonly IToken[], base: number, more: Pick<Attempt, 'removed' | 'added'>) => {
      if (!fits(tokens, wanted)) return;
      const trial = this.#sorter.fork();
      trial.feed([...tokens, ...below]);
      const cost = base + trial.oddities;
      // Of closing braces that would do, the last one: what can be inside is inside.
      if (best === undefined || cost < best.cost || (cost === best.cost && isMark(more.added, '}'))) {
        best = { tokens, cost, ...more };
      }
    };
    const { tokens } = line;
    tokens.forEach((token, at) => {
      if (isBrace(token)) attempt([...tokens.slice(0, at), ...tokens.slice(at + 1)], 0, { removed: token });
    });
    for (const kind of [this.#kinds.open, this.#kinds.close]) {
      for (let at = 1; at <= tokens.length; at++) {
        const before = tokens[at - 1] as IToken;
        const added = zeroWidth(kind, endOf(before), before);
        attempt([...tokens.slice(0, at), added, ...tokens.slice(at)], 1, { added });
      }
    }
    return best;
  }

  /** More than one brace is wrong in this line: those that pair stay, and the last ones left open if any are wanted. */
  #keepPairs(tokens: readonly IToken[], wanted: 0 | 1): void {
    const waiting: IToken[] = [];
    const unpaired = new Set<IToken>();
    for (const token of tokens) {
      if (isMark(token, '{')) waiting.push(token);
      else if (isMark(token, '}') && waiting.pop() === undefined) unpaired.add(token);
    }
    for (const token of waiting.slice(0, waiting.length - wanted)) unpaired.add(token);
    for (const token of tokens) {
      if (unpaired.has(token)) this.#leaveOut(token);
      else this.#accept([token]);
    }
  }

  /** To be called when everything before the brace was accepted. */
  #noteAdded(brace: IToken): void {
    const at = brace.startOffset;
    const isOpening = isMark(brace, '{');
    const word = isOpening ? this.#sorter.word : this.#sorter.open.at(-1)?.word;
    const blamed = { ...spanOf(word), word: word?.image ?? '' };
    this.slips.push(
      isOpening
        ? { kind: 'brace-not-opened', ...blamed, openAt: at }
        : { kind: 'brace-not-closed', ...blamed, closeAt: at, around: [], atEnd: false },
    );
  }

  #accept(tokens: readonly IToken[]): void {
    this.#sorter.feed(tokens);
    this.tokens.push(...tokens);
  }

  #leaveOut(token: IToken): void {
    this.slips.push({ kind: 'stray-brace', ...spanOf(token), brace: isMark(token, '{') ? '{' : '}' });
  }
}

function fits(tokens: readonly IToken[], wanted: 0 | 1): boolean {
  const { closes, opens } = countBraces(tokens);
  return closes === 0 && opens === wanted;
}
