import {
  BOX_BOTTOM_SHY,
  BOX_CLEAR_ABOVE,
  BOX_CLEAR_BELOW,
  CENTRE_RUNNER_WIDE,
  type ComparedSlides,
  type CompartmentsDesign,
  type DrawerBottomHeld,
  type DrawerDesign,
  type Figure,
  type LengthUnit,
  type PackersDesign,
  type PanelDesign,
  RUNNER_HEIGHT,
  RUNNER_THICKNESS,
  type RunnersDesign,
  SLIDE_SCREW,
  type SlideDatum,
  type SlideEntry,
  usual,
  usualBottomGroove,
} from '@fettle/engine';
import { cannotBeBoth, type Origin } from '@fettle/findings';
import type { Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import * as vocabulary from '../schema/face.ts';
import { readCompartments } from './read-compartments.ts';
import { readScrew } from './read-joints.ts';
import { readPanel } from './read-material.ts';
import { readSlide, readStock } from './read-shop.ts';
import { bodyStatements, headOrigin, onlyStatement, originOf, type ReadContext, Reader } from './reader.ts';

/**
 * What a drawer box is made of and runs on, said for all drawers or for one. What one drawer says comes before what is
 * said for all, word by word: a drawer that says only what is free over it keeps the slides of the others.
 */

const drawerWords = new Set(Object.values(vocabulary.drawerSpecs).map((spec) => spec.word));
export function hasDrawerStatements(statement: Statement): boolean {
  return statement.statements.some((each) => drawerWords.has(specOf(each).spec.word));
}

/** Only what is written; what is not said, or cannot be read, is absent. */
export interface DrawerSaid {
  readonly origin: Origin;
  readonly lastStatement?: Origin;
  readonly sides?: PanelDesign;
  readonly bottom?: PanelDesign;
  readonly bottomHeld?: DrawerBottomHeld;
  readonly bottomUp?: Figure;
  readonly corners?: DrawerDesign['corners'];
  readonly cornersOrigin?: Origin;
  /** Without an entry where its shop data cannot be read. */
  readonly slides?: { readonly entry?: SlideEntry; readonly origin: Origin };
  readonly slidesStatement?: Origin;
  readonly slidesAt?: SlideDatum;
  readonly slideScrews?: Figure;
  readonly packers?: PackersDesign;
  readonly compared?: ComparedSlides;
  readonly runners?: RunnersDesign;
  readonly compartments?: CompartmentsDesign;
  readonly clearBelow?: Figure;
  readonly clearAbove?: Figure;
  readonly boxWidth?: Figure;
  readonly boxHeight?: Figure;
}

export function readDrawer(context: ReadContext, statement: Statement): DrawerSaid {
  const { boxSides, boxBottom, corners, slides, compare, packers, runners, boxSize, clear } = vocabulary.drawerSpecs;
  const only = (word: string) => onlyStatement(context, statement, word);
  const sides = only('sides');
  const bottom = only('bottom');
  const sidePanel = sides && readPanel(new Reader(sides, boxSides, context), 'drawer sides');
  const bottomReader = bottom && new Reader(bottom, boxBottom, context);
  const bottomPanel = bottomReader && readPanel(bottomReader, 'drawer bottom');
  const bottomHeld = (['slid in', 'applied', 'in grooves'] as const).find((each) => bottomReader?.has(each));
  const bottomUp = bottomReader?.length('<length> up');
  const cornerStatement = only('corners');
  const cornerReader = cornerStatement && new Reader(cornerStatement, corners, context);
  const joint = (['dovetail', 'box-joint', 'rabbet', 'lock-rabbet', 'butt'] as const).find((each) =>
    cornerReader?.has(each),
  );
  const cornersOrigin = joint && cornerReader?.originOf(joint);
  const slideStatement = only('slides');
  const slideReader = slideStatement && new Reader(slideStatement, slides, context);
  const target = slideReader?.target('<slide>');
  const slidesAt = slideReader && readDatum(slideReader);
  const slideScrews = slideReader?.length('screws <length> long');
  if (target !== undefined) context.touched.add(target.statement);
  const entry = target && readSlide(target.statement, context.documents);
  const packerStatement = only('packers');
  const packed = packerStatement && readPackers(new Reader(packerStatement, packers, context));
  const runnerStatement = only('runners');
  const onRunners = runnerStatement && readRunners(new Reader(runnerStatement, runners, context));
  if (slideStatement !== undefined && runnerStatement !== undefined) {
    runsOnBoth(context, slideStatement, runnerStatement);
  }
  const compareStatement = only('compare');
  const compared = compareStatement && readCompared(new Reader(compareStatement, compare, context));
  const compartmentsStatement = only('compartments');
  const inside = compartmentsStatement && readCompartments(context, compartmentsStatement);
  const boxStatement = only('box');
  const box = boxStatement && new Reader(boxStatement, boxSize, context);
  const clearReaders = bodyStatements(statement, 'clear').map((each) => new Reader(each, clear, context));
  const clearance = (pattern: '<length> below' | '<length> above'): Figure | undefined =>
    clearReaders.map((each) => each.length(pattern)).find((each) => each !== undefined);
  const [clearBelow, clearAbove] = [clearance('<length> below'), clearance('<length> above')];
  const boxWidth = box?.length('<length> wide');
  const boxHeight = box?.length('<length> high');
  const last = statement.statements.at(-1);
  return {
    origin: headOrigin(context, statement),
    ...(last === undefined ? {} : { lastStatement: originOf(context, last) }),
    ...(sidePanel === undefined ? {} : { sides: sidePanel }),
    ...(bottomPanel === undefined ? {} : { bottom: bottomPanel }),
    ...(bottomHeld === undefined ? {} : { bottomHeld: waysHeld[bottomHeld] }),
    ...(bottomUp === undefined ? {} : { bottomUp }),
    ...(joint === undefined ? {} : { corners: joint }),
    ...(cornersOrigin === undefined ? {} : { cornersOrigin }),
    ...(target === undefined ? {} : { slides: { ...(entry === undefined ? {} : { entry }), origin: target.origin } }),
    ...(target === undefined || slideStatement === undefined
      ? {}
      : { slidesStatement: originOf(context, slideStatement) }),
    ...(slidesAt === undefined ? {} : { slidesAt }),
    ...(slideScrews === undefined ? {} : { slideScrews }),
    ...(packed === undefined ? {} : { packers: packed }),
    ...(compared === undefined ? {} : { compared }),
    ...(onRunners === undefined ? {} : { runners: onRunners }),
    ...(inside === undefined ? {} : { compartments: inside }),
    ...(clearBelow === undefined ? {} : { clearBelow }),
    ...(clearAbove === undefined ? {} : { clearAbove }),
    ...(boxWidth === undefined ? {} : { boxWidth }),
    ...(boxHeight === undefined ? {} : { boxHeight }),
  };
}

const waysHeld: Readonly<Record<'slid in' | 'applied' | 'in grooves', DrawerBottomHeld>> = {
  'in grooves': 'grooves',
  'slid in': 'slid-in',
  applied: 'applied',
};
const datums = ['front', 'opening', 'box'] as const;

function readDatum(
  reader: Reader<`${'' | 'screw line '}<length> above lower edge of ${(typeof datums)[number]}`>,
): SlideDatum | undefined {
  for (const from of datums) {
    const edge = reader.length(`<length> above lower edge of ${from}`);
    if (edge !== undefined) return { line: 'lower-edge', from, above: edge };
    const screws = reader.length(`screw line <length> above lower edge of ${from}`);
    if (screws !== undefined) return { line: 'screw-line', from, above: screws };
  }
  return undefined;
}

function readPackers(reader: Reader<'<length>' | 'of <stock>'>): PackersDesign {
  const thickness = reader.length('<length>');
  const target = reader.target('of <stock>');
  if (target !== undefined) reader.context.touched.add(target.statement);
  const stock = target && readStock(target.statement, reader.context.documents);
  return {
    origin: reader.origin,
    statement: originOf(reader.context, reader.statement),
    ...(thickness === undefined ? {} : { thickness }),
    ...(stock === undefined ? {} : { stock }),
  };
}

function runsOnBoth(context: ReadContext, slides: Statement, runners: Statement): void {
  const remove = (words: string, statement: Statement) => ({
    how: 'remove',
    values: { words },
    changes: [{ kind: 'remove', at: originOf(context, statement) } as const],
  });
  context.findings.push(
    cannotBeBoth.at(
      headOrigin(context, runners),
      { words: 'runners', other: 'slides', place: 'what a drawer runs on' },
      {
        related: [{ role: 'other', values: { words: 'slides' }, origin: headOrigin(context, slides) }],
        mends: [remove('runners', runners), remove('slides', slides)],
      },
    ),
  );
}

type EdgePhrase = `<length> above lower edge of ${(typeof datums)[number]}`;

function readRunners(
  reader: Reader<
    'centre' | '<length> wide' | '<length> high' | 'thick <length>' | 'of <stock>' | 'by screws <screw>' | EdgePhrase
  >,
): RunnersDesign {
  const { context, origin } = reader;
  const { unit } = context.units;
  const wood = reader.target('of <stock>');
  const screw = reader.target('by screws <screw>');
  for (const target of [wood, screw]) if (target !== undefined) context.touched.add(target.statement);
  const stock = wood && readStock(wood.statement, context.documents);
  const screws = screw && readScrew(screw.statement, context.documents);
  const isCentre = reader.has('centre');
  const from = datums.find((each) => reader.has(`<length> above lower edge of ${each}`));
  const above = from && reader.length(`<length> above lower edge of ${from}`);
  return {
    origin,
    height: reader.length('<length> high') ?? usual(RUNNER_HEIGHT, unit),
    thickness:
      reader.length('thick <length>') ??
      reader.length('<length> wide') ??
      usual(isCentre ? CENTRE_RUNNER_WIDE : RUNNER_THICKNESS, unit),
    isCentre,
    ...(stock === undefined ? {} : { stock }),
    ...(screw === undefined || screws === undefined ? {} : { screws, screwsOrigin: screw.origin }),
    ...(from === undefined || above === undefined ? {} : { at: { line: 'lower-edge', from, above } }),
  };
}

function readCompared(reader: Reader<'<slide>'>): ComparedSlides | undefined {
  const { context, statement } = reader;
  const target = reader.target('<slide>');
  if (target === undefined) return undefined;
  context.touched.add(target.statement);
  const slides = readSlide(target.statement, context.documents);
  return slides && { slides, origin: target.origin, statement: originOf(context, statement) };
}

/** A drawer that says what it runs on runs on nothing that is said for all. */
function withoutOther(common: DrawerSaid | undefined, own: DrawerSaid): DrawerSaid | undefined {
  if (common === undefined) return undefined;
  const { slides, slidesAt, slidesStatement, slideScrews, packers, compared, ...notOnSlides } = common;
  if (own.runners !== undefined && own.slides === undefined) return notOnSlides;
  const { runners, ...notOnRunners } = common;
  return own.slides !== undefined && own.runners === undefined ? notOnRunners : common;
}

/** What holds for a drawer that says `own` where `common` is said for all; habits of the trade for the rest. */
export function drawerFrom(own: DrawerSaid, common: DrawerSaid | undefined, unit: LengthUnit): DrawerDesign {
  const { slides, ...said } = { ...withoutOther(common, own), ...own };
  return {
    ...said,
    ...(slides?.entry === undefined ? {} : { slides: withScrews(slides.entry, said.slideScrews, unit) }),
    ...(slides === undefined ? {} : { slidesOrigin: slides.origin }),
    corners: said.corners ?? 'butt',
    clearBelow: said.clearBelow ?? slides?.entry?.below ?? usual(BOX_CLEAR_BELOW, unit),
    clearAbove: said.clearAbove ?? usual(BOX_CLEAR_ABOVE, unit),
    bottomGroove: usualBottomGroove(said.sides?.thickness, unit),
    bottomShy: usual(BOX_BOTTOM_SHY, unit),
  };
}

/** On screws of another length than the entry tells, and where it tells none, of a usual thickness. */
function withScrews(entry: SlideEntry, length: Figure | undefined, unit: LengthUnit): SlideEntry {
  if (length === undefined) return entry;
  return {
    ...entry,
    screws: { ...entry.screws, diameter: entry.screws?.diameter ?? usual(SLIDE_SCREW, unit), length },
  };
}
