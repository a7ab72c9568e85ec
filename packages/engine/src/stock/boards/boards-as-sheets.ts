import type { PreparedKind, PreparedSheets } from '../sheets/prepare-sheets.ts';
import type { BoardProblem } from './board-problem.ts';

/**
 * A problem of boards as the searches for sheets see it: boards and blanks a kerf larger, without what comes off ends and
 * edges; bands, blanks in them, and a last cut that only trims.
 */
export function boardsAsSheets(
  { boards, blanks, ripKerf, crosscutKerf, endTrim, edgeTrim }: BoardProblem,
  defects: 'not counted' | 'boards with defects left out',
): PreparedSheets {
  const kinds = boards.flatMap((board): readonly PreparedKind[] => {
    const { id, width, length, cost, available = Number.POSITIVE_INFINITY } = board;
    const inside = { width: width - 2 * edgeTrim, length: length - 2 * endTrim };
    const isLeftOut = defects !== 'not counted' && (board.defects ?? []).length > 0;
    if (inside.width <= 0 || inside.length <= 0 || available === 0 || isLeftOut) return [];
    const sheet = { id, width, length, cost };
    return [{ sheet, width: inside.width + ripKerf, length: inside.length + crosscutKerf, cost, available }];
  });
  const types = blanks.flatMap((blank) => {
    const width = blank.width + ripKerf;
    const length = blank.length + crosscutKerf;
    const isSize = [blank.width, blank.length, blank.count].every((size) => Number.isSafeInteger(size) && size > 0);
    const fits = kinds.some((kind) => width <= kind.width && length <= kind.length);
    if (!isSize || !fits) return [];
    return [{ width, length, count: blank.count, mayTurn: false, blanks: [{ ...blank, mayTurn: false }] }];
  });
  const unlimited = Number.POSITIVE_INFINITY;
  const limits = { longestRip: unlimited, longestCrosscut: unlimited, stages: 3, lastStageTrims: true };
  return { kerf: 0, kinds, types, limits, unplaced: [], refused: [] };
}
