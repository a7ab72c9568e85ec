import { exactSource, Length, Rational } from '@fettle/engine';
import { frontsDoNotAddUp, type Measure, type Mend } from '@fettle/findings';
import type { Statement } from '../../generated/ast.ts';
import { pieceUnitId } from '../../reading/text-units.ts';
import { type Asked, around, isCell, isHeld, type Refactoring, wordOf } from './refactoring.ts';

/**
 * Afterwards the sizes of a row or stack add up: what they were too much or too little is taken from or given to every
 * written one of them. In whole marks of the ruler, so that each can still be measured; the largest bear what does not
 * come out even, where it is seen least.
 */
export function shareDifference(asked: Asked): Refactoring | undefined {
  const { piece } = asked;
  const { unit, ruler } = piece.evaluation.design.units;
  for (const finding of piece.evaluation.findings) {
    const { origin, mends } = finding;
    if (finding.code !== frontsDoNotAddUp.code || origin.unit !== pieceUnitId) continue;
    const start = piece.range.start + origin.start;
    const group = around(asked.statement, (each) => isGroup(each) && holds(each, start));
    const spread = mends.find(({ how }) => how === 'spread');
    const sizes = spread === undefined ? undefined : sizesSpread(spread);
    if (group === undefined || group.statements.some(isHeld) || sizes === undefined) continue;
    const { difference, isLess } = sizes;
    const mark = Length.of(ruler, unit);
    if (difference.compare(mark) < 0) continue;
    const shares = inMarks(sizes.before, difference, mark);
    const after = sizes.before.map((length, at) => {
      const share = shares[at] ?? Length.zero;
      return isLess ? length.minus(share) : length.plus(share);
    });
    if (after.some((length) => !length.isPositive())) continue;
    const edits = sizes.places.map(({ start, end }, at) => ({
      start: piece.range.start + start,
      end: piece.range.start + end,
      words: exactSource(after[at] ?? Length.zero, unit),
    }));
    if (edits.some((edit) => !holds(group, edit.start))) continue;
    const least = shares.reduce((one, other) => one.min(other));
    const most = shares.reduce((one, other) => one.max(other));
    const { length } = piece.say;
    const by = least.equals(most) ? length(least) : `${length(least)} to ${length(most)}`;
    const words = `Share the ${length(difference)} ${isLess ? 'too much' : 'left over'} among the ${edits.length} sizes`;
    return { title: `${words}, ${by} ${isLess ? 'less' : 'more'} each`, kind: 'refactor.rewrite', edits };
  }
  return undefined;
}

interface Spread {
  readonly places: readonly { readonly start: number; readonly end: number }[];
  readonly before: readonly Length[];
  readonly difference: Length;
  readonly each: Length;
  readonly isLess: boolean;
}

/** The sizes as they are written, read back from the mend that changes all of them by the same. */
function sizesSpread({ values, changes }: Mend): Spread | undefined {
  const difference = Length.fromMeasure(values['difference'] as Measure);
  const each = Length.fromMeasure(values['each'] as Measure);
  const isLess = values['direction'] === 'less';
  const sizes = changes.flatMap((change) => {
    const to = change.kind === 'set-length' ? Length.fromMeasure(change.to) : undefined;
    if (change.kind !== 'set-length' || change.at.unit !== pieceUnitId || to === undefined || each === undefined) {
      return [];
    }
    return [{ place: change.at, before: isLess ? to.plus(each) : to.minus(each) }];
  });
  if (difference === undefined || each === undefined || sizes.length !== changes.length) return undefined;
  return {
    places: sizes.map(({ place }) => place),
    before: sizes.map(({ before }) => before),
    difference,
    each,
    isLess,
  };
}

/** Shares that add up to the difference exactly; as many marks for all, and one more for the largest as long as there are some. */
function inMarks(sizes: readonly Length[], difference: Length, mark: Length): readonly Length[] {
  const marks = difference.ratioTo(mark).floor();
  const forAll = marks.dividedBy(sizes.length).floor();
  const over = marks.minus(forAll.times(sizes.length));
  const remainder = difference.minus(mark.times(marks));
  const shares = sizes.map(() => mark.times(forAll));
  const bySize = sizes.map((size, at) => ({ size, at })).sort((a, b) => b.size.compare(a.size));
  for (const [turn, { at }] of bySize.entries()) {
    const more = Rational.of(turn).compare(over) < 0 ? mark : Length.zero;
    shares[at] = (shares[at] ?? Length.zero).plus(more).plus(turn === 0 ? remainder : Length.zero);
  }
  return shares;
}

function isGroup(statement: Statement): boolean {
  return ['row', 'stack'].includes(wordOf(statement)) ? isCell(statement) : wordOf(statement) === 'face';
}

function holds(statement: Statement, offset: number): boolean {
  const cst = statement.$cstNode;
  return cst !== undefined && cst.offset <= offset && offset < cst.end;
}
