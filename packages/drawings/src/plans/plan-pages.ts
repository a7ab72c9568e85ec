import {
  type BuyingPlan,
  byEachOther,
  cutSequence,
  type Evaluation,
  groupedBy,
  isTogether,
  type LaidStock,
  Length,
  laidOut,
  type NumberedCut,
  type PiecesTogether,
  type Units,
} from '@fettle/engine';
import { cleanName, textBox } from '../lettering.ts';
import { PEN_GROUPS } from '../line-types.ts';
import { lookedAt } from '../looked-at.ts';
import { type Box, type Drawing, type Group, unionOf } from '../primitives.ts';
import { INCH_SCALES, INCH_SHEETS, METRIC_SCALES, METRIC_SHEETS, type Scale } from '../scale.ts';
import {
  capital,
  commonDrawing,
  commonWords,
  type DrawingName,
  errorWords,
  messageSheet,
  overallWords,
} from '../sheet-words.ts';
import { figureOnSheet, isInch, NEARLY, nearlyWords, realMm, unitWords } from '../shown-lengths.ts';
import { roomForView, type SheetWords, sheetFurniture } from '../title-block.ts';
import { besideList, LIST_COLUMN, listColumns, listLines, markOf, type Unsaid } from './beside-list.ts';
import { BLOCK_FOOT, BLOCK_HEAD, type StockBlock, stockBlock } from './stock-block.ts';

/** Each sheet and board to scale with what is cut from it: sheets one to a page, boards of one stock several. */

const BOARDS_ON_A_PAGE = 5;
/** A board of more cuts has a page of its own, so that the strips it is ripped into can be told apart. */
const MOST_CUTS_BESIDE_OTHERS = 24;
const NOTE_LINES = 3;

/** What stands on each page; none while nothing is planned. */
export function planPages(plan: BuyingPlan): readonly (readonly LaidStock[])[] {
  const pages: LaidStock[][] = [];
  for (const laid of laidOut(plan)) {
    const last = pages[pages.length - 1];
    const [first] = last ?? [];
    const isMore =
      last !== undefined &&
      first !== undefined &&
      laid.kind === 'board' &&
      first.kind === 'board' &&
      last.length < BOARDS_ON_A_PAGE &&
      ![laid, first].some(({ cuts }) => cuts.length > MOST_CUTS_BESIDE_OTHERS);
    if (isMore) last.push(laid);
    else pages.push([laid]);
  }
  return pages;
}

/** `number` counts from 1; a page that is not there is the first. Never fails: what cannot be drawn is said. */
export function planDrawing(evaluation: Evaluation, plan: BuyingPlan, number = 1): Drawing {
  const pages = planPages(plan);
  const at = pages[number - 1] === undefined ? 1 : number;
  const of = pages.length < 2 ? '' : ` ${at} of ${pages.length}`;
  return drawnPage(evaluation, plan, pages[at - 1] ?? [], `Cutting plan${of}`);
}

/** All that is cut from one stock on one page, by its name. */
export function planOfStock(evaluation: Evaluation, plan: BuyingPlan, stock: string): Drawing {
  const page = laidOut(plan).filter((laid) => laid.stock.name === stock);
  return drawnPage(evaluation, plan, page, 'Cutting plan');
}

const MOST_COLUMNS = 4;
/** Between two columns, and beside the first. */
const GUTTER = 10;
const MOST_LIST_COLUMNS = 3;

function drawnPage(evaluation: Evaluation, plan: BuyingPlan, page: readonly LaidStock[], drawing: string): Drawing {
  const { units } = evaluation.design;
  const inch = isInch(units);
  const [, large] = inch ? INCH_SHEETS : METRIC_SHEETS;
  if (large === undefined) throw new Error('two sheets are listed for either system of units');
  const name: DrawingName = { id: 'cutting', words: drawing, description: described(evaluation, page) };
  if (page.length === 0) return messageSheet(evaluation, name, large, ['Nothing is drawn yet: nothing is planned.']);
  const room = roomForView(large, NOTE_LINES);
  const scales = inch ? INCH_SCALES : METRIC_SCALES;
  const cuts = cutsByStock(plan);
  const laidIn = (own: Box) => placed(page, own, scales, cuts, units);
  const drawn = withList(room, laidIn, page, units);
  if (drawn === undefined) {
    return messageSheet(evaluation, name, large, ['The stock is larger than any scale can show.']);
  }
  const { blocks, scale, list } = drawn;
  const errors = errorWords(evaluation);
  const writesNearly = JSON.stringify([blocks, list]).includes(NEARLY);
  const words: SheetWords = {
    ...commonWords(evaluation, name),
    scale: scale.words,
    overall: overallWords(evaluation),
    notes: [
      `Sizes to cut in ${unitWords(units)}, length first; kerf ${figureOnSheet(plan.request.kerf.length, units)}.${
        writesNearly ? ` ${NEARLY} ${nearlyWords(units)}.` : ''
      }`,
      'Numbers in circles: the order of the cuts, beside them what comes off and is cut further; double arrow: direction of grain; dashed: left over.',
      ...roughWords(page, units),
      ...(isTogether(evaluation) ? [whoseMarks(evaluation)] : []),
    ],
    warnings: errors === undefined ? [] : [`${capital(errors)}.`],
  };
  const [frame, ...rest] = sheetFurniture(large, words);
  const [, fine] = PEN_GROUPS;
  return {
    ...commonDrawing(evaluation, name, large),
    pens: fine ?? { wide: 0.25, narrow: 0.13 },
    paperPerReal: 1 / scale.denominator,
    ...lookedAt([...blocks.map((block) => block.box), ...list.flatMap(letteringBox)]),
    content: [...(frame === undefined ? [] : [frame]), ...blocks.map(({ group }) => group), ...list, ...rest],
  };
}

