import { it } from 'vitest';
import { check } from '../language/harness/check.ts';
import { checkFix } from '../language/harness/check-fix.ts';

/** What is bought costs nothing or more. */

const box = `
      piece "box" {
        size 30 wide, 36 high, 12 deep
        case { sides "birch ply" }
      }`;

it('a sheet that costs less than nothing is told on its amount', () =>
  check(`
      sheet "birch ply" actual 3/4, 96 long, 48 wide, costs -80 each
      //                                                    ^^^ error price-negative: less than nothing
${box}`));

it('nothing is a price: what is there already costs 0', () =>
  check(`
      sheet "birch ply" actual 3/4, 96 long, 48 wide, costs 0 each
${box}`));

it('a board foot has a price as a hinge has', () =>
  check(`
      // notes not shown
      sheet "birch ply" actual 3/4, 96 long, 48 wide
      board "ash" any thickness, 8 wide, 96 long, costs -6 a board foot
      //                                                ^^ error price-negative: -6
      hinge "butt" costs -1/2 each
      //                 ^^^^ error price-negative: -1/2
${box}`));

it('without its sign it is as it was meant', () =>
  checkFix(
    `sheet "birch ply" actual 3/4, 96 long, 48 wide, costs <|>-80 each
${box}`,
    'Write 80',
    `sheet "birch ply" actual 3/4, 96 long, 48 wide, costs 80 each
${box}`,
  ));
