import { assumed, Length, Rational } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { openDoor } from '../../../packages/engine/src/hardware/open-door-reach.ts';

/** How far an open door stands in its own opening: gap + t sin a, and w cos a while it is open less than a right angle. */

const gap = assumed(Length.inches(3, 32), 'in the test');
const door = { width: Length.inches(9), thickness: Length.inches(3, 4), gap };
const hinge = (opens?: number) => ({
  name: 'butt',
  origin: { unit: 'test', start: 0, end: 1 },
  madeFor: [],
  ...(opens === undefined ? {} : { opens: Rational.of(opens) }),
});
const stands = (opens?: number, more: Partial<typeof door> = {}) => openDoor(hinge(opens), { ...door, ...more }, 'in');

describe('an open door', () => {
  it('stands its thickness and the gap in its opening at a right angle, which is taken where nothing is said', () => {
    // 3/32 + 3/4 = 27/32, exactly.
    expect(stands(90).stands.exactInches).toBe('27/32');
    expect(stands()).toMatchObject({ isAssumed: true });
    expect(stands().stands.exactInches).toBe('27/32');
  });

  it('stands less in it the wider it opens, and at 180 degrees only the gap away from the wood', () => {
    // 3/4 sin 110 = 0.75 x 0.93969 = 0.70477, to the next 1/32: 23/32. 3/32 + 23/32 = 13/16.
    expect(stands(110).stands.exactInches).toBe('13/16');
    // 3/4 sin 165 = 0.75 x 0.25882 = 0.19411, to the next 1/32: 7/32. 3/32 + 7/32 = 5/16.
    expect(stands(165).stands.exactInches).toBe('5/16');
    expect(stands(180).stands.exactInches).toBe('3/32');
  });

  it('stands across its opening below a right angle', () => {
    // 3/4 sin 80 + 9 cos 80 = 0.73861 + 1.56283 = 2.30144, to the next 1/32: 2-5/16. 3/32 + 2-5/16 = 2-13/32 = 77/32.
    expect(stands(80).stands.exactInches).toBe('77/32');
  });

  it('leaves the way free where it laps the wood by more than it is thick', () => {
    // An overlay of 3/4 is a gap of -3/4: -3/4 + 23/32 = -1/32.
    const lapped = stands(110, { gap: assumed(Length.inches(-3, 4), 'in the test') });
    expect(lapped.stands.exactInches).toBe('-1/32');
  });

  it('stands as far in as its data sheet tells, where that does', () => {
    const told = { ...hinge(110), openDoorIn: assumed(Length.inches(1, 8), 'in the test') };
    expect(openDoor(told, door, 'in').stands.exactInches).toBe('1/8');
  });
});
