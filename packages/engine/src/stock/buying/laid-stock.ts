import type { OffcutEntry, Stock } from '../../design/shop.ts';
import type { Length } from '../../length/length.ts';
import type { PieceToCut } from './pieces-to-cut.ts';

/**
 * A sheet or a board with what is cut from it, in exact lengths: the one thing that drawings, cut sequences and spares are
 * made of, whatever search found it. `along` counts from the near end, along the grain; `across` from the left edge.
 */
export interface LaidStock {
  /** Counts through all stock of a plan, from 1. */
  readonly number: number;
  readonly kind: 'sheet' | 'board';
  readonly stock: Stock;
  readonly thickness?: Length;
  readonly length: Length;
  readonly width: Length;
  /** What is trimmed off each end and each edge before anything else. */
  readonly lost: { readonly ends: Length; readonly edges: Length };
  /** The entry of the shop that it is, where it is there already and need not be bought. */
  readonly offcut?: OffcutEntry;
  readonly pieces: readonly LaidPiece[];
  /** Blanks from which several pieces follow in their order. */
  readonly runs: readonly LaidRun[];
  /** What comes off and is cut further, by the names that the cuts give it. */
  readonly parted: readonly PartedPiece[];
  readonly offcuts: readonly LaidArea[];
  readonly cuts: readonly SawCut[];
}

export interface LaidArea {
  readonly along: Length;
  readonly across: Length;
  readonly length: Length;
  readonly width: Length;
}

export interface PartedPiece extends LaidArea {
  readonly name: string;
}

/** One blank, and what the maker calls the order in which its pieces follow. */
export interface LaidRun extends PartedPiece {
  readonly label: string;
  /** Of all its pieces, in order. */
  readonly blanks: readonly string[];
  /** Whether its length lies across the grain of the stock. */
  readonly turned: boolean;
  /** Whether it may. */
  readonly mayTurn: boolean;
}

export interface LaidPiece extends LaidArea {
  readonly piece: PieceToCut;
  /** Its own length lies across the grain of the stock. */
  readonly turned: boolean;
  /** Which stave of a glued-up part it is, from 1; absent where nothing is glued. */
  readonly stave?: { readonly number: number; readonly of: number };
  /** What it is cut from together with those it follows. */
  readonly run?: LaidRun;
}

/** One cut from edge to edge of what is then on the saw. */
export interface SawCut {
  /** How many changes of direction come before it. */
  readonly depth: number;
  readonly direction: 'rip' | 'crosscut';
  /** What stands between fence or stop and the blade. */
  readonly setting: Length;
  /** Where the kept piece ends: from the left edge for a rip, from the near end for a crosscut. */
  readonly at: Length;
  /** The ends of the cut, in the other direction. */
  readonly from: Length;
  readonly to: Length;
  /** What goes to the saw: the number of the stock, the name of a piece of it, or the mark of a part that is cut down. */
  readonly of: string;
  /** What comes off: the mark of a part, a name for what is cut further, or absent for what is trimmed away. */
  readonly gives?: string;
  /** Ids of the blanks in what comes off. */
  readonly blanks: readonly string[];
  /** What comes off is the whole blank of this run. */
  readonly run?: string;
}
