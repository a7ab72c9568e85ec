import type { IToken, TokenType } from 'chevrotain';
import { DefaultLexer, type LexerResult, type LexingReport, type TokenizeOptions } from 'langium';
import type { Slip } from './slips.ts';
import { structure, type TokenKinds } from './structure.ts';

export interface StructureReport extends LexingReport {
  readonly slips: readonly Slip[];
}

/** A text as tokens, before and after the structure pass. */
export interface SortedTokens {
  /** As written. */
  readonly raw: readonly IToken[];
  /** Comments, and marks that mean nothing. */
  readonly hidden: IToken[];
  /** What the parser sees. */
  readonly sorted: IToken[];
  readonly slips: readonly Slip[];
}

/** Langium's lexer with the structure pass behind it. It never reports an error of its own: slips say what was mended. */
export class FettleLexer extends DefaultLexer {
  override tokenize(text: string, options?: TokenizeOptions): LexerResult {
    const { sorted, hidden, slips } = this.sortTokens(text, options);
    const report: StructureReport = { diagnostics: [], slips };
    return { tokens: sorted, hidden, errors: [], report };
  }

  sortTokens(text: string, options?: TokenizeOptions): SortedTokens {
    const raw = super.tokenize(text, options);
    const { tokens, slips } = structure(raw.tokens, this.#kinds());
    const strays: Slip[] = raw.hidden
      .filter((token) => token.tokenType.name === 'OTHER')
      .map((token) => ({
        kind: 'stray-mark',
        start: token.startOffset,
        end: token.startOffset + token.image.length,
        mark: token.image,
      }));
    return { raw: raw.tokens, hidden: raw.hidden, sorted: tokens, slips: [...slips, ...strays] };
  }

  #kinds(): TokenKinds {
    const kind = (name: string): TokenType => {
      const type = this.definition[name];
      if (type === undefined) throw new Error(`the grammar has no terminal ${name}`);
      return type;
    };
    return {
      head: kind('HEAD'),
      begin: kind('BEGIN'),
      name: kind('NAME'),
      reference: kind('REF'),
      text: kind('TEXT'),
      open: kind('{'),
      close: kind('}'),
    };
  }
}
