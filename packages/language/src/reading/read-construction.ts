import {
  assumed,
  type DustPanelDesign,
  derive,
  type EdgeName,
  type EdgingDesign,
  type FeetDesign,
  type Figure,
  FOOT_HEIGHT,
  FOOT_RAIL,
  FRAMED_BOTTOM_RAIL,
  FRAMED_PANEL,
  FRAMED_STILE,
  type FramedDesign,
  type FramedPanelDesign,
  type HungDesign,
  Length,
  type LengthUnit,
  type MiddleRailsDesign,
  NAILER_WIDTH,
  type NailersDesign,
  PANEL_FLOAT,
  PANEL_GROOVE,
  type PanelDesign,
  PLINTH_HEIGHT,
  plus,
  Rational,
  SHEET_CLEARANCE,
  STUB_TENON,
  type Stock,
  TENON_SHORT,
  type TenonDesign,
  TOE_SPACE_DEPTH,
  type ToeSpaceDesign,
  usual,
} from '@fettle/engine';
import type { Statement } from '../generated/ast.ts';
import * as vocabulary from '../schema/construction.ts';
import { joinOf, readScrew } from './read-joints.ts';
import { readMaterial, readPanel } from './read-material.ts';
import { optional } from './read-shop.ts';
import { bodyStatements, onlyStatement, originOf, type ReadContext, Reader } from './reader.ts';

/** How the parts of a case are built up, as the maker wrote it. */

/** The panel with the strips on its edges, where its braces say any. */
export function withEdging<Panel extends object>(
  context: ReadContext,
  statement: Statement | undefined,
  panel: Panel,
): Panel & { readonly edging?: EdgingDesign } {
  const said = onlyStatement(context, statement, 'edging');
  const edging = said && readEdging(context, said);
  return edging === undefined ? panel : { ...panel, edging };
}

const edgesBy = {
  'at front': ['front'],
  'at back': ['back'],
  'at top': ['top'],
  'at bottom': ['bottom'],
  'at ends': ['left', 'right'],
  'all round': ['front', 'back', 'top', 'bottom', 'left', 'right'],
} as const satisfies Readonly<Record<string, readonly EdgeName[]>>;

function readEdging(context: ReadContext, statement: Statement): EdgingDesign | undefined {
  const reader = new Reader(statement, vocabulary.edging, context);
  const material = readMaterial(reader, 'edging');
  if (material === undefined) return undefined;
  const patterns = Object.keys(edgesBy) as (keyof typeof edgesBy)[];
  const edges = patterns.filter((each) => reader.has(each)).flatMap((each): readonly EdgeName[] => edgesBy[each]);
  const cornersOrigin = reader.originOf('mitred') ?? reader.originOf('butted');
  return {
    ...material,
    origin: reader.origin,
    // What is seen first is its front.
    edges: edges.length === 0 ? ['front'] : edges,
    corners: reader.has('mitred') ? 'mitred' : 'butted',
    ...(cornersOrigin === undefined ? {} : { cornersOrigin }),
    veneer: reader.has('before veneer') ? 'before' : 'after',
  };
}

const framedWords = ['glass', 'stiles', 'top-rail', 'bottom-rail', 'middle-rails', 'tenons', 'panel'];

/** Undefined where nothing says that it is a frame around panels. */
export function readFramed(reader: Reader<'frame-and-panel'>, of: PanelDesign): FramedDesign | undefined {
  const { statement, context } = reader;
  const isFramed =
    reader.has('frame-and-panel') || framedWords.some((word) => bodyStatements(statement, word).length > 0);
  if (!isFramed) return undefined;
  const { framedStiles, framedTopRail, framedBottomRail } = vocabulary;
  const { unit } = context.units;
  const wide = (spec: typeof framedStiles | typeof framedTopRail | typeof framedBottomRail): Figure => {
    const said = onlyStatement(context, statement, spec.word);
    const width = said && new Reader(said, spec, context).length('<length> wide');
    return width ?? usual(spec === framedBottomRail ? FRAMED_BOTTOM_RAIL : FRAMED_STILE, unit);
  };
  const [stiles, topRail, bottomRail] = [wide(framedStiles), wide(framedTopRail), wide(framedBottomRail)];
  const panel = readFramedPanel(reader, of);
  if (panel === undefined) return undefined;
  const middle = readMiddleRails(context, onlyStatement(context, statement, 'middle-rails'));
  return {
    origin: reader.originOf('frame-and-panel') ?? reader.origin,
    stiles,
    topRail,
    bottomRail,
    ...(middle === undefined ? {} : { middleRails: middle }),
    tenons: readTenons(context, onlyStatement(context, statement, 'tenons'), reader.origin, panel.groove),
    panel,
  };
}

