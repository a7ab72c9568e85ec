import { assumed, type Figure, fromShop, Length, type SlideEntry, type Stock } from '@fettle/engine';
import type { LangiumDocuments } from 'langium';
import type { Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import * as shop from '../schema/shop.ts';
import { type ReadContext, Reader, unitsAt } from './reader.ts';
import { entryUnit } from './text-units.ts';

/** Shop entries as the engine knows them. What is wrong inside an entry is reported where the entry stands, not here. */

const stocks = new WeakMap<Statement, Stock>();
const slides = new WeakMap<Statement, SlideEntry | undefined>();

export function readStock(statement: Statement, documents: LangiumDocuments): Stock {
  const known = stocks.get(statement);
  if (known !== undefined) return known;
  const form = specOf(statement).spec.word === 'sheet' ? 'sheet' : 'board';
  const reader = new Reader(statement, shop.board, quietContext(statement, documents));
  const figure = (figured: Figure | undefined) => shopFigure(figured, statement);
  const optional = <Key extends string>(key: Key, value: Figure | undefined) =>
    value === undefined ? {} : ({ [key]: value } as Record<Key, Figure>);
  const stock: Stock = {
    name: statement.name ?? '',
    origin: reader.origin,
    form,
    ...optional('nominal', figure(reader.length('nominal <length>'))),
    ...optional('actual', figure(reader.length('actual <length>'))),
    ...optional('length', figure(reader.length('<length> long'))),
    ...optional('width', figure(reader.length('<length> wide'))),
    grain: reader.has('no grain') ? 'none' : 'along-length',
  };
  stocks.set(statement, stock);
  return stock;
}

/** Undefined while the entry does not say how long the slide is. */
export function readSlide(statement: Statement, documents: LangiumDocuments): SlideEntry | undefined {
  if (slides.has(statement)) return slides.get(statement);
  const reader = new Reader(statement, shop.slide, quietContext(statement, documents));
  const length = shopFigure(reader.length('<length> long'), statement);
  const height = shopFigure(reader.length('<length> high'), statement);
  const entry: SlideEntry | undefined =
    length === undefined
      ? undefined
      : {
          name: statement.name ?? '',
          origin: reader.origin,
          mounting: 'side',
          length,
          clearanceEachSide:
            shopFigure(reader.length('takes <length> each side'), statement) ??
            assumed(Length.inches(1, 2), 'side-mount slides take 1/2" at each side'),
          extraDepth:
            shopFigure(reader.length('<length> free behind'), statement) ??
            assumed(Length.zero, 'the slide needs no room behind the box'),
          ...(height === undefined ? {} : { height }),
        };
  slides.set(statement, entry);
  return entry;
}

function shopFigure(figure: Figure | undefined, statement: Statement): Figure | undefined {
  return figure?.reason.kind === 'given' ? fromShop(figure.length, statement.name ?? '', figure.reason.origin) : figure;
}

function quietContext(statement: Statement, documents: LangiumDocuments): ReadContext {
  return { documents, unit: entryUnit(statement), units: unitsAt(statement), findings: [], touched: new Set() };
}
