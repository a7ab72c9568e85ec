import { type Box, type Drawing, unionOf } from './primitives.ts';

/** What one looks at on a sheet of several things: all of them, and each in its turn where all at once are too small. */
export function lookedAt(items: readonly Box[]): Pick<Drawing, 'focus' | 'items'> {
  const focus = unionOf(items);
  return focus === undefined ? {} : { focus, items };
}
