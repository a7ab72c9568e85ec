import type { OffcutEntry, Stock } from '../../design/shop.ts';
import { Length, type LengthUnit } from '../../length/length.ts';
import { limitIn, type TradeLimit } from '../../tables/trade-limits.ts';
import type { LaidArea, LaidStock } from './laid-stock.ts';

/** What is left over once everything is cut, and what of the shop's offcuts is used up. */

/** Shorter or narrower pieces are scrap. Common practice, no source, all of it. */
const SHORTEST: TradeLimit = { inches: Length.inches(12), metric: Length.millimetres(300) };
const NARROWEST: Readonly<Record<LaidStock['kind'], TradeLimit>> = {
  sheet: { inches: Length.inches(6), metric: Length.millimetres(150) },
  board: { inches: Length.inches(2), metric: Length.millimetres(50) },
};

/** Nobody measures an offcut finer: what it is more than a whole number of these does not count. */
const STEP: TradeLimit = { inches: Length.inches(1, 16), metric: Length.millimetres(1) };

export interface OffcutToKeep {
  readonly from: LaidStock;
  readonly offcut: LaidArea;
}

/** In the order of the stock they are left over from. */
export function offcutsToKeep(laid: readonly LaidStock[], unit: LengthUnit): readonly OffcutToKeep[] {
  const shortest = limitIn(SHORTEST, unit);
  return laid.flatMap((from) => {
    const narrowest = limitIn(NARROWEST[from.kind], unit);
    return from.offcuts
      .filter(({ length, width }) => {
        // What has no grain may lie either way.
        const [along, across] = from.stock.grain === 'none' ? [length.max(width), length.min(width)] : [length, width];
        return along.compare(shortest) >= 0 && across.compare(narrowest) >= 0;
      })
      .map((offcut) => ({ from, offcut }));
  });
}

/** What an entry of the shop file has to say once a piece is cut. */
export interface StockAfter {
  readonly stock: Stock;
  /** Entries of which some are used, with how many of them are. */
  readonly used: readonly { readonly offcut: OffcutEntry; readonly count: number }[];
  /** Offcuts that are new, alike ones together, the longest first. */
  readonly kept: readonly {
    readonly length: Length;
    readonly width: Length;
    /** Of a board whose stock comes in several thicknesses, rough. */
    readonly thickness?: Length;
    readonly count: number;
  }[];
}

/** For every stock whose entry changes. */
export function stockAfter(laid: readonly LaidStock[], unit: LengthUnit): readonly StockAfter[] {
  const keep = offcutsToKeep(laid, unit);
  const stocks = [...new Set(laid.map(({ stock }) => stock))];
  return stocks
    .map((stock): StockAfter => {
      const used = new Map<OffcutEntry, number>();
      for (const { offcut } of laid.filter((each) => each.stock === stock)) {
        if (offcut !== undefined) used.set(offcut, (used.get(offcut) ?? 0) + 1);
      }
      const kept = new Map<string, { length: Length; width: Length; thickness?: Length; count: number }>();
      for (const { from, offcut } of keep.filter((each) => each.from.stock === stock)) {
        const isOfAnyThickness = stock.form === 'board' && stock.nominal === undefined && stock.actual === undefined;
        const thickness = isOfAnyThickness ? from.thickness : undefined;
        const [length, width] = [roundedDown(offcut.length, unit), roundedDown(offcut.width, unit)];
        const key = [length, width, thickness].map((size) => size?.exactInches).join(' ');
        const known = kept.get(key);
        if (known === undefined) {
          kept.set(key, { length, width, ...(thickness === undefined ? {} : { thickness }), count: 1 });
        } else known.count += 1;
      }
      return {
        stock,
        used: [...used].map(([offcut, count]) => ({ offcut, count })),
        kept: [...kept.values()].sort((a, b) => b.length.compare(a.length)),
      };
    })
    .filter(({ used, kept }) => used.length > 0 || kept.length > 0);
}

function roundedDown(length: Length, unit: LengthUnit): Length {
  const step = limitIn(STEP, unit);
  return step.times(length.in('in').dividedBy(step.in('in')).floor());
}
