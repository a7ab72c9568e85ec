import type { CarcaseLayout, Evaluation, Figure, LaidCell, LaidDivider, Part } from '@fettle/engine';
import type { Origin } from '@fettle/findings';
import { pieceUnitId } from '../reading/text-units.ts';

/**
 * The sizes a piece comes to, each under the name a maker would call it by, and which statement each belongs to.
 * Knows origins only; the words at an origin are the caller's business.
 */
export interface ComputedSize {
  /** 'height of the front'. */
  readonly label: string;
  readonly axis: 'wide' | 'high' | 'deep' | 'thick' | 'long';
  readonly figure: Figure;
}

/** What belongs to one statement: of a front or an opening, of a divider, or of parts. */
export interface StatementSizes {
  /** What they are sizes of: '"blankets"', 'left side'; empty for the piece itself. */
  readonly of: string;
  readonly kind: 'piece' | 'cell' | 'divider' | 'part';
  readonly sizes: readonly ComputedSize[];
}

/** Sizes by the offset, within the piece, of the statement they belong to. The one asked for comes first. */
export function sizesByStatement(evaluation: Evaluation): ReadonlyMap<number, readonly StatementSizes[]> {
  const found = new Map<number, StatementSizes[]>();
  const add = (origin: Origin, sizes: StatementSizes) => {
    if (origin.unit !== pieceUnitId) return;
    const list = found.get(origin.start);
    if (list === undefined) found.set(origin.start, [sizes]);
    else list.push(sizes);
  };
  const { carcase, face } = evaluation.layout;
  if (carcase !== undefined)
    add(evaluation.design.size.origin, { of: '', kind: 'piece', sizes: carcaseSizes(carcase) });
  if (face !== undefined) addCell(face, undefined, add);
  for (const part of evaluation.parts) {
    if (part.cell === undefined || !isFront(part)) add(part.origin, partSizes(part));
  }
  return found;
}

function carcaseSizes({ body, face, inside }: CarcaseLayout): ComputedSize[] {
  return [
    { label: 'width of the body', axis: 'wide', figure: body.x.size },
    { label: 'width of the face', axis: 'wide', figure: face.x.size },
    { label: 'height of the body', axis: 'high', figure: body.y.size },
    { label: 'height of the face', axis: 'high', figure: face.y.size },
    { label: 'depth of the body', axis: 'deep', figure: body.z.size },
    { label: 'depth inside', axis: 'deep', figure: inside.z.size },
  ];
}

type Add = (origin: Origin, sizes: StatementSizes) => void;

function addCell(laid: LaidCell, parent: LaidCell | undefined, add: Add): void {
  const width: ComputedSize[] = [];
  const height: ComputedSize[] = [];
  if (laid.front !== undefined) {
    width.push({ label: 'width of the front', axis: 'wide', figure: laid.front.x.size });
    height.push({ label: 'height of the front', axis: 'high', figure: laid.front.y.size });
  }
  const [leaf] = laid.leaves;
  if (laid.leaves.length > 1 && leaf !== undefined) {
    width.push({ label: 'width of each leaf', axis: 'wide', figure: leaf.x.size });
  }
  width.push({ label: 'width of the opening', axis: 'wide', figure: laid.opening.x.size });
  height.push({ label: 'height of the opening', axis: 'high', figure: laid.opening.y.size });
  // A face that is one space is a stack of one.
  const isUpright = parent?.cell.kind !== 'row';
  add(laid.cell.origin, {
    of: calledCell(laid),
    kind: 'cell',
    sizes: isUpright ? [...height, ...width] : [...width, ...height],
  });
  for (const divider of laid.dividers) addDivider(divider, laid, add);
  for (const cell of laid.cells) addCell(cell, laid, add);
}

function addDivider({ divider, at }: LaidDivider, group: LaidCell, add: Add): void {
  const isUpright = group.cell.kind === 'stack';
  const along = isUpright ? at.y.size : at.x.size;
  add(divider.origin, {
    of: divider.form,
    kind: 'divider',
    sizes: [{ label: 'thickness', axis: 'thick', figure: along }],
  });
}

function calledCell({ cell }: LaidCell): string {
  if (cell.name !== undefined) return `"${cell.name}"`;
  return cell.kind === 'front' ? `the ${cell.what}` : `the ${cell.kind}`;
}

/** The front of a cell is told by its layout already, with the opening behind it. */
function isFront(part: Part): boolean {
  return ['door', 'drawer-front', 'lid', 'false-front'].includes(part.role);
}

function partSizes(part: Part): StatementSizes {
  return {
    of: part.label,
    kind: 'part',
    sizes: [
      { label: 'length', axis: 'long', figure: part.length },
      { label: 'width', axis: 'wide', figure: part.width },
      { label: 'thickness', axis: 'thick', figure: part.thickness },
    ],
  };
}

/** How many sums lie between a figure and the words at `origin`; undefined when it does not depend on them. */
export function stepsTo(
  figure: Figure,
  origin: Origin,
  known = new Map<Figure, number | undefined>(),
): number | undefined {
  if (known.has(figure)) return known.get(figure);
  const { reason } = figure;
  let steps: number | undefined;
  switch (reason.kind) {
    case 'given':
    case 'shop':
    case 'measured':
      steps = isWithin(reason.origin, origin) ? 0 : undefined;
      break;
    case 'assumed':
      break;
    case 'derived':
      for (const operand of reason.operands) {
        if (operand.figure.length.isZero()) continue;
        const inner = stepsTo(operand.figure, origin, known);
        if (inner !== undefined && (steps === undefined || inner + 1 < steps)) steps = inner + 1;
      }
      break;
    default: {
      const unknown: never = reason;
      return unknown;
    }
  }
  known.set(figure, steps);
  return steps;
}

function isWithin(inner: Origin, outer: Origin): boolean {
  return inner.unit === outer.unit && outer.start <= inner.start && inner.end <= outer.end;
}
