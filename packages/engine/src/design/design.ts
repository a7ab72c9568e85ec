import type { Origin } from '@fettle/findings';
import type { Rational } from '../length/rational.ts';
import type { CompartmentsDesign } from './compartments-design.ts';
import type {
  DustPanelDesign,
  EdgingDesign,
  FeetDesign,
  FramedDesign,
  FreedomSaid,
  HungDesign,
  NailersDesign,
  TenonDesign,
  ToeSpaceDesign,
  TopFixing,
} from './construction-design.ts';
import type { HeldDesign } from './contents-design.ts';
import type { Figure } from './figure.ts';
import type { CatchDesign, HangingDesign, PullsDesign } from './hanging-design.ts';
import type { DoorBefore, InsideDesign } from './inside-design.ts';
import type { JoinDesign } from './join-design.ts';
import type { LidDesign } from './lid-design.ts';
import type { SequenceDesign } from './sequence-design.ts';
import type { CleatsDesign, PinRowsDesign, ShelfHeight } from './shelf-design.ts';
import type { HingeEntry, Stock } from './shop.ts';
import type { ComparedSlides, PackersDesign, RunnersDesign, SlideDatum, SlideEntry } from './slide-design.ts';
import type { VentDesign } from './vent-design.ts';

/**
 * The Design: what the maker asked for, as plain readonly data. Names of stock and hardware are already resolved to
 * their shop entries; a name that resolves to nothing is absent here and has its finding from the language room.
 * A part of the text that could not be read is absent, never zero.
 */
export interface PieceDesign {
  readonly name: string;
  readonly origin: Origin;
  readonly units: Units;
  readonly size: OverallSize;
  readonly carcase: CarcaseDesign;
  /** Absent while no face is written. */
  readonly face?: FaceDesign;
  /** Fronts that follow one another in one blank; absent where none do. */
  readonly sequences?: readonly SequenceDesign[];
  /** Statements that are understood but not computed yet; shown mildly, never dropped in silence. */
  readonly unchecked: readonly { readonly words: string; readonly origin: Origin }[];
}

export interface Units {
  readonly unit: 'in' | 'mm' | 'cm' | 'ft';
  /** The finest mark of the maker's ruler, in `unit`; display only, never part of a sum. */
  readonly ruler: Rational;
}

export interface OverallSize {
  readonly origin: Origin;
  readonly width?: Figure;
  readonly height?: Figure;
  readonly depth?: Figure;
}

export interface Material {
  readonly stock?: Stock;
  /** The words that name the stock. */
  readonly stockOrigin?: Origin;
  /** The actual thickness that fits are made to. */
  readonly thickness: Figure;
  /** The thickness that is written, where one is; the actual one may be another. */
  readonly asked?: Figure;
}

export interface CarcaseDesign {
  readonly origin: Origin;
  readonly top?: TopDesign;
  readonly plinth?: PlinthDesign;
  readonly sides?: PanelDesign & { readonly framed?: FramedDesign };
  /** `between`: its ends meet the sides' inner faces. `under`: the sides stand on it. */
  readonly bottom?: PanelDesign & { readonly placement: 'between' | 'under' };
  readonly stretchers?: StretcherDesign;
  readonly back?: BackDesign;
  readonly frame?: FrameDesign;
  readonly toeSpace?: ToeSpaceDesign;
  readonly feet?: FeetDesign;
  readonly hung?: HungDesign;
  readonly nailers?: NailersDesign;
  /**
   * How panels are joined where the end or edge of one meets the face of another. Absent where nothing is said: ends
   * merely meet, and how they are fastened is not known.
   */
  readonly join?: JoinDesign;
}

export interface PanelDesign extends Material {
  readonly origin: Origin;
  /** How it is joined, where its own statement says so: at its ends, or at the corners of what it makes. */
  readonly join?: JoinDesign;
  readonly edging?: EdgingDesign;
}

/** Of fronts. A frame around panels or panes is for doors; other fronts of the same statement are plain. */
export interface FrontPanelDesign extends PanelDesign {
  readonly framed?: FramedDesign;
}

export interface TopDesign extends PanelDesign {
  /** `over`: lies on the sides. `between`: its ends meet the sides' inner faces. */
  readonly placement: 'over' | 'between';
  /**
   * Beyond the carcase, or beyond the frame or the fronts where they stand before it; only for a top that lies over
   * the sides.
   */
  readonly overhangFront: Figure;
  /** At each end. */
  readonly overhangEnds: Figure;
  readonly overhangBack: Figure;
  /** Absent where nothing is said of it. */
  readonly fixing?: TopFixing;
  /** Of a top that is a lid. */
  readonly lid?: LidDesign;
}

export interface PlinthDesign extends PanelDesign {
  readonly height: Figure;
  /** How far its front stands behind the front of the case. */
  readonly setBack: Figure;
}

/** Two rails under the top, front and back, laid flat. */
export interface StretcherDesign extends PanelDesign {
  readonly width: Figure;
}

