import type { PlacedHardware, Units } from '@fettle/engine';
import { shown } from '../shown-lengths.ts';

/** 'lower edge above the bottom of the case: 19/32"; front end behind the front of the case: 1/2"', as one measures. */
export function setWords(set: PlacedHardware['set'], units: Units): string {
  return set.map(({ words, figure }) => `${words}: ${shown(figure.length, units)}`).join('; ');
}

const KINDS: Readonly<Record<string, string>> = {
  'shelf-pin': 'shelf pin',
  'lid-support': 'lid support',
  anchor: 'wall screw',
};

/** What the trade calls it. */
export function kindOfHardware(kind: string): string {
  return KINDS[kind] ?? kind;
}
