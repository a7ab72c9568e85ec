import { describe, expect, test } from 'vitest';
import { chest } from '../chest.ts';
import { check } from '../harness/check.ts';
import { checkFix, titlesAtCaret } from '../harness/check-fix.ts';
import { sideboardWith } from '../sideboard.ts';

// Height of the face: 30 less 3/4. With gaps of 1/8 at top, middle and bottom two fronts share 28-7/8.
const tooMuch = chest('stack { drawer "top" front 9 high   drawer "low" front 20<|> high }');

describe('fronts that do not add up', () => {
  test('the finding', () =>
    check(`
      piece "chest" {
        size 20 wide, 30 high, 15 deep
        case { sides thick 3/4   bottom thick 3/4, between sides }
        face inset, gap 1/8 {
          stack {
            drawer "top" front 9 high
            drawer "low" front 20 high
            //           ^^^^^^^^^^^^^ error fronts-do-not-add-up: 1/8" too much
          }
          fronts thick 1/2
        }
      }
    `));

  test('ways out are ranked, and the best of them is preferred', async () => {
    const titles = await titlesAtCaret(tooMuch);
    expect(titles).toEqual([
      '* Make "low" 19-7/8", 1/8" less',
      'Let "low" take the rest',
      'Share the 1/8" among both, 1/16" less each',
      'Make "top" 8-7/8", 1/8" less',
    ]);
  });

  test('one size changes by what is too much', () =>
    checkFix(
      tooMuch,
      'Make "low" 19-7/8", 1/8" less',
      chest('stack { drawer "top" front 9 high   drawer "low" front 19-7/8" high }'),
    ));

  test('one takes the rest', () =>
    checkFix(tooMuch, 'Let "low" take the rest', chest('stack { drawer "top" front 9 high   drawer "low" rest }')));

  test('several places change at once', () =>
    checkFix(
      tooMuch,
      'Share the 1/8" among both, 1/16" less each',
      chest('stack { drawer "top" front 8-15/16" high   drawer "low" front 19-15/16" high }'),
    ));

  test('what is shared stays on the ruler, and the largest bear the marks that are left', async () => {
    const before = sideboardWith('"blankets" rest', '"blankets" front 11<|> high');
    await checkFix(
      before,
      'Share the 27/32" among 4 of them, 3/16" to 7/32" less each',
      sideboardWith('"blankets" rest', '"blankets" front 10-25/32" high')
        .replace('front 5 high', 'front 4-13/16" high')
        .replace('front 6 high', 'front 5-25/32" high')
        .replace('front 7 high', 'front 6-25/32" high'),
    );
  });
});

describe('names', () => {
  test('the nearest known name', () =>
    checkFix(
      `
      sheet "ash" actual 3/4
      piece "a" { size 20 wide, 30 high, 15 deep   case { sides "a<|>hs" } }
      `,
      'Write "ash"',
      `
      sheet "ash" actual 3/4
      piece "a" { size 20 wide, 30 high, 15 deep   case { sides "ash" } }
      `,
    ));

  test('the nearest file', () =>
    checkFix(
      `
      use "shp.fet<|>tle"
      // file: shop.fettle
      sheet "ash" actual 3/4
      `,
      'Use "shop.fettle"',
      `
      use "shop.fettle"
      // file: shop.fettle
      sheet "ash" actual 3/4
      `,
    ));
});

describe('words', () => {
  test('a misspelt word', () =>
    checkFix('piece "a" { siz<|>ee 20 wide }', "Write 'size'", 'piece "a" { size 20 wide }'));

  test('a misspelt word in the middle of a phrase is blamed alone', () =>
    checkFix(
      'piece "a" { case { back applied, 1/2 in form<|> back edge } }',
      "Write 'from'",
      'piece "a" { case { back applied, 1/2 in from back edge } }',
    ));

  test('what means nothing goes with its comma', () =>
    checkFix(
      'piece "a" { size 20 wide, 30 high, pain<|>ted, 15 deep }',
      "Take out 'painted'",
      'piece "a" { size 20 wide, 30 high, 15 deep }',
    ));

  test('a line that holds nothing else goes as a whole', () =>
    checkFix(
      'piece "a" {\n  size 20 wide, 30 high, 15 deep\n  si<|>ze 21 wide\n}',
      "Take out the second 'size'",
      'piece "a" {\n  size 20 wide, 30 high, 15 deep\n}',
    ));

  test('a stray mark leaves the commas around it', () =>
    checkFix(
      'piece "a" { size 20 wide, ;<|> 30 high, 15 deep }',
      "Take out ';'",
      'piece "a" { size 20 wide, 30 high, 15 deep }',
    ));
});

describe('braces and quotation marks', () => {
  test('a missing closing brace goes below what it encloses', () =>
    checkFix(
      'piece "a" {\n  size 20 wide, 30 high, 15 deep\n  ca<|>se {\n    sides thick 3/4\n  face inset {\n    drawer rest\n  }\n}',
      "Close it with '}'",
      'piece "a" {\n  size 20 wide, 30 high, 15 deep\n  case {\n    sides thick 3/4\n  }\n  face inset {\n    drawer rest\n  }\n}',
    ));

  test('a missing opening brace goes after its statement', () =>
    checkFix(
      'piece "a" {\n  size 20 wide, 30 high, 15 deep\n  ca<|>se\n    sides thick 3/4\n  }\n}',
      "Open it with '{'",
      'piece "a" {\n  size 20 wide, 30 high, 15 deep\n  case {\n    sides thick 3/4\n  }\n}',
    ));

  test('a name is closed', () => checkFix('use "shop.fet<|>tle', 'Close the name with "', 'use "shop.fettle"'));
});

describe('requests', () => {
  test('nothing is offered where nothing is wrong', async () => {
    expect(await titlesAtCaret('piece "a" { si<|>ze 20 wide, 30 high, 15 deep }')).toEqual([]);
  });
});
