import { describe, expect, test } from 'vitest';
import { check } from '../harness/check.ts';
import { checkFix, titlesAtCaret } from '../harness/check-fix.ts';

/** A maker's own word for a thing is met with the language's word, and what follows it is read all the same. */

const around = (inPiece: string, inCase = '') => `
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides ${inCase} }
  ${inPiece}
}
`;

describe('a word of the trade', () => {
  test('that is another one here is told, and what it holds is read', async () => {
    await check(`
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  front inset, gap 1/8 {
//^^^^^ error unknown-word: 'front' means nothing in 'piece'; did you mean 'face'?
    drawer "maps" front 8 high
//                ^^^^^^^^^^^^ error fronts-do-not-add-up: fronts and gaps need 8-1/4", there is 34-1/2" of height: 26-1/4" left over
    fronts thick 3/4
  }
}
`);
  });

  test('that belongs elsewhere is told by the word it has there', async () => {
    await check(`
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  legs 4 high
//^^^^ error word-belongs-elsewhere: for 'legs' the word is 'feet': it belongs in 'case', not in 'piece'
}
`);
  });

  test('of the size is a size', async () => {
    const text = 'piece "a" {\n  <|>width 30\n}\n';
    await checkFix(text, "Write 'size 30 wide'", 'piece "a" {\n  size 30 wide\n}\n');
    // Beside a size it would be told in two places.
    expect(await titlesAtCaret(around('<|>width 30'))).toEqual(["* Take out 'width'"]);
  });
});

test.each([
  ['gap 1/16', 'gap 1/16'],
  ['gaps 1/16', 'gap 1/16'],
  ['reveal 1/16', 'reveal 1/16'],
])('what the face says of itself, beside it: %s', async (written, said) => {
  const before = around(`<|>${written}\n  face inset { open "all" rest }`);
  await checkFix(before, `Say '${said}' of 'face'`, around(`face inset, ${said} { open "all" rest }`));
});

test.each(['gap 1/16', 'reveal 1/16'])('what the face says of itself, inside its braces: %s', async (said) => {
  const before = around(`face inset { <|>${said} open "all" rest }`);
  await checkFix(before, `Say '${said}' before the brace`, around(`face inset, ${said} { open "all" rest }`));
});

test('a name that is the beginning of others: those that suit come first', async () => {
  const shop = [3, 1].map((fourths) => `sheet "birch ply ${fourths}/4" nominal ${fourths}/4, actual ${fourths}/4\n`);
  const titles = await titlesAtCaret(`${shop.join('')}${around('', 'back <|>"birch ply" thick 1/4')}`);
  expect(titles).toEqual(['* Write "birch ply 1/4"', 'Write "birch ply 3/4"']);
});

describe('what stands beside the braces it belongs in', () => {
  const piece = (inside: string) => `piece "shelf unit" {\n  size 30 wide, 36 high, 12 deep\n${inside}}\n`;

  test('goes into them, in a line of its own where the others have theirs', async () => {
    const sides = '  case {\n    sides thick 3/4\n  }\n';
    const both = '  case {\n    sides thick 3/4\n    bottom thick 3/4\n  }\n';
    await checkFix(piece(`${sides}  <|>bottom thick 3/4\n`), "Put 'bottom' into 'case'", piece(both));
    const after = '  case { sides thick 3/4   bottom thick 3/4 }\n';
    await checkFix(
      piece('  case { sides thick 3/4 }\n  <|>bottom thick 3/4\n'),
      "Put 'bottom' into 'case'",
      piece(after),
    );
  });

  test('has them written around it where there are none', async () => {
    await checkFix(
      piece('  <|>stack { drawer "top" rest }\n'),
      "Write 'face { }' around 'stack'",
      piece('  face { stack { drawer "top" rest } }\n'),
    );
  });

  test('only goes out where it could not stand beside what is there', async () => {
    const titles = (inside: string) => titlesAtCaret(piece(inside));
    expect(await titles('  face { open "all" rest }\n  <|>stack { drawer "top" rest }\n')).toEqual([
      "* Take out 'stack'",
    ]);
    expect(await titles('  case { bottom thick 3/4 }\n  <|>bottom thick 3/4\n')).toEqual(["* Take out 'bottom'"]);
    // Braces whose word is a slip of the pen are theirs all the same.
    expect(await titles('  carcass { sides thick 3/4 }\n  <|>bottom thick 3/4\n')).toEqual(["* Take out 'bottom'"]);
  });
});
