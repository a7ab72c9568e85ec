import type { Finding } from '@fettle/findings';
import type { Cell, Divider, FrameDesign, PieceDesign } from './design/design.ts';
import type { Figure } from './design/figure.ts';
import type { MachineEntry, ScrewEntry } from './design/shop.ts';
import type { PlacedHardware } from './hardware/placed-hardware.ts';
import type { Joint } from './joinery/joint.ts';
import type { LengthUnit } from './length/length.ts';
import type { Part } from './parts/part.ts';

/** A stretch along one axis. start + size = end exactly. */
export interface Span {
  readonly start: Figure;
  readonly size: Figure;
  readonly end: Figure;
}

/**
 * Axes of a piece: x from its left end to the right as one faces it, y up from the floor, z from its foremost point
 * to the back. A front view uses x and y.
 */
export interface Rectangle {
  readonly x: Span;
  readonly y: Span;
}

export interface LaidCell {
  readonly cell: Cell;
  readonly opening: Rectangle;
  /** The whole front, across both leaves of a pair; absent for groups and open spaces. */
  readonly front?: Rectangle;
  /** One for a single front, two for a pair, left first. */
  readonly leaves: readonly Rectangle[];
  /** What of each leaf of a lipped front goes into the opening, without the lip; absent for other fronts. */
  readonly bodies?: readonly Rectangle[];
  readonly cells: readonly LaidCell[];
  readonly dividers: readonly LaidDivider[];
}

export interface LaidDivider {
  readonly divider: Divider;
  readonly at: Rectangle;
}

export interface CarcaseLayout {
  /** The unit of the piece, by which what is assumed is chosen. */
  readonly unit: LengthUnit;
  /** The whole piece. */
  readonly outside: { readonly x: Span; readonly y: Span; readonly z: Span };
  /** Sides, bottom, stretchers, without top overhang and plinth. */
  readonly body: { readonly x: Span; readonly y: Span; readonly z: Span };
  /** From the floor to its lower edge; absent where it stands on the floor, or nothing is said. */
  readonly aboveFloor?: Figure;
  /** The space between sides, bottom and what closes the top. */
  readonly interior: Rectangle;
  /** Where the face is laid out: the interior, or the space inside the face frame where there is one. */
  readonly face: Rectangle;
  /** Where inset fronts are flush and overlay fronts lie on: the front of the frame, or of the body. */
  readonly facePlane: Figure;
  /** The face frame, where there is one. */
  readonly frame?: FrameDesign;
  /** What bounds the face. */
  readonly edges: FaceEdges;
  /** From the front of the body to the front of the back. */
  readonly inside: { readonly z: Span };
}

/** The thickness of the wood at each edge of the face, seen from the front; absent where nothing can be lapped. */
export interface FaceEdges {
  readonly left?: Figure;
  readonly right?: Figure;
  readonly top?: Figure;
  readonly bottom?: Figure;
}

export interface Layout {
  /** Absent while a size of the piece is missing. */
  readonly carcase?: CarcaseLayout;
  /** Absent while the face is missing or its carcase is unknown; holds what could be laid out when some of it failed. */
  readonly face?: LaidCell;
}

export interface Evaluation {
  readonly design: PieceDesign;
  readonly layout: Layout;
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
  readonly hardware: readonly PlacedHardware[];
  /** Of the shop the piece is made in; absent while the piece has no case. */
  readonly machines?: readonly MachineEntry[];
  /** Those that the shop has, for what is screwed and names none; absent while the piece has no case. */
  readonly screws?: readonly ScrewEntry[];
  readonly findings: readonly Finding[];
}
