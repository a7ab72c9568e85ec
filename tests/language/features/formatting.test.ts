import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutAndSpliced } from '../cut-and-splice.ts';
import { checkFormat, formatted, formattingEdits } from '../harness/check-format.ts';
import { openFixture, textAfter } from '../harness/workbench.ts';
import { shop, sideboard } from '../sideboard.ts';
import { commentsOf, wordsOf } from './words-of.ts';

describe('lines and spaces', () => {
  test('two spaces for each depth, one statement on a line', () =>
    checkFormat(
      `
      piece "a"{size 20 wide  ,30 high,15 deep case{
      sides    thick 3/4 bottom thick 3/4
          }
      }
      `,
      `
      piece "a" {
        size 20 wide, 30 high, 15 deep
        case {
          sides thick 3/4
          bottom thick 3/4
        }
      }
      `,
    ));

  test('a body on one line stays there, three spaces between its statements', () =>
    checkFormat(
      'piece "a" {\n thing "box" {12 wide,12 deep weighs 3 lb}\n case {}\n}\n',
      'piece "a" {\n  thing "box" { 12 wide, 12 deep   weighs 3 lb }\n  case { }\n}\n',
    ));

  test('a body on one line is opened up when it is too long', () =>
    checkFormat(
      `piece "a" { size 20 wide, 30 high, 15 deep case { sides thick 3/4 bottom thick 3/4, between sides plinth 3 high, set back 2, thick 3/4 } }\n`,
      [
        'piece "a" {',
        '  size 20 wide, 30 high, 15 deep',
        '  case { sides thick 3/4   bottom thick 3/4, between sides   plinth 3 high, set back 2, thick 3/4 }',
        '}',
        '',
      ].join('\n'),
    ));

  test('a statement that is too long goes on behind a comma', () =>
    checkFormat(
      `sheet "${'a'.repeat(80)}" nominal 3/4, actual 3/4, 96 long, 48 wide\n`,
      `sheet "${'a'.repeat(80)}" nominal 3/4, actual 3/4,\n    96 long, 48 wide\n`,
    ));

  test('a statement written over several lines comes together', () =>
    checkFormat('piece "a" {\n  size 20 wide,\n    30 high\n}\n', 'piece "a" {\n  size 20 wide, 30 high\n}\n'));

  test('at most one blank line, none inside braces', () =>
    checkFormat(
      '\n\nuse "a.fettle"\n\n\n\npiece "a" {\n\n  size 20 wide\n\n}',
      'use "a.fettle"\n\npiece "a" {\n  size 20 wide\n}\n',
    ));

  test('nothing stays nothing', async () => {
    expect(await formatted('')).toBe('');
    expect(await formatted('  \n\n')).toBe('');
  });

  test('line ends stay what they are', async () => {
    expect(await formatted('piece "a" {\r\nsize 20 wide\r\n}\r\n')).toBe('piece "a" {\r\n  size 20 wide\r\n}\r\n');
  });
});

describe('words stay as they are written', () => {
  test('lengths, quotation marks and signs', () =>
    checkFormat(
      `piece “a” {\n size 17 1/2 wide, 5'-2-3/8" high, 2.5″ deep\n units mm }\n`,
      `piece “a” {\n  size 17 1/2 wide, 5'-2-3/8" high, 2.5″ deep\n  units mm\n}\n`,
    ));

  test('sums have spaces, signs and parentheses have none', () =>
    checkFormat('let "a" be -( 17-1/2+3 )*2  -1/8\n', 'let "a" be -(17-1/2 + 3) * 2 - 1/8\n'));

  test('what two spaces keep apart is not joined', () => checkFormat('let "a" be 17   1/2\n', 'let "a" be 17  1/2\n'));
});

describe('names that line up', () => {
  test('behind the longest of neighbouring lines, as soon as one of them is spaced out', () =>
    checkFormat(
      'piece "a" { face {\ndrawer "a"   front 5 high\ndrawer "blankets" rest\ndoor "c" rest\n\ndrawer "d" rest\n} }\n',
      [
        'piece "a" {',
        '  face {',
        '    drawer "a"        front 5 high',
        '    drawer "blankets" rest',
        '    door "c"          rest',
        '',
        '    drawer "d" rest',
        '  }',
        '}',
        '',
      ].join('\n'),
    ));

  test('not where nobody spaced them out', () =>
    checkFormat(
      'piece "a" {\n  face {\n    drawer "a" rest\n    drawer "blankets" rest\n  }\n}\n',
      'piece "a" {\n  face {\n    drawer "a" rest\n    drawer "blankets" rest\n  }\n}\n',
    ));
});

