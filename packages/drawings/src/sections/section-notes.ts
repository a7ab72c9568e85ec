import type { Evaluation } from '@fettle/engine';
import type { ViewDirection } from '../shapes/view-direction.ts';
import { capital } from '../sheet-words.ts';
import { unitWords } from '../shown-lengths.ts';
import { cutWood } from '../views/hatching.ts';
import type { ViewedPart } from '../views/viewed-parts.ts';

/** The key of a section: only signs that stand on the sheet are explained. */
export function sectionNotes(
  evaluation: Evaluation,
  viewed: readonly ViewedPart[],
  from: ViewDirection,
): readonly string[] {
  const woods = new Set(viewed.flatMap(({ part, cut }) => (cut === undefined ? [] : [cutWood(part, from)])));
  const behind = viewed.some(({ cut, seen }) => cut === undefined && seen.length > 0) ? '; narrow: seen behind' : '';
  const signs = [
    ...(woods.has('sheet') ? ['lines along a part: sheet goods'] : []),
    ...(woods.has('end-grain') ? ['close slanting lines: solid wood, end grain'] : []),
    ...(woods.has('long-grain') ? ['wide slanting lines: solid wood along its grain'] : []),
  ];
  return [
    `Dimensions are finished sizes in ${unitWords(evaluation.design.units)}. Wide outlines: cut${behind}.`,
    ...(signs.length === 0 ? [] : [`${capital(signs.join('; '))}.`]),
  ];
}
