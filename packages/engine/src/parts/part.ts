import type { Origin } from '@fettle/findings';
import type { Figure } from '../design/figure.ts';
import type { Stock } from '../design/shop.ts';
import type { Span } from '../evaluation.ts';
import type { FaceOfPart, Feature } from '../joinery/feature.ts';
import type { Solid } from '../solids/solid.ts';

export type PartRole =
  | 'top'
  | 'plinth'
  | 'side'
  | 'bottom'
  | 'stretcher'
  | 'partition'
  | 'back'
  /** Of a framed side or back; `frame-…` are those of the face frame. */
  | 'stile'
  | 'rail'
  | 'panel'
  | 'pane'
  | 'frame-stile'
  | 'frame-rail'
  | 'divider-rail'
  | 'divider-panel'
  | 'dust-panel'
  | 'nailer'
  | 'foot'
  | 'foot-rail'
  | 'door'
  | 'drawer-front'
  | 'lid'
  | 'false-front'
  | 'drawer-side'
  | 'drawer-end'
  | 'drawer-bottom'
  | 'drawer-partition'
  | 'packer'
  | 'runner'
  | 'shelf'
  | 'cleat'
  | 'lining';

/** One piece of wood, where it stands and how big it is when finished. */
export interface Part {
  /** Unique in the piece and stable while the text around it changes. */
  readonly id: string;
  /** Short mark for the drawing, the cut list and the wood itself: 'A', 'B1'. */
  readonly mark: string;
  /** In the maker's words: 'drawer front "cards"'. */
  readonly label: string;
  readonly role: PartRole;
  readonly stock?: Stock;
  /** Finished size, with what goes into joints. `length` is along the grain, or the longest edge without grain. */
  readonly length: Figure;
  readonly width: Figure;
  readonly thickness: Figure;
  readonly grain: 'x' | 'y' | 'z' | 'none';
  /** The axis its thickness lies along. */
  readonly thin: 'x' | 'y' | 'z';
  /** What one sees of it in its place: from shoulder to shoulder, without what goes into joints. */
  readonly box: Block;
  /** The finished piece of wood before anything is cut into it: its box and what goes into joints at its ends. */
  readonly blank: Block;
  /** The strips on its edges, which its size includes; empty where it has none. */
  readonly edging: readonly EdgingStrip[];
  /** What is cut away from the blank. */
  readonly features: readonly Feature[];
  /** The frame that it is glued up into before it goes into the case: all members of one frame share it. */
  readonly frame?: string;
  /** The statement that made it. */
  readonly origin: Origin;
  /** The cell it belongs to, if any. */
  readonly cell?: string;
  /** Where it comes among the fronts that are cut with it from one blank. */
  readonly run?: PlaceInRun;
}

/** Parts of one run are cut from one blank, in their order. */
export interface PlaceInRun {
  /** Alike for all parts of one run, and for no other in the piece. */
  readonly id: string;
  /** In the maker's words: 'sequence "across"'. */
  readonly label: string;
  /** From 0. */
  readonly place: number;
  /** Side by side across the grain, or behind each other along it. */
  readonly order: 'across' | 'along';
  /** They are one panel until all else is done, and are then cut through. */
  readonly isSplit?: true;
}

/** A rectangular piece of space. */
export interface Block {
  readonly x: Span;
  readonly y: Span;
  readonly z: Span;
}

/** A strip of solid wood on one edge of a part. */
export interface EdgingStrip {
  readonly at: FaceOfPart;
  readonly thickness: Figure;
  readonly stock?: Stock;
  readonly corners: 'mitred' | 'butted';
  readonly veneer: 'before' | 'after';
  /** Where it lies in the blank. */
  readonly solid: Solid;
  /** Its longer edge. */
  readonly length: Figure;
  readonly origin: Origin;
}
