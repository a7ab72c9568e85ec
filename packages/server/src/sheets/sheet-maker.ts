import type { BuyingPlan } from '@fettle/engine';
import type { EvaluatedPiece } from '@fettle/language';
import type { SheetFileFormat, SheetView } from '@fettle/protocol';

/** Makes one sheet of a piece's picture, or several among which the reader chooses. */
export type SheetMaker = PieceSheetMaker | PlanSheetMaker;

interface AnySheetMaker {
  /** Stable: the page remembers by it which sheet was open. */
  readonly id: string;
  /** On its tab. */
  readonly title: string;
  readonly shows: 'drawing' | 'table';
  /** What it has in common with its neighbours: 'Drawings'. Given where all sheets are listed. */
  readonly group?: string;
  /** Whether the piece has what the sheet shows; asked for every piece after every edit, so it must be cheap. */
  suits(piece: EvaluatedPiece): boolean;
  /** Absent where there is nothing to choose. */
  readonly choice?: {
    /** What is chosen: 'Opening'. */
    readonly label: string;
    /** The first is what one sees before choosing. Asked as often as `suits`. None: one sheet without a choice. */
    options(piece: EvaluatedPiece): readonly SheetOption[];
  };
}

/** What it shows is known as soon as the piece is. */
export interface PieceSheetMaker extends AnySheetMaker {
  readonly needs?: never;
  /** Asked only for a sheet that somebody looks at. May throw: the other sheets are made all the same. */
  make(piece: EvaluatedPiece, option?: string): SheetContent;
  /** The sheet as the text of a file, in each format it has. May throw. */
  readonly files: Partial<Readonly<Record<SheetFileFormat, (piece: EvaluatedPiece, option?: string) => string>>>;
}

/** Shows cutting plans, which are searched for while it is looked at: it is made anew with every better one. */
export interface PlanSheetMaker extends AnySheetMaker {
  readonly needs: 'plan';
  make(piece: EvaluatedPiece, plan: BuyingPlan, option?: string): SheetContent;
  readonly files: Partial<
    Readonly<Record<SheetFileFormat, (piece: EvaluatedPiece, plan: BuyingPlan, option?: string) => string>>
  >;
}

export interface SheetOption {
  /** Tells it apart from the maker's other options. */
  readonly id: string;
  /** In the list of choices: '“cards”'. */
  readonly words: string;
}

/** What a maker fills a sheet with; whose it is and what else could be chosen is known without it. */
export type SheetContent =
  | Omit<Extract<SheetView, { kind: 'drawing' }>, 'id' | 'choice' | 'group'>
  | Omit<Extract<SheetView, { kind: 'table' }>, 'id' | 'group'>;
