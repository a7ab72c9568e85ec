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
