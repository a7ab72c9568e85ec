/** What to buy and how to cut it: from the parts of a piece to plans, lists and what they cost. */
export {
  type BoardOrder,
  type BuyingRequest,
  buyingRequest,
  kerfOf,
  lengthOf,
  type SheetOrder,
  type StockOffer,
  type UnplannedPiece,
  type WhyUnplanned,
} from './buying-request.ts';
export { cutSequence, laidOut, type NumberedCut } from './cut-sequence.ts';
export type { LaidArea, LaidPiece, LaidRun, LaidStock, PartedPiece, SawCut } from './laid-stock.ts';
export { type OffcutToKeep, offcutsToKeep, type StockAfter, stockAfter } from './offcuts-to-keep.ts';
export { type PieceWeight, pieceWeight } from './piece-weight.ts';
export type { PieceToCut } from './pieces-to-cut.ts';
export { isTogether, type PiecesTogether, piecesTogether, turnAmongAll } from './pieces-together.ts';
export {
  type BuyingPlan,
  buyingPlanOf,
  type PlannedBoards,
  type PlannedSheets,
  planBuyingAtOnce,
  planQuestions,
} from './plan-buying.ts';
export { type Reserve, reservesFor } from './reserves.ts';
export {
  type Patience,
  type PlanAnswer,
  type PlanQuestion,
  type PlansSoFar,
  searchPlans,
  usualPatience,
} from './search-plans.ts';
export {
  type EdgingRow,
  type HardwareRow,
  type ShoppingList,
  type ShoppingRow,
  shoppingList,
  type WoodRow,
} from './shopping-list.ts';
export { type Remainder, type Spare, sparesOf } from './spares.ts';
export { type Standing, standingOfBoards, standingOfSheets, standingWords } from './standing.ts';
