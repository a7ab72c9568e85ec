import { groupedBy } from '../../grouping.ts';
import type { BoardKind } from './board-problem.ts';

/**
 * What whole boards must cost at least. Bounds by area, by scales or by prices let one buy a third of a board; here boards
 * are bought whole, and whatever is bought has to do by every such measure at once. The choice that looks cheapest is
 * followed first (branch and bound), so that it can stop at any time: what is then still cheapest holds as a bound.
 */

/** One way to measure: what is asked, and what a board of each kind holds of it at most. In kinds as given beside it. */
export interface Need {
  readonly total: number;
  readonly held: readonly number[];
}

export interface WholeKind {
  /** Whole, not negative. */
  readonly cost: number;
  /** Infinity if there is no limit. */
  readonly available: number;
}

/** So small a share of what is asked is a rounding error, not a board. */
const ROUNDING = 1e-9;

/** Of one search, and so much work: some thousandths of a second. */
const MOST_CHOICES = 600;
const MOST_WORK = 300_000;
/** Of needs that are added later, the latest; each has to ask more than all before it by this share. */
const MOST_ADDED = 10;
const LEAST_RISE = 1e-3;

/** The boards of a problem and what is known of what they have to hold. */
export class WholeBoards {
  private readonly kinds: readonly WholeKind[];
  /** The first board of each kind, as all boards that are alike hold the same. */
  private readonly firsts: readonly number[];
  private readonly needs: readonly Need[];
  private added: readonly Need[] = [];
  private highest = 0;

  constructor(boards: readonly BoardKind[], needs: readonly Need[]) {
    const alike = groupedBy(
      boards.map((board, at) => ({ board, at })),
      ({ board }) => `${board.width} ${board.length} ${board.cost}`,
    );
    const groups = [...alike.values()];
    this.firsts = groups.map((group) => group[0]?.at ?? 0);
    this.kinds = groups.map((group) => ({
      cost: group[0]?.board.cost ?? 0,
      available: group.reduce((sum, { board }) => sum + (board.available ?? Number.POSITIVE_INFINITY), 0),
    }));
    this.needs = needs.map((need) => this.ofKinds(need));
  }

  /** Adds the need if it says more than those added before, by the bound it gives alone; whether it does. */
  add(need: Need, bound: number): boolean {
    if (bound <= this.highest * (1 + LEAST_RISE)) return false;
    this.highest = bound;
    this.added = [this.ofKinds(need), ...this.added].slice(0, MOST_ADDED);
    return true;
  }

  leastCost(enough: number): number {
    const needs = [...this.added, ...this.needs];
    const choices = Math.min(MOST_CHOICES, Math.floor(MOST_WORK / (1 + needs.length * this.kinds.length)));
    return leastCostOfWhole(this.kinds, needs, enough, choices);
  }

  private ofKinds({ total, held }: Need): Need {
    return { total, held: this.firsts.map((at) => held[at] as number) };
  }
}

interface Choice {
  readonly least: readonly number[];
  readonly most: readonly number[];
  /** No choice within these limits costs less. */
  readonly cost: number;
  /** The kind to decide next and the highest number of it on the one side; absent if the choice does as it is. */
  readonly branch: { readonly kind: number; readonly upTo: number } | undefined;
}

/**
 * The least cost of whole boards that hold what every need asks, or a bound for it: the search ends at `enough`, and after
 * `mostChoices`. Infinite if all boards that are available do not do.
 */
