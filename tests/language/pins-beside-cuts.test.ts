import { expect, it } from 'vitest';
import { pieceIn } from './doors/door-texts.ts';

/** Holes 1/4" wide beside the groove for a back: 1/8" from their middle to their rim. */

const shelves = (fromBack: string) => `piece "box" {
  size 24 wide, 30 high, 12 deep
  case {
    sides thick 3/4   bottom thick 3/4, between sides
    back thick 1/4 in groove 1/4 deep, 1/2 in from back edge
  }
  face inset { open "things" rest { shelves 1 adjustable thick 3/4 { pins 3/8 deep, ${fromBack} from back } } }
}`;

it('a hole that just touches the groove is told, one a mark farther is not', async () => {
  expect((await pieceIn(shelves('1/8'))).told).toEqual([
    'pin-row-meets-cut: the back row of pin holes touches the groove for the back in the left side: no wood is left between them',
  ]);
  expect((await pieceIn(shelves('5/32'))).codes).toEqual([]);
});
