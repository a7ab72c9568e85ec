import {
  assumed,
  type Cell,
  type Divider,
  type DrawerDesign,
  type FaceDesign,
  type Figure,
  type GroupCell,
  Length,
  type Material,
  type PanelDesign,
  type ShelfDesign,
  type SizeAsked,
} from '@fettle/engine';
import { dividerOutOfPlace } from '@fettle/findings';
import type { Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import * as vocabulary from '../schema/face.ts';
import { readMaterial, readPanel } from './read-material.ts';
import { readSlide } from './read-shop.ts';
import { bodyStatements, headOrigin, onlyStatement, originOf, type ReadContext, Reader } from './reader.ts';

/** The face as the maker wrote it: rows, stacks, fronts and openings with the sizes asked for. */

const cellWords = new Set(vocabulary.cellStatements.map((spec) => spec.word));
const dividerWords = new Set(['partition', 'divider']);

export interface FaceReading {
  readonly context: ReadContext;
  readonly sides: PanelDesign | undefined;
  /** A stable id for each cell statement. */
  readonly ids: ReadonlyMap<Statement, string>;
}

export function readFace(
  context: ReadContext,
  statement: Statement,
  sides: PanelDesign | undefined,
): FaceDesign | undefined {
  const reader = new Reader(statement, vocabulary.face, context);
  const ids = new Map<Statement, string>();
  nameCells(statement, 'face', ids);
  const reading: FaceReading = { context, sides, ids };
  const cells = statement.statements.filter((each) => cellWords.has(specOf(each).spec.word));
  const [first] = cells;
  if (first === undefined) return undefined;
  const fronts = onlyStatement(context, statement, 'fronts');
  const drawers = onlyStatement(context, statement, 'drawers');
  const root: Cell =
    cells.length === 1
      ? readCell(reading, first, 'stack')
      : readGroup(reading, statement, 'stack', {
          id: 'face',
          along: { kind: 'rest' },
          origin: reader.origin,
          sizeOrigin: reader.origin,
        });
  const frontPanel = fronts && readPanel(new Reader(fronts, vocabulary.fronts, context), 'fronts');
  const drawerDesign = drawers && readDrawer(context, drawers);
  return {
    origin: reader.origin,
    fit: {
      kind: 'inset',
      gap: reader.lengthOr(Length.inches(3, 32), 'gaps around inset fronts are about 1/16" to 1/8"', 'gap <length>'),
    },
    root,
    ...(frontPanel === undefined ? {} : { fronts: frontPanel }),
    ...(drawerDesign === undefined ? {} : { drawers: drawerDesign }),
  };
}

function nameCells(group: Statement, path: string, ids: Map<Statement, string>): void {
  const taken = new Map<string, number>();
  for (const statement of group.statements) {
    const { word } = specOf(statement).spec;
    if (!cellWords.has(word)) continue;
    const wanted = statement.name ?? word;
    const count = (taken.get(wanted) ?? 0) + 1;
    taken.set(wanted, count);
    const id = `${path}/${wanted}${count === 1 ? '' : `#${count}`}`;
    ids.set(statement, id);
    nameCells(statement, id, ids);
  }
}

type CellBasics = Pick<
  GroupCell,
  'id' | 'origin' | 'sizeOrigin' | 'along' | 'name' | 'atLeast' | 'atMost' | 'measured'
>;

function readCell(reading: FaceReading, statement: Statement, parent: 'row' | 'stack'): Cell {
  const { context } = reading;
  const { word } = specOf(statement).spec;
  const basics = readBasics(reading, statement, parent);
  switch (word) {
    case 'row':
    case 'stack':
      return readGroup(reading, statement, word, basics);
    case 'open':
      return { ...basics, kind: 'open', ...shelvesIn(reading, statement) };
    default: {
      const own = onlyStatement(context, statement, 'fronts');
      const front = own && readPanel(new Reader(own, vocabulary.frontSpecs.ownFront, context), 'front');
      const drawer = word === 'drawer' && hasDrawerStatements(statement) ? readDrawer(context, statement) : undefined;
      const pair =
        word === 'doors'
          ? bodyStatements(statement, 'single').length === 0
          : bodyStatements(statement, 'pair').length > 0;
      return {
        ...basics,
        kind: 'front',
        what: word === 'drawer' ? 'drawer' : word === 'false-front' ? 'false-front' : 'door',
        leaves: pair ? 2 : 1,
        ...shelvesIn(reading, statement),
        ...(front === undefined ? {} : { front }),
        ...(drawer === undefined ? {} : { drawer }),
      };
    }
  }
}

function readBasics(reading: FaceReading, statement: Statement, parent: 'row' | 'stack'): CellBasics {
  const { context, ids } = reading;
  const reader = new Reader(statement, vocabulary.drawer, context);
  const side = parent === 'row' ? 'wide' : 'high';
  const asked = readAsked(reader, side);
  const atLeast = reader.length('at least <length>');
  const atMost = reader.length('at most <length>');
  const measured = reader.measured(`measured opening <length> ${side}`);
  return {
    id: ids.get(statement) ?? statement.name ?? 'cell',
    ...(statement.name === undefined ? {} : { name: statement.name }),
    origin: reader.origin,
    sizeOrigin: asked.origin ?? reader.origin,
    along: asked.along,
    ...(atLeast === undefined ? {} : { atLeast }),
    ...(atMost === undefined ? {} : { atMost }),
    ...(measured === undefined ? {} : { measured }),
  };
}

type SizeReader = Reader<
  | `${'front' | 'opening' | 'measured opening'} <length> ${'wide' | 'high'}`
  | 'share <number>'
  | 'rest'
  | 'same as <cell>'
  | 'same front as <cell>'
  | 'same opening as <cell>'
  | 'at least <length>'
  | 'at most <length>'
>;

function readAsked(
  reader: SizeReader,
  side: 'wide' | 'high',
): { readonly along: SizeAsked; readonly origin: ReturnType<SizeReader['originOf']> } {
  for (const basis of ['front', 'opening'] as const) {
    const figure = reader.length(`${basis} <length> ${side}`);
    if (figure !== undefined) {
      return { along: { kind: 'fixed', basis, figure }, origin: reader.originOf(`${basis} <length> ${side}`) };
    }
  }
  const weight = reader.number('share <number>');
  if (weight !== undefined && weight.sign() > 0) {
    return { along: { kind: 'share', weight }, origin: reader.originOf('share <number>') };
  }
  for (const pattern of ['same front as <cell>', 'same opening as <cell>', 'same as <cell>'] as const) {
    const target = reader.target(pattern);
    if (target === undefined) continue;
    const basis = pattern === 'same opening as <cell>' ? 'opening' : 'front';
    return {
      along: { kind: 'same', basis, as: target.name, origin: target.origin },
      origin: reader.originOf(pattern),
    };
  }
  return { along: { kind: 'rest' }, origin: reader.originOf('rest') };
}

function readGroup(reading: FaceReading, statement: Statement, kind: 'row' | 'stack', basics: CellBasics): GroupCell {
  const { context } = reading;
  const graded =
    kind === specOf(statement).spec.word
      ? new Reader(statement, vocabulary.stack, context).length('graded by <length>')
      : undefined;
  const common = onlyStatement(context, statement, 'dividers');
  const cells: Cell[] = [];
  const dividers: Divider[] = [];
  let waiting: Statement | undefined;
  let step = 0;
  for (const child of statement.statements) {
    const { word } = specOf(child).spec;
    if (dividerWords.has(word)) {
      if (cells.length === 0) outOfPlace(context, child, 'first');
      else if (waiting !== undefined) outOfPlace(context, child, 'beside-another');
      else waiting = child;
      continue;
    }
    if (!cellWords.has(word)) continue;
    if (cells.length > 0) {
      dividers.push(readDivider(reading, waiting ?? common, kind, `${basics.id}|${cells.length}`, basics.origin));
      waiting = undefined;
    }
    const cell = readCell(reading, child, kind);
    const takesGrade = graded !== undefined && cell.along.kind === 'rest' && !saysRest(context, child);
    cells.push(takesGrade ? { ...cell, along: { kind: 'graded', by: graded, step: step++ } } : cell);
  }
  if (waiting !== undefined) outOfPlace(context, waiting, 'last');
  return { ...basics, kind, cells, dividers };
}

function saysRest(context: ReadContext, statement: Statement): boolean {
  return new Reader(statement, vocabulary.drawer, context).has('rest');
}

function outOfPlace(context: ReadContext, statement: Statement, where: 'first' | 'last' | 'beside-another'): void {
  const word = statement.head ?? 'divider';
  context.findings.push(
    dividerOutOfPlace.at(
      headOrigin(context, statement),
      { word, where },
      {
        mends: [{ how: 'remove', values: { word }, changes: [{ kind: 'remove', at: originOf(context, statement) }] }],
      },
    ),
  );
}

const noMaterial: Material = { thickness: assumed(Length.zero, 'nothing lies between them') };

function readDivider(
  reading: FaceReading,
  statement: Statement | undefined,
  group: 'row' | 'stack',
  id: string,
  origin: Divider['origin'],
): Divider {
  const { context } = reading;
  const none: Divider = { id, origin, form: 'none', material: noMaterial, mode: 'behind', anchor: 'centre' };
  if (statement === undefined) return none;
  const reader = new Reader(statement, vocabulary.divider, context);
  const material = readMaterial(reader, statement.head ?? 'divider');
  if (material === undefined) return none;
  const railWidth = reader.length('rails <length> wide');
  const form = reader.has('web-frame') ? 'web-frame' : group === 'row' ? 'partition' : 'panel';
  const behind = reader.has('behind fronts') || (!reader.has('shown') && group === 'stack');
  return {
    id,
    origin: reader.origin,
    form,
    material,
    mode: behind ? 'behind' : 'shown',
    anchor: 'centre',
    ...(railWidth === undefined ? {} : { railWidth }),
  };
}

function shelvesIn(reading: FaceReading, statement: Statement): { readonly shelves?: ShelfDesign } {
  const { context, sides } = reading;
  const found = onlyStatement(context, statement, 'shelves');
  if (found === undefined) return {};
  const reader = new Reader(found, vocabulary.frontSpecs.shelves, context);
  const count = reader.count('<count> adjustable') ?? reader.count('<count> fixed');
  const own = reader.has('of <stock>') || reader.has('thick <length>');
  const material: Material | undefined = own
    ? readMaterial(reader as unknown as Reader<'<stock>' | 'of <stock>' | 'thick <length>'>, 'shelves')
    : sides && asSides(sides);
  if (count === undefined || material === undefined) return {};
  return {
    shelves: {
      origin: reader.origin,
      count,
      adjustable: reader.has('<count> adjustable'),
      material,
      shyEachEnd: assumed(Length.inches(1, 16), 'adjustable shelves are 1/16" shy at each end'),
    },
  };
}

function asSides(sides: PanelDesign): Material {
  const thickness = assumed(sides.thickness.length, 'shelves are of the stock of the sides');
  return sides.stock === undefined ? { thickness } : { stock: sides.stock, thickness };
}

const drawerWords = new Set(Object.values(vocabulary.drawerSpecs).map((spec) => spec.word));
function hasDrawerStatements(statement: Statement): boolean {
  return statement.statements.some((each) => drawerWords.has(specOf(each).spec.word));
}

function readDrawer(context: ReadContext, statement: Statement): DrawerDesign {
  const { boxSides, boxBottom, corners, slides, boxSize, clear } = vocabulary.drawerSpecs;
  const only = (word: string) => onlyStatement(context, statement, word);
  const sides = only('sides');
  const bottom = only('bottom');
  const sidePanel = sides && readPanel(new Reader(sides, boxSides, context), 'drawer sides');
  const bottomPanel = bottom && readPanel(new Reader(bottom, boxBottom, context), 'drawer bottom');
  const cornerStatement = only('corners');
  const cornerReader = cornerStatement && new Reader(cornerStatement, corners, context);
  const joint =
    (['dovetail', 'box-joint', 'rabbet', 'butt'] as const).find((each) => cornerReader?.has(each)) ?? 'butt';
  const slideStatement = only('slides');
  const target = slideStatement && new Reader(slideStatement, slides, context).target('<slide>');
  if (target !== undefined) context.touched.add(target.statement);
  const entry = target && readSlide(target.statement, context.documents);
  const boxStatement = only('box');
  const box = boxStatement && new Reader(boxStatement, boxSize, context);
  const clearReaders = bodyStatements(statement, 'clear').map((each) => new Reader(each, clear, context));
  const clearance = (pattern: '<length> below' | '<length> above', fallback: Length, because: string): Figure =>
    clearReaders.map((each) => each.length(pattern)).find((each) => each !== undefined) ?? assumed(fallback, because);
  const boxWidth = box?.length('<length> wide');
  const boxHeight = box?.length('<length> high');
  return {
    origin: headOrigin(context, statement),
    ...(sidePanel === undefined ? {} : { sides: sidePanel }),
    ...(bottomPanel === undefined ? {} : { bottom: bottomPanel }),
    corners: joint,
    ...(entry === undefined ? {} : { slides: entry }),
    ...(target === undefined ? {} : { slidesOrigin: target.origin }),
    clearBelow: clearance('<length> below', Length.inches(1, 4), 'drawer boxes have about 1/4" free under them'),
    clearAbove: clearance('<length> above', Length.inches(1, 2), 'drawer boxes have about 1/2" free over them'),
    bottomGroove: assumed(Length.inches(1, 4), 'grooves for drawer bottoms are 1/4" deep'),
    bottomShy: assumed(Length.inches(1, 16), 'drawer bottoms are 1/16" short of their grooves'),
    ...(boxWidth === undefined ? {} : { boxWidth }),
    ...(boxHeight === undefined ? {} : { boxHeight }),
  };
}
