import { Length, showLength, type Units } from '@fettle/engine';
import type { Measure, Say } from '@fettle/findings';

/** Speaks in a piece's own units, on its own ruler. */
export function sayIn(units: Units): Say {
  return {
    length: (measure: Measure) => {
      const length = measure instanceof Length ? measure : Length.fromMeasure(measure);
      return length === undefined ? measure.exactInches : showLength(length, { unit: units.unit, ruler: units.ruler });
    },
    name: (name) => `"${name.length > 60 ? `${name.slice(0, 59)}…` : name}"`,
  };
}
