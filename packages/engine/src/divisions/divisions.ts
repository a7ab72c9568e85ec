import type { GroupCell } from '../design/design.ts';
import type { Evaluation, LaidCell } from '../evaluation.ts';
import { cellLabel } from '../layout/cell-names.ts';
import type { Length } from '../length/length.ts';

/**
 * The boundaries between neighbours of a row or stack, each of which a maker may want to take hold of and move. Knows
 * nothing of paper, and makes no changes.
 */
export interface Division {
  /** Unique in the piece and stable while the text around it changes. */
  readonly id: string;
  readonly group: GroupCell;
  /** Left or above, and right or below. */
  readonly before: LaidCell;
  readonly after: LaidCell;
  readonly beforeLabel: string;
  readonly afterLabel: string;
}

/** Outer divisions before inner ones, each row from the left and each stack from the top. */
export function divisionsOf(evaluation: Evaluation): readonly Division[] {
  const divisions: Division[] = [];
  if (evaluation.layout.face !== undefined) collect(evaluation.layout.face, divisions);
  return divisions;
}

function collect(laid: LaidCell, divisions: Division[]): void {
  const { cell, cells } = laid;
  if (cell.kind === 'row' || cell.kind === 'stack') {
    cell.cells.forEach((one, at) => {
      const next = cell.cells[at + 1];
      const before = cells.find((each) => each.cell.id === one.id);
      const after = next && cells.find((each) => each.cell.id === next.id);
      // Where one of the two could not be laid out there is no line to take hold of.
      if (next === undefined || before === undefined || after === undefined) return;
      divisions.push({
        id: `${one.id}|${next.id}`,
        group: cell,
        before,
        after,
        beforeLabel: cellLabel(one, cell),
        afterLabel: cellLabel(next, cell),
      });
    });
  }
  // What stands behind a door is not in sight, and cannot be taken hold of.
  if (cell.kind !== 'front') for (const each of cells) collect(each, divisions);
}

/** Where the line lies, growing from the space before to the space after it: its middle, between the two openings. */
export function placeOf({ group, before, after }: Division): Length {
  const [end, start] =
    group.kind === 'row'
      ? [before.opening.x.end.length, after.opening.x.start.length]
      : [before.opening.y.start.length.negated(), after.opening.y.end.length.negated()];
  return end.plus(start).dividedBy(2);
}

/** Along the direction of its group: the size one reads off, of a front where there is one, else of the opening. */
export function sizeAlong(laid: LaidCell, group: GroupCell): Length {
  const shape = laid.front ?? laid.opening;
  return (group.kind === 'row' ? shape.x : shape.y).size.length;
}
