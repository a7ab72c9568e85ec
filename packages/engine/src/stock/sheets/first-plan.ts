import type { PreparedSheets, PreparedType } from './prepare-sheets.ts';
import { type Fit, SheetState, type StateRecord } from './sheet-state.ts';

/**
 * Every blank once, the largest first, each where it fits best among the last pieces of waste: a good plan at once. The
 * window keeps the time in proportion to the number of blanks beyond their sorting.
 */
export function placeLargestFirst(state: SheetState, order: (type: PreparedType) => number, fit: Fit): void {
  const { types, kinds } = state.problem;
  const indices = types.map((_, index) => index);
  const keys = types.map(order);
  indices.sort((a, b) => (keys[b] as number) - (keys[a] as number));
  const cheapest = kinds
    .map((kind, index) => ({ index, perArea: kind.cost / (kind.width * kind.length) }))
    .sort((a, b) => a.perArea - b.perArea);
  const chooseKind = (type: number, budget: number) =>
    cheapest.find(({ index }) => state.canOpen(index, budget) && state.holds(index, type))?.index ?? -1;
  const options = {
    random: undefined,
    blink: 0,
    contrary: 0,
    window: 2048,
    budget: Number.POSITIVE_INFINITY,
    chooseKind,
  };
  for (const type of indices) state.placeAll(type, fit, options);
}

/** The blanks' area, their longer side, and so on: orders that are each best for some problems. */
export const ORDERS: readonly ((type: PreparedType) => number)[] = [
  ({ width, length }) => width * length,
  ({ width, length }) => Math.max(width, length),
  ({ width }) => width,
  ({ length }) => length,
  ({ width, length }) => width + length,
];

/** A plan from nothing: every blank once, in the order given. */
export function planOnce(
  problem: PreparedSheets,
  areas: Float64Array,
  order: (type: PreparedType) => number,
  fit: Fit,
): StateRecord {
  const state = new SheetState(problem, areas);
  problem.types.forEach(({ count }, type) => {
    state.loose.add(type, count);
  });
  placeLargestFirst(state, order, fit);
  return state.record();
}
