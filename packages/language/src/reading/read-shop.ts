import {
  assumed,
  BESIDE_BOX,
  type CutterEntry,
  type Figure,
  fromShop,
  Length,
  type LengthUnit,
  type MachineEntry,
  type OffcutEntry,
  type Price,
  type Rational,
  type SlideEntry,
  type SlideHole,
  type SlideScrews,
  type Stock,
  usual,
} from '@fettle/engine';
import type { LangiumDocuments } from 'langium';
import type { Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import type { StatementSpec } from '../schema/index.ts';
import * as shop from '../schema/shop.ts';
import { bodyStatements, type ReadContext, Reader, unitsAt } from './reader.ts';
import { entryUnit } from './text-units.ts';

/** Shop entries as the engine knows them. What is wrong inside an entry is reported where the entry stands, not here. */

const stocks = new WeakMap<Statement, Stock>();
const slides = new WeakMap<Statement, SlideEntry | undefined>();

export function readStock(statement: Statement, documents: LangiumDocuments): Stock {
  const known = stocks.get(statement);
  if (known !== undefined) return known;
  const form = specOf(statement).spec.word === 'sheet' ? 'sheet' : 'board';
  const context = quietContext(statement, documents);
  const reader = new Reader(statement, shop.board, context);
  const figure = (figured: Figure | undefined) => shopFigure(figured, statement);
  const price =
    priceOf('each', reader.number('costs <number> each')) ??
    priceOf('board-foot', reader.number('costs <number> a board foot'));
  const stock: Stock = {
    name: statement.name ?? '',
    origin: reader.origin,
    form,
    ...optional('nominal', figure(reader.length('nominal <length>'))),
    ...optional('actual', figure(reader.length('actual <length>'))),
    ...optional('length', figure(reader.length('<length> long'))),
    ...optional('width', figure(reader.length('<length> wide'))),
    grain: reader.has('no grain') ? 'none' : 'along-length',
    ...optional('price', price),
    ...optional('trim', form === 'sheet' ? figure(trimOf(statement, context)) : undefined),
    ...optional('offcuts', readOffcuts(statement, context)),
  };
  stocks.set(statement, stock);
  return stock;
}

function trimOf(sheet: Statement, context: ReadContext): Figure | undefined {
  return new Reader(sheet, shop.sheet, context).length('trim <length>');
}

/** An offcut that does not say its size is none that could be cut from. */
function readOffcuts(stock: Statement, context: ReadContext): readonly OffcutEntry[] | undefined {
  const offcuts = bodyStatements(stock, 'offcut').flatMap((each): readonly OffcutEntry[] => {
    const reader = new Reader(each, shop.offcut, context);
    const length = shopFigure(reader.length('<length> long'), stock);
    const width = shopFigure(reader.length('<length> wide'), stock);
    const thickness = shopFigure(reader.length('<length> thick'), stock);
    if (length === undefined || width === undefined) return [];
    const count = reader.count('<count> of them') ?? 1;
    return [{ origin: reader.origin, length, width, count, ...optional('thickness', thickness) }];
  });
  return offcuts.length === 0 ? undefined : offcuts;
}

/** Undefined while the entry does not say how long the slide is. */
export function readSlide(statement: Statement, documents: LangiumDocuments): SlideEntry | undefined {
  if (slides.has(statement)) return slides.get(statement);
  const context = quietContext(statement, documents);
  const reader = new Reader(statement, shop.slide, context);
  const figure = (pattern: Parameters<typeof reader.length>[0]) => shopFigure(reader.length(pattern), statement);
  const length = figure('<length> long');
  const height = figure('<length> high');
  const load = loadOf('lb', reader.number('carries <number> lb')) ?? loadOf('kg', reader.number('carries <number> kg'));
  const entry: SlideEntry | undefined =
    length === undefined
      ? undefined
      : {
          name: statement.name ?? '',
          origin: reader.origin,
          mounting: (['under', 'centre'] as const).find((each) => reader.has(`${each} mount`)) ?? 'side',
          length,
          clearanceEachSide:
            figure('takes <length> each side') ??
            (reader.has('centre mount')
              ? usual(BESIDE_BOX, context.units.unit)
              : assumed(Length.inches(1, 2), 'side-mount slides take 1/2" at each side')),
          extraDepth: figure('<length> free behind') ?? assumed(Length.zero, 'the slide needs no room behind the box'),
          ...optional('height', height),
          ...optional('setBack', figure('set back <length>')),
          ...optional('below', figure('takes <length> below')),
          ...optional('lift', figure('lifts in <length>')),
          ...optional('thickestSides', figure('sides at most <length> thick')),
          holes: readHoles(statement, context, 'case'),
          boxHoles: readHoles(statement, context, 'box'),
          ...optional('screws', readSlideScrews(statement, context)),
          ...optional('carries', load),
          ...optional('price', priceOf('each', reader.number('costs <number> each'))),
        };
  slides.set(statement, entry);
  return entry;
}

function readHoles(slide: Statement, context: ReadContext, member: 'case' | 'box'): readonly SlideHole[] {
  return bodyStatements(slide, 'hole').flatMap((each) => {
    const reader = new Reader(each, shop.slideHole, context);
    if (reader.has('in box') !== (member === 'box')) return [];
    const fromFront = shopFigure(reader.length('<length> from front'), slide);
    const up = shopFigure(reader.length('<length> up'), slide);
    return fromFront === undefined ? [] : [{ fromFront, ...optional('up', up) }];
  });
}

function readSlideScrews(slide: Statement, context: ReadContext): SlideScrews | undefined {
  const [screws] = bodyStatements(slide, 'screws');
  const reader = screws && new Reader(screws, shop.slideScrews, context);
  const length = shopFigure(reader?.length('<length> long'), slide);
  const diameter = shopFigure(reader?.length('<length> thick'), slide);
  const inBox = shopFigure(reader?.length('<length> long in box'), slide);
  const price = priceOf('each', reader?.number('costs <number> each'));
  return length === undefined || diameter === undefined
    ? undefined
    : { length, diameter, ...optional('inBox', inBox), ...optional('price', price) };
}

/** Undefined while the entry does not say what it cuts. */
export function readCutter(statement: Statement, documents: LangiumDocuments): CutterEntry | undefined {
  const reader = new Reader(statement, shop.cutter, quietContext(statement, documents));
  const figure = (figured: Figure | undefined) => shopFigure(figured, statement);
  const [from, to] = reader.lengths('cuts <length> to <length> wide');
  const fixed = reader.length('cuts <length> wide');
  const narrowest = figure(from ?? fixed);
  const widest = figure(to ?? fixed);
  if (narrowest === undefined || widest === undefined) return undefined;
  return {
    name: statement.name ?? '',
    origin: reader.origin,
    narrowest,
    widest,
    ...optional('deepest', figure(reader.length('at most <length> deep'))),
    ...optional(
      'form',
      (['blade', 'bit', 'chisel'] as const).find((each) => reader.has(each)),
    ),
  };
}

export function readMachine(statement: Statement, documents: LangiumDocuments): MachineEntry {
  const reader = new Reader(statement, shop.machine, quietContext(statement, documents));
  const figure = (figured: Figure | undefined) => shopFigure(figured, statement);
  return {
    name: statement.name ?? '',
    origin: reader.origin,
    ...optional('ripWidth', figure(reader.length('rips at most <length> wide'))),
    ...optional('crosscutLength', figure(reader.length('crosscuts at most <length>'))),
    ...optional('crosscutWidth', figure(reader.length('crosscuts at most <length> wide'))),
    ...optional('planeWidth', figure(reader.length('planes at most <length> wide'))),
    ...optional('leastLength', figure(reader.length('least length <length>'))),
    ...optional('ripLength', figure(reader.length('rips at most <length> long'))),
    ...optional('leastWidth', figure(reader.length('least width <length>'))),
    ...optional('kerf', figure(reader.length('kerf <length>'))),
  };
}

/** A field that is there only where its value is. */
export function optional<Key extends string, Value>(
  key: Key,
  value: Value | undefined,
): { readonly [key in Key]?: Value } {
  return value === undefined ? {} : ({ [key]: value } as { readonly [key in Key]?: Value });
}

export function priceOf(per: Price['per'], amount: Rational | undefined): Price | undefined {
  return amount === undefined ? undefined : { amount, per };
}

function loadOf(unit: 'lb' | 'kg', load: Rational | undefined): SlideEntry['carries'] {
  return load === undefined ? undefined : { load, unit };
}

/** For entries that are read elsewhere; the unit is the one of the file they stand in. */
export function entryReader<Pattern extends string>(
  statement: Statement,
  spec: StatementSpec<Pattern>,
  documents: LangiumDocuments,
): { readonly reader: Reader<Pattern>; readonly unit: LengthUnit } {
  const context = quietContext(statement, documents);
  return { reader: new Reader(statement, spec, context), unit: context.units.unit };
}

export function shopFigure(figure: Figure | undefined, statement: Statement): Figure | undefined {
  return figure?.reason.kind === 'given' ? fromShop(figure.length, statement.name ?? '', figure.reason.origin) : figure;
}

function quietContext(statement: Statement, documents: LangiumDocuments): ReadContext {
  return { documents, unit: entryUnit(statement), units: unitsAt(statement), findings: [], touched: new Set() };
}
