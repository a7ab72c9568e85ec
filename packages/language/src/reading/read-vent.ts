import { assumed, type Figure, Length, type VentDesign, type VentLayer } from '@fettle/engine';
import { ventWithoutSize } from '@fettle/findings';
import type { Statement } from '../generated/ast.ts';
import * as vocabulary from '../schema/vents.ts';
import { readMaterial } from './read-material.ts';
import { optional } from './read-shop.ts';
import { onlyStatement, type ReadContext, Reader } from './reader.ts';

const sizes = ['<length> wide', '<length> high', '<length> up'] as const;

/** The vent of a front or of an open space; absent while its width, its height or its place is not said. */
export function readVent(context: ReadContext, statement: Statement): { readonly vent?: VentDesign } {
  const said = onlyStatement(context, statement, 'vent');
  if (said === undefined) return {};
  const reader = new Reader(said, vocabulary.vent, context);
  const width = reader.length('<length> wide');
  const height = reader.length('<length> high');
  const up = reader.length('<length> up');
  const lined = onlyStatement(context, said, 'lining');
  const lining = lined && new Reader(lined, vocabulary.lining, context);
  const material = lining && readMaterial(lining, 'the lining');
  const box = readLayer(context, said, 'box', vocabulary.ventBox);
  const back = readLayer(context, said, 'back', vocabulary.ventBack);
  const ledge = readLedge(context, said);
  const missing = [
    ...withoutSize('width', width),
    ...withoutSize('height', height),
    ...(up === undefined ? ['place'] : []),
  ];
  if (width === undefined || height === undefined || up === undefined || missing.length > 0) {
    // What cannot be read has a finding of its own.
    const isUnreadable = sizes.some((each) => reader.has(each) && reader.length(each) === undefined);
    if (!reader.hasUnread && !isUnreadable)
      context.findings.push(ventWithoutSize.at(reader.origin, { missing: missing.join(' and no ') }));
    return {};
  }
  return {
    vent: {
      origin: reader.origin,
      width,
      height,
      up,
      ...optional('corners', reader.length('corners <length>')),
      ...optional('cornersOrigin', reader.originOf('corners <length>') ?? reader.originOf('square corners')),
      ...(material === undefined || lining === undefined ? {} : { lining: { ...material, origin: lining.origin } }),
      ...optional('ledge', ledge),
      ...optional('box', box),
      ...optional('back', back),
    },
  };
}

function withoutSize(what: string, figure: Figure | undefined): readonly string[] {
  return figure === undefined || !figure.length.isPositive() ? [what] : [];
}

function readLayer(
  context: ReadContext,
  statement: Statement,
  word: 'box' | 'back',
  spec: typeof vocabulary.ventBox,
): VentLayer | undefined {
  const said = onlyStatement(context, statement, word);
  if (said === undefined) return undefined;
  const reader = new Reader(said, spec, context);
  return {
    origin: reader.origin,
    ...optional('larger', reader.length('larger by <length>')),
    ...optional('width', reader.length('<length> wide')),
    ...optional('height', reader.length('<length> high')),
  };
}

function readLedge(context: ReadContext, statement: Statement): VentDesign['ledge'] {
  const said = onlyStatement(context, statement, 'ledge');
  if (said === undefined) return undefined;
  const reader = new Reader(said, vocabulary.ledge, context);
  const { unit } = context.units;
  const usual = unit === 'mm' || unit === 'cm' ? Length.millimetres(6) : Length.inches(1, 4);
  const because = 'a ledge for a screen is about 1/4" or 6 mm wide and deep, common practice';
  return {
    origin: reader.origin,
    width: reader.length('<length> wide') ?? assumed(usual, because),
    depth: reader.length('<length> deep') ?? assumed(usual, because),
  };
}
