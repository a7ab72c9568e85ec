import type { TokenType, TokenVocabulary } from 'chevrotain';
import { DefaultTokenBuilder, type Grammar, type TokenBuilderOptions } from 'langium';
import { matchName } from './name-pattern.ts';

/** Tokens of the grammar, with quotation marks paired by their neighbours rather than by a pattern. */
export class FettleTokenBuilder extends DefaultTokenBuilder {
  override buildTokens(grammar: Grammar, options?: TokenBuilderOptions): TokenVocabulary {
    const tokens = super.buildTokens(grammar, options);
    const name = (tokens as TokenType[]).find((token) => token.name === 'NAME');
    if (name === undefined) throw new Error('the grammar has no terminal NAME');
    name.PATTERN = matchName;
    name.LINE_BREAKS = false;
    name.START_CHARS_HINT = ['"', '“', '”'];
    return tokens;
  }
}
