import type { BoardKind, BoardProblem, CuttingOrder, Defect } from './board-problem.ts';

/**
 * A board as one order of cutting sees it: bands follow each other in one direction, blanks in a band in the other. With
 * the kerf added to sizes and spaces neither direction needs cuts between them.
 */
export interface BoardSpace {
  readonly kind: BoardKind;
  readonly order: CuttingOrder;
  /** Room for bands, and for blanks along a band; kerf added. */
  readonly bands: number;
  readonly inside: number;
  /** What is added to a place to have it from the end and the edge of the whole board. */
  readonly bandsFrom: number;
  readonly insideFrom: number;
  readonly bandKerf: number;
  readonly insideKerf: number;
  readonly defects: readonly Blocked[];
}

/** A defect, in the room of a board: [from, to) across the bands and along them. */
export interface Blocked {
  readonly bandFrom: number;
  readonly bandTo: number;
  readonly from: number;
  readonly to: number;
}

export function boardSpace(problem: BoardProblem, kind: BoardKind, order: CuttingOrder): BoardSpace {
  const { ripKerf, crosscutKerf, endTrim, edgeTrim } = problem;
  const byLength = order === 'crosscut first';
  const length = kind.length - 2 * endTrim;
  const width = kind.width - 2 * edgeTrim;
  const defects = (kind.defects ?? []).filter(isDefect).map(({ from, to, left, right }): Blocked => {
    const along = { from: from - endTrim, to: to - endTrim };
    const across = { from: left - edgeTrim, to: right - edgeTrim };
    const [band, inside] = byLength ? [along, across] : [across, along];
    return { bandFrom: band.from, bandTo: band.to, from: inside.from, to: inside.to };
  });
  return byLength
    ? {
        kind,
        order,
        bands: length + crosscutKerf,
        inside: width + ripKerf,
        bandsFrom: endTrim,
        insideFrom: edgeTrim,
        bandKerf: crosscutKerf,
        insideKerf: ripKerf,
        defects,
      }
    : {
        kind,
        order,
        bands: width + ripKerf,
        inside: length + crosscutKerf,
        bandsFrom: edgeTrim,
        insideFrom: endTrim,
        bandKerf: ripKerf,
        insideKerf: crosscutKerf,
        defects,
      };
}

/** What has no size is none. */
function isDefect({ from, to, left, right }: Defect): boolean {
  return from < to && left < right;
}

/** Where along a band there is no defect; kerf added to each, for what ends flush with a defect needs no room beyond it. */
export function clearStretches(space: BoardSpace, at: number, size: number): readonly (readonly [number, number])[] {
  const blocked = space.defects
    .filter(({ bandFrom, bandTo }) => bandFrom < at + size && at < bandTo)
    .sort((a, b) => a.from - b.from);
  const stretches: (readonly [number, number])[] = [];
  const end = space.inside - space.insideKerf;
  let from = 0;
  for (const defect of blocked) {
    if (defect.from > from) {
      // Beyond a defect narrower than the blade there is still the blade to be kept clear of.
      const until = Math.min(end, defect.from) + space.insideKerf;
      stretches.push([from, until]);
      from = until;
    }
    from = Math.max(from, defect.to);
  }
  if (from < end) stretches.push([from, end + space.insideKerf]);
  return stretches;
}
