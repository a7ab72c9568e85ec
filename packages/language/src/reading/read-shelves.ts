import {
  assumed,
  CLEAT_HIGH,
  CLEAT_SET_BACK,
  CLEAT_THICK,
  type CleatsDesign,
  type Figure,
  Length,
  type Material,
  type PanelDesign,
  PIN_DEPTH,
  PIN_DIAMETER,
  PINS_APART,
  PINS_FROM_EDGE,
  type PinRowsDesign,
  SHELF_SHY,
  type ShelfDesign,
  type ShelfHeight,
  SYSTEM_DIAMETER,
  SYSTEM_FROM_FRONT,
  SYSTEM_PITCH,
  usual,
} from '@fettle/engine';
import { detailWithoutJoint } from '@fettle/findings';
import type { Statement } from '../generated/ast.ts';
import * as vocabulary from '../schema/shelves.ts';
import { withEdging } from './read-construction.ts';
import { readScrew } from './read-joints.ts';
import { readMaterial } from './read-material.ts';
import { optional, priceOf } from './read-shop.ts';
import { bodyStatements, headOrigin, onlyStatement, originOf, type ReadContext, Reader } from './reader.ts';

/** The shelves of one opening, what carries them and where they lie. */

const counts = ['<count> adjustable', '<count> fixed', '<count> on cleats'] as const;

export function readShelves(
  context: ReadContext,
  statement: Statement,
  sides: PanelDesign | undefined,
): { readonly shelves?: ShelfDesign } {
  const found = onlyStatement(context, statement, 'shelves');
  if (found === undefined) return {};
  const reader = new Reader(found, vocabulary.shelves, context);
  const said = counts.find((each) => reader.has(each));
  const count = said && reader.count(said);
  const countOrigin = said && reader.slotOrigin(said);
  const own = reader.has('of <stock>') || reader.has('thick <length>');
  const material: Material | undefined = own
    ? readMaterial(reader as unknown as Reader<'<stock>' | 'of <stock>' | 'thick <length>'>, 'shelves')
    : sides && asSides(sides);
  if (said === undefined || count === undefined || material === undefined) return {};
  const { unit } = context.units;
  const heights = readHeights(context, found);
  const pins = readPins(context, found, said === '<count> adjustable');
  const cleats = readCleats(context, found, said === '<count> on cleats', material);
  const shyEachEnd =
    reader.length('shy <length>') ??
    (said === '<count> fixed'
      ? assumed(Length.zero, 'fixed shelves are as long as their opening')
      : usual(SHELF_SHY, unit));
  return {
    shelves: withEdging(context, found, {
      origin: reader.origin,
      count,
      ...optional('countOrigin', countOrigin),
      adjustable: said === '<count> adjustable',
      material,
      shyEachEnd,
      ...optional('pins', pins),
      ...optional('cleats', cleats),
      ...optional('heights', heights),
    }),
  };
}

function asSides(sides: PanelDesign): Material {
  const thickness = assumed(sides.thickness.length, 'shelves are of the stock of the sides');
  return sides.stock === undefined ? { thickness } : { stock: sides.stock, thickness };
}

/** Undefined where none is written, or one of them cannot be read, which has a finding of its own. */
function readHeights(context: ReadContext, statement: Statement): readonly ShelfHeight[] | undefined {
  const said = bodyStatements(statement, 'shelf');
  const heights = said.flatMap((each): readonly ShelfHeight[] => {
    const reader = new Reader(each, vocabulary.shelf, context);
    const underside = reader.length('underside <length> up');
    const upper = reader.length('upper face <length> up');
    if (underside !== undefined) return [{ origin: reader.origin, up: underside, to: 'underside' }];
    return upper === undefined ? [] : [{ origin: reader.origin, up: upper, to: 'upper face' }];
  });
  return heights.length === 0 || heights.length < said.length ? undefined : heights;
}

