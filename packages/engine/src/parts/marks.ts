import { groupedBy } from '../grouping.ts';
import type { Part } from './part.ts';
import type { UnmarkedPart } from './slab.ts';

/**
 * Gives every part its mark: a letter for each kind of part, in the order the parts come, and a number where there are
 * several of the kind: 'A', 'B1', 'B2'.
 */
export function markParts(parts: readonly UnmarkedPart[]): readonly Part[] {
  const kinds = groupedBy(parts, ({ role }) => role);
  const marks = new Map<UnmarkedPart, string>();
  let kindNumber = 0;
  for (const alike of kinds.values()) {
    const letter = letters(kindNumber);
    kindNumber += 1;
    alike.forEach((part, at) => {
      marks.set(part, alike.length === 1 ? letter : `${letter}${at + 1}`);
    });
  }
  return parts.map((part) => {
    const { edged: _edged, ...finished } = part;
    return { ...finished, mark: marks.get(part) ?? '' };
  });
}

/** 0 is A, 25 is Z, 26 is AA. */
function letters(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letters(Math.floor(index / 26) - 1) + last;
}
