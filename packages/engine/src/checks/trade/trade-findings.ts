import type { Finding } from '@fettle/findings';
import type { PieceDesign } from '../../design/design.ts';
import { constructionFindings } from '../construction/construction-findings.ts';
import { frontSizeFindings } from '../front-sizes.ts';
import { hangingFindings } from '../hanging/hanging-findings.ts';
import { pinRowFindings } from '../shelves/pin-row-checks.ts';
import { shelfLoadFindings } from '../shelves/shelf-loads.ts';
import { shelfPlaceFindings } from '../shelves/shelf-place-checks.ts';
import { ventFindings } from '../vents.ts';
import { absurdOpenings } from './absurd-openings.ts';
import type { TradeCase } from './case-facts.ts';
import { compartmentFindings, partitionFindings } from './compartments.ts';
import { contentsFindings } from './contents.ts';
import { doorFindings } from './doors.ts';
import { drawerBottomFindings, lowBottomFindings } from './drawer-bottoms.ts';
import { drawerProportions } from './drawer-proportions.ts';
import { packingFindings, stileFindings, stretcherFindings } from './frames-and-stretchers.ts';
import { gapFindings } from './gap.ts';
import { grooveFindings } from './grooves.ts';
import { absurdSizes, anchorFindings, toeSpaceFindings } from './overall-size.ts';
import { pairFindings } from './pairs-made-as-one.ts';
import { lumberFindings, stockFindings } from './parts-from-stock.ts';
import { machineFindings } from './parts-on-machines.ts';
import { sequenceFindings } from './sequences.ts';
import { shelfFindings } from './shelf-checks.ts';
import { absurdThicknesses, thicknessFindings } from './thicknesses.ts';

/**
 * Checks from the trade and from the shop's own data: what can be drawn and still will not work, or not with the stock,
 * the hardware and the machines there are.
 */

/** What the text alone shows, laid out or not. */
export function designFindings(design: PieceDesign): readonly Finding[] {
  return [...thicknessFindings(design), ...stileFindings(design), ...toeSpaceFindings(design)];
}

/** Sizes that can hardly be meant. Whatever else is wrong where one of these stands most often follows from it. */
export function absurdFindings(design: PieceDesign): readonly Finding[] {
  return [...absurdSizes(design), ...absurdThicknesses(design)];
}

/** What a sound layout shows. */
export function tradeFindings(one: TradeCase): readonly Finding[] {
  return [
    ...grooveFindings(one),
    ...constructionFindings(one),
    ...gapFindings(one),
    ...doorFindings(one),
    ...pairFindings(one),
    ...hangingFindings(one),
    ...drawerProportions(one),
    ...drawerBottomFindings(one),
    ...lowBottomFindings(one),
    ...packingFindings(one),
    ...stretcherFindings(one),
    ...(one.face === undefined ? [] : frontSizeFindings(one.face.root, one.design.units.unit)),
    ...absurdOpenings(one),
    ...shelfFindings(one),
    ...shelfPlaceFindings(one),
    ...pinRowFindings(one),
    ...shelfLoadFindings(one),
    ...compartmentFindings(one),
    ...partitionFindings(one),
    ...contentsFindings(one),
    ...ventFindings(one),
    ...stockFindings(one),
    ...lumberFindings(one),
    ...sequenceFindings(one),
    ...machineFindings(one),
    ...anchorFindings(one),
  ];
}
