import { exactSource, Length } from '@fettle/engine';
import type { Statement } from '../../generated/ast.ts';
import {
  type Asked,
  around,
  isCell,
  isHeld,
  laidCell,
  phrasesOf,
  type Refactoring,
  rangeOfPhrase,
  sizePhrase,
  type WordsChange,
  withoutPhrase,
  withPhrase,
  wordOf,
} from './refactoring.ts';

/** All drawers of a stack at once: alike, or each larger than the one above it. */

function stackOf({
  statement,
}: Asked): { readonly stack: Statement; readonly cells: readonly Statement[] } | undefined {
  const stack = around(statement, (each) => wordOf(each) === 'stack' && isCell(each));
  const cells = stack?.statements.filter(isCell) ?? [];
  return stack === undefined || cells.length < 2 || cells.some(isHeld) ? undefined : { stack, cells };
}

function grading(stack: Statement) {
  return phrasesOf(stack).find(({ phrase }) => phrase.pattern.startsWith('graded '));
}

/** Afterwards the fronts of all drawers of the stack are equally high, and together as high as before. */
export function equaliseDrawers(asked: Asked): Refactoring | undefined {
  const found = stackOf(asked);
  if (found === undefined) return undefined;
  const { stack, cells } = found;
  const drawers = cells.filter((each) => wordOf(each) === 'drawer');
  const others = cells.filter((each) => wordOf(each) !== 'drawer');
  // What else takes a part of what is left would change with them.
  if (drawers.length < 2 || others.some((each) => laidCell(asked, each)?.cell.along.kind !== 'fixed')) return undefined;
  const graded = grading(stack);
  const edits: WordsChange[] = graded === undefined ? [] : [withoutPhrase(asked.text, graded)];
  for (const drawer of drawers) {
    const size = sizePhrase(drawer);
    if (size === undefined && graded !== undefined) continue;
    if (size?.phrase.pattern === 'rest') continue;
    if (size !== undefined) edits.push({ ...rangeOfPhrase(size), words: 'rest' });
  }
  if (edits.length === 0) return undefined;
  return { title: `Make the ${drawers.length} drawers of the stack alike`, kind: 'refactor.rewrite', edits };
}

/** Afterwards each drawer is larger than the one above it by the same difference; one that they have already is kept. */
export function gradeStack(asked: Asked): Refactoring | undefined {
  const found = stackOf(asked);
  if (found === undefined || grading(found.stack) !== undefined) return undefined;
  const { stack, cells } = found;
  // Sizes that do not add up are not the ones the stack would come to.
  if (asked.piece.evaluation.findings.some(({ severity }) => severity === 'error')) return undefined;
  const heights = cells.map((each) => laidCell(asked, each)?.front?.y.size.length);
  if (cells.some((each) => wordOf(each) !== 'drawer') || !heights.every((each) => each !== undefined)) return undefined;
  const { units } = asked.piece.evaluation.design;
  const kept = sameDifference(heights);
  const by = kept ?? usualDifference(heights, units.unit === 'mm' || units.unit === 'cm');
  if (by === undefined) return undefined;
  const edits = cells.flatMap((each) => {
    const size = sizePhrase(each);
    return size === undefined ? [] : [withoutPhrase(asked.text, size)];
  });
  const shown = asked.piece.say.length(by);
  return {
    title: kept === undefined ? `Grade the stack by ${shown}` : `Say that the stack is graded by ${shown}`,
    kind: 'refactor.rewrite',
    edits: [withPhrase(stack, `graded by ${exactSource(by, units.unit)}`), ...edits],
  };
}

/** Undefined unless each is larger than the one before it by the same. */
function sameDifference(heights: readonly Length[]): Length | undefined {
  const [first, second] = heights;
  if (first === undefined || second === undefined) return undefined;
  const by = second.minus(first);
  const even = heights.every((each, at) => at === 0 || each.minus(heights[at - 1] as Length).equals(by));
  return even && by.isPositive() ? by : undefined;
}

/** An inch, or 25 mm, or half of that and so on, until the first drawer keeps at least the difference itself. */
function usualDifference(heights: readonly Length[], isMetric: boolean): Length | undefined {
  const total = heights.reduce((sum, each) => sum.plus(each), Length.zero);
  const count = heights.length;
  let by = isMetric ? Length.millimetres(25) : Length.inches(1);
  for (let tries = 0; tries < 4; tries++) {
    const first = total.minus(by.times((count * (count - 1)) / 2)).dividedBy(count);
    if (first.compare(by) >= 0) return by;
    by = by.dividedBy(2);
  }
  return undefined;
}
