import type { Figure, Material, PanelDesign, Stock } from '@fettle/engine';
import { type Origin, thicknessNotKnown } from '@fettle/findings';
import { readStock } from './read-shop.ts';
import type { Reader } from './reader.ts';

type MaterialPattern = '<stock>' | 'of <stock>' | 'thick <length>';

/** Stock and actual thickness of a statement; undefined, with a finding, when no thickness can be known. */
export function readMaterial(reader: Reader<MaterialPattern>, part: string): Material | undefined {
  const named = readStockOf(reader);
  const stock = named?.stock;
  const asked = reader.length('thick <length>');
  const thickness = actualThickness(stock, asked);
  if (thickness === undefined) {
    // A stock that is not known has its own finding, and a thickness cannot be blamed as well.
    const names = reader.has('<stock>') || reader.has('of <stock>');
    // Words that mean nothing here have their own finding, and may have been meant for it.
    const unreadable = reader.has('thick <length>') || reader.hasUnread;
    if (!unreadable && (!names || stock !== undefined)) {
      reader.context.findings.push(
        thicknessNotKnown.at(
          reader.origin,
          { part, stock: stock?.name ?? '' },
          {
            mends: [
              {
                how: 'say',
                values: { thickness: usualThickness(reader) },
                changes: [{ kind: 'insert-words', after: lastWords(reader), words: `thick ${usualThickness(reader)}` }],
              },
            ],
          },
        ),
      );
    }
    return undefined;
  }
  return { ...named, thickness, ...(asked === undefined ? {} : { asked }) };
}

export function readPanel(reader: Reader<MaterialPattern>, part: string): PanelDesign | undefined {
  const material = readMaterial(reader, part);
  return material === undefined ? undefined : { ...material, origin: reader.origin };
}

function readStockOf(
  reader: Reader<MaterialPattern>,
): { readonly stock: Stock; readonly stockOrigin: Origin } | undefined {
  const target = reader.target('<stock>', 'of <stock>');
  if (target === undefined) return undefined;
  reader.context.touched.add(target.statement);
  return { stock: readStock(target.statement, reader.context.documents), stockOrigin: target.origin };
}

/** Fits use what the caliper reads: a part that asks for the nominal thickness gets the actual one. */
function actualThickness(stock: Stock | undefined, asked: Figure | undefined): Figure | undefined {
  const { nominal, actual } = stock ?? {};
  if (asked === undefined) return actual;
  if (actual !== undefined && (nominal?.length.equals(asked.length) === true || actual.length.equals(asked.length))) {
    return actual.length.equals(asked.length) ? asked : actual;
  }
  return asked;
}

function lastWords(reader: Reader<MaterialPattern>) {
  return reader.originOf('<stock>') ?? reader.originOf('of <stock>') ?? reader.origin;
}

/** What most panels are, in the units of the piece; common practice, no source. */
function usualThickness(reader: Reader<MaterialPattern>): string {
  const { unit } = reader.context.units;
  return unit === 'mm' || unit === 'cm' ? '18 mm' : '3/4"';
}