function readMiddleRails(context: ReadContext, statement: Statement | undefined): MiddleRailsDesign | undefined {
  if (statement === undefined) return undefined;
  const reader = new Reader(statement, vocabulary.middleRails, context);
  const count = reader.count('<count> evenly spaced');
  return {
    origin: reader.origin,
    width: reader.length('<length> wide') ?? usual(FRAMED_STILE, context.units.unit),
    place: count === undefined ? { kind: 'at-dividers' } : { kind: 'even', count: Math.min(count, MOST_RAILS) },
  };
}

/** More than this is a slip of the pen, and drawing them would only take time. */
const MOST_RAILS = 50;

/** `groove`: stub tenons go as deep as the groove that the panel lies in, unless they say more. */
export function readTenons(
  context: ReadContext,
  statement: Statement | undefined,
  origin: PanelDesign['origin'],
  groove: Figure | undefined,
): TenonDesign {
  const { unit } = context.units;
  const reader = statement && new Reader(statement, vocabulary.tenons, context);
  return {
    origin: reader?.origin ?? origin,
    length:
      reader?.length('<length> long') ??
      (groove === undefined
        ? usual(STUB_TENON, unit)
        : derive('stub tenons go into the groove of the panel', [plus('depth of the groove', groove)])),
    short: reader?.length('<length> short') ?? usual(TENON_SHORT, unit),
  };
}

function readFramedPanel(around: Reader<'frame-and-panel'>, of: PanelDesign): FramedPanelDesign | undefined {
  const { context, statement } = around;
  const { unit } = context.units;
  const said = onlyStatement(context, statement, 'panel');
  if (said === undefined) {
    const groove = usual(PANEL_GROOVE, unit);
    return {
      origin: around.origin,
      ...(of.stock === undefined ? {} : { stock: of.stock }),
      thickness: usual(FRAMED_PANEL, unit),
      groove,
      shyEachEdge: usualShy(of.stock, unit),
      isGlued: false,
    };
  }
  const reader = new Reader(said, vocabulary.framedPanel, context);
  const panel = readPanel(reader, 'panel');
  if (panel === undefined) return undefined;
  const gluedOrigin = reader.originOf('glued in');
  return {
    ...panel,
    groove: reader.length('in groove <length> deep') ?? usual(PANEL_GROOVE, unit),
    shyEachEdge: readShy(reader) ?? (gluedOrigin === undefined ? usualShy(panel.stock, unit) : none),
    ...freedomOf(reader),
    isGlued: gluedOrigin !== undefined,
    ...(gluedOrigin === undefined ? {} : { gluedOrigin }),
  };
}

const none = assumed(Length.zero, 'what is glued in fills its groove');

type FreedomPattern = 'clearance <length>' | 'float <length> each side';

/** What a panel is left short of its groove at each edge; undefined where nothing is said. */
function readShy(reader: Reader<FreedomPattern>): Figure | undefined {
  const clearance = reader.length('clearance <length>');
  return clearance === undefined ? reader.length('float <length> each side') : half(clearance);
}

function half(clearance: Figure): Figure {
  return derive('half of the clearance at each edge', [plus('clearance in all', clearance, Rational.of(1, 2))]);
}

function usualShy(stock: Stock | undefined, unit: LengthUnit): Figure {
  return stock?.form === 'sheet' ? half(usual(SHEET_CLEARANCE, unit)) : usual(PANEL_FLOAT, unit);
}

/** Which of the two words is said, and where. */
export function freedomOf(reader: Reader<FreedomPattern>): Pick<FramedPanelDesign, 'freedom'> {
  for (const [kind, pattern] of [
    ['clearance', 'clearance <length>'],
    ['float', 'float <length> each side'],
  ] as const) {
    const origin = reader.originOf(pattern);
    if (origin !== undefined) return { freedom: { kind, origin } };
  }
  return {};
}

