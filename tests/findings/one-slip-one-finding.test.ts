import { unknownWord } from '@fettle/findings';
import { describe, expect, it } from 'vitest';
import { check } from '../language/harness/check.ts';
import { checkFix, titlesAtCaret } from '../language/harness/check-fix.ts';

/** Words that cannot be read are told once, with what they may be short for, and nothing that follows from them. */

const inCase = (words: string) => `
    // notes not shown
    piece "case" {
      size 30 wide, 30 high, 12 deep
      case { bottom thick 3/4, between sides
        ${words} }
    }
`;

describe('misspelt words', () => {
  it('are one finding for each slip, and a thickness is not missed on top', () =>
    check(`
      // notes not shown
      board "walnut" any thickness, 8 wide, 96 long
      piece "case" {
        size 30 wide, 30 high, 12 deep
        case { sides thick 3/4   bottom thick 3/4, between sides }
        face inset { row { open "a"
          partiton "walnut" thck 3/4
      //  ^^^^^^^^ error unknown-word: did you mean 'partition'
      //                    ^^^^ error unknown-word: did you mean 'thick'
          open "b" } }
      }
    `));
});

describe('half a word, as it stands while somebody types', () => {
  it('is told what it may become: more of the statement before it, or the next one', () =>
    check(`
      piece "case" {
        size 30 wide, 30 high, 12 deep
        case { sides thick 3/4   bottom thick 3/4, between sides   st }
      //                                                           ^^ error unknown-word: 'st' is no word yet: 'stopped' and 'stretchers' begin so
        face inset { op }
      //             ^^ error unknown-word: 'op' is no word yet: 'open' begins so
      }
    `));

  it('names the shortest first, three at most, and how many more there are', async () => {
    await check(
      inCase(`sides thick 3/4   s
        //                ^ error unknown-word: 's' is no word yet: 'sides', 'stiles' and 'stretchers' begin so
      `),
    );
    const say = { length: () => '', name: (name: string) => name };
    const facts = { words: 'd', place: "'face'", nearest: '' };
    const begun = ['door', 'doors', 'drawer', 'drawers', 'divider'];
    expect(unknownWord.headline({ ...facts, begun }, say)).toBe(
      "'d' is no word yet: 'door', 'doors', 'drawer' and 2 more begin so",
    );
  });

  it('is a plain mistake where nothing begins so', () =>
    check(
      inCase(`sides thick 3/4   zq
        //                ^^ error unknown-word: 'zq' means nothing in 'sides'
      `),
    ));
});

describe('a value without its word', () => {
  it('is one finding', () =>
    check(
      inCase(`sides 1/2
        //    ^^^ error unknown-word: '1/2' means nothing in 'sides'; did you mean 'thick 1/2'?
      `),
    ));

  it('gets its word', () => checkFix(inCase('sides 1/2<|>'), "Write 'thick 1/2'", inCase('sides thick 1/2')));

  it('is offered each word it may be short for', async () => {
    const text = (words: string) => `
      piece "case" {
        size 30 wide, 30 high, 12 deep
        case { sides thick 3/4   bottom thick 3/4, between sides }
        face inset { open { shelves ${words} } }
      }
    `;
    expect(await titlesAtCaret(text('2<|>'))).toEqual(["* Write '2 adjustable'", "Write '2 fixed'", "Take out '2'"]);
    await checkFix(text('2<|>'), "Write '2 fixed'", text('2 fixed'));
  });

  it('on a space is the size of its front or of its opening', async () => {
    const text = (words: string) => `
      piece "case" {
        size 30 wide, 30 high, 12 deep
        case { sides thick 3/4   bottom thick 3/4, between sides }
        face inset { drawer "a" ${words}   drawer "b" rest   fronts thick 3/4 }
      }
    `;
    expect(await titlesAtCaret(text('6<|>'))).toEqual(["* Write 'front 6 high'", "Write 'opening 6 high'"]);
    await checkFix(text('6 high<|>'), "Write 'front 6 high'", text('front 6 high'));
  });
});

describe('a size that could not be read', () => {
  it('lets nobody judge proportions', () =>
    check(`
      // notes not shown
      piece "case" {
        size 60 wide, 20 high, 12 deep
        case { sides thick 3/4   bottom thick 3/4, between sides }
        face inset { row { door "a" 12 wide
        //                          ^^^^^^^ error size-of-what: does not say what it is the size of
          door "b" rest }   fronts thick 3/4 }
      }
    `));

  it('while the same piece with all sizes read is judged', () =>
    check(`
      // notes not shown
      piece "case" {
        size 60 wide, 20 high, 12 deep
        case { sides thick 3/4   bottom thick 3/4, between sides }
        face inset { row { door "a" front 12 wide
          door "b" rest }   fronts thick 3/4 }
      //           ^^^^ warning door-too-wide: wide
      }
    `));
});
