import type { Origin } from '@fettle/findings';
import type { Material, PanelDesign } from './design.ts';
import type { Figure } from './figure.ts';
import type { ScrewEntry } from './shop.ts';

/** How sides, backs, bases and edges are built up, as plain readonly data: part of the Design. */

/** Stiles and rails around panels that lie in grooves. The thickness of the frame is that of the side or back it makes. */
export interface FramedDesign {
  readonly origin: Origin;
  /** Width of each stile. */
  readonly stiles: Figure;
  readonly topRail: Figure;
  readonly bottomRail: Figure;
  readonly middleRails?: MiddleRailsDesign;
  readonly tenons: TenonDesign;
  readonly panel: FramedPanelDesign;
  /** In place of the panels. Only in doors. */
  readonly glass?: GlassDesign;
}

/** Panes behind a frame, in rabbets, to be ordered. */
export interface GlassDesign {
  readonly origin: Origin;
  readonly thickness: Figure;
  /** How far the frame laps the opening that is seen, and how deep the rabbet is from the back. */
  readonly rabbetWidth: Figure;
  readonly rabbetDepth: Figure;
  /** What a pane is smaller than from rabbet to rabbet, in all. */
  readonly clearance: Figure;
  readonly isSafety: boolean;
}

/** `at-dividers`: one behind each divider that meets the side. */
export interface MiddleRailsDesign {
  readonly origin: Origin;
  readonly width: Figure;
  readonly place: { readonly kind: 'at-dividers' } | { readonly kind: 'even'; readonly count: number };
}

/** Sheets need room to go in, solid wood needs room to move: which of the two words is said, and where. */
export interface FreedomSaid {
  readonly kind: 'clearance' | 'float';
  readonly origin: Origin;
}

/** Stub tenons of a frame. */
export interface TenonDesign {
  readonly origin: Origin;
  /** How deep what takes them is. */
  readonly length: Figure;
  /** What each is left short of it. */
  readonly short: Figure;
}

export interface FramedPanelDesign extends PanelDesign {
  /** Depth of the groove all round. */
  readonly groove: Figure;
  /** What the panel is left short of the bottom of its groove, at each edge. */
  readonly shyEachEdge: Figure;
  readonly freedom?: FreedomSaid;
  readonly isGlued: boolean;
  /** The words that say so. */
  readonly gluedOrigin?: Origin;
}

/** A panel in the frame of a divider: what lies above is parted from what lies below. */
export interface DustPanelDesign extends PanelDesign {
  readonly groove: Figure;
  readonly shyEachEdge: Figure;
  readonly freedom?: FreedomSaid;
}

/** Along which edges of a part, as it stands in the piece. */
export type EdgeName = 'front' | 'back' | 'top' | 'bottom' | 'left' | 'right';

/** Strips of solid wood on the edges of a panel. The part keeps its size: its core is smaller. */
export interface EdgingDesign extends Material {
  readonly origin: Origin;
  readonly edges: readonly EdgeName[];
  readonly corners: 'mitred' | 'butted';
  readonly cornersOrigin?: Origin;
  readonly veneer: 'before' | 'after';
}

/** How a top is held. What is not said is assumed to let it move. */
export type TopFixing =
  | { readonly kind: 'slotted'; readonly where: 'behind' | 'in front'; readonly origin: Origin }
  | { readonly kind: 'glued'; readonly origin: Origin };

/** A recess for toes under the body: the sides run down to the floor and are notched, a board closes it behind. */
export interface ToeSpaceDesign extends PanelDesign {
  readonly height: Figure;
  readonly depth: Figure;
}

/** Four feet under the corners of the body, and the rails between them. */
export interface FeetDesign extends PanelDesign {
  readonly height: Figure;
  /** Each is square: its thickness is that of the statement. What it tapers to at the floor, on its two inner faces. */
  readonly taperTo?: Figure;
  readonly rails?: FootRailsDesign;
}

export interface FootRailsDesign extends PanelDesign {
  readonly width: Figure;
  /** How far they stand in from the outer faces of the feet. */
  readonly setIn: Figure;
}

/** The piece hangs on a wall. */
export interface HungDesign {
  readonly origin: Origin;
  /** The whole statement. */
  readonly whole: Origin;
  /** From the floor to its lower edge. */
  readonly above?: Figure;
  /** What goes into the wall, and the words that name it. */
  readonly screw?: ScrewEntry;
  readonly screwOrigin?: Origin;
  /** From the middle of one stud to the next. */
  readonly studsApart?: Figure;
}

/** Strips across the back, behind it, that carry the piece on the wall. */
export interface NailersDesign extends PanelDesign {
  /** The whole statement. */
  readonly whole: Origin;
  readonly width: Figure;
  readonly count: number;
  readonly countOrigin?: Origin;
}
