import type { Evaluation } from '@fettle/engine';
import type { Primitive } from '../primitives.ts';
import { unitWords } from '../shown-lengths.ts';
import { visibleRoles } from '../visible-signs.ts';

/** The key of an elevation: only signs that stand on the sheet are explained. */
export function elevationNotes(
  evaluation: Evaluation,
  content: readonly Primitive[],
  taken: string,
): readonly string[] {
  const signs = visibleRoles(content).has('hidden') ? ['Dashed: hidden.'] : [];
  return [`Dimensions are finished sizes in ${unitWords(evaluation.design.units)}.${taken}`, ...signs];
}
