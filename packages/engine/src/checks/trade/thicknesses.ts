import { type Finding, type Mend, stockThicknessDiffers, thicknessAbsurd, thicknessIsNominal } from '@fettle/findings';
import { rootOrigin } from '../../design/derive.ts';
import type { PieceDesign } from '../../design/design.ts';
import type { Figure } from '../../design/figure.ts';
import type { Stock } from '../../design/shop.ts';
import { groupAlike } from '../../grouping.ts';
import type { Length, LengthUnit } from '../../length/length.ts';
import { limitIn, surfacedBoard, THICKEST_PART, THINNEST_PART } from '../../tables/trade-limits.ts';
import { givenAt } from '../written-sizes.ts';
import { materialsOf, type NamedMaterial } from './materials.ts';
import { otherUnitMends } from './other-unit.ts';

/** Whether parts ask for thicknesses that their stock has, and that can be meant. Looks at the design alone. */
export function thicknessFindings(design: PieceDesign): readonly Finding[] {
  return eachWritten(design).flatMap(({ material }) => {
    const { stock, asked } = material;
    return stock === undefined || asked === undefined ? [] : againstStock(stock, asked);
  });
}

/** Thicknesses that are slips of the unit; what its stock already contradicts is said there. */
export function absurdThicknesses(design: PieceDesign): readonly Finding[] {
  return eachWritten(design).flatMap(({ material, origin }) => {
    const { stock, asked } = material;
    if (asked === undefined || !asked.length.isPositive()) return [];
    const { unit } = design.units;
    const limit = limitBroken(asked.length, unit);
    if (limit === undefined || (stock !== undefined && againstStock(stock, asked).length > 0)) return [];
    const tooMuch = asked.length.compare(limit) > 0;
    const isUsual = (length: Length): boolean => limitBroken(length, unit) === undefined;
    return [
      thicknessAbsurd.at(
        rootOrigin(asked) ?? origin,
        { size: asked.length, limit, tooMuch },
        { mends: otherUnitMends(asked, unit, isUsual) },
      ),
    ];
  });
}

function limitBroken(thickness: Length, unit: LengthUnit): Length | undefined {
  const [thinnest, thickest] = [limitIn(THINNEST_PART, unit), limitIn(THICKEST_PART, unit)];
  if (thickness.compare(thickest) > 0) return thickest;
  return thickness.compare(thinnest) < 0 ? thinnest : undefined;
}

/** One for each place of the text: a value that several parts take is written once. */
function eachWritten(design: PieceDesign): readonly NamedMaterial[] {
  const written = materialsOf(design).filter(({ material }) => material.asked !== undefined);
  return groupAlike(written, ({ material, origin }) => [
    material.asked === undefined ? undefined : (rootOrigin(material.asked) ?? origin),
    material.stock?.name,
  ]).map(([first]) => first);
}

function againstStock(stock: Stock, asked: Figure): readonly Finding[] {
  const { actual, nominal, form } = stock;
  const at = rootOrigin(asked);
  const there = actual ?? nominal;
  if (there === undefined || at === undefined || !asked.length.isPositive()) return [];
  const related = [{ role: 'stock', values: { stock: stock.name }, origin: stock.origin }];
  const mendTo = (size: Length): readonly Mend[] => {
    const place = givenAt(asked);
    if (place === undefined || !size.isPositive()) return [];
    return [{ how: 'use-actual', values: { size }, changes: [{ kind: 'set-length', at: place, to: size }] }];
  };
  const apart = asked.length.compare(there.length);
  if (apart === 0 || (form === 'board' && apart < 0)) return [];
  if (actual !== undefined && nominal?.length.equals(asked.length) === true) {
    const facts = { stock: stock.name, nominal: nominal.length, actual: actual.length };
    return [thicknessIsNominal.at(at, facts, { related, mends: mendTo(actual.length) })];
  }
  // A rough board loses at both faces before it is flat.
  const usable = form === 'board' && actual === undefined ? surfacedBoard(there.length) : there.length;
  return [
    stockThicknessDiffers.at(
      at,
      {
        stock: stock.name,
        form,
        asked: asked.length,
        there: there.length,
        difference: asked.length.minus(there.length).abs(),
      },
      { related, mends: mendTo(usable) },
    ),
  ];
}
