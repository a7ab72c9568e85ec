import type { Change, Origin } from '@fettle/findings';
import { givenAt, isSameOrigin } from '../checks/written-sizes.ts';
import { given } from '../design/derive.ts';
import type { Cell, GroupCell, PieceDesign, SizeAsked } from '../design/design.ts';
import { evaluatePiece } from '../evaluate-piece.ts';
import type { Evaluation, LaidCell } from '../evaluation.ts';
import { Length } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { type Division, divisionsOf, placeOf, sizeAlong } from './divisions.ts';

/**
 * What has to change in the text so that a line between two neighbours comes to lie elsewhere. A size that is written
 * is changed and lands on a mark of the ruler; `rest`, shares and what follows another stay what they are. Every answer
 * has been tried on the engine first.
 */
export type MovedDivision =
  | {
      readonly kind: 'changes';
      readonly changes: readonly Change[];
      /** The two neighbours afterwards. */
      readonly before: { readonly label: string; readonly size: Length };
      readonly after: { readonly label: string; readonly size: Length };
      /** Where the line went; less than nothing for left and up. */
      readonly moved: Length;
    }
  | { readonly kind: 'refused'; readonly why: WhyNot };

export type WhyNot =
  | { readonly kind: 'no-such-line' }
  /** Neither side has a size of its own: both take what is left, or follow others. */
  | { readonly kind: 'no-size'; readonly before: string; readonly after: string }
  /** The size is not written in this piece but comes from a shop file or a pattern, where others use it too. */
  | { readonly kind: 'written-elsewhere'; readonly label: string }
  /** As measured on the real thing: it is a fact, not a wish. */
  | { readonly kind: 'measured'; readonly label: string }
  /** Something else holds the line where it is, such as a limit. */
  | { readonly kind: 'held'; readonly before: string; readonly after: string }
  /** So far over, this would have no room left. */
  | { readonly kind: 'no-room'; readonly label: string };

interface Resized {
  readonly at: Origin;
  readonly from: Length;
  readonly to: Length;
}

/** `by` to the right or downwards. Never throws for any design. */
export function moveDivision(evaluation: Evaluation, id: string, by: Length): MovedDivision {
  const division = divisionsOf(evaluation).find((each) => each.id === id);
  if (division === undefined) return { kind: 'refused', why: { kind: 'no-such-line' } };
  const ownUnit = evaluation.design.origin.unit;
  const sides = [sideOf(division.before, division.beforeLabel), sideOf(division.after, division.afterLabel)] as const;
  const [before, after] = sides;
  const usable = (side: Side) => (side.kind === 'written' && side.at.unit === ownUnit ? side : undefined);
  const [first, second] = [usable(before), usable(after)];
  if (first === undefined && second === undefined) return { kind: 'refused', why: whyNeither(before, after, ownUnit) };
  if (first !== undefined && second !== undefined && !isSameOrigin(first.at, second.at)) {
    const to = onRuler(first.length.plus(by), evaluation, by);
    const change = to.minus(first.length);
    const both = attempt(evaluation, division, [
      { at: first.at, from: first.length, to },
      { at: second.at, from: second.length, to: second.length.minus(change) },
    ]);
    if (both.kind === 'changes' || both.why.kind === 'no-room') return both;
  }
  let answer: MovedDivision | undefined;
  for (const [side, direction] of [
    [first, 1],
    [second, -1],
  ] as const) {
    if (side === undefined) continue;
    const tried = moveBySize(evaluation, division, side, by, direction);
    if (tried.kind === 'changes') return tried;
    answer ??= tried;
  }
  return answer ?? { kind: 'refused', why: held(division) };
}

type Side =
  | { readonly kind: 'written'; readonly at: Origin; readonly length: Length; readonly label: string }
  | { readonly kind: 'measured' | 'unwritten'; readonly label: string };

function sideOf({ cell }: LaidCell, label: string): Side {
  if (cell.measured !== undefined || cell.measuredFront !== undefined) return { kind: 'measured', label };
  const at = cell.along.kind === 'fixed' ? givenAt(cell.along.figure) : undefined;
  return at === undefined || cell.along.kind !== 'fixed'
    ? { kind: 'unwritten', label }
    : { kind: 'written', at, length: cell.along.figure.length, label };
}

function whyNeither(before: Side, after: Side, ownUnit: string): WhyNot {
  for (const side of [before, after]) {
    if (side.kind === 'written' && side.at.unit !== ownUnit) return { kind: 'written-elsewhere', label: side.label };
  }
  for (const side of [before, after]) {
    if (side.kind === 'measured') return { kind: 'measured', label: side.label };
  }
  return { kind: 'no-size', before: before.label, after: after.label };
}

