import type { FaceDesign, PieceDesign } from '../../design/design.ts';
import type { ShopOffer } from '../../design/shop.ts';
import type { CarcaseLayout, LaidCell } from '../../evaluation.ts';
import type { Joint } from '../../joinery/joint.ts';
import type { LaidSequence } from '../../parts/front-sequences.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';

/** What the checks from the trade look at: one piece, laid out soundly, and what its shop has. */
export interface TradeCase {
  readonly design: PieceDesign;
  readonly shop: ShopOffer;
  readonly layout: CarcaseLayout;
  readonly parts: readonly UnmarkedPart[];
  readonly joints: readonly Joint[];
  /** Absent while there is no face. */
  readonly face?: {
    readonly design: FaceDesign;
    readonly root: LaidCell;
    readonly sequences: readonly LaidSequence[];
  };
}
