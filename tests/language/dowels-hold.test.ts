import { expect, it } from 'vitest';
import { pieceIn } from './doors/door-texts.ts';

/** How deep a dowel goes into either part: two thirds of a face of 3/4" is 1/2", the rest goes into the end. */

const box = (dowel: string) => `dowel "pin" ${dowel}
piece "box" {
  size 24 wide, 20 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides, by dowels "pin" }
}`;

it('a dowel just long enough is nothing to tell', async () => {
  // 3/8" thick: 9/16" into the end. 1" + 1/16" of room for glue - 1/2".
  expect((await pieceIn(box('3/8 thick, 1 long'))).told).toEqual([]);
});

it('a shorter one holds too little in the end', async () => {
  expect((await pieceIn(box('3/8 thick, 15/16 long'))).told).toEqual([
    'dowel-holds-too-little: the hole of the dowel is 1/2" deep in the end of the bottom, at least 9/16" holds: 1/16" more, with a longer or a thinner dowel',
  ]);
});

it('one that ends in the face has no hole in the end at all', async () => {
  expect((await pieceIn(box('3/8 thick, 3/8 long'))).told).toEqual([
    'dowel-holds-too-little: the hole of the dowel is 0" deep in the end of the bottom, at least 9/16" holds: 9/16" more, with a longer or a thinner dowel',
  ]);
});
