import { createFettleServices } from '@fettle/language';
import { EmptyFileSystem } from 'langium';

const { Fettle } = createFettleServices(EmptyFileSystem);

/** What the parser sees of a text: kinds and images, without where they stand. Braces that were mended are in it. */
export function wordsOf(text: string): string[] {
  return Fettle.parser.Lexer.tokenize(text).tokens.map((token) => `${token.tokenType.name} ${token.image.trimEnd()}`);
}

export function commentsOf(text: string): string[] {
  return Fettle.parser.Lexer.tokenize(text).hidden.map((token) => token.image.trimEnd());
}
