import { describe, expect, it } from 'vitest';
import { hardwareToBuy } from '../../../packages/engine/src/stock/buying/hardware-to-buy.ts';
import { example } from '../sideboard.ts';
import { pieceIn } from './door-texts.ts';

/** A chest's lid: its hinges, the wall behind it, and what keeps it from falling. */

const [chest, shop] = [example('blanket-chest.fettle'), example('shop.fettle')].map(({ text }) => text) as [
  string,
  string,
];
const read = (from = '', to = '') =>
  pieceIn(`${shop}\n${chest.replace('use "shop.fettle"', '').replace(from, () => to)}`);
const withBoards = async (from: string, to: string) => (await read(from, to)).told;

describe('a lid', () => {
  it('lies where a top would, and is told of its hinges: half of the closed hinge into lid and case', async () => {
    const { told, notes, part, hardware, setOf } = await read();
    expect(told).toEqual([]);
    expect(notes).toContain('lid-can-fall');
    expect(part('case/top').label).toBe('lid');
    expect(part('case/top').box.z.size.length.exactInches).toBe('20');
    // 42 less two overhangs of 3/4: 40-1/2. Its own length of 3 from the end: 4-1/2, 20-1/4, 36.
    expect(
      [1, 2, 3].map((at) => setOf(`lid/hinge-${at}`, 'from the left end of the case to the middle of the hinge')),
    ).toEqual(['9/2', '81/4', '36']);
    // Closed 5/32, no gap under the lid: 5/64 each.
    expect(setOf('lid/hinge-1', 'depth of the gains in the lid and in the case')).toBe('5/64');
    expect(part('case/back').features?.filter(({ kind }) => kind === 'gain')).toHaveLength(3);
    expect(hardware.filter(({ kind }) => kind === 'lid-support')).toHaveLength(2);
  });

  it('reaches its thickness behind the case at a right angle', async () => {
    expect(await withBoards('7/8 from wall', '13/16 from wall')).toEqual([
      'lid-meets-wall: to stand open at 90 degrees the lid reaches 7/8" behind the case, and the wall is 13/16" away: 1/16" too near',
    ]);
  });

  it('reaches the root of two squares with an overhang behind, which itself keeps room', async () => {
    // √(1/2² + 7/8²) = 1.00778, to the next 1/32: 1-1/32; the overhang keeps 1/2 of it, 17/32 must be free behind.
    const back = (wall: string) => read('7/8 from wall {', `${wall} from wall {\n      overhang 1/2 at back`);
    expect((await back('17/32')).codes).toEqual([]);
    expect((await back('1/2')).codes).toEqual(['lid-meets-wall']);
  });

  it('leans back beyond a right angle', async () => {
    // 20 cos 110 = 6.84040 and 7/8 sin 110 = 0.82223 make 7.66263, to the next 1/32: 7-11/16.
    const told = await withBoards('7/8 from wall', 'opens 110 degrees, 7/8 from wall');
    expect(told).toEqual([expect.stringContaining('reaches 7-11/16" behind the case')]);
  });

  it('needs supports for its weight at half its depth', async () => {
    // 42 x 20 x 7/8 = 735 cubic inches of cherry, 35 lb a cubic foot: 14.9 lb; x 10" = 149 inch-pounds.
    expect(await withBoards('carries 125', 'carries 75')).toEqual([]);
    expect(await withBoards('carries 125', 'carries 70')).toEqual([
      'lid-support-too-weak: the lid weighs about 14.9 lb, which at half its depth makes 149 inch-pounds; what holds it is rated for 140 inch-pounds in all: 9 inch-pounds too little',
    ]);
    // Twice 149 are 298: two of 148 are less than that, two of 150 more.
    expect(await withBoards('carries 125', 'carries 148')).toEqual([]);
    expect(await withBoards('carries 125', 'carries 150')).toEqual([
      'lid-support-too-strong: the lid weighs about 14.9 lb, which at half its depth makes 149 inch-pounds; what holds it is rated for 300 inch-pounds in all, more than 2 times as much: it is hard to close, and may spring open by itself and pull at its hinges',
    ]);
    expect(await withBoards('support torsion, 2 of them, carries 125', 'support stay, 2 of them, carries 150')).toEqual(
      [],
    );
    // 149 inch-pounds are 16.8 newton-metres.
    expect(await withBoards('carries 125 inch-pounds', 'carries 8.5 newton-metres')).toEqual([]);
    expect(await withBoards('carries 125 inch-pounds', 'carries 8 newton-metres')).toHaveLength(1);
  });

  it('has the screws of its supports in itself and in the back, where their data sheet says', async () => {
    const { hardware, part, evaluation, setOf } = await read();
    expect(setOf('support-1', 'from the inner face of the left side to the middle of the support')).toBe('6');
    const [left, right] = hardware.filter(({ kind }) => kind === 'lid-support');
    // The case begins at 3/4, its sides are 7/8: 7-5/8 to the left one; 42 less that to the right one. The back is from
    // 20 - 7/8 = 19-1/8; the lid turns at 20, its underside lies at 20 - 7/8 = 19-1/8.
    const places = (one: typeof left) =>
      one?.screws.map(({ at, towards, length }) =>
        [at.x, at.y, at.z, length].map(({ exactInches }) => exactInches).concat(towards),
      );
    expect(places(left)).toEqual([
      ['61/8', '153/8', '75/4', '5/8', '+y'],
      ['61/8', '153/8', '16', '5/8', '+y'],
      ['61/8', '145/8', '153/8', '5/8', '+z'],
      ['61/8', '129/8', '153/8', '5/8', '+z'],
    ]);
    expect(places(right)?.map(([x]) => x)).toEqual(Array(4).fill('275/8'));
    expect(left?.on).toEqual(['case/top', 'case/back']);
    expect(part('case/top').features?.filter(({ kind }) => kind === 'screw-hole')).toHaveLength(4);
    expect(part('case/back').features?.filter(({ kind }) => kind === 'screw-hole')).toHaveLength(4);
    const bought = hardwareToBuy(evaluation).filter(({ what }) => what === 'lid-support');
    expect(
      bought.map(({ quantity, price, screws }) => [quantity, `${price?.amount}`, screws.map(({ count }) => count)]),
    ).toEqual([[2, '24', [8]]]);
  });

  it('has stays beside its sides, where nothing else is said 1/2" from them', async () => {
    const { hardware, told, notes } = await read(
      '6 from sides, costs 24 each {\n        hole 1-1/4 forward\n        hole 4 forward\n        hole 1 down\n        hole 3 down',
      'costs 24 each {\n        hole 6 forward\n        hole 4 forward, 5 down',
    );
    expect(told).toEqual([]);
    expect(notes).not.toContain('lid-support-not-placed');
    const supports = hardware.filter(({ kind }) => kind === 'lid-support');
    expect(supports.map(({ on }) => on)).toEqual([
      ['case/top', 'case/side-left'],
      ['case/top', 'case/side-right'],
    ]);
    // Inner face of the left side 3/4 + 7/8 = 1-5/8, in the lid 1/2 beside it.
    expect(supports[0]?.screws.map(({ at, towards }) => [at.x.exactInches, towards])).toEqual([
      ['17/8', '+y'],
      ['13/8', '-x'],
    ]);
  });

  it('of which nobody tells where its supports go is told that they are not placed', async () => {
    const { told, notes } = await read('screws 5/8 long, 1/8 thick\n', '');
    expect(told).toEqual([]);
    expect(notes).toContain('lid-support-not-placed');
  });

  it('is bought with its hinges, at the price that the shop tells', async () => {
    const { evaluation } = await read();
    const hinges = hardwareToBuy(evaluation).filter(({ what }) => what === 'hinge');
    expect(
      hinges.map(({ entry, quantity, isPlaced, price }) => [entry, quantity, isPlaced, `${price?.amount}`]),
    ).toEqual([['lid butt 3', 3, true, '6']]);
  });

  it('is bought with hinges that could not be placed', async () => {
    const { evaluation } = await read('5/8 wide, 5/32 closed', '5/8 wide');
    const hinges = hardwareToBuy(evaluation).filter(({ what }) => what === 'hinge');
    expect(hinges.map(({ quantity, isPlaced, price }) => [quantity, isPlaced, `${price?.amount}`])).toEqual([
      [3, false, '6'],
    ]);
  });
});
