import {
  type Cell,
  type Divider,
  type DoorBefore,
  type FaceDesign,
  FRONT_THICKNESS,
  type FrontCell,
  type FrontFit,
  type GroupCell,
  type PanelDesign,
  type SizeAsked,
  usual,
} from '@fettle/engine';
import { cannotBeBoth, type Origin, saidTwice, shareNotPositive, valueNotUnderstood } from '@fettle/findings';
import type { Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import * as vocabulary from '../schema/face.ts';
import { readContents } from './read-contents.ts';
import { dividerBetween, dividerStandsAlone, noDivider, readDivider } from './read-dividers.ts';
import { readCatches, readHingeSide, readHinges } from './read-doors.ts';
import { type DrawerSaid, drawerFrom, hasDrawerStatements, readDrawer } from './read-drawer.ts';
import { type FitMeasures, readFaceFit, readOwnFit } from './read-fits.ts';
import { readFrontPanel } from './read-fronts.ts';
import { readInside } from './read-inside.ts';
import { readPulls } from './read-pulls.ts';
import { readShelves } from './read-shelves.ts';
import { readVent } from './read-vent.ts';
import { bodyStatements, headOrigin, onlyStatement, type ReadContext, Reader } from './reader.ts';

/** The face as the maker wrote it: rows, stacks, fronts and openings with the sizes asked for. */

/** Statements that are a space of a face, or a group of such. */
export const cellWords: ReadonlySet<string> = new Set(vocabulary.cellStatements.map((spec) => spec.word));
const dividerWords = new Set(['partition', 'divider']);

export interface FaceReading {
  readonly context: ReadContext;
  readonly sides: PanelDesign | undefined;
  /** A stable id for each cell statement. */
  readonly ids: ReadonlyMap<Statement, string>;
  /** Of all fronts that do not say their own. */
  readonly fit: FrontFit;
  readonly measures: FitMeasures;
  /** What is said of all drawers. */
  readonly drawers: DrawerSaid | undefined;
  /** Of spaces behind a door. */
  readonly behind?: DoorBefore;
}

export function readFace(
  context: ReadContext,
  statement: Statement,
  sides: PanelDesign | undefined,
): FaceDesign | undefined {
  const reader = new Reader(statement, vocabulary.face, context);
  const ids = new Map<Statement, string>();
  nameCells(statement, 'face', ids);
  const { fit, measures } = readFaceFit(reader);
  const common = onlyStatement(context, statement, 'drawers');
  const drawers = common && readDrawer(context, common);
  const reading: FaceReading = { context, sides, ids, fit, measures, drawers };
  const cells = statement.statements.filter((each) => cellWords.has(specOf(each).spec.word));
  const [first, second] = cells;
  if (first === undefined) return undefined;
  const fronts = onlyStatement(context, statement, 'fronts');
  const hasDividers = statement.statements.some((each) => dividerWords.has(specOf(each).spec.word));
  const only = second === undefined && !hasDividers ? readCell(reading, first, 'stack') : undefined;
  // A space alone that asks for a size is a stack of one, so that its size is held against the face.
  const root: Cell =
    only !== undefined && asksNothing(only)
      ? only
      : readGroup(reading, statement, 'stack', {
          id: 'face',
          along: { kind: 'rest' },
          origin: reader.origin,
          sizeOrigin: reader.origin,
        });
  const frontPanel = fronts && readFrontPanel(new Reader(fronts, vocabulary.fronts, context), 'fronts');
  const { unit } = context.units;
  return {
    origin: reader.origin,
    fit,
    root,
    ...(frontPanel === undefined ? {} : { fronts: frontPanel }),
    usualFront: usual(FRONT_THICKNESS, unit),
    ...readPulls(context, statement),
    ...(drawers === undefined ? {} : { drawers: drawerFrom(drawers, undefined, unit) }),
  };
}

function asksNothing(cell: Cell): boolean {
  return (
    cell.along.kind === 'rest' &&
    cell.measured === undefined &&
    cell.measuredFront === undefined &&
    cell.atLeast === undefined &&
    cell.atMost === undefined
  );
}

function nameCells(group: Statement, path: string, ids: Map<Statement, string>): void {
  const taken = new Map<string, number>();
  for (const statement of group.statements) {
    const { word } = specOf(statement).spec;
    if (word === 'inside') nameCells(statement, `${path}/inside`, ids);
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
  'id' | 'origin' | 'sizeOrigin' | 'along' | 'name' | 'atLeast' | 'atMost' | 'measured' | 'measuredFront' | 'behind'
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
      return {
        ...basics,
        kind: 'open',
        ...readShelves(context, statement, reading.sides),
        ...readContents(context, statement),
        ...readVent(context, statement),
      };
    default: {
      const own = onlyStatement(context, statement, 'fronts');
      const front = own && readFrontPanel(new Reader(own, vocabulary.frontSpecs.ownFront, context), 'front');
      const drawer =
        word === 'drawer' && hasDrawerStatements(statement)
          ? drawerFrom(readDrawer(context, statement), reading.drawers, context.units.unit)
          : undefined;
      const fit = readFit(reading, statement);
      const shelves = readShelves(context, statement, reading.sides);
      // Of the two only one can be, which is told where that is read.
      const hasInside = bodyStatements(statement, 'inside').length > 0;
      const pair =
        word === 'doors'
          ? bodyStatements(statement, 'single').length === 0
          : bodyStatements(statement, 'pair').length > 0;
      const side = word === 'door' && !pair ? readHingeSide(context, statement) : {};
      return {
        ...basics,
        kind: 'front',
        what: word === 'drawer' || word === 'false-front' || word === 'lid' ? word : 'door',
        leaves: pair ? 2 : 1,
        ...(pair ? readMadeAsOne(context, statement) : {}),
        ...(word === 'door' && !pair ? { singleOrigin: wordOrigin(context, statement), ...side } : {}),
        ...(word === 'drawer' || word === 'false-front'
          ? {}
          : readHinges(context, statement, { isSingle: word !== 'lid' && !pair, ...side })),
        ...readCatches(context, statement),
        ...readPulls(context, statement),
        ...(hasInside ? {} : shelves),
        ...readWithin(reading, statement, { ...basics, ...(front && { front }), ...(fit && { fit }) }),
        ...readContents(context, statement),
        ...readVent(context, statement),
        ...(fit === undefined ? {} : { fit }),
        ...(front === undefined ? {} : { front }),
        ...(drawer === undefined ? {} : { drawer }),
      };
    }
  }
}

/** Of a front behind a door only one can be. */
function readFit(reading: FaceReading, statement: Statement): FrontFit | undefined {
  const { context } = reading;
  const own = readOwnFit(new Reader(statement, vocabulary.drawer, context), reading.measures);
  if (reading.behind === undefined) return own;
  if (own !== undefined && own.kind !== 'inset') {
    context.findings.push(
      cannotBeBoth.at(headOrigin(context, statement), {
        words: own.kind,
        other: 'inside',
        place: 'a front behind a door',
      }),
    );
  }
  return reading.fit;
}

/** Fronts behind a door lie inside the case, whatever the door does. */
function readWithin(
  reading: FaceReading,
  statement: Statement,
  door: Parameters<typeof readInside>[2],
): Pick<FrontCell, 'inside'> {
  const fit: FrontFit = { kind: 'inset', gap: reading.fit.gap };
  return readInside(reading.context, statement, door, reading.fit, (found, behind, basics) =>
    readGroup({ ...reading, fit, behind }, found, 'stack', basics),
  );
}

function readMadeAsOne(context: ReadContext, statement: Statement): Pick<FrontCell, 'madeAsOne'> {
  const said = onlyStatement(context, statement, 'pair');
  const madeAsOne = said && new Reader(said, vocabulary.frontSpecs.pair, context).originOf('made as one');
  return madeAsOne === undefined ? {} : { madeAsOne };
}

/** The first word of a statement, without its name. */
function wordOrigin(context: ReadContext, statement: Statement): Origin {
  const { unit, start } = headOrigin(context, statement);
  return { unit, start, end: start + (statement.head?.length ?? 0) };
}

function readBasics(reading: FaceReading, statement: Statement, parent: 'row' | 'stack'): CellBasics {
  const { context, ids } = reading;
  const reader = new Reader(statement, vocabulary.drawer, context);
  const side = parent === 'row' ? 'wide' : 'high';
  const asked = readAsked(reader, side);
  const atLeast = reader.length('at least <length>');
  const atMost = reader.length('at most <length>');
  const measured = reader.measured(`measured opening <length> ${side}`);
  const measuredFront = reader.measured(`measured front <length> ${side}`);
  const [openingAt, frontAt] = [
    reader.originOf(`measured opening <length> ${side}`),
    reader.originOf(`measured front <length> ${side}`),
  ];
  if (openingAt !== undefined && frontAt !== undefined) {
    // The case stands as it is: the front is made to it.
    context.findings.push(
      saidTwice.at(
        frontAt,
        { words: 'measured' },
        {
          related: [{ role: 'first', values: {}, origin: openingAt }],
          mends: [{ how: 'remove', values: { words: 'measured' }, changes: [{ kind: 'remove', at: frontAt }] }],
        },
      ),
    );
  }
  return {
    id: ids.get(statement) ?? statement.name ?? 'cell',
    ...(statement.name === undefined ? {} : { name: statement.name }),
    origin: reader.origin,
    sizeOrigin: asked.origin ?? reader.origin,
    along: asked.along,
    ...(reading.behind === undefined ? {} : { behind: reading.behind }),
    ...(atLeast === undefined ? {} : { atLeast }),
    ...(atMost === undefined ? {} : { atMost }),
    ...(measured === undefined ? {} : { measured }),
    ...(measured !== undefined || measuredFront === undefined ? {} : { measuredFront }),
  };
}

type SizeReader = Reader<
  | `${'front' | 'opening'} <length> ${'wide' | 'high'}`
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
  if (weight !== undefined) {
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
  const children = statement.statements.filter((each) => cellWords.has(specOf(each).spec.word));
  const grading = kind === specOf(statement).spec.word ? readGrading(reading, statement, children.length) : undefined;
  const common = onlyStatement(context, statement, 'dividers');
  const cells: Cell[] = [];
  const dividers: Divider[] = [];
  // What holds for all of them is read once, so that what is wrong with it is said once.
  const shared = common && readDivider(context, common, kind);
  let waiting: Statement | undefined;
  let step = 0;
  for (const child of statement.statements) {
    const { word } = specOf(child).spec;
    if (dividerWords.has(word)) {
      if (cells.length === 0) dividerStandsAlone(context, child, 'first');
      else if (waiting !== undefined) dividerStandsAlone(context, child, 'beside-another');
      else waiting = child;
      continue;
    }
    if (!cellWords.has(word)) continue;
    const before = cells.at(-1);
    const cell = readCell(reading, child, kind);
    if (before !== undefined) {
      const id = `${basics.id}|${cells.length}`;
      const said = waiting === undefined ? shared : readDivider(context, waiting, kind);
      dividers.push(
        said === undefined ? noDivider(id, basics.origin) : dividerBetween(said, id, kind, reading.fit, [before, cell]),
      );
      waiting = undefined;
    }
    const takesGrade = grading !== undefined && cell.along.kind === 'rest' && !saysRest(context, child);
    cells.push(takesGrade ? { ...cell, along: grading(step++) } : cell);
  }
  if (waiting !== undefined) dividerStandsAlone(context, waiting, 'last');
  return { ...basics, kind, cells, dividers };
}

function saysRest(context: ReadContext, statement: Statement): boolean {
  return new Reader(statement, vocabulary.drawer, context).has('rest');
}

type Grading = (step: number) => SizeAsked;

/** Digits that all ratios of a grading may have together; more would only make sums slow. */
const MOST_DIGITS = 3000;

/** How a row or stack of `count` spaces is graded; undefined when it is not, or, with a finding, cannot be. */
function readGrading(reading: FaceReading, statement: Statement, count: number): Grading | undefined {
  const { context } = reading;
  const reader = new Reader(statement, vocabulary.stack, context);
  const by = reader.length('graded by <length>');
  if (by !== undefined) return (step) => ({ kind: 'graded', by, step });
  const ratio = reader.number('graded by ratio <number>');
  const at = reader.originOf('graded by ratio <number>');
  if (ratio === undefined || at === undefined) return undefined;
  if (ratio.sign() <= 0) {
    context.findings.push(shareNotPositive.at(at, { weight: ratio.toString() }));
    return undefined;
  }
  if (ratio.toString().length * count > MOST_DIGITS) {
    context.findings.push(valueNotUnderstood.at(at, { words: 'ratio', wanted: 'number', problem: 'too-large' }));
    return undefined;
  }
  return (step) => ({ kind: 'graded-by-ratio', ratio, step });
}
