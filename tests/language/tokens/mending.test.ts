import { describe, expect, test } from 'vitest';
import { check } from '../harness/check.ts';
import { checkFix } from '../harness/check-fix.ts';
import { parsed, unitsOf } from '../units-of-text.ts';

/** One slip of the pen: one finding, and everything else is read as it was meant. */

const chest = [
  'piece "chest" {',
  '  size 20 wide, 30 high, 15 deep',
  '  case {',
  '    sides thick 3/4',
  '    bottom thick 3/4, between sides',
  '  }',
  '  face inset, gap 1/8 {',
  '    fronts thick 1/2',
  '    stack {',
  '      drawer "top" front 5 high { clear 1/4 below   corners dovetail }',
  '      drawer "low" rest',
  '    }',
  '  }',
  '}',
].join('\n');

function readAs(text: string): string[] {
  return unitsOf(parsed(text)).map((unit) => unit.key);
}

function replaced(words: string, replacement: string): string {
  if (chest.split(words).length !== 2) throw new Error(`the chest does not say '${words}' once`);
  return chest.replace(words, () => replacement);
}

describe('whatever is mended, every statement is read', () => {
  test.each([
    ['a closing brace is missing on its line', replaced('\n  }\n  face', '\n  face')],
    ['a closing brace is missing in a line', replaced('dovetail }', 'dovetail')],
    ['an opening brace is missing', replaced('case {', 'case')],
    ['an opening brace is missing in a line', replaced('high {', 'high')],
    ['the last brace is missing', chest.slice(0, -1)],
    ['all braces at the end are missing', chest.slice(0, chest.indexOf('\n    }\n  }'))],
    ['an opening brace too many in a line', replaced('front 5', '{ front 5')],
    ['a closing brace too many in a line', replaced('front 5', '} front 5')],
    ['an opening brace on a line of its own', replaced('\n  case', '\n{\n  case')],
    ['a closing brace on a line of its own', replaced('\n  case', '\n}\n  case')],
    ['a doubled brace', replaced('stack {', 'stack {{')],
    ['a brace inside a word', replaced('between', 'bet{ween')],
    ['a quotation mark inside a word', replaced('dovetail', 'dove"tail')],
    ['a quotation mark before a word', replaced('dovetail', '"dovetail')],
    ['a quotation mark behind a word', replaced('dovetail', 'dovetail"')],
    ['a name is not closed', replaced('"low" rest', '"low rest')],
    ['a name is not opened', replaced('"low"', 'low"')],
    ['two words are joined', replaced('face inset', 'faceinset')],
    ['a word and a number are joined', replaced('fronts thick 1/2', 'fronts thick1/2')],
    ['a word of a phrase is misspelt', replaced('between sides', 'betwen sides')],
    ['the word of a statement is misspelt', replaced('bottom', 'botom')],
  ])('%s', (what, text) => {
    const meant = what === 'a name is not closed' ? readAs(replaced('"low"', '"low rest"')) : readAs(chest);
    expect(readAs(text)).toEqual(meant);
  });

  test('a line that ends with a comma goes on in the next one, even where that begins with a word that opens statements', () => {
    const continued = (text: string) =>
      text.replace(', between sides', ',\n        between sides').replace('size 20 wide, ', 'size 20 wide,\n      ');
    const shop = 'hinge "butt" butt, 2 long,\n    doors 5/8 to 1 thick, costs 4 each\n';
    expect(readAs(`${shop}${continued(replaced('case {', 'case'))}`)).toEqual(readAs(`${shop}${chest}`));
  });

  test('braces that balance are trusted, however lines are indented', () => {
    const flat = chest.replace(/^ +/gm, '');
    expect(readAs(flat)).toEqual(readAs(chest));
  });

  test('of two words as near, the one that suits what follows', () => {
    expect(readAs('piece "a" {\n  sie 20 wide\n  sie { alcove 64 wide }\n}')).toEqual([
      'piece "a"',
      'size "" in piece',
      'site "" in piece',
      'alcove "" in site in piece',
    ]);
  });

  test('a text that is not indented loses no braces to its indentation', () => {
    const flat = chest.replace(/^ +/gm, '').slice(0, -2);
    expect(readAs(flat)).toEqual(readAs(chest));
  });
});