export interface BackDesign extends PanelDesign {
  readonly fixing: 'groove' | 'rabbet' | 'applied';
  /** The word that says it is applied, after which its screws may be said. */
  readonly appliedOrigin?: Origin;
  /** Depth of groove or rabbet. */
  readonly depth: Figure;
  /** From the case's back edge to the back face of the panel. */
  readonly inset: Figure;
  /** What a panel is left short of its grooves or rabbets, in all along each axis, so that it goes in or can move. */
  readonly shy?: Figure;
  readonly freedom?: FreedomSaid;
  readonly framed?: FramedDesign;
}

/** A face frame on the front edges of the case: two stiles as high as the body, and rails between them. */
export interface FrameDesign extends PanelDesign {
  /** Width of each stile. */
  readonly stiles: Figure;
  readonly topRail: Figure;
  readonly bottomRail: Figure;
  /** How far it stands out beyond the case at each end; flush where it is absent. */
  readonly proud?: Figure;
}

export interface FaceDesign {
  readonly origin: Origin;
  /** Of every front that does not say its own. */
  readonly fit: FrontFit;
  readonly root: Cell;
  /** Stock of all fronts unless one says otherwise. */
  readonly fronts?: FrontPanelDesign;
  /** How thick fronts are of which nothing is said; 3/4 inch where it is absent. */
  readonly usualFront?: Figure;
  readonly drawers?: DrawerDesign;
  /** Of every drawer, door and lid that has none of its own. */
  readonly pulls?: PullsDesign;
}

/** How a front sits in or on the case. layout/front-edges.ts tells what follows from it at each edge of the front. */
export type FrontFit = InsetFit | OverlayFit | LippedFit;

/** Inside its opening, flush with the front of the case or of its frame. */
export interface InsetFit {
  readonly kind: 'inset';
  /** Around the front, and between neighbours. */
  readonly gap: Figure;
}

/** On the front edges of the case or of its frame, its whole thickness before them. */
export type OverlayFit = {
  readonly kind: 'overlay';
  /** What a front that laps an edge fully leaves to be seen of it. */
  readonly reveal: Figure;
  /** Between neighbours. */
  readonly gap: Figure;
} & ({ readonly how: 'full' | 'half' } | { readonly how: 'by'; readonly by: Figure });

/** Its body inside the opening, a lip around it on the edges of the case. */
export interface LippedFit {
  readonly kind: 'lipped';
  /** How far the lip reaches beyond the opening at each side. */
  readonly lip: Figure;
  /** Between its body and the opening, and between the two leaves of a pair. */
  readonly gap: Figure;
}

/** One space of the face. `along` is the direction of its parent: width in a row, height in a stack. */
export type Cell = GroupCell | OpenCell | FrontCell;

interface CellCommon {
  /** Unique in the piece and stable while the text around it changes: 'row1/stack2/cards'. */
  readonly id: string;
  readonly name?: string;
  readonly origin: Origin;
  /** The words to underline when this cell's size is to blame; the whole head when no size is written. */
  readonly sizeOrigin: Origin;
  readonly along: SizeAsked;
  readonly atLeast?: Figure;
  readonly atMost?: Figure;
  /** The real opening along the parent's direction; it replaces whatever was asked. */
  readonly measured?: Figure;
  /** The real front along the parent's direction, where no opening is measured; it replaces whatever was asked. */
  readonly measuredFront?: Figure;
  /** Of a space behind a door. */
  readonly behind?: DoorBefore;
}

/** What was asked for along the parent's direction. `basis` says which face of it the number means. */
export type SizeAsked =
  | { readonly kind: 'fixed'; readonly basis: 'front' | 'opening'; readonly figure: Figure }
  | { readonly kind: 'share'; readonly weight: Rational }
  | { readonly kind: 'rest' }
  /** `step` counts from the first of the graded fronts, which is 0. */
  | { readonly kind: 'graded'; readonly by: Figure; readonly step: number }
  /** Each of the graded fronts is `ratio` times the one before it. */
  | { readonly kind: 'graded-by-ratio'; readonly ratio: Rational; readonly step: number }
  | { readonly kind: 'same'; readonly basis: 'front' | 'opening'; readonly as: string; readonly origin: Origin };

export interface GroupCell extends CellCommon {
  readonly kind: 'row' | 'stack';
  /** Left to right in a row, top to bottom in a stack. */
  readonly cells: readonly Cell[];
  /** `dividers[i]` lies between `cells[i]` and `cells[i + 1]`. */
  readonly dividers: readonly Divider[];
}

export interface OpenCell extends CellCommon {
  readonly kind: 'open';
  readonly shelves?: ShelfDesign;
  readonly holds?: readonly HeldDesign[];
  readonly vent?: VentDesign;
}

