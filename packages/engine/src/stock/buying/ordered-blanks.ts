import type { Length, LengthUnit } from '../../length/length.ts';
import { upToMark } from '../../length/ruler-marks.ts';
import type { PlaceInRun } from '../../parts/part.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';
import { type Blank, type BlankAllowance, sizeOfBlank } from '../blank.ts';
import { usualAllowances } from '../boards/board-allowances.ts';
import { type PieceToCut, sizesToCut } from './pieces-to-cut.ts';

/** What is cut from stock as one: a single piece, or a blank from which several follow in their order. */
export interface BlankToCut {
  readonly blank: Blank;
  /** In the order of the blank, at least one. */
  readonly pieces: readonly PieceToCut[];
  /** What the maker calls the order; absent for a single piece. */
  readonly label?: string;
}

/** Pieces of one run together, everything else alone; in the order in which the first of each comes. */
export function blanksToCut(
  pieces: readonly PieceToCut[],
  kerf: Length,
  unit: LengthUnit,
  mark: Length,
): readonly BlankToCut[] {
  const blanks: (BlankToCut & { readonly pieces: PieceToCut[] })[] = [];
  const runs = new Map<string, PieceToCut[]>();
  for (const piece of pieces) {
    const run = piece.what === 'part' && piece.otherLeaf === undefined ? piece.part.run : undefined;
    const known = run === undefined ? undefined : runs.get(run.id);
    if (known !== undefined) known.push(piece);
    else {
      const own = [piece];
      if (run !== undefined) runs.set(run.id, own);
      blanks.push({ blank: piece.blank, pieces: own });
    }
  }
  return blanks.map(({ blank: alone, pieces: own }): BlankToCut => {
    const run = own[0]?.part.run;
    if (run === undefined || own.length < 2) return { blank: alone, pieces: own };
    const inOrder = [...own].sort((a, b) => (a.part.run?.place ?? 0) - (b.part.run?.place ?? 0));
    const parts = inOrder.map(({ part }) => part);
    const mayTurn = inOrder.every((piece) => piece.blank.mayTurn);
    const blank = onRuler(orderedBlank(run, parts, kerf, unit), mark);
    return { blank: { ...blank, mayTurn }, pieces: inOrder, label: run.label };
  });
}

/**
 * Parts of one run as one blank, a blade between each two. Of a board the blank is rough: half of what is planed and
 * trimmed off lies on each of its edges, and the parts inside are cut to their size at once.
 */
export function orderedBlank(run: PlaceInRun, parts: readonly UnmarkedPart[], kerf: Length, unit: LengthUnit): Blank {
  const isBoard = parts.some(({ stock }) => stock?.form === 'board');
  return {
    id: run.id,
    parts: parts.map((part) => ({ part: part.id, ...sizesToCut(part) })),
    order: run.order,
    between: parts.slice(1).map(() => kerf),
    ...(isBoard ? { allowance: onEachEdge(unit) } : {}),
    mayTurn: false,
  };
}

function onEachEdge(unit: LengthUnit): BlankAllowance {
  const { onLength, onWidth } = usualAllowances(unit);
  const [end, edge] = [onLength.dividedBy(2), onWidth.dividedBy(2)];
  return { left: edge, right: edge, near: end, far: end };
}

/** The same blank as large as the next marks of a ruler; what it gains lies on its right and far edges. */
function onRuler(blank: Blank, mark: Length): Blank {
  const { allowance } = blank;
  if (allowance === undefined) return blank;
  const { width, length } = sizeOfBlank(blank);
  return {
    ...blank,
    allowance: {
      ...allowance,
      right: allowance.right.plus(upToMark(width, mark).minus(width)),
      far: allowance.far.plus(upToMark(length, mark).minus(length)),
    },
  };
}
