import { groupedBy, type PlacedHardware, type Units } from '@fettle/engine';
import { cleanName } from '../lettering.ts';
import { shown } from '../shown-lengths.ts';

/** 'lower edge above the bottom of the case: 19/32"; front end behind the front of the case: 1/2"', as one measures. */
export function setWords(set: PlacedHardware['set'], units: Units): string {
  return set.map(({ words, figure }) => `${words}: ${shown(figure.length, units)}`).join('; ');
}

/**
 * Where each of several fittings is set: 'lower hinge: …; upper hinge: …'. What is set alike is told once, and without
 * names where all are.
 */
export function eachSetWords(fittings: readonly PlacedHardware[], units: Units): string {
  const settings = groupedBy(fittings, ({ set }) => setWords(set, units));
  if (settings.size < 2) return [...settings.keys()].join('');
  return [...settings]
    .map(([words, alike]) => `${[...new Set(alike.map(({ label }) => whichOf(label)))].join(', ')}: ${words}`)
    .join('; ');
}

/** 'lower hinge' of 'lower hinge of the left door'. */
function whichOf(label: string): string {
  return cleanName(label.replace(/ of .*$/s, ''));
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
