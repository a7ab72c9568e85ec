/**
 * The engine: design -> layout, parts, checks. Pure; knows nothing of the parser, the protocol, an editor, files or the DOM.
 */

export * from './design/compartments-design.ts';
export * from './design/construction-design.ts';
export * from './design/contents-design.ts';
export { assumed, derive, fromShop, given, less, measured, plus, rootOrigin } from './design/derive.ts';
export * from './design/design.ts';
export { explain, type TellPlace } from './design/explain.ts';
export * from './design/figure.ts';
export * from './design/hanging-design.ts';
export type { DoorBefore, InsideDesign } from './design/inside-design.ts';
export * from './design/join-design.ts';
export type { LidDesign, LidSupport } from './design/lid-design.ts';
export * from './design/sequence-design.ts';
export * from './design/shelf-design.ts';
export * from './design/shop.ts';
export * from './design/slide-design.ts';
export * from './design/vent-design.ts';
export { type Division, divisionsOf, sizeAlong } from './divisions/divisions.ts';
export { type MovedDivision, moveDivision, type WhyNot } from './divisions/move-division.ts';
export { evaluatePiece, type ShopOffer } from './evaluate-piece.ts';
export * from './evaluation.ts';
export { groupedBy } from './grouping.ts';
export { compareSlides, type SlideChoice, type SlideComparison } from './hardware/compare-slides.ts';
export { type HungLeaf, hungLeaves } from './hardware/hung-leaves.ts';
export * from './hardware/placed-hardware.ts';
export * from './joinery/feature.ts';
export * from './joinery/joint.ts';
export * from './length/length.ts';
export * from './length/products.ts';
export * from './length/rational.ts';
export * from './length/trade-formats.ts';
export { type CutListRow, cutList } from './parts/cut-list.ts';
export * from './parts/part.ts';
export * from './schedules/index.ts';
export * from './setups/index.ts';
export * from './solids/index.ts';
export { type Blank, type BlankSize, sizeOfBlank } from './stock/blank.ts';
export type { CutBoard } from './stock/boards/board-problem.ts';
export * from './stock/buying/index.ts';
export type { CutSheet, CuttingNode } from './stock/sheets/sheet-plan.ts';
export { inPounds } from './stock/weights.ts';
export * from './tables/joinery-habits.ts';
export { isKerfOfABlade, widestKerf } from './tables/saw-blades.ts';
export * from './tables/shelf-habits.ts';
export * from './tables/trade-habits.ts';
export { LARGEST_PIECE, limitIn, SMALLEST_PIECE } from './tables/trade-limits.ts';
