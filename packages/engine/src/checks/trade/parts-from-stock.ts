import {
  type Finding,
  type Mend,
  type Origin,
  partLongerThanStock,
  partWiderThanStock,
  thickerThanLumber,
} from '@fettle/findings';
import type { PieceDesign } from '../../design/design.ts';
import type { Figure } from '../../design/figure.ts';
import type { Stock } from '../../design/shop.ts';
import { groupAlike } from '../../grouping.ts';
import type { Length } from '../../length/length.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';
import { lumberOf } from '../../stock/buying/wood-of-stock.ts';
import { thickestSurfaced } from '../../stock/rough-thickness.ts';
import type { TradeCase } from './case-facts.ts';
import { materialsOf } from './materials.ts';

/** Whether each part comes out of one piece of its stock. Boards are glued up to any width. */
export function stockFindings(one: TradeCase): readonly Finding[] {
  const beyond = one.parts.flatMap((part) => {
    const over = beyondStock(part, part.stock);
    return over === undefined || part.stock === undefined ? [] : [{ part, stock: part.stock, ...over }];
  });
  return groupAlike(beyond, ({ part, stock, axis }) => [part.origin, stock.name, axis]).map((group) => {
    const [first] = group;
    const kind = first.axis === 'length' ? partLongerThanStock : partWiderThanStock;
    return kind.at(
      first.part.origin,
      {
        part: first.part.label,
        stock: first.stock.name,
        size: first.size,
        limit: first.limit,
        difference: first.size.minus(first.limit),
      },
      {
        related: [{ role: 'stock', values: { stock: first.stock.name }, origin: first.stock.origin }],
        mends: otherStocks(one, first.stock, first.part.origin),
      },
    );
  });
}

/** A part that is planed out of whatever thickness it asks for, and for which no lumber is thick enough. */
export function lumberFindings({ parts }: TradeCase): readonly Finding[] {
  const thick = parts.flatMap((part) => {
    const { stock } = part;
    if (stock?.form !== 'board' || stock.nominal !== undefined || stock.actual !== undefined) return [];
    const limit = thickestSurfaced(lumberOf(stock));
    return part.thickness.length.compare(limit) > 0 ? [{ part, stock, limit }] : [];
  });
  return groupAlike(thick, ({ part, stock }) => [stock.name, part.thickness.length.exactInches]).map((group) => {
    const [{ part, stock, limit }] = group;
    const others = groupAlike(group, (each) => each.part.origin).slice(1);
    return thickerThanLumber.at(
      part.origin,
      {
        part: part.label,
        stock: stock.name,
        size: part.thickness.length,
        limit,
        difference: part.thickness.length.minus(limit),
      },
      {
        related: [
          { role: 'stock', values: { stock: stock.name }, origin: stock.origin },
          ...others.map(([also]) => ({ role: 'also', values: { part: also.part.label }, origin: also.part.origin })),
        ],
      },
    );
  });
}

interface Beyond {
  readonly axis: 'length' | 'width';
  readonly size: Length;
  readonly limit: Length;
}

/** Undefined where the part fits, or where the stock does not say how large it is. */
export function beyondStock(part: UnmarkedPart, stock: Stock | undefined): Beyond | undefined {
  if (stock === undefined) return undefined;
  const straight = beyondAs(part.length, part.width, stock);
  if (straight === undefined || part.grain !== 'none') return straight;
  // Without grain it may be turned.
  return beyondAs(part.width, part.length, stock) === undefined ? undefined : straight;
}

function beyondAs(along: Figure, across: Figure, stock: Stock): Beyond | undefined {
  const { length, width } = stock;
  // A stock of no size is told where it is described.
  if (length?.length.isPositive() === false || width?.length.isPositive() === false) return undefined;
  if (length !== undefined && along.length.compare(length.length) > 0) {
    return { axis: 'length', size: along.length, limit: length.length };
  }
  if (stock.form === 'sheet' && width !== undefined && across.length.compare(width.length) > 0) {
    return { axis: 'width', size: across.length, limit: width.length };
  }
  return undefined;
}

/** Stocks that differ only in being larger, for all that is made of the words that name the present one. */
function otherStocks({ design, parts, shop }: TradeCase, stock: Stock, origin: Origin): readonly Mend[] {
  const at = wordsFor(design, stock, origin);
  if (at === undefined) return [];
  const made = parts.filter((part) => part.stock === stock);
  return (shop.stocks ?? [])
    .filter((each) => each.name !== stock.name && isAlike(each, stock))
    .filter((each) => made.every((part) => beyondStock(part, each) === undefined))
    .slice(0, 3)
    .map((each) => ({
      how: 'use-stock',
      values: { stock: each.name },
      changes: [{ kind: 'set-name', at, name: each.name } as const],
    }));
}

/** The words that name a stock, where only one place does or this one. */
export function wordsFor(design: PieceDesign, stock: Stock, origin: Origin): Origin | undefined {
  const naming = materialsOf(design).filter(({ material }) => material.stock === stock);
  const own = naming.find((each) => JSON.stringify(each.origin) === JSON.stringify(origin));
  return (own ?? (naming.length === 1 ? naming[0] : undefined))?.material.stockOrigin;
}

/** They differ in nothing but their size. */
export function isAlike(a: Stock, b: Stock): boolean {
  const same = (one: Figure | undefined, other: Figure | undefined): boolean =>
    one === undefined || other === undefined ? one === other : one.length.equals(other.length);
  return a.form === b.form && a.grain === b.grain && same(a.actual, b.actual) && same(a.nominal, b.nominal);
}
