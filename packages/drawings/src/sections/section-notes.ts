import type { Evaluation, Part } from '@fettle/engine';
import type { ViewDirection } from '../shapes/view-direction.ts';
import { capital, marksOf } from '../sheet-words.ts';
import { unitWords } from '../shown-lengths.ts';
import type { Fitting } from '../views/fittings.ts';
import { cutWood } from '../views/hatching.ts';
import type { ViewedPart } from '../views/viewed-parts.ts';

/** The key of a section: only signs that stand on the sheet are explained. */
export function sectionNotes(
  evaluation: Evaluation,
  viewed: readonly ViewedPart[],
  from: ViewDirection,
  fittings: readonly Fitting[],
  above: readonly Part[] = [],
): readonly string[] {
  const woods = new Set(viewed.flatMap(({ part, cut }) => (cut === undefined ? [] : [cutWood(part, from)])));
  const behind = viewed.some(({ cut, seen }) => cut === undefined && seen.length > 0) ? '; narrow: seen behind' : '';
  const signs = [
    ...(woods.has('sheet') ? ['lines along a part: sheet goods'] : []),
    ...(woods.has('end-grain') ? ['close slanting lines: solid wood, end grain'] : []),
    ...(woods.has('long-grain') ? ['wide slanting lines: solid wood along its grain'] : []),
  ];
  const isDashed = (what: Fitting['what']) => fittings.some((each) => each.what === what && each.role === 'hidden');
  const dashed = [
    ...(isDashed('hinge') ? ['what is let in for hinges'] : []),
    ...(isDashed('pull') ? ['pulls this side of the cut'] : []),
  ];
  const hidden = dashed.length === 0 ? '' : `dashes: ${dashed.join(', ')}`;
  const dotted = [
    ...(fittings.some(({ role }) => role === 'swing') ? ['doors opening to a right angle'] : []),
    ...(above.length > 0 ? [`${marksOf(above)}, above the cut`] : []),
  ];
  const dots = dotted.length === 0 ? '' : `dashes with two dots: ${dotted.join('; ')}`;
  return [
    `Dimensions are finished sizes in ${unitWords(evaluation.design.units)}. Wide outlines: cut${behind}.`,
    ...(hidden === '' && dots === '' ? [] : [`${capital([hidden, dots].filter((each) => each !== '').join('; '))}.`]),
    ...(signs.length === 0 ? [] : [`${capital(signs.join('; '))}.`]),
  ];
}
