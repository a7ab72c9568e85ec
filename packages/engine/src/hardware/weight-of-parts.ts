import type { Rational } from '../length/rational.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { pieceWeight } from '../stock/buying/piece-weight.ts';

/** Kilograms, at average densities; undefined where of one of them nobody knows what it is made of. */
export function weightOfParts(parts: readonly UnmarkedPart[]): Rational | undefined {
  if (parts.length === 0) return undefined;
  const { kilograms, unweighed } = pieceWeight(parts);
  return unweighed.length > 0 ? undefined : kilograms;
}