const rowMeasures = [
  'holes <length> wide',
  '<length> deep',
  '<length> apart',
  '<length> from front',
  '<length> from back',
  'lowest <length> up',
  'highest <length> up',
] as const;

function readPins(context: ReadContext, statement: Statement, isAdjustable: boolean): PinRowsDesign | undefined {
  const said = onlyStatement(context, statement, 'pins');
  if (said === undefined) return undefined;
  if (!isAdjustable) {
    tellsOfOther(context, said, 'adjustable shelves');
    return undefined;
  }
  const reader = new Reader(said, vocabulary.pins, context);
  // Rows of which some words cannot be read are not known; a finding about them would be a second one.
  const isUnreadable = rowMeasures.some((each) => reader.has(each) && reader.length(each) === undefined);
  if (isUnreadable || reader.hasUnread) return undefined;
  const { unit } = context.units;
  const isSystem = reader.has('system rows');
  const bySystem = (size: Length, words: string): Figure => assumed(size, `${words} of the 32 mm system, a convention`);
  const fromBack = reader.length('<length> from back');
  const figures = {
    diameter:
      reader.length('holes <length> wide') ??
      (isSystem ? bySystem(SYSTEM_DIAMETER, '5 mm holes') : usual(PIN_DIAMETER, unit)),
    depth: reader.length('<length> deep') ?? usual(PIN_DEPTH, unit),
    apart: reader.length('<length> apart') ?? (isSystem ? bySystem(SYSTEM_PITCH, 'pitch') : usual(PINS_APART, unit)),
    fromFront:
      reader.length('<length> from front') ??
      (isSystem ? bySystem(SYSTEM_FROM_FRONT, 'front row') : usual(PINS_FROM_EDGE, unit)),
  };
  return {
    origin: reader.origin,
    ...figures,
    ...optional('fromBack', fromBack ?? (isSystem ? undefined : usual(PINS_FROM_EDGE, unit))),
    ...optional('lowest', reader.length('lowest <length> up')),
    ...optional('highest', reader.length('highest <length> up')),
    ...optional('price', priceOf('each', reader.number('costs <number> each'))),
    isSystem,
  };
}

function readCleats(
  context: ReadContext,
  statement: Statement,
  areAsked: boolean,
  shelves: Material,
): CleatsDesign | undefined {
  const said = onlyStatement(context, statement, 'cleats');
  const { unit } = context.units;
  if (!areAsked) {
    if (said !== undefined) tellsOfOther(context, said, 'shelves on cleats');
    return undefined;
  }
  const reader = said && new Reader(said, vocabulary.cleats, context);
  const own = reader?.has('<stock>') || reader?.has('of <stock>') || reader?.has('thick <length>');
  const material = own && reader ? readMaterial(reader, 'cleats') : undefined;
  return {
    origin: headOrigin(context, said ?? statement),
    ...(material ?? { thickness: usual(CLEAT_THICK, unit), ...optional('stock', shelves.stock) }),
    height: reader?.length('<length> high') ?? usual(CLEAT_HIGH, unit),
    setBack: reader?.length('set back <length>') ?? usual(CLEAT_SET_BACK, unit),
    ...(reader && readFastening(reader)),
  };
}

function readFastening(reader: Reader<'by screws <screw>'>): Pick<CleatsDesign, 'screws' | 'screwsOrigin'> {
  const target = reader.target('by screws <screw>');
  if (target === undefined) return {};
  reader.context.touched.add(target.statement);
  const screws = readScrew(target.statement, reader.context.documents);
  return screws === undefined ? {} : { screws, screwsOrigin: target.origin };
}

function tellsOfOther(context: ReadContext, said: Statement, of: string): void {
  context.findings.push(
    detailWithoutJoint.at(
      headOrigin(context, said),
      { words: `'${said.head ?? ''}'`, of },
      { mends: [{ how: 'remove', values: {}, changes: [{ kind: 'remove', at: originOf(context, said) }] }] },
    ),
  );
}
