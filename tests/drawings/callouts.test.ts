import { expect, it } from 'vitest';
import { placeCallouts } from '../../packages/drawings/src/views/callouts.ts';

/** Marks of parts on paper, where each is read for itself. */

const room = { within: { left: 0, right: 200, top: 0, bottom: 200 }, taken: [], firm: [], soft: [] };
const shelf = { id: 'shelf', words: ['J2  shelf'], spots: [{ x: 50, y: 50 }], holds: () => true };
const back = (...spots: readonly { readonly x: number; readonly y: number }[]) => ({
  id: 'back',
  words: ['D  back'],
  spots,
  holds: () => true,
  mustStandOn: true,
});
const placeOf = (wishes: Parameters<typeof placeCallouts>[0]) =>
  placeCallouts(wishes, room).placed.find(({ id }) => id === 'back')?.text.at.y ?? 0;

it('a mark without a leader stands apart from that of another part, so that it is not read as its second line', () => {
  expect(placeOf([shelf, back({ x: 50, y: 54 }, { x: 50, y: 80 })])).toBeGreaterThan(70);
});

it('and closer to it where there is no other place', () => {
  expect(placeOf([shelf, back({ x: 50, y: 54 })])).toBeLessThan(60);
});

it('a mark whose best places are walled in has a leader from another one', () => {
  const wall = { left: 40, right: 60, top: 0, bottom: 200 };
  const bottom = { id: 'bottom', words: ['C'], spots: [{ x: 50, y: 50 }], holds: () => false };
  const taken = [
    { ...wall, bottom: 49 },
    { ...wall, top: 51 },
    { left: 20, right: 49, top: 49, bottom: 51 },
    { left: 51, right: 80, top: 49, bottom: 51 },
  ];
  expect(placeCallouts([bottom], { ...room, taken }).leftOut).toEqual(['bottom']);
  const { placed } = placeCallouts([{ ...bottom, otherSpots: () => [{ x: 90, y: 50 }] }], { ...room, taken });
  expect(placed[0]?.leader[0]).toEqual({ x: 90, y: 50 });
});

it('a leader keeps off the mark of another part where it can', () => {
  const written = { id: 'front', words: ['I1'], spots: [{ x: 56, y: 48.6 }], holds: () => true };
  const box = { id: 'box', words: ['K1'], spots: [{ x: 50, y: 50 }], holds: () => false };
  const { placed } = placeCallouts([written, box], room);
  const leader = placed.find(({ id }) => id === 'box')?.leader ?? [];
  expect(leader).toHaveLength(2);
  for (const { x, y } of leader) expect(Math.hypot(x - 56, y - 48.6)).toBeGreaterThan(3);
});
