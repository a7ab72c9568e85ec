/**
 * What a plan along one dimension is asked and what it answers: pieces of given lengths out of stock of given lengths,
 * as edging, mouldings, stiles and ripped strips are cut. Whole numbers only; whoever asks chooses a unit in which all
 * lengths are whole. Knows nothing of parts, shops or clocks.
 */

/** One kind of stock. */
export interface StockLength {
  readonly id: string;
  /** Whole, greater than zero. */
  readonly length: number;
  /** How many there are; as many as one likes if absent. */
  readonly available?: number;
  /** What one costs, whole and not negative. With cost = length the plan uses the least length. */
  readonly cost: number;
}

export interface LengthItem {
  readonly id: string;
  /** Whole, greater than zero. */
  readonly length: number;
  readonly count: number;
}

export interface LengthProblem {
  readonly stocks: readonly StockLength[];
  readonly items: readonly LengthItem[];
  /**
   * What a cut takes. It is needed between two pieces and before what is left over; a piece that ends flush with the
   * stock needs no cut, and of an end that is thinner than the blade the blade takes what there is.
   */
  readonly kerf: number;
  /** What is cut off the ends of each length of stock before anything else, both ends and their cuts together. */
  readonly trim: number;
}

/** Pieces of one kind in one length of stock. */
export interface Pieces {
  readonly item: string;
  readonly count: number;
}

/** One way of cutting a length of stock. */
export interface CutLength {
  readonly stock: string;
  /** How many lengths are cut like this. */
  readonly times: number;
  /** Longest first. */
  readonly pieces: readonly Pieces[];
  /** What is left in one piece at the end of each, after the last cut. */
  readonly left: number;
}

export interface LengthPlan {
  readonly cuts: readonly CutLength[];
  /** What no stock can give: too long, not a whole length, or the stock ran out. */
  readonly unplaced: readonly Pieces[];
  readonly cost: number;
}

/** What is known after a little more thinking. */
export interface LengthStep {
  /** A plan, when it is better than all before it. */
  readonly plan?: LengthPlan;
  /** No plan that places as much can cost less. */
  readonly bound: number;
  /** Nothing more will come. The last plan is the cheapest possible if its cost is the bound. */
  readonly done: boolean;
  /** 0 to 1, never falling; a guess. */
  readonly progress: number;
}
