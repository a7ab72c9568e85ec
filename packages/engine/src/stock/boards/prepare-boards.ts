import { Length } from '../../length/length.ts';
import { Rational } from '../../length/rational.ts';
import { upToMark } from '../../length/ruler-marks.ts';
import type { LumberSize } from '../../tables/lumber-thickness.ts';
import { type Blank, sizeOfBlank } from '../blank.ts';
import { type LumberKind, roughThicknessFor } from '../rough-thickness.ts';
import { type IntegerScale, scaleToIntegers } from '../scale-to-integers.ts';
import type { BoardAllowances } from './board-allowances.ts';
import type { BoardBlank, BoardKind, BoardProblem, Defect } from './board-problem.ts';
import { type GlueUp, glueUp } from './glue-up.ts';

/**
 * From blanks with exact sizes and boards of a yard to problems in whole numbers, one for each thickness of boards. What no
 * board can give is refused with its reason, never dropped.
 */

export interface BlankAsked {
  /** Its own allowance, if it has one, replaces those on length and width. */
  readonly blank: Blank;
  /** Finished. */
  readonly thickness: Length;
  readonly count: number;
  /** Whether it may be glued up from staves. Several parts in order never are: they come from one board. */
  readonly mayBeGluedUp: boolean;
}

export interface BoardOffered {
  readonly id: string;
  /** Rough, as it is sold. */
  readonly thickness: Length;
  readonly width: Length;
  readonly length: Length;
  readonly available?: number;
  /** Of one board, in money or board feet, not negative. */
  readonly cost: Rational;
  readonly defects?: readonly DefectSeen[];
}

/** From the near end and the left edge of the board. */
export interface DefectSeen {
  readonly from: Length;
  readonly to: Length;
  readonly left: Length;
  readonly right: Length;
}

export interface BoardsAsked {
  readonly blanks: readonly BlankAsked[];
  readonly boards: readonly BoardOffered[];
  readonly lumber: LumberKind;
  /**
   * The thickest part that these boards are for, where whoever chose them has said what they are; otherwise the tables tell
   * which rough thickness a part needs.
   */
  readonly thickest?: Length;
  readonly ripKerf: Length;
  readonly crosscutKerf: Length;
  readonly allowances: BoardAllowances;
  /** From one mark of the shop's ruler to the next: rough sizes are rounded up to it. */
  readonly mark?: Length;
}

export interface PreparedBoards {
  /** Of the boards, rough. */
  readonly thickness: Length;
  readonly problem: BoardProblem;
  readonly scale: IntegerScale;
  /** One unit of the problem's cost. */
  readonly costUnit: Rational;
  /** How each blank of the problem is made, by its id; of a glue-up each stave is one blank of the problem. */
  readonly glueUps: ReadonlyMap<string, GlueUp>;
}

export interface RefusedBlank {
  readonly blank: string;
  readonly why:
    | 'thicker than any lumber'
    | 'no board of that thickness'
    | 'wider than any board'
    | 'longer than any board';
  /** What it needs, with allowances, and the most there is. */
  readonly needs: Length;
  readonly most: Length;
}

export interface Prepared {
  readonly problems: readonly PreparedBoards[];
  readonly refused: readonly RefusedBlank[];
}

export function prepareBoards(asked: BoardsAsked): Prepared {
  const refused: RefusedBlank[] = [];
  const byThickness = new Map<string, { thickness: Length; blanks: BlankAsked[] }>();
  for (const one of asked.blanks) {
    const thickness = boardThicknessFor(one, asked, refused);
    if (thickness === undefined) continue;
    const group = byThickness.get(thickness.exactInches) ?? { thickness, blanks: [] };
    group.blanks.push(one);
    byThickness.set(thickness.exactInches, group);
  }
  const problems = [...byThickness.values()]
    .sort((a, b) => a.thickness.compare(b.thickness))
    .map(({ thickness, blanks }) => prepareThickness(asked, thickness, blanks, refused))
    .filter(({ problem }) => problem.blanks.length > 0);
  return { problems, refused };
}

/** The thinnest boards on offer that are at least as thick as the tables ask; thicker ones are planed down. */
function boardThicknessFor(one: BlankAsked, asked: BoardsAsked, refused: RefusedBlank[]): Length | undefined {
  if (asked.thickest !== undefined) {
    const [first] = asked.boards;
    if (first !== undefined && one.thickness.compare(asked.thickest) <= 0) return first.thickness;
    refused.push({
      blank: one.blank.id,
      why: 'no board of that thickness',
      needs: one.thickness,
      most: asked.thickest,
    });
    return undefined;
  }
  const lumber: LumberSize | undefined = roughThicknessFor(one.thickness, asked.lumber);
  const most = asked.boards.reduce((thickest, { thickness }) => thickest.max(thickness), Length.zero);
  if (lumber === undefined) {
    refused.push({ blank: one.blank.id, why: 'thicker than any lumber', needs: one.thickness, most });
    return undefined;
  }
  const enough = asked.boards.map(({ thickness }) => thickness).filter((thick) => thick.compare(lumber.nominal) >= 0);
  const thinnest = enough.reduce<Length | undefined>((least, thick) => least?.min(thick) ?? thick, undefined);
  if (thinnest === undefined) {
    refused.push({ blank: one.blank.id, why: 'no board of that thickness', needs: lumber.nominal, most });
  }
  return thinnest;
}

