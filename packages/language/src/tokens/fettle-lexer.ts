import type { TokenType } from 'chevrotain';
import { DefaultLexer, type LexerResult, type LexingReport, type TokenizeOptions } from 'langium';
import type { WordKinds } from './mend-words.ts';
import type { Slip } from './slips.ts';
import type { TokenKinds } from './sort-words.ts';
import { type Standing, type Structured, standBehind, structure } from './structure.ts';

export interface StructureReport extends LexingReport {
  readonly slips: readonly Slip[];
  /** How many of them the text has, more or less. */
  readonly tokens: number;
}

/** Langium's lexer with the structure pass behind it. It never reports an error of its own: slips say what was mended. */
export class FettleLexer extends DefaultLexer {
  override tokenize(text: string, options?: TokenizeOptions): LexerResult {
    const { tokens, hidden, slips } = this.structure(text, options);
    const report: StructureReport = { diagnostics: [], slips, tokens: tokens.length };
    return { tokens, hidden, errors: [], report };
  }

  structure(text: string, options?: TokenizeOptions): Structured {
    const { tokens, hidden } = super.tokenize(text, options);
    return structure(text, tokens, hidden, this.#kinds());
  }

  /** Where one stands at the end of `text`, which is the beginning of another. */
  standBehind(text: string): Standing {
    const { tokens, hidden } = super.tokenize(text);
    return standBehind(text, tokens, hidden, this.#kinds());
  }

  #kinds(): TokenKinds & WordKinds {
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
      word: kind('WORD'),
      number: kind('NUMBER'),
    };
  }
}
