import { describe, it } from 'vitest';
import { check } from '../language/harness/check.ts';
import { checkFix } from '../language/harness/check-fix.ts';

/** What carries a drawer lies directly below it; what tips over easily is told so, with and without drawers. */

const shop = `units inches
slide "side mount 12" side mount, 12 long, 1-3/4 high, takes 1/2 each side
`;

describe('a drawer without slides', () => {
  it('does not run on a partition of the row beside it, nor on a frame of another stack', () =>
    check(`
      // notes not shown
      use "shop.fettle"
      piece "chest" {
        size 40 wide, 24 high, 15 deep
        case { sides thick 3/4   bottom thick 3/4, between sides }
        face inset {
          row {
            stack {
              dividers web-frame thick 3/4, rails 2 wide
              drawer "a"
              drawer "b"
            }
            partition thick 3/4
            stack { drawer "c"   drawer "d" }
          }
          fronts thick 1/2
          drawers { sides thick 1/2   bottom thick 1/4   corners dovetail }
      //  ^^^^^^^ note drawers-without-slides: side mount 12
        }
      }
// file: shop.fettle
${shop}`));
});

describe('the caution against tipping over', () => {
  const shelves = (size: string, mark: string) => `
      piece "shelves" {
        size ${size}
${mark}
        case { sides thick 3/4   bottom thick 3/4, between sides }
      }
  `;

  it('comes for a tall and shallow piece without drawers', () =>
    check(
      shelves(
        '30 wide, 60 high, 15-1/2 deep',
        '        //            ^^ note anchor-to-wall: 60" high and 15-1/2" deep this piece can tip over',
      ),
    ));

  it('comes for one more than four times as high as it is deep', () =>
    check(
      shelves(
        '30 wide, 33 high, 8 deep',
        '        //            ^^ note anchor-to-wall: 33" high and 8" deep this piece can tip over',
      ),
    ));

  it('stays away at four times the depth', () => check(shelves('30 wide, 32 high, 8 deep', '        // nothing')));
});

describe('a file that is named wrongly', () => {
  it('is offered the one beside it', () =>
    checkFix(
      `use "shopp.fettle"<|>\n// file: shop.fettle\n${shop}`,
      'Use "shop.fettle"',
      `use "shop.fettle"\n// file: shop.fettle\n${shop}`,
    ));
});
