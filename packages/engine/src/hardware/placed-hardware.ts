import type { Origin } from '@fettle/findings';
import type { Figure } from '../design/figure.ts';
import type { Price } from '../design/shop.ts';
import type { FaceOfPart, Feature } from '../joinery/feature.ts';
import type { Length } from '../length/length.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import type { Interval, Point3 } from '../solids/solid.ts';

/** One piece of hardware in its place: what schedules list, what drawings show, and what it asks of the wood behind it. */
export interface PlacedHardware {
  /** Unique in the piece and stable while the text around it changes. */
  readonly id: string;
  readonly kind: HardwareKind;
  /** The name of its shop entry; absent for hardware that no shop file describes. */
  readonly entry?: string;
  /** In the maker's words: 'left slide of "cards"'. */
  readonly label: string;
  /** The cell that it serves, if any. */
  readonly cell?: string;
  /** The parts that it is fastened to or let into. */
  readonly on: readonly string[];
  /** Where it is set, in the order in which one measures: each says from which datum. */
  readonly set: readonly { readonly words: string; readonly figure: Figure }[];
  /** What one sees of it from the front; absent where that is not known, or nothing is seen. */
  readonly outline?: { readonly x: Interval; readonly y: Interval; readonly isRound: boolean };
  /** How far it stands out from the front that it is on, where that is known. */
  readonly standsOut?: Length;
  /** What fastens it. Whether there is wood behind each is asked of the parts, never taken for granted. */
  readonly screws: readonly Screw[];
  /** Absent while no packers are asked for. */
  readonly packing?: Packing;
  /** The statement after which packers may be asked for; absent where they are of no use. */
  readonly packersAfter?: Origin;
  /** Of one, where no entry of a shop file tells it. */
  readonly price?: Price;
  /** The statement that asked for it. */
  readonly origin: Origin;
}

export type HardwareKind =
  | 'slide'
  | 'runner'
  | 'cleat'
  | 'hinge'
  | 'catch'
  | 'stop'
  | 'pull'
  | 'shelf-pin'
  | 'lid-support'
  | 'anchor'
  | 'vent';

/** A packer that is asked for, and the gap that it has to fill. */
export interface Packing {
  /** Absent where nothing stands back. */
  readonly gap?: Length;
  readonly thickness: Figure;
  /** The words to underline, and the whole statement that asks for it. */
  readonly origin: Origin;
  readonly statement: Origin;
}

export interface Screw {
  readonly id: string;
  /** 'rear screw'; where it is absent, it is any screw of its hardware. */
  readonly words?: string;
  /** The middle of its hole, in the plane that the hardware lies on. */
  readonly at: Point3;
  /** The way it is driven: '+x' towards the right. */
  readonly towards: FaceOfPart;
  readonly diameter: Length;
  /** How far it reaches beyond that plane. */
  readonly length: Length;
  /** As it is bought, where it comes with no hardware: its shop entry, and its whole length. */
  readonly bought?: { readonly entry: string; readonly length: Length; readonly price?: Price };
}

/** What hardware adds to a piece. */
export interface FittedHardware {
  readonly placed: readonly PlacedHardware[];
  /** What it takes from parts: gains, cups, rows of holes. */
  readonly features: readonly Feature[];
  /** What is made of wood for it: packers, runners. */
  readonly parts?: readonly UnmarkedPart[];
}
