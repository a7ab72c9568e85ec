import type { Sizes } from './effective-lengths.ts';
import type { FillingSearch } from './filling-search.ts';

/** Sums of whole numbers up to here are exact in floating point. */
const EXACT = 2 ** 50;
/** Of a search for the dearest filling; if it takes more, what is promised counts, and the bound is weaker. */
const MOST_STEPS = 2_000_000;

/**
 * A bound from prices of the sizes that holds exactly, whatever the rounding by which the prices were found: they are made
 * whole numbers, the dearest filling under them is sought among whole numbers, and what a filling is worth more than its
 * stock costs is taken back. By weak duality. Whole; 0 if the prices prove nothing.
 */
export function exactCostBound(
  sizes: Sizes,
  search: FillingSearch,
  demand: Int32Array,
  available: Float64Array,
  values: Float64Array,
): number {
  const { stocks, size } = sizes;
  let sum = 1;
  let pieces = 0;
  for (let index = 0; index < size.length; index += 1) {
    sum += Math.max(0, values[index] as number);
    pieces += demand[index] as number;
  }
  const dearest = stocks.reduce((most, { cost }) => Math.max(most, cost), 1);
  const scale = Math.floor(EXACT / (sum * Math.max(1, pieces) + dearest * stocks.length));
  if (scale < 1) return 0;
  const whole = values.map((value) => Math.floor(Math.max(0, value) * scale));

  search.prepare(whole, demand);
  let over = 1n;
  let under = 1n;
  for (let stock = 0; stock < stocks.length; stock += 1) {
    const bar = stocks[stock];
    if (bar === undefined || Number.isFinite(available[stock])) continue;
    const value = search.best(bar.capacity, MOST_STEPS).most;
    const cost = BigInt(bar.cost) * BigInt(scale);
    if (cost === 0n && value > 0) return 0;
    if (cost > 0n && BigInt(value) * under > over * cost) {
      over = BigInt(value);
      under = cost;
    }
  }
  if (over > under) {
    for (let index = 0; index < whole.length; index += 1) {
      whole[index] = Number((BigInt(whole[index] as number) * under) / over);
    }
    search.prepare(whole, demand);
  }
  let total = 0n;
  for (let index = 0; index < whole.length; index += 1) {
    total += BigInt(whole[index] as number) * BigInt(demand[index] as number);
  }
  for (let stock = 0; stock < stocks.length; stock += 1) {
    const bar = stocks[stock];
    if (bar === undefined || !Number.isFinite(available[stock])) continue;
    const value = search.best(bar.capacity, MOST_STEPS).most;
    const excess = BigInt(value) - BigInt(bar.cost) * BigInt(scale);
    if (excess > 0n) total -= BigInt(available[stock] as number) * excess;
  }
  const unit = BigInt(scale);
  return total <= 0n ? 0 : Number((total + unit - 1n) / unit);
}