describe('comments', () => {
  test('stay beside, above and inside what they stand by', () =>
    checkFormat(
      `
      // above
      use "a.fettle"// beside
      piece "a" { // the first
      size 20 wide, // comment in the middle
      30 high
      /* before */ case { }
      // the last
      } // behind
      `,
      `
      // above
      use "a.fettle"  // beside
      piece "a" { // the first
        size 20 wide,  // comment in the middle
            30 high
        /* before */ case { }
        // the last
      }  // behind
      `,
    ));

  test('keep what is inside them', () =>
    checkFormat('/* one\n      two   */\n   // three   four   \n', '/* one\n      two   */\n// three   four\n'));
});

describe('what had to be mended is left alone', () => {
  test.each(['piece "a" {\n size 20 wide\n', 'piece "a" {  }\n}', 'use   "a.fettle\n', 'use   "a.fettle" ;\n'])(
    '%j',
    async (text) => {
      expect(await formatted(text)).toBe(text);
    },
  );
});

describe('edits', () => {
  test('the examples are as the formatter writes them', async () => {
    expect(await formatted(sideboard)).toBe(sideboard);
    expect(await formatted(shop)).toBe(shop);
  });

  test('only what changes is edited', async () => {
    const { edits } = await edited('piece "a" {\n  size  20 wide\n  case { }\n}\n');
    expect(edits).toEqual([
      { range: { start: { line: 1, character: 6 }, end: { line: 1, character: 8 } }, newText: ' ' },
    ]);
  });

  test('a range is formatted and what is outside it is not', async () => {
    const text = 'piece "a" {\n size  20 wide\n case  { }\n}\n';
    const { document, services } = await edited(text);
    const edits = await services.lsp.Formatter?.formatDocumentRange(document, {
      textDocument: { uri: document.uri.toString() },
      options: { tabSize: 2, insertSpaces: true },
      range: { start: { line: 1, character: 1 }, end: { line: 1, character: 10 } },
    });
    expect(textAfter(document, edits ?? [])).toBe('piece "a" {\n  size 20 wide\n case  { }\n}\n');
  });
});

async function edited(text: string) {
  const { services, documents } = await openFixture({ files: [{ name: 'piece.fettle', text }] });
  const document = documents[0];
  if (document === undefined) throw new Error('no document');
  return { services, document, edits: await formattingEdits(document) };
}

describe('any text', () => {
  async function holds(text: string): Promise<void> {
    const once = await formatted(text);
    expect(await formatted(once)).toBe(once);
    expect(wordsOf(once)).toEqual(wordsOf(text));
    expect(commentsOf(once)).toEqual(commentsOf(text));
  }

  test('examples cut and spliced', () => fc.assert(fc.asyncProperty(cutAndSpliced(3), holds), { numRuns: 400 }));

  const gaps = [...sideboard.matchAll(/(?<=\s)(?=\S)/g)]
    .map((match) => match.index)
    .filter((at) => (sideboard.slice(sideboard.lastIndexOf('\n', at), at).match(/"/g)?.length ?? 0) % 2 === 0);
  const comment = fc.constantFrom('// a note\n', '/* a note */ ', '/* a\n note */', '\n\n', '   ', '\n', '\t');

  test('the sideboard with comments and blanks anywhere between its words', async () => {
    const changed = fc
      .array(fc.record({ at: fc.nat({ max: gaps.length - 1 }), comment }), { maxLength: 6 })
      .map((list) =>
        [...list]
          .sort((a, b) => b.at - a.at)
          .reduce((text, { at, comment: words }) => text.slice(0, gaps[at]) + words + text.slice(gaps[at]), sideboard),
      );
    let changedTexts = 0;
    await fc.assert(
      fc.asyncProperty(changed, async (text) => {
        if ((await formatted(text)) !== text) changedTexts++;
        await holds(text);
      }),
      { numRuns: 300 },
    );
    // Were everything left alone, the properties would hold too.
    expect(changedTexts).toBeGreaterThan(150);
  });
});
