import { type Finding, type Origin, sizesNotPositive } from '@fettle/findings';
import { rootOrigin } from '../design/derive.ts';
import type { Cell, PieceDesign } from '../design/design.ts';
import type { Figure } from '../design/figure.ts';
import type { CarcaseLayout, LaidCell, Rectangle, Span } from '../evaluation.ts';
import { cellWord, plainCellLabel } from '../layout/cell-names.ts';
import type { FaceLayout } from '../layout/lay-out-face.ts';
import type { UnmarkedPart } from '../parts/slab.ts';

/**
 * Sizes that come out zero or negative where no sum is at fault: a case eaten up by its own parts, an opening narrower
 * than its gaps, a part with nothing left. The outermost is reported; what follows from it is not.
 */

/** Piece, body, face and inside: the first of them along each axis that has no size. */
export function positiveCarcase(design: PieceDesign, layout: CarcaseLayout): readonly Finding[] {
  const { outside, body, face, inside } = layout;
  const size = design.size;
  return [
    ...firstWithout('width', size.width, size.origin, outside.x, [
      ['body', body.x],
      ['face', face.x],
    ]),
    ...firstWithout('height', size.height, size.origin, outside.y, [
      ['body', body.y],
      ['face', face.y],
    ]),
    ...firstWithout('depth', size.depth, size.origin, outside.z, [
      ['body', body.z],
      ['inside', inside.z],
    ]),
  ];
}

function firstWithout(
  axis: 'width' | 'height' | 'depth',
  written: Figure | undefined,
  fallback: Origin,
  outside: Span,
  spans: readonly (readonly ['body' | 'face' | 'inside', Span])[],
): readonly Finding[] {
  const origin = (written === undefined ? undefined : rootOrigin(written)) ?? fallback;
  if (!outside.size.length.isPositive()) {
    return [sizesNotPositive.at(origin, { what: 'part', words: 'the piece', axis, size: outside.size.length })];
  }
  for (const [what, span] of spans) {
    const size = span.size.length;
    if (size.isPositive()) continue;
    const available = outside.size.length;
    return [sizesNotPositive.at(origin, { what, axis, size, taken: available.minus(size), available })];
  }
  return [];
}

/** Openings, fronts and leaves. */
export function positiveFace(layout: FaceLayout): readonly Finding[] {
  const reported = new Set<string>();
  for (const { result } of layout.axes) {
    if (result.kind !== 'failed') continue;
    if (result.failure.kind === 'not-positive') for (const cell of result.failure.cells) reported.add(cell.id);
  }
  const findings: Finding[] = [];
  inspect(layout.face, undefined, reported, findings);
  return findings;
}

function inspect(
  laid: LaidCell,
  parent: LaidCell | undefined,
  reported: ReadonlySet<string>,
  findings: Finding[],
): void {
  const cell = laid.cell;
  if (reported.has(cell.id)) return;
  const first = firstNotPositive(laid);
  if (first !== undefined) {
    findings.push(sizesNotPositive.at(cell.sizeOrigin, { ...whoIs(cell, parent), ...first }));
    return;
  }
  const crosswise = cell.kind === 'row' ? 'height' : 'width';
  let saidCrosswise = false;
  for (const inner of laid.cells) {
    // Its neighbours along the row or stack lack the same size across it, for the same reason.
    if (firstNotPositive(inner)?.axis === crosswise) {
      if (saidCrosswise) continue;
      saidCrosswise = true;
    }
    inspect(inner, laid, reported, findings);
  }
}

function firstNotPositive(
  laid: LaidCell,
):
  | { readonly what: 'opening' | 'front' | 'leaf'; readonly axis: 'width' | 'height'; readonly size: Figure['length'] }
  | undefined {
  const rectangles: readonly (readonly ['opening' | 'front' | 'leaf', Rectangle | undefined])[] = [
    ['opening', laid.opening],
    ['front', laid.front],
    ['leaf', laid.leaves[0]],
  ];
  for (const [what, rectangle] of rectangles) {
    if (rectangle === undefined) continue;
    if (!rectangle.x.size.length.isPositive()) return { what, axis: 'width', size: rectangle.x.size.length };
    if (!rectangle.y.size.length.isPositive()) return { what, axis: 'height', size: rectangle.y.size.length };
  }
  return undefined;
}

/** Parts of which nothing is left; one finding where several parts of one cell or kind lack the same size. */
export function positiveParts(parts: readonly UnmarkedPart[]): readonly Finding[] {
  const said = new Set<string>();
  return parts.flatMap((part) => {
    const axes = ['length', 'width', 'thickness'] as const;
    const axis = axes.find((one) => !part[one].length.isPositive());
    if (axis === undefined) return [];
    const size = part[axis].length;
    const key = JSON.stringify([part.cell ?? part.role, size.exactInches]);
    if (said.has(key)) return [];
    said.add(key);
    const origin = rootOrigin(part[axis]) ?? part.origin;
    return [sizesNotPositive.at(origin, { what: 'part', words: `the ${part.label}`, axis, size })];
  });
}

function whoIs(cell: Cell, parent: LaidCell | undefined): { readonly name?: string; readonly words: string } {
  const group = parent?.cell;
  const words =
    group !== undefined && (group.kind === 'row' || group.kind === 'stack')
      ? plainCellLabel(cell, group)
      : `the ${cellWord(cell)}`;
  return cell.name === undefined ? { words } : { name: cell.name, words };
}