/** More names than this have no room on a sheet. */
const MOST_NAMES = 6;

function whoseMarks({ pieces }: PiecesTogether): string {
  const names = pieces.map(({ design }, at) => `${at + 1} ${cleanName(design.name)}`).join(', ');
  return pieces.length <= MOST_NAMES
    ? `Marks begin with the number of their piece: ${names}.`
    : 'Marks begin with the number of their piece, which the shopping list names.';
}

/** Boards are cut larger than the parts: said where there is one. */
function roughWords(page: readonly LaidStock[], units: Units): readonly string[] {
  if (!page.some(({ kind }) => kind === 'board')) return [];
  const mark = Length.of(units.ruler, units.unit);
  const rounded = mark.isPositive() ? `, rounded up to marks of ${figureOnSheet(mark, units)}` : '';
  const inOrder = page.some(({ runs }) => runs.length > 0)
    ? '; those cut in their order from one blank are finished'
    : '';
  return [`Pieces of boards are rough: with what is planed and trimmed off them later${rounded}${inOrder}.`];
}

interface Placed {
  readonly blocks: readonly StockBlock[];
  readonly scale: Scale;
}

interface Drawn extends Placed {
  /** What the blocks could not say; nothing where they said all. */
  readonly list: readonly Group[];
}

function placed(
  page: readonly LaidStock[],
  room: Box,
  scales: readonly Scale[],
  cuts: ReadonlyMap<number, readonly NumberedCut[]>,
  units: Units,
): Placed | undefined {
  const grid = largestGrid(page, room, scales);
  if (grid === undefined) return undefined;
  const { scale, columns, wide, high } = grid;
  const blocks = page.map((laid, place) =>
    stockBlock(laid, cuts.get(laid.number) ?? [], units, {
      left: room.left + GUTTER / 2 + (place % columns) * wide,
      top: room.top + Math.floor(place / columns) * high,
      factor: 1 / scale.denominator,
    }),
  );
  return { blocks, scale };
}

/** The list stands to the right of the stock, where there is room already or where a smaller scale makes some. */
function withList(
  room: Box,
  laidIn: (room: Box) => Placed | undefined,
  page: readonly LaidStock[],
  units: Units,
): Drawn | undefined {
  const whole = laidIn(room);
  if (whole === undefined) return undefined;
  const marksOf = new Map(
    page.flatMap(({ pieces }) => pieces.map((each) => [each.piece.blank.id, markOf(each)] as const)),
  );
  const linesOf = ({ blocks }: Placed) => listLines(joined(blocks.map(({ unsaid }) => unsaid)), marksOf, units);
  const lines = linesOf(whole);
  if (lines.length === 0) return { ...whole, list: [] };
  const top = room.top + BLOCK_HEAD;
  const columns = Math.min(MOST_LIST_COLUMNS, listColumns(lines.length, room.bottom - top));
  const needed = columns * LIST_COLUMN;
  const free = room.right - Math.max(...whole.blocks.map(({ box }) => box.right)) - GUTTER;
  const smaller = free >= needed ? whole : (laidIn({ ...room, right: room.right - needed }) ?? whole);
  const box = { left: room.right - needed, top, right: room.right, bottom: room.bottom };
  return { ...smaller, list: [besideList(linesOf(smaller), box)] };
}

function letteringBox({ children }: Group): readonly Box[] {
  const box = unionOf(children.flatMap((child) => (child.kind === 'text' ? [textBox(child)] : [])));
  return box === undefined ? [] : [box];
}

function joined(all: readonly Unsaid[]): Unsaid {
  return {
    cuts: all.flatMap(({ cuts }) => cuts),
    pieces: all.flatMap(({ pieces }) => pieces),
    runs: all.flatMap(({ runs }) => runs),
  };
}

interface Grid {
  readonly scale: Scale;
  readonly columns: number;
  /** Of one place, in mm. */
  readonly wide: number;
  readonly high: number;
}

/** As few columns as the largest scale takes. */
function largestGrid(page: readonly LaidStock[], room: Box, scales: readonly Scale[]): Grid | undefined {
  const longest = Math.max(...page.map(({ length }) => realMm(length)));
  const widest = Math.max(...page.map(({ width }) => realMm(width)));
  let best: Grid | undefined;
  for (let columns = 1; columns <= Math.min(MOST_COLUMNS, page.length); columns += 1) {
    const wide = (room.right - room.left) / columns;
    const high = (room.bottom - room.top) / Math.ceil(page.length / columns);
    const scale = scales.find(
      ({ denominator }) =>
        longest / denominator <= wide - GUTTER && widest / denominator <= high - BLOCK_HEAD - BLOCK_FOOT,
    );
    if (scale !== undefined && scale.denominator < (best?.scale.denominator ?? Number.POSITIVE_INFINITY)) {
      best = { scale, columns, wide, high };
    }
  }
  return best;
}

function cutsByStock(plan: BuyingPlan): ReadonlyMap<number, readonly NumberedCut[]> {
  return groupedBy(cutSequence(plan), ({ from }) => from.number);
}

function described({ design }: Evaluation, page: readonly LaidStock[]): string {
  const piece = cleanName(design.name);
  const stocks = page.map(({ number, kind, stock, pieces, length, width }) => {
    const marks = pieces.map(({ piece: { mark } }) => cleanName(mark)).join(', ');
    const size = byEachOther(figureOnSheet(length, design.units), figureOnSheet(width, design.units));
    return `${capital(kind)} ${number} of ${cleanName(stock.name)}, ${size}: ${marks}`;
  });
  return `${[`How to cut ${piece === '' ? 'a piece without a name' : piece}`, ...stocks].join('. ')}.`;
}
