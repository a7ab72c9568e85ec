import type { PreparedKind } from './prepare-sheets.ts';

/**
 * The least that sheets cost whose capacities together reach `total`, if parts of sheets could be bought: the cheapest
 * for their capacity first, each kind as far as it goes. Infinite if all that are available do not reach it.
 */
export function leastCost(total: number, kinds: readonly PreparedKind[], capacities: readonly number[]): number {
  if (kinds.every(({ available }) => available === Number.POSITIVE_INFINITY)) {
    let least = Number.POSITIVE_INFINITY;
    for (let kind = 0; kind < kinds.length; kind++) {
      const capacity = capacities[kind] as number;
      if (capacity > 0) least = Math.min(least, (kinds[kind] as PreparedKind).cost / capacity);
    }
    return total <= 0 ? 0 : total * least;
  }
  const order = kinds
    .map((kind, index) => ({ kind, capacity: capacities[index] as number }))
    .filter(({ capacity }) => capacity > 0)
    .sort((a, b) => a.kind.cost / a.capacity - b.kind.cost / b.capacity);
  let left = total;
  let cost = 0;
  for (const { kind, capacity } of order) {
    if (left <= 0) break;
    const sheets = Math.min(kind.available, left / capacity);
    cost += sheets * kind.cost;
    left -= sheets * capacity;
  }
  // A rounding error is not a missing sheet.
  return left > total * 1e-12 ? Number.POSITIVE_INFINITY : cost;
}

/** The step between possible costs: their greatest common divisor, or 0 if they are not whole. */
export function costStep(kinds: readonly PreparedKind[]): number {
  let step = 0;
  for (const { cost } of kinds) {
    if (!Number.isSafeInteger(cost)) return 0;
    let a = cost;
    while (a !== 0) [step, a] = [a, step % a];
  }
  return step;
}

/** The least possible cost that is not below `bound`; allows for the rounding of doubles. */
export function roundUpCost(bound: number, step: number): number {
  if (!Number.isFinite(bound)) return bound;
  const safe = bound * (1 - 1e-9) - 1e-9;
  return step === 0 ? Math.max(0, safe) : Math.max(0, Math.ceil(safe / step)) * step;
}
