import {
  assumed,
  type Figure,
  type FrontFit,
  INSET_GAP,
  type LengthUnit,
  LIPPED_GAP,
  OVERLAY_GAP,
  Rational,
  usual,
} from '@fettle/engine';
import type { Reader } from './reader.ts';

/** How fronts sit in or on the case, as the face says for all of them or one front for itself. */

type FitPattern = 'inset' | 'overlay full' | 'overlay half' | 'overlay <length>' | 'lipped <length>';
const fitPatterns: readonly FitPattern[] = [
  'inset',
  'overlay full',
  'overlay half',
  'overlay <length>',
  'lipped <length>',
];

/** What all fronts of a face have in common, whatever their fit. */
export interface FitMeasures {
  readonly gap: Figure;
  readonly reveal: Figure;
}

/** The fit of all fronts that do not say their own; fronts of which nothing is said are inset. */
export function readFaceFit(reader: Reader<FitPattern | 'gap <length>' | 'reveal <length>'>): {
  readonly fit: FrontFit;
  readonly measures: FitMeasures;
} {
  const said = onlyFit(reader);
  const gap = reader.length('gap <length>') ?? usualGap(said, reader.context.units.unit);
  const reveal =
    reader.length('reveal <length>') ??
    assumed(
      gap.length.times(Rational.of(1, 2)),
      'half a gap is left to be seen, so that two cases beside each other show one, common practice',
    );
  const measures = { gap, reveal };
  return { fit: fitFrom(reader, said, measures) ?? { kind: 'inset', gap }, measures };
}

/** Undefined where a front says nothing of its own. */
export function readOwnFit(reader: Reader<FitPattern>, measures: FitMeasures): FrontFit | undefined {
  return fitFrom(reader, onlyFit(reader), measures);
}

function fitFrom(
  reader: Reader<FitPattern>,
  said: FitPattern | undefined,
  { gap, reveal }: FitMeasures,
): FrontFit | undefined {
  switch (said) {
    case undefined:
      return undefined;
    case 'inset':
      return { kind: 'inset', gap };
    case 'overlay full':
      return { kind: 'overlay', how: 'full', reveal, gap };
    case 'overlay half':
      return { kind: 'overlay', how: 'half', reveal, gap };
    case 'overlay <length>': {
      const by = reader.length('overlay <length>');
      return by && { kind: 'overlay', how: 'by', by, reveal, gap };
    }
    case 'lipped <length>': {
      const lip = reader.length('lipped <length>');
      return lip && { kind: 'lipped', lip, gap };
    }
    default: {
      const unknown: never = said;
      return unknown;
    }
  }
}

/** The first that is said; that it cannot be another way as well is said elsewhere. */
function onlyFit(reader: Reader<FitPattern>): FitPattern | undefined {
  const said = fitPatterns.flatMap((pattern) => {
    const origin = reader.originOf(pattern);
    return origin === undefined ? [] : [{ pattern, start: origin.start }];
  });
  return said.sort((a, b) => a.start - b.start)[0]?.pattern;
}

function usualGap(said: FitPattern | undefined, unit: LengthUnit): Figure {
  switch (said) {
    case undefined:
    case 'inset':
      return usual(INSET_GAP, unit);
    case 'lipped <length>':
      return usual(LIPPED_GAP, unit);
    default:
      return usual(OVERLAY_GAP, unit);
  }
}
