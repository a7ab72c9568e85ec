import type { TokenType } from 'chevrotain';
import { DefaultLexer, type LexerResult, type LexingReport, type TokenizeOptions } from 'langium';
import type { Slip } from './slips.ts';
import { structure, type TokenKinds } from './structure.ts';

export interface StructureReport extends LexingReport {
  readonly slips: readonly Slip[];
}

/** Langium's lexer with the structure pass behind it. It never reports an error of its own: slips say what was mended. */
export class FettleLexer extends DefaultLexer {
  override tokenize(text: string, options?: TokenizeOptions): LexerResult {
    const raw = super.tokenize(text, options);
    const kind = (name: string): TokenType => {
      const type = this.definition[name];
      if (type === undefined) throw new Error(`the grammar has no terminal ${name}`);
      return type;
    };
    const kinds: TokenKinds = {
      head: kind('HEAD'),
      begin: kind('BEGIN'),
      name: kind('NAME'),
      reference: kind('REF'),
      text: kind('TEXT'),
      open: kind('{'),
      close: kind('}'),
    };
    const { tokens, slips } = structure(raw.tokens, kinds);
    const strays: Slip[] = raw.hidden
      .filter((token) => token.tokenType.name === 'OTHER')
      .map((token) => ({
        kind: 'stray-mark',
        start: token.startOffset,
        end: token.startOffset + token.image.length,
        mark: token.image,
      }));
    const report: StructureReport = { diagnostics: [], slips: [...slips, ...strays] };
    return { tokens, hidden: raw.hidden, errors: [], report };
  }
}
