import {
  derive,
  type FrontPanelDesign,
  GLASS_CLEARANCE,
  GLASS_RABBET,
  GLASS_THICKNESS,
  type GlassDesign,
  plus,
  Rational,
  usual,
} from '@fettle/engine';
import type { Statement } from '../generated/ast.ts';
import * as vocabulary from '../schema/construction.ts';
import { readFramed, withEdging } from './read-construction.ts';
import { readPanel } from './read-material.ts';
import { onlyStatement, type ReadContext, Reader } from './reader.ts';

type FrontPattern = '<stock>' | 'of <stock>' | 'thick <length>' | 'frame-and-panel';

/** What fronts are made of: plain, edged, or for doors a frame around panels or panes. */
export function readFrontPanel(reader: Reader<FrontPattern>, part: string): FrontPanelDesign | undefined {
  const { context, statement } = reader;
  const panel = readPanel(reader, part);
  if (panel === undefined) return undefined;
  const glass = readGlass(context, statement, panel);
  const framed = readFramed(reader, panel);
  return {
    ...withEdging(context, statement, panel),
    ...(framed === undefined ? {} : { framed: glass === undefined ? framed : { ...framed, glass } }),
  };
}

function readGlass(context: ReadContext, around: Statement, frame: FrontPanelDesign): GlassDesign | undefined {
  const found = onlyStatement(context, around, 'glass');
  if (found === undefined) return undefined;
  const reader = new Reader(found, vocabulary.glass, context);
  const { unit } = context.units;
  return {
    origin: reader.origin,
    thickness: reader.length('thick <length>') ?? usual(GLASS_THICKNESS, unit),
    rabbetWidth: reader.length('in rabbet <length> wide') ?? usual(GLASS_RABBET, unit),
    rabbetDepth:
      reader.length('rabbet <length> deep') ??
      derive('rabbets for glass are half as deep as the frame is thick, common practice', [
        plus('thickness of the frame', frame.thickness, Rational.of(1, 2)),
      ]),
    clearance: reader.length('clearance <length>') ?? usual(GLASS_CLEARANCE, unit),
    isSafety: reader.has('safety'),
  };
}
