import type { Units } from '../../design/design.ts';
import type { OffcutEntry, Stock } from '../../design/shop.ts';
import { Length, type LengthUnit } from '../../length/length.ts';
import { Rational } from '../../length/rational.ts';
import { isMetric } from '../../tables/trade-limits.ts';
import { exactBoardFeet } from '../board-feet.ts';
import { usualAllowances } from '../boards/board-allowances.ts';
import { type BoardOffered, prepareBoards } from '../boards/prepare-boards.ts';
import { roughThicknessFor } from '../rough-thickness.ts';
import type { BoardOrder, StockOffer, UnplannedPiece } from './buying-request.ts';
import type { BlankToCut } from './ordered-blanks.ts';
import type { PieceToCut } from './pieces-to-cut.ts';
import { lumberOf } from './wood-of-stock.ts';

/** Which boards of a stock are offered to its pieces, one order for each thickness. */

/** Shorter boards than this are offcuts. Common practice, no source. */
const SHORTEST: Readonly<Record<'inches' | 'metric', Length>> = {
  inches: Length.inches(48),
  metric: Length.millimetres(1200),
};
/** Boards are sold in whole feet, or by 300 mm. Common practice, no source. */
const STEP: Readonly<Record<'inches' | 'metric', Length>> = {
  inches: Length.inches(12),
  metric: Length.millimetres(300),
};
const MOST_LENGTHS = 40;

export function boardOrders(
  stock: Stock,
  blanks: readonly BlankToCut[],
  kerf: Length,
  { unit, ruler }: Units,
  unplanned: UnplannedPiece[],
): readonly BoardOrder[] {
  const byId = new Map(blanks.map((each) => [each.blank.id, each]));
  const pieces = blanks.flatMap((each) => each.pieces);
  const lumber = lumberOf(stock);
  const thickest = (stock.actual ?? stock.nominal)?.length;
  const boards = [...sold(stock, pieces, unit), ...onHand(stock)];
  const offers = new Map(boards.map(({ id, length, width, offcut }) => [id, { length, width, ...offcutOf(offcut) }]));
  const { problems, refused } = prepareBoards({
    blanks: blanks.flatMap(({ blank, pieces: [first] }) =>
      first === undefined ? [] : [{ blank, thickness: first.thickness, count: 1, mayBeGluedUp: first.what === 'part' }],
    ),
    boards,
    lumber,
    ...(thickest === undefined ? {} : { thickest }),
    ripKerf: kerf,
    crosscutKerf: kerf,
    allowances: usualAllowances(unit),
    mark: Length.of(ruler, unit),
  });
  for (const { blank, why, needs, most } of refused) {
    const own = byId.get(blank)?.pieces ?? [];
    const said = own.length > 1 ? ('with those it follows, larger than any of its stock' as const) : why;
    unplanned.push(...own.map((piece) => ({ piece, why: said, needs, most })));
  }
  return problems.map((prepared) => {
    const own = blanks.filter(({ blank }) => prepared.glueUps.has(blank.id));
    return {
      stock,
      prepared,
      offers,
      pieces: own.flatMap((each) => each.pieces),
      blanks: new Map(own.map((each) => [each.blank.id, each])),
    };
  });
}

interface BoardThere extends BoardOffered {
  readonly offcut?: OffcutEntry;
}

/** What is there already costs nothing. One that does not say how thick it is, is as thick as its stock. */
function onHand(stock: Stock): readonly BoardThere[] {
  const usual = stock.nominal?.length ?? stock.actual?.length;
  return (stock.offcuts ?? []).flatMap((offcut, at): readonly BoardThere[] => {
    const thickness = offcut.thickness?.length ?? usual;
    if (thickness === undefined) return [];
    const [length, width] = [offcut.length.length, offcut.width.length];
    const cost = Rational.zero;
    return [{ id: `offcut ${at}`, thickness, width, length, cost, available: offcut.count, offcut }];
  });
}

function offcutOf(offcut: OffcutEntry | undefined): Pick<StockOffer, 'offcut'> {
  return offcut === undefined ? {} : { offcut };
}

/** Boards of the widest width in each length up to the longest; they cost their board feet. */
function sold(stock: Stock, pieces: readonly PieceToCut[], unit: LengthUnit): readonly BoardThere[] {
  const width = stock.width?.length ?? Length.zero;
  return thicknesses(stock, pieces).flatMap((thickness) =>
    lengthsUpTo(stock.length?.length ?? Length.zero, unit).map((length) => ({
      id: `${thickness.exactInches} × ${length.exactInches}`,
      thickness,
      width,
      length,
      cost: exactBoardFeet({ thickness, width, length }),
    })),
  );
}

/** A stock that says its thickness is sold in that alone; any other is rough, as thick as the tables ask. */
function thicknesses(stock: Stock, pieces: readonly PieceToCut[]): readonly Length[] {
  const said = stock.nominal?.length ?? stock.actual?.length;
  if (said !== undefined) return [said];
  const found = new Map<string, Length>();
  for (const { thickness } of pieces) {
    const rough = roughThicknessFor(thickness, lumberOf(stock))?.nominal;
    if (rough !== undefined) found.set(rough.exactInches, rough);
  }
  return [...found.values()];
}

function lengthsUpTo(longest: Length, unit: LengthUnit): readonly Length[] {
  const system = isMetric(unit) ? 'metric' : 'inches';
  const lengths: Length[] = [];
  for (let count = 0; count < MOST_LENGTHS; count += 1) {
    const length = SHORTEST[system].plus(STEP[system].times(Rational.of(count)));
    if (length.compare(longest) >= 0) break;
    lengths.push(length);
  }
  return [...lengths, longest];
}
