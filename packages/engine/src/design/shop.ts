import type { Origin } from '@fettle/findings';
import type { Rational } from '../length/rational.ts';
import type { Figure } from './figure.ts';
import type { SlideEntry } from './slide-design.ts';

/** What a shop file tells: stock, hardware, cutters and machines, with the figures of the real thing. */

export interface Price {
  /** In the shop's own currency; never converted. */
  readonly amount: Rational;
  readonly per: 'each' | 'board-foot';
}

export interface Stock {
  readonly name: string;
  readonly origin: Origin;
  readonly form: 'sheet' | 'board';
  /** What the yard calls it. */
  readonly nominal?: Figure;
  /** What the caliper says. Fits use this. */
  readonly actual?: Figure;
  /** Sheet length (along the grain) and width, or longest and widest board. */
  readonly length?: Figure;
  readonly width?: Figure;
  readonly grain: 'along-length' | 'none';
  readonly species?: string;
  readonly price?: Price;
  /** What is cut off each edge of a sheet before anything else. */
  readonly trim?: Figure;
  /** What is left over from earlier work, to be used before anything is bought. */
  readonly offcuts?: readonly OffcutEntry[];
}

export interface OffcutEntry {
  readonly origin: Origin;
  /** Along the grain. */
  readonly length: Figure;
  readonly width: Figure;
  /** Of a board, rough; absent where its stock comes in one thickness. */
  readonly thickness?: Figure;
  readonly count: number;
}

/** Limits that are absent are not known and are not checked. */
export interface HingeEntry {
  readonly name: string;
  readonly origin: Origin;
  /** The door thicknesses it is made for. */
  readonly thinnestDoor?: Figure;
  readonly thickestDoor?: Figure;
  readonly widestDoor?: Figure;
  /** The highest door that a pair of it carries. */
  readonly highestDoor?: Figure;
  /** Empty while the entry does not say. */
  readonly madeFor: readonly ('inset' | 'overlay')[];
  /** `butt`: leaves in edges. `knife`: leaves in ends. `concealed`: a cup in the back of the door, a plate on the case. */
  readonly form?: 'butt' | 'knife' | 'concealed';
  /** Of a leaf, along the edge or end that it is let into. */
  readonly length?: Figure;
  /** Of one leaf, from the middle of the pin. */
  readonly leafWidth?: Figure;
  /** Thickness of both leaves together, closed. */
  readonly closed?: Figure;
  readonly screwLength?: Figure;
  readonly screwsEachLeaf?: number;
  readonly cup?: CupFigures;
  /** In degrees. */
  readonly opens?: Rational;
  /** How far its arm or plate stands out from the wood beside the opening. */
  readonly standsIn?: Figure;
  /** How far the open door stands in its own opening. */
  readonly openDoorIn?: Figure;
  readonly price?: Price;
}

/** Of a concealed hinge. */
export interface CupFigures {
  readonly diameter: Figure;
  readonly depth: Figure;
  /** The cup distance: wood between the edge of the door and the cup. */
  readonly leastDistance?: Figure;
  readonly mostDistance?: Figure;
  /** An overlay is so much more than the cup distance, or an inset door's gap is what it leaves of this. */
  readonly reach?: { readonly kind: 'overlay' | 'gap'; readonly figure: Figure };
  /** The two fixing holes beside the cup: from one to the other, and how far behind its middle. */
  readonly holesApart?: Figure;
  readonly holesBehind?: Figure;
  /** From the front of the case, or the back of an inset door, to the middle of the plate's screws. */
  readonly plateFrom?: Figure;
}

/** What fronts are opened by. What is absent is not known and not checked. */
export interface PullEntry {
  readonly name: string;
  readonly origin: Origin;
  /** Along its longer side, and across it. */
  readonly width?: Figure;
  readonly height?: Figure;
  /** From screw to screw; a knob has none. */
  readonly betweenScrews?: Figure;
  /** How far it stands before the front. */
  readonly projection?: Figure;
  /** The length of the screws that come with it, and how deep its thread is. */
  readonly screwLength?: Figure;
  readonly thread?: Figure;
  /** It lies in a recess of this depth instead of being screwed through the front. */
  readonly letIn?: Figure;
  readonly isRound: boolean;
  /** The stock that the shop makes it of; absent where it is bought. */
  readonly madeOf?: string;
  readonly price?: Price;
}

export interface CutterEntry {
  readonly name: string;
  readonly origin: Origin;
  /** The narrowest and the widest groove it cuts in one pass; equal where it cannot be set. */
  readonly narrowest: Figure;
  readonly widest: Figure;
  readonly deepest?: Figure;
  /**
   * A blade runs out at both ends of a cut. A bit can stop within the wood. A chisel makes mortises only. Absent where
   * the entry does not say.
   */
  readonly form?: 'blade' | 'bit' | 'chisel';
}

export interface DowelEntry {
  readonly name: string;
  readonly origin: Origin;
  readonly diameter: Figure;
  readonly length: Figure;
  readonly price?: Price;
}

export interface ScrewEntry {
  readonly name: string;
  readonly origin: Origin;
  readonly length: Figure;
  /** Diameter of the hole that the thread bites in. */
  readonly pilot: Figure;
  /** Diameter of the hole that the shank passes through. */
  readonly clearance: Figure;
  readonly price?: Price;
}

/** A tenon of its own that lies in a mortise in either part. */
export interface LooseTenonEntry {
  readonly name: string;
  readonly origin: Origin;
  readonly thickness: Figure;
  readonly width: Figure;
  readonly length: Figure;
  readonly price?: Price;
}

/** Limits that are absent are not known and are not checked. */
export interface MachineEntry {
  readonly name: string;
  readonly origin: Origin;
  /** From the fence to the blade at its widest. */
  readonly ripWidth?: Figure;
  /** The longest part it cuts to length, and the widest it cuts across. */
  readonly crosscutLength?: Figure;
  readonly crosscutWidth?: Figure;
  readonly planeWidth?: Figure;
  /** Shorter pieces are not safe on it. */
  readonly leastLength?: Figure;
  /** The longest cut it makes along a sheet. */
  readonly ripLength?: Figure;
  /** Narrower strips are not safe on it. */
  readonly leastWidth?: Figure;
  readonly kerf?: Figure;
}

/** What the shop has besides what a design chose: checks measure against it and mends pick from it. */
export interface ShopOffer {
  readonly slides: readonly SlideEntry[];
  readonly hinges?: readonly HingeEntry[];
  readonly cutters?: readonly CutterEntry[];
  readonly machines?: readonly MachineEntry[];
  readonly stocks?: readonly Stock[];
  readonly screws?: readonly ScrewEntry[];
}