/** In all along each axis, for a back; where nothing is said, by what its stock is. */
export function readBackShy(reader: Reader<FreedomPattern>, form: Stock['form'] | undefined): Figure | undefined {
  const { unit } = reader.context.units;
  const clearance = reader.length('clearance <length>');
  if (clearance !== undefined) return clearance;
  const float = reader.length('float <length> each side');
  if (float !== undefined) return twice(float);
  if (form === undefined) return undefined;
  return form === 'sheet' ? usual(SHEET_CLEARANCE, unit) : twice(usual(PANEL_FLOAT, unit));
}

function twice(float: Figure): Figure {
  return derive('at both edges', [plus('float at each edge', float, 2)]);
}

export function readDustPanel(context: ReadContext, statement: Statement | undefined): DustPanelDesign | undefined {
  if (statement === undefined) return undefined;
  const reader = new Reader(statement, vocabulary.dustPanel, context);
  const panel = readPanel(reader, 'dust panel');
  if (panel === undefined) return undefined;
  const { unit } = context.units;
  return {
    ...panel,
    groove: reader.length('in groove <length> deep') ?? usual(PANEL_GROOVE, unit),
    shyEachEdge: readShy(reader) ?? usualShy(panel.stock, unit),
    ...freedomOf(reader),
  };
}

export function readToeSpace(context: ReadContext, statement: Statement | undefined): ToeSpaceDesign | undefined {
  if (statement === undefined) return undefined;
  const reader = new Reader(statement, vocabulary.toeSpace, context);
  const panel = readPanel(reader, 'toe board');
  if (panel === undefined) return undefined;
  const { unit } = context.units;
  return {
    ...panel,
    height: reader.length('<length> high') ?? usual(PLINTH_HEIGHT, unit),
    depth: reader.length('<length> deep') ?? usual(TOE_SPACE_DEPTH, unit),
  };
}

export function readFeet(context: ReadContext, statement: Statement | undefined): FeetDesign | undefined {
  if (statement === undefined) return undefined;
  const reader = new Reader(statement, vocabulary.feet, context);
  const panel = readPanel(reader, 'feet');
  if (panel === undefined) return undefined;
  const { unit } = context.units;
  const said = onlyStatement(context, statement, 'rails');
  const railReader = said && new Reader(said, vocabulary.footRails, context);
  const rail = railReader && readPanel(railReader, 'rails');
  const taperTo = reader.length('taper to <length>');
  return {
    ...panel,
    ...joinOf(reader),
    height: reader.length('<length> high') ?? usual(FOOT_HEIGHT, unit),
    ...(taperTo === undefined ? {} : { taperTo }),
    ...(rail === undefined || railReader === undefined
      ? {}
      : {
          rails: {
            ...rail,
            width: railReader.length('<length> wide') ?? usual(FOOT_RAIL, unit),
            setIn: railReader.lengthOr(Length.zero, 'the rails are flush with the feet', 'set in <length>'),
          },
        }),
  };
}

export function readHung(context: ReadContext, statement: Statement | undefined): HungDesign | undefined {
  if (statement === undefined) return undefined;
  const reader = new Reader(statement, vocabulary.hung, context);
  const screw = reader.target('by screws <screw>');
  if (screw !== undefined) context.touched.add(screw.statement);
  return {
    origin: reader.origin,
    whole: originOf(context, statement),
    ...optional('above', reader.length('<length> above floor')),
    ...optional('studsApart', reader.length('studs <length> apart')),
    ...(screw === undefined ? {} : { screw: readScrew(screw.statement, context.documents), screwOrigin: screw.origin }),
  };
}

export function readNailers(context: ReadContext, statement: Statement | undefined): NailersDesign | undefined {
  if (statement === undefined) return undefined;
  const reader = new Reader(statement, vocabulary.nailers, context);
  const panel = readPanel(reader, 'nailers');
  if (panel === undefined) return undefined;
  const countOrigin = reader.originOf('<count> strips');
  return {
    ...panel,
    ...joinOf(reader),
    whole: originOf(context, statement),
    ...(countOrigin === undefined ? {} : { countOrigin }),
    width: reader.length('<length> wide') ?? usual(NAILER_WIDTH, context.units.unit),
    count: Math.min(Math.max(reader.count('<count> strips') ?? 2, 1), MOST_RAILS),
  };
}
