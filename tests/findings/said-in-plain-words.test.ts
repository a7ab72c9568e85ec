import { describe, expect, it } from 'vitest';
import { check } from '../language/harness/check.ts';
import { titlesAtCaret } from '../language/harness/check-fix.ts';

/** Sentences name things the way a maker would: marks by their names, two of them as both, names that are known. */

describe('names', () => {
  it('with a mark that turns the direction tell which one', () =>
    check(`
      // notes not shown
      piece "shelf\u200f unit" {
      //    ^^^^^^^^^^^^^ warning name-hard-to-read: turns the direction of reading (a right-to-left mark, U+200F)
        size 30 wide, 36 high, 12 deep
        case { sides thick 3/4 }
      }
    `));

  it('of more than 200 letters are too long, of 200 are not', async () => {
    const piece = (letters: number, mark: string) => `
// notes not shown
piece
"${'n'.repeat(letters)}" {
${mark}
  size 30 wide, 36 high, 12 deep
  case { sides thick 3/4 }
}
`;
    await check(piece(200, ''));
    await check(piece(201, `//<${'^'.repeat(200)} warning name-hard-to-read: has 201 letters`));
  });

  it('that are not known tell those that are', () =>
    check(`
      // notes not shown
      board "oak" any thickness, 8 wide, 96 long
      board "maple" any thickness, 8 wide, 96 long
      piece "case" {
        size 30 wide, 36 high, 12 deep
        case { sides "walnut" thick 3/4
        //           ^^^^^^^^ error unknown-name: no stock is called "walnut"; "oak" and "maple" are known
          bottom "oak" thick 3/4, between sides }
      }
    `));
});

describe('sums', () => {
  const row = (caret: string) => `
      piece "case" {
        size 30 wide, 30 high, 16 deep
        case { sides thick 3/4   bottom thick 3/4, between sides }
        face inset, gap 1/8 {
          row { drawer "a" front 15 wide   partition thick 3/4, shown   drawer "b" front 20 wide${caret} }
          fronts thick 3/4
        }
      }
  `;

  it('count partitions that are seen, and tell how much of them there is', () =>
    check(`
      // notes not shown
      piece "case" {
        size 30 wide, 30 high, 16 deep
        case { sides thick 3/4   bottom thick 3/4, between sides }
        face inset, gap 1/8 { row {
          drawer "a" front 15 wide
          partition thick 3/4, shown
          drawer "b" front 20 wide
          //         ^^^^^^^^^^^^^ error fronts-do-not-add-up: fronts, gaps and 3/4" of partitions need 36-1/4", there is 28-1/2"
          }
          fronts thick 3/4
        }
      }
    `));

  it('speak of two as both', async () => {
    expect(await titlesAtCaret(row('<|>'))).toContain('Share the 7-3/4" among both, 3-7/8" less each');
  });
});

describe('the load of a shelf', () => {
  it('is in kilograms in a piece in millimetres', () =>
    check(`
      // notes not shown
      piece "bookcase" {
        units mm
        size 1500 wide, 760 high, 300 deep
        case { sides thick 18   bottom thick 18, between sides }
        face inset { open "books" {
          shelves 2 adjustable
          //<^^^^ warning shelf-too-long: under 244 kg a square metre
        } }
      }
    `));
});