export function leastCostOfWhole(
  kinds: readonly WholeKind[],
  needs: readonly Need[],
  enough: number,
  mostChoices: number,
): number {
  const step = kinds.reduce((common, { cost }) => greatestCommonDivisor(common, cost), 0);
  const orders = needs.map(({ held }) =>
    kinds
      .map((_, kind) => kind)
      .filter((kind) => (held[kind] as number) > 0)
      .sort((a, b) => cheapness(kinds, held, a) - cheapness(kinds, held, b)),
  );
  const look = (least: readonly number[], most: readonly number[]): Choice =>
    choiceWithin(kinds, needs, orders, step, least, most);
  const open: Choice[] = [
    look(
      kinds.map(() => 0),
      kinds.map(({ available }) => available),
    ),
  ];
  for (let looked = 0; ; looked += 1) {
    let place = 0;
    for (let at = 1; at < open.length; at += 1) {
      if ((open[at] as Choice).cost < (open[place] as Choice).cost) place = at;
    }
    const best = open[place];
    if (best === undefined) return Number.POSITIVE_INFINITY;
    const { least, most, cost, branch } = best;
    if (branch === undefined || cost >= enough || looked >= mostChoices) return cost;
    open[place] = open[open.length - 1] as Choice;
    open.pop();
    const { kind, upTo } = branch;
    open.push(look(least, most.with(kind, upTo)), look(least.with(kind, upTo + 1), most));
  }
}

function cheapness(kinds: readonly WholeKind[], held: readonly number[], kind: number): number {
  return (kinds[kind] as WholeKind).cost / (held[kind] as number);
}

/** The cheapest boards for the most demanding need, the last of them in part, and what to decide about it. */
function choiceWithin(
  kinds: readonly WholeKind[],
  needs: readonly Need[],
  orders: readonly (readonly number[])[],
  step: number,
  least: readonly number[],
  most: readonly number[],
): Choice {
  const base = kinds.reduce((sum, { cost }, kind) => sum + cost * (least[kind] as number), 0);
  let worst = { cost: base, taken: least, part: -1 };
  needs.forEach((need, at) => {
    const filled = fill(kinds, need, orders[at] as readonly number[], base, least, most);
    if (filled.cost > worst.cost) worst = filled;
  });
  const cost = roundUp(worst.cost, step);
  const { taken, part } = worst;
  if (!Number.isFinite(cost)) return { least, most, cost, branch: undefined };
  if (part >= 0) return { least, most, cost, branch: { kind: part, upTo: Math.floor(taken[part] as number) } };
  for (const { total, held } of needs) {
    const holds = held.reduce((sum, one, kind) => sum + one * (taken[kind] as number), 0);
    if (holds >= total * (1 - 2 * ROUNDING)) continue;
    // More of something is needed: of the kind that helps most.
    let helps = -1;
    held.forEach((one, kind) => {
      if ((taken[kind] as number) < (most[kind] as number) && one > 0 && (helps < 0 || one > (held[helps] as number))) {
        helps = kind;
      }
    });
    if (helps < 0) return { least, most, cost: Number.POSITIVE_INFINITY, branch: undefined };
    return { least, most, cost, branch: { kind: helps, upTo: taken[helps] as number } };
  }
  return { least, most, cost, branch: undefined };
}

function fill(
  kinds: readonly WholeKind[],
  { total, held }: Need,
  order: readonly number[],
  base: number,
  least: readonly number[],
  most: readonly number[],
): { readonly cost: number; readonly taken: readonly number[]; readonly part: number } {
  const taken = [...least];
  let rest = total * (1 - ROUNDING) - held.reduce((sum, one, kind) => sum + one * (least[kind] as number), 0);
  let cost = base;
  for (const kind of order) {
    if (rest <= 0) break;
    const one = held[kind] as number;
    const some = Math.min((most[kind] as number) - (least[kind] as number), rest / one);
    taken[kind] = (taken[kind] as number) + some;
    cost += some * (kinds[kind] as WholeKind).cost;
    if (!Number.isInteger(some)) return { cost, taken, part: kind };
    rest -= some * one;
  }
  return { cost: rest > 0 ? Number.POSITIVE_INFINITY : cost, taken, part: -1 };
}

/** To the next cost that whole boards can have. */
function roundUp(cost: number, step: number): number {
  return step === 0 || !Number.isFinite(cost) ? cost : Math.ceil((cost * (1 - ROUNDING)) / step) * step;
}

function greatestCommonDivisor(a: number, b: number): number {
  let [one, other] = [a, b];
  while (other !== 0) [one, other] = [other, one % other];
  return one;
}