/**
 * One size alone. Where others take what it leaves on both sides of the line, the line goes less far than the size
 * changes; the first try shows how far, and the second sets it right.
 */
function moveBySize(
  evaluation: Evaluation,
  division: Division,
  side: Extract<Side, { kind: 'written' }>,
  by: Length,
  direction: 1 | -1,
): MovedDivision {
  const resized = (amount: Length): Resized => {
    const change = amount.times(direction);
    return { at: side.at, from: side.length, to: onRuler(side.length.plus(change), evaluation, change) };
  };
  const first = resized(by);
  const tried = attempt(evaluation, division, [first]);
  if (tried.kind === 'refused') return tried;
  const wanted = first.to.minus(first.from).times(direction);
  if (tried.moved.equals(wanted)) return tried;
  const second = attempt(evaluation, division, [resized(by.times(wanted.ratioTo(tried.moved)))]);
  return second.kind === 'changes' ? second : tried;
}

/** To the nearest mark, but never back to or beyond where it came from. */
function onRuler(length: Length, evaluation: Evaluation, change: Length): Length {
  const { unit, ruler } = evaluation.design.units;
  const step = Length.of(ruler, unit);
  if (!step.isPositive()) return length;
  const steps = length.ratioTo(step);
  const floor = steps.floor();
  if (floor.equals(steps)) return length;
  const below = step.times(floor);
  const above = step.times(floor.plus(Rational.one));
  const from = length.minus(change);
  const nearest = length.minus(below).compare(above.minus(length)) <= 0 ? below : above;
  const other = nearest === below ? above : below;
  return nearest.minus(from).sign() === change.sign() ? nearest : other;
}

function attempt(evaluation: Evaluation, division: Division, sizes: readonly Resized[]): MovedDivision {
  for (const { at, to } of sizes) {
    if (!to.isPositive()) {
      const side = [division.before, division.after].find(({ cell }) => isWrittenAt(cell, at));
      return noRoom(side === division.after ? division.afterLabel : division.beforeLabel);
    }
  }
  const trial = evaluatePiece(resizedDesign(evaluation.design, sizes));
  const there = divisionsOf(trial).find((each) => each.id === division.id);
  if (there === undefined) return noRoom(`${division.beforeLabel} or ${division.afterLabel}`);
  for (const [laid, label] of [
    [there.before, there.beforeLabel],
    [there.after, there.afterLabel],
  ] as const) {
    if (!sizeAlong(laid, there.group).isPositive()) return noRoom(label);
  }
  const moved = placeOf(there).minus(placeOf(division));
  const size = sizes[0];
  const wantedSign = size === undefined ? 0 : signOfMove(division, size);
  if (moved.isZero() || moved.sign() !== wantedSign) return { kind: 'refused', why: held(division) };
  return {
    kind: 'changes',
    changes: sizes.map(({ at, to }): Change => ({ kind: 'set-length', at, to })),
    before: { label: there.beforeLabel, size: sizeAlong(there.before, there.group) },
    after: { label: there.afterLabel, size: sizeAlong(there.after, there.group) },
    moved,
  };
}

function signOfMove(division: Division, { at, from, to }: Resized): number {
  const change = to.minus(from).sign();
  return isWrittenAt(division.before.cell, at) ? change : -change;
}

function noRoom(label: string): MovedDivision {
  return { kind: 'refused', why: { kind: 'no-room', label } };
}

function held(division: Division): WhyNot {
  return { kind: 'held', before: division.beforeLabel, after: division.afterLabel };
}

function isWrittenAt(cell: Cell, at: Origin): boolean {
  const own = cell.along.kind === 'fixed' ? givenAt(cell.along.figure) : undefined;
  return own !== undefined && isSameOrigin(own, at);
}

/** One number of the text may serve several cells: all of them change, as they would in the text. */
function resizedDesign(design: PieceDesign, sizes: readonly Resized[]): PieceDesign {
  if (design.face === undefined) return design;
  return { ...design, face: { ...design.face, root: resizedCell(design.face.root, sizes) } };
}

function resizedCell(cell: Cell, sizes: readonly Resized[]): Cell {
  const size = sizes.find(({ at }) => isWrittenAt(cell, at));
  const along: SizeAsked =
    size === undefined || cell.along.kind !== 'fixed' ? cell.along : { ...cell.along, figure: given(size.to, size.at) };
  if (cell.kind !== 'row' && cell.kind !== 'stack') return { ...cell, along };
  const group: GroupCell = { ...cell, along, cells: cell.cells.map((each) => resizedCell(each, sizes)) };
  return group;
}
