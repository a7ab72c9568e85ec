import { convertUnits } from './convert-units.ts';
import { equaliseDrawers, gradeStack } from './drawers-of-a-stack.ts';
import { extractPattern } from './extract-pattern.ts';
import { mirrorRow } from './mirror-a-row.ts';
import type { Asked, Refactoring } from './refactoring.ts';
import { shareDifference } from './share-a-difference.ts';
import { splitOpening } from './split-an-opening.ts';
import { turnTheFit } from './turn-the-fit.ts';

export type { Asked, Refactoring, WordsChange } from './refactoring.ts';

/** In the order they are offered. */
const all: readonly ((asked: Asked) => Refactoring | undefined)[] = [
  shareDifference,
  equaliseDrawers,
  gradeStack,
  splitOpening,
  mirrorRow,
  turnTheFit,
  extractPattern,
  convertUnits,
];

export function refactoringsAt(asked: Asked): Refactoring[] {
  return all.flatMap((make) => make(asked) ?? []);
}
