import type { Piece } from './text-items.ts';

/** How many blanks stand between two neighbours of one statement. Never so few that the two would be read as one. */
export function blanksBetween(before: Piece | undefined, previous: Piece, next: Piece): number {
  if (next.text === ',' || next.text === ')' || previous.text === '(') return 0;
  if (previous.text === '-' && isSign(before)) return 0;
  if (previous.kind === 'number' && next.kind === 'number') return 2;
  if (previous.kind === 'number' && /^(?:mm|cm)$/.test(next.text)) return 2;
  if (next.kind === 'line-comment') return 2;
  return 1;
}

/** Whether a minus that follows `before` is a sign rather than a difference. */
function isSign(before: Piece | undefined): boolean {
  return before === undefined || !(before.kind === 'number' || before.kind === 'name' || before.text === ')');
}