describe('braces', () => {
  test('a missing one is said at its statement', () =>
    check(`
      // notes not shown
      piece "chest" {
        size 20 wide, 30 high, 15 deep
        case {
      //^^^^ error brace-not-closed: by the way the lines are indented
          sides thick 3/4
        face inset {
          open rest
        }
      }
    `));

  test('those missing at the end are one finding, and one fix closes them', async () => {
    const text = 'piece "a" {\n  size 20 wide, 30 high, 15 deep\n  case {\n    sides thick 3/4';
    await check(
      `${text}\n  // notes not shown`.replace(
        '  case {',
        '  case {\n//^^^^ error brace-not-closed: nor is the one around it',
      ),
    );
    await checkFix(text.replace('case', 'ca<|>se'), "Close it with '}}'", `${text}\n  }\n}`);
  });

  test('a word half typed at the end is not blamed as well', () =>
    check(`
      // notes not shown
      piece "a" {
      //<^^ error brace-not-closed: is not closed where the text ends
        size 20 wide, 30 hig
    `));

  test('one in the middle of a line is taken out', () =>
    checkFix(replaced('front 5', '{<|> front 5'), "Take out '{'", replaced('front 5', 'front 5')));

  test('one that closes nothing', () =>
    check(`
      // notes not shown
      piece "a" { size 20 wide, 30 high, 15 deep }
      use "b.fettle" }
      //             ^ error stray-mark: '}' belongs to nothing
      //  ^^^^^^^^^^ error file-not-found: b.fettle
    `));
});

describe('names', () => {
  test('one that is not closed ends before what cannot be part of it', () =>
    check(`
      // notes not shown
      piece "chest {
      //    ^^^^^^ error name-not-closed: "chest"
        size 20 wide, 30 high, 15 deep
      }
    `));

  test('one that is not opened', async () => {
    await check(`
      // notes not shown
      piece chest" {
      //    ^^^^^^ error name-not-opened: "chest"
        size 20 wide, 30 high, 15 deep
      }
    `);
    await checkFix(
      'piece ch<|>est" { size 20 wide, 30 high, 15 deep }',
      'Open the name with "',
      'piece "chest" { size 20 wide, 30 high, 15 deep }',
    );
  });

  test('a mark inside one', () =>
    check(`
      // notes not shown
      piece "ch"est" {
      //       ^ error stray-mark: '"' belongs to nothing
        size 20 wide, 30 high, 15 deep
      }
    `));

  test('curly marks pair with straight ones', () => {
    expect(readAs('piece “a" { size 20 wide }   piece "b” { }')).toEqual([
      'piece "a"',
      'size "" in piece',
      'piece "b"',
    ]);
  });

  test('braces inside a name are part of it', () => {
    expect(readAs('piece "a {b}" { size 20 wide }')).toEqual(['piece "a {b}"', 'size "" in piece']);
  });

  test('an inch mark closes no name', () => {
    expect(readAs('piece "a" { case { sides "ash" thick 3/4", plain   bottom thick 3/4" } }')).toEqual([
      'piece "a"',
      'case "" in piece',
      'sides "" in case in piece',
      'bottom "" in case in piece',
    ]);
  });
});

describe('words and numbers', () => {
  test('a word broken in two is one misspelt word', () =>
    checkFix(
      'piece "a" { siz{<|>e 20 wide, 30 high, 15 deep }',
      "Write 'size'",
      'piece "a" { size 20 wide, 30 high, 15 deep }',
    ));

  test('a number that cannot be read is one finding', () =>
    check(`
      // notes not shown
      piece "a" { size 20-/2 wide, 30 high, 15 deep }
      //               ^^^^^ error value-not-understood: cannot be read as a number
    `));
});
