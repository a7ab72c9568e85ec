import type { FrontCell } from '../design/design.ts';

/** The part that a leaf of a front is, or the frame that its parts share: the left one of a pair comes first. */
export function leafId(cell: Pick<FrontCell, 'id'>, leaves: number, at: number): string {
  return `${cell.id}/${leaves === 1 ? 'front' : at === 0 ? 'leaf-left' : 'leaf-right'}`;
}
