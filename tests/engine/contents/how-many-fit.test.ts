import { given, type HeldDesign, type ThingDesign } from '@fettle/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fillSpaces } from '../../../packages/engine/src/contents/fill-spaces.ts';
import { bestRows, inAll, type Space } from '../../../packages/engine/src/contents/how-many-fit.ts';
import { inches, place, written } from '../design-builder.ts';

// Worked by hand; no published values.

function thing(width: string, depth: string, height: string, keepsUpright = false): ThingDesign {
  return {
    name: 'thing',
    origin: place(),
    width: written(width),
    depth: written(depth),
    height: written(height),
    keepsUpright,
  };
}

function space(width: string, depth: string, height: string): Space {
  return { width: inches(width), depth: inches(depth), height: inches(height) };
}

function held(count: number, what: ThingDesign): HeldDesign {
  return { origin: place(), thing: what, count };
}

describe('things in plain rows', () => {
  it('stand side by side, one behind the other and one on top of the other', () => {
    // 20 / 4 = 5 across, 12 / 4 = 3 behind, 15 / 7 = 2 above.
    expect(inAll(bestRows(thing('4', '4', '7', true), space('20', '12', '15')))).toBe(30);
  });
  it('go in where they fit to a hair, and not a 64th beyond', () => {
    expect(inAll(bestRows(thing('6', '6', '6'), space('18', '6', '6')))).toBe(3);
    expect(inAll(bestRows(thing('6', '6', '6'), space('17-63/64', '6', '6')))).toBe(2);
  });
  it('are turned, or tipped on a side, where more go in so, unless they stay this way up', () => {
    const book = thing('9', '6', '1');
    expect(bestRows(book, space('10', '6', '9'))).toMatchObject({ way: 'on its side', across: 10 });
    expect(inAll(bestRows({ ...book, keepsUpright: true }, space('10', '6', '9')))).toBe(9);
  });
  it('of several kinds fill columns from the left, space by space', () => {
    const shelf = space('12', '10', '10');
    const wide = thing('5', '10', '10', true);
    const small = thing('2', '10', '10', true);
    // Two wide ones in each space; beside them 2" are left for one small one.
    const filled = fillSpaces([held(4, wide), held(3, small)], [shelf, shelf]);
    expect(filled.map(({ placed }) => placed)).toEqual([4, 2]);
    expect(filled.map(({ bySpace }) => bySpace)).toEqual([
      [2, 2],
      [1, 1],
    ]);
  });
  it('never take more room than there is, whatever they are', () => {
    const side = fc.integer({ min: 1, max: 200 });
    fc.assert(
      fc.property(fc.tuple(side, side, side), fc.tuple(side, side, side), fc.boolean(), (a, b, keepsUpright) => {
        const at = (n: number) => given(inches(`${n}/8`), place());
        const one: ThingDesign = {
          name: 'any',
          origin: place(),
          width: at(a[0]),
          depth: at(a[1]),
          height: at(a[2]),
          keepsUpright,
        };
        const room: Space = { width: inches(`${b[0]}/8`), depth: inches(`${b[1]}/8`), height: inches(`${b[2]}/8`) };
        const rows = bestRows(one, room);
        expect(rows.each.times(rows.across).compare(room.width)).toBeLessThanOrEqual(0);
        expect(inAll(rows) * a[0] * a[1] * a[2]).toBeLessThanOrEqual(b[0] * b[1] * b[2]);
      }),
    );
  });
});
