import { Rational } from '../../length/rational.ts';
import type { Part } from '../../parts/part.ts';
import { GLASS_DENSITY } from '../../tables/densities.ts';
import { massOf } from '../weights.ts';
import { woodOfStock } from './wood-of-stock.ts';

/** What a piece weighs without its hardware: finished sizes, before joints are cut, at average densities. */
export interface PieceWeight {
  readonly kilograms: Rational;
  /** What each stock was taken for, by its name. */
  readonly takenFor: ReadonlyMap<string, string>;
  /** Ids of parts of which nobody knows what they are made of; they are not in the sum. */
  readonly unweighed: readonly string[];
}

export function pieceWeight(parts: readonly Omit<Part, 'mark'>[]): PieceWeight {
  const takenFor = new Map<string, string>();
  const unweighed: string[] = [];
  // Made kilograms only at the end: cubic inches times densities stay small numbers.
  let weighed = Rational.zero;
  for (const part of parts) {
    const density = densityOf(part, takenFor);
    if (density === undefined) {
      unweighed.push(part.id);
      continue;
    }
    const volume = [part.length, part.width, part.thickness].reduce<Rational>(
      (product, { length: size }) => product.times(size.in('in').max(Rational.zero)),
      Rational.one,
    );
    weighed = weighed.plus(volume.times(density));
  }
  return { kilograms: massOf(weighed, Rational.one), takenFor, unweighed };
}

/** Notes down what its stock was taken for. */
function densityOf({ role, stock }: Omit<Part, 'mark'>, takenFor: Map<string, string>): Rational | undefined {
  if (role === 'pane') return GLASS_DENSITY;
  const wood = stock && woodOfStock(stock);
  if (stock === undefined || wood === undefined) return undefined;
  takenFor.set(stock.name, wood.takenFor);
  return wood.density;
}
