import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Caret, caretAt, caretIn } from '../../../packages/language/src/features/caret.ts';
import { FettleLexer } from '../../../packages/language/src/tokens/fettle-lexer.ts';
import { openFixture } from '../harness/workbench.ts';
import { example, sideboard } from '../sideboard.ts';

/** Reading only the piece around the caret tells the same as reading all that stands before it. */

const twice = `${sideboard}\n// the other one\n${sideboard.replace('"Games sideboard"', '"Other sideboard"')}`;
const texts = [twice, twice.replaceAll('\n', '\r\n'), example('wall.fettle').text, example('shop.fettle').text];

function told(caret: Caret | undefined) {
  if (caret === undefined) return undefined;
  const { standing, typing, range, isFirstOnLine } = caret;
  const { noun, spec, start, parts } = standing;
  const words = parts.map(({ image, tokenType }) => `${tokenType.name} ${image}`);
  return { statements: [...noun.statements.keys()], word: spec?.word, start, words, typing, range, isFirstOnLine };
}

async function compared(text: string, offsets: readonly number[]) {
  const { documents, services } = await openFixture({ files: [{ name: 'piece.fettle', text }] });
  const [document] = documents;
  const lexer = services.parser.Lexer;
  if (document === undefined || !(lexer instanceof FettleLexer)) throw new Error('no text or another lexer');
  for (const offset of offsets) {
    expect(told(caretIn(lexer, document, offset)), `at ${offset}`).toEqual(told(caretAt(lexer, text, offset)));
  }
}

test('in whole texts', async () => {
  for (const text of texts) await compared(text, places(text, 40));
});

test('in texts with a letter gone or typed', () =>
  fc.assert(
    fc.asyncProperty(
      fc.constantFrom(...texts),
      fc.nat({ max: 20_000 }),
      fc.constantFrom('', 'x', ' ', '"', '{', '}', '\n', '/*', '//', ','),
      async (text, at, typed) => {
        const place = at % text.length;
        const edited = text.slice(0, place) + typed + text.slice(place + 1);
        await compared(edited, [place, place + typed.length, ...places(edited, 6)]);
      },
    ),
    { numRuns: 25 },
  ));

/** So many, spread over the text, none of them at a round number. */
function places(text: string, count: number): readonly number[] {
  return Array.from({ length: count }, (_, at) => Math.floor(((at + 0.618) * text.length) / count));
}
