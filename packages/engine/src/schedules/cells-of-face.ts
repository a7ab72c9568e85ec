import type { LaidCell } from '../evaluation.ts';

/**
 * Every space of the face that is no row or stack, from left to right and from top to bottom as they are written; what
 * stands behind a door after the door.
 */
export function spacesOf(face: LaidCell | undefined): readonly LaidCell[] {
  if (face === undefined) return [];
  const { kind } = face.cell;
  return kind === 'row' || kind === 'stack' ? face.cells.flatMap(spacesOf) : [face, ...face.cells.flatMap(spacesOf)];
}