export interface FrontCell extends CellCommon {
  readonly kind: 'front';
  /** A `lid` lifts: it is hinged along its upper edge. */
  readonly what: 'drawer' | 'door' | 'lid' | 'false-front';
  /** A pair of doors has two. */
  readonly leaves: 1 | 2;
  /** The words that a pair is made as one panel, and then cut through. */
  readonly madeAsOne?: Origin;
  /** Of a single door, as seen from the front; absent where it is not said. */
  readonly hingeSide?: 'left' | 'right';
  readonly hinges?: HingeEntry;
  readonly hingesOrigin?: Origin;
  /** What else is said of its hinges. */
  readonly hanging?: HangingDesign;
  readonly hingeSideOrigin?: Origin;
  readonly catches?: readonly CatchDesign[];
  /** Overrides the pulls of the face. */
  readonly pulls?: PullsDesign;
  /** The word `door`, where `doors` would make a pair of it. */
  readonly singleOrigin?: Origin;
  readonly shelves?: ShelfDesign;
  /** Spaces behind it. */
  readonly inside?: InsideDesign;
  readonly holds?: readonly HeldDesign[];
  readonly vent?: VentDesign;
  /** Overrides the face's fit. */
  readonly fit?: FrontFit;
  /** Overrides the face's fronts. */
  readonly front?: FrontPanelDesign;
  /** Overrides the face's drawers; only on a drawer. */
  readonly drawer?: DrawerDesign;
}

export interface Divider {
  readonly id: string;
  readonly origin: Origin;
  /** `none`: the two spaces meet with nothing between them (thickness zero). */
  readonly form: 'partition' | 'web-frame' | 'panel' | 'none';
  readonly material: Material;
  /** `shown`: seen between two fronts. `behind`: covered, but for one gap between the fronts before it. */
  readonly mode: 'shown' | 'behind';
  /** Where a covered divider sits on its gap: its middle, or one of its faces. */
  readonly anchor: 'centre' | 'start' | 'end';
  /** Width of the rails of a web frame. */
  readonly railWidth?: Figure;
  /** The words that make it a web frame. */
  readonly formOrigin?: Origin;
  /** Of a web frame: how its runners hold in its rails, and what closes it. */
  readonly tenons?: TenonDesign;
  readonly dustPanel?: DustPanelDesign;
  readonly edging?: EdgingDesign;
  /** Where its own statement says how it is joined. */
  readonly join?: JoinDesign;
}

export interface ShelfDesign {
  readonly origin: Origin;
  readonly count: number;
  readonly countOrigin?: Origin;
  readonly adjustable: boolean;
  readonly material: Material;
  /** Taken off the opening's width at each end; zero for fixed shelves. */
  readonly shyEachEnd: Figure;
  readonly edging?: EdgingDesign;
  /** What adjustable shelves lie on; absent while nothing is said of it. */
  readonly pins?: PinRowsDesign;
  readonly cleats?: CleatsDesign;
  /** Where they lie, from below; they are spread evenly where it is absent. */
  readonly heights?: readonly ShelfHeight[];
}

/** `rabbet`: the ends lie in rabbets of the sides. `lock-rabbet`: a tongue of the ends lies in a dado of the sides. */
export type DrawerCorner = 'dovetail' | 'box-joint' | 'rabbet' | 'lock-rabbet' | 'butt';

/** `grooves`: all around. `slid-in`: in three, under the back. `applied`: on the lower edges of the whole box. */
export type DrawerBottomHeld = 'grooves' | 'slid-in' | 'applied';

export interface DrawerDesign {
  readonly origin: Origin;
  readonly sides?: PanelDesign;
  readonly bottom?: PanelDesign;
  /** In grooves all around where nothing is said. */
  readonly bottomHeld?: DrawerBottomHeld;
  /** From the lower edge of the box to the groove for its bottom, where that is written. */
  readonly bottomUp?: Figure;
  readonly corners: DrawerCorner;
  /** The words that say so. */
  readonly cornersOrigin?: Origin;
  readonly slides?: SlideEntry;
  readonly slidesOrigin?: Origin;
  /** The whole statement that chooses them, after which another may be written. */
  readonly slidesStatement?: Origin;
  /** Where they are set; their lower edges level with that of the box where it is absent. */
  readonly slidesAt?: SlideDatum;
  /** Length of their screws, where it is not that of the shop file. */
  readonly slideScrews?: Figure;
  readonly packers?: PackersDesign;
  readonly compared?: ComparedSlides;
  /** Wooden runners; slides come before them where both are said. */
  readonly runners?: RunnersDesign;
  readonly compartments?: CompartmentsDesign;
  /** The last statement about these drawers, after which another may be written. */
  readonly lastStatement?: Origin;
  /** Free height under and over the box inside its opening. */
  readonly clearBelow: Figure;
  readonly clearAbove: Figure;
  /** Depth of the groove for the bottom, its distance from the lower edge, and what the bottom is left short of both grooves together. */
  readonly bottomGroove: Figure;
  readonly bottomShy: Figure;
  /** A box width the maker fixed by hand; checked against the opening and the slides. */
  readonly boxWidth?: Figure;
  readonly boxHeight?: Figure;
}
