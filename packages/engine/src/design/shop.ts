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
}

export interface ScrewEntry {
  readonly name: string;
  readonly origin: Origin;
  readonly length: Figure;
  /** Diameter of the hole that the thread bites in. */
  readonly pilot: Figure;
  /** Diameter of the hole that the shank passes through. */
  readonly clearance: Figure;
}

/** A tenon of its own that lies in a mortise in either part. */
export interface LooseTenonEntry {
  readonly name: string;
  readonly origin: Origin;
  readonly thickness: Figure;
  readonly width: Figure;
  readonly length: Figure;
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
  readonly kerf?: Figure;
}

/** What the shop has besides what a design chose: checks measure against it and mends pick from it. */
export interface ShopOffer {
  readonly slides: readonly SlideEntry[];
  readonly hinges?: readonly HingeEntry[];
  readonly cutters?: readonly CutterEntry[];
  readonly machines?: readonly MachineEntry[];
  readonly stocks?: readonly Stock[];
}