interface Sized {
  readonly id: string;
  readonly count: number;
  readonly length: Length;
  readonly made: GlueUp;
}

function prepareThickness(
  asked: BoardsAsked,
  thickness: Length,
  blanks: readonly BlankAsked[],
  refused: RefusedBlank[],
): PreparedBoards {
  const { allowances, ripKerf, crosscutKerf, mark = Length.zero } = asked;
  const boards = asked.boards.filter((board) => board.thickness.equals(thickness));
  const longest = usable(boards, ({ length }) => length, allowances.boardEnd);
  const widest = usable(boards, ({ width }) => width, allowances.boardEdge);
  const sized: Sized[] = [];
  for (const one of blanks) {
    const { id } = one.blank;
    const { width, length } = roughSize(one.blank, allowances, mark);
    if (length.compare(longest) > 0) {
      refused.push({ blank: id, why: 'longer than any board', needs: length, most: longest });
      continue;
    }
    const mayBeGluedUp = one.mayBeGluedUp && one.blank.parts.length === 1;
    const whole = width.compare(widest) <= 0 ? { staves: 1, staveWidth: width } : undefined;
    const made = whole ?? (mayBeGluedUp ? gluedUp(width, widest, allowances.jointing, mark) : undefined);
    if (made === undefined) {
      refused.push({ blank: id, why: 'wider than any board', needs: width, most: widest });
      continue;
    }
    sized.push({ id, count: one.count, length, made });
  }
  const scale = scaleToIntegers([
    ...boards.flatMap(({ width, length }) => [width, length]),
    ...sized.flatMap(({ length, made }) => [length, made.staveWidth]),
    ripKerf,
    crosscutKerf,
    allowances.boardEnd,
    allowances.boardEdge,
  ]);
  const costUnit = commonUnit(boards.map(({ cost }) => cost));
  return {
    thickness,
    scale,
    costUnit,
    glueUps: new Map(sized.map(({ id, made }) => [id, made])),
    problem: {
      boards: boards.map((board) => boardKind(board, scale, costUnit)),
      blanks: sized.map(
        ({ id, count, length, made }): BoardBlank => ({
          id,
          width: scale.up(made.staveWidth),
          length: scale.up(length),
          count: count * made.staves,
        }),
      ),
      ripKerf: scale.up(ripKerf),
      crosscutKerf: scale.up(crosscutKerf),
      endTrim: scale.up(allowances.boardEnd),
      edgeTrim: scale.up(allowances.boardEdge),
    },
  };
}

/** What a blank is cut to, with what is taken off it later; nobody saws rough wood finer than the ruler tells. */
function roughSize(
  blank: Blank,
  { onLength, onWidth }: BoardAllowances,
  mark: Length,
): { width: Length; length: Length } {
  const { width, length } = sizeOfBlank(blank);
  return blank.allowance === undefined
    ? { width: upToMark(width.plus(onWidth), mark), length: upToMark(length.plus(onLength), mark) }
    : { width, length };
}

/** Staves end on a mark too, unless they would then be wider than any board. */
function gluedUp(width: Length, widest: Length, jointing: Length, mark: Length): GlueUp | undefined {
  const made = glueUp(width, widest, jointing);
  if (made === undefined) return undefined;
  const staveWidth = upToMark(made.staveWidth, mark);
  return staveWidth.compare(widest) <= 0 ? { ...made, staveWidth } : made;
}

function usable(boards: readonly BoardOffered[], sizeOf: (board: BoardOffered) => Length, trim: Length): Length {
  return boards
    .reduce((most, board) => most.max(sizeOf(board)), Length.zero)
    .minus(trim.times(2))
    .max(Length.zero);
}

function boardKind(board: BoardOffered, scale: IntegerScale, costUnit: Rational): BoardKind {
  const defects = (board.defects ?? []).map(
    ({ from, to, left, right }): Defect => ({
      from: scale.down(from),
      to: scale.up(to),
      left: scale.down(left),
      right: scale.up(right),
    }),
  );
  return {
    id: board.id,
    width: scale.down(board.width),
    length: scale.down(board.length),
    cost: Number(board.cost.dividedBy(costUnit).floor().numerator),
    ...(board.available === undefined ? {} : { available: board.available }),
    ...(defects.length === 0 ? {} : { defects }),
  };
}

/** Finer money than this is not counted. */
const FINEST_COST = 1_000_000;

/** One over the least common multiple of the denominators: what all costs are whole numbers of. */
function commonUnit(costs: readonly Rational[]): Rational {
  let parts = 1n;
  for (const { denominator } of costs) {
    parts = (parts / greatestCommonDivisor(parts, denominator)) * denominator;
    if (parts > BigInt(FINEST_COST)) return Rational.of(1, FINEST_COST);
  }
  return Rational.of(1n, parts);
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  return b === 0n ? a : greatestCommonDivisor(b, a % b);
}
