import fc from 'fast-check';
import { createLangiumParser } from 'langium';
import { describe, expect, test } from 'vitest';
import type { Text } from '../../../packages/language/src/generated/ast.ts';
import { vocabulary } from '../../../packages/language/src/schema/vocabulary.ts';
import { deepestBraces, mostRepartedWords, mostTokens } from '../../../packages/language/src/tokens/limits.ts';
import { createSurvivingParser } from '../../../packages/language/src/tokens/surviving-parser.ts';
import { check } from '../harness/check.ts';
import { services } from '../harness/workbench.ts';
import { parsed, unitsOf } from '../units-of-text.ts';

describe('no text gives the parser trouble', () => {
  const soup = fc
    .array(
      fc.oneof(
        fc.constantFrom(...vocabulary().words),
        fc.constantFrom(
          '{',
          '}',
          '"',
          '“',
          ',',
          '(',
          ')',
          '+',
          '-',
          '*',
          '/',
          '×',
          ';',
          '=',
          '\\',
          '\u0000',
          '//',
          '/*',
        ),
        fc.constantFrom('3/4', '17-1/2"', "5'-2", '19mm', '"left"', '"a b"', '"', '½'),
        fc.constantFrom('\n', '\n  ', '\n    ', ' ', '   ', ''),
        fc.string({ maxLength: 4 }),
      ),
      { maxLength: 80 },
    )
    .map((parts) => parts.join(''));

  test('words and marks in any order', () => {
    fc.assert(
      fc.property(soup, (text) => {
        const { parseResult } = parsed(text);
        expect(parseResult.parserErrors).toEqual([]);
        expect(parseResult.lexerErrors).toEqual([]);
      }),
      { numRuns: 1000 },
    );
  });

  test.each([
    ['parentheses', `let "a" be ${'('.repeat(5000)}1${')'.repeat(5000)}`],
    ['signs', `let "a" be ${'-'.repeat(5000)}1`],
    ['terms', `let "a" be 1${' + 1'.repeat(5000)}`],
    ['quotation marks', '"'.repeat(5000)],
    ['opening braces', 'row {'.repeat(5000)],
    ['closing braces', '}'.repeat(5000)],
    ['slashes', 'let "a" be 1'.concat('/ '.repeat(5000))],
    ['one long word', 'a'.repeat(200_000)],
    ['one long line', 'size 3 wide, '.repeat(5000)],
  ])('thousands of %s', (_what, text) => {
    const { parseResult } = parsed(text);
    expect(parseResult.parserErrors).toEqual([]);
  });
});

describe('caps', () => {
  test('braces as deep as the cap are read, and the first beyond it is said', async () => {
    const nested = (depth: number) =>
      `piece "a" { face { ${'row { '.repeat(depth - 2)}open rest${' }'.repeat(depth - 2)} } }`;
    const isOpen = (unit: { key: string }) => unit.key.startsWith('open');
    expect(unitsOf(parsed(nested(deepestBraces))).some(isOpen)).toBe(true);
    expect(slipsOf(nested(deepestBraces))).toEqual([]);
    expect(slipsOf(nested(deepestBraces + 1))).toEqual(['too-deep']);
  });

  test('so many words without their hyphens are joined, and no more: each costs a look at the whole text', () => {
    const text = `piece "a" { case { ${'toe space 4 high '.repeat(mostRepartedWords + 50)}} }`;
    expect(slipsOf(text)).toEqual(new Array(mostRepartedWords).fill('hyphen-left-out'));
  });

  test('a text of too many words is read up to the cap', () => {
    const line = 'drawer "a" rest\n';
    const text = line.repeat(mostTokens / 3 + 1);
    const document = parsed(text);
    expect(slipsOf(text)).toContain('too-long');
    expect((document.parseResult.value as Text).statements.length).toBeLessThanOrEqual(mostTokens / 3 + 1);
  });
});

describe('the parser is replaced after a throw', () => {
  const good = 'piece "a" { size 20 wide }';

  function withTrap(make: typeof createLangiumParser) {
    // A converter that gives up in the middle of a tree, as a stack that runs over would.
    const converter = services.parser.ValueConverter;
    const trapped: typeof services = {
      ...services,
      parser: {
        ...services.parser,
        ValueConverter: {
          convert: (input, cstNode) => {
            if (input.includes('trap')) throw new RangeError('Maximum call stack size exceeded');
            return converter.convert(input, cstNode);
          },
        },
      },
    };
    return make(trapped);
  }

  test('the text that caused it is empty, the next one is whole', () => {
    const parser = withTrap(createSurvivingParser as typeof createLangiumParser);
    const broken = parser.parse('piece "trap" { size 20 wide }');
    expect((broken.value as Text).statements).toEqual([]);
    expect((broken.lexerReport as unknown as { slips: { kind: string }[] }).slips.map((slip) => slip.kind)).toEqual([
      'too-deep',
    ]);
    const next = parser.parse(good);
    expect(next.parserErrors).toEqual([]);
    expect((next.value as Text).statements.map((statement) => statement.statements[0]?.head)).toEqual(['size']);
  });

  test('the trap is real: a parser of its own throws', () => {
    const parser = withTrap(createLangiumParser);
    expect(() => parser.parse('piece "trap" { size 20 wide }')).toThrow(RangeError);
  });
});

test('a text too deep is one finding', () =>
  check(`
    // notes not shown
    ${'row { '.repeat(deepestBraces + 1)}${'} '.repeat(deepestBraces + 1)}
  `).then(
    () => expect.unreachable(),
    (error: Error) => expect(error.message.match(/text-too-large/g)).toHaveLength(1),
  ));

function slipsOf(text: string): string[] {
  const report = parsed(text).parseResult.lexerReport as unknown as { slips: { kind: string }[] };
  return report.slips.map((slip) => slip.kind);
}
