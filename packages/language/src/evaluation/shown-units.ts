import { Rational, type Units } from '@fettle/engine';

/**
 * Units and rulers that a maker may want to see lengths in, whatever a text is written in: beside the text only. What the
 * text means, its findings and all that is taken to the bench keep to the piece's own units.
 */
const shown: ReadonlyMap<unknown, Units> = new Map<string, Units>([
  ['inches-16', { unit: 'in', ruler: Rational.of(1, 16) }],
  ['inches-32', { unit: 'in', ruler: Rational.of(1, 32) }],
  ['inches-64', { unit: 'in', ruler: Rational.of(1, 64) }],
  ['mm', { unit: 'mm', ruler: Rational.one }],
]);

/** By the name a setting has for them; undefined: as each piece is written, also for whatever is no such name. */
export function shownUnits(name: unknown): Units | undefined {
  return shown.get(name);
}
