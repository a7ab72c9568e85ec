import type { Evaluation, Part } from '@fettle/engine';
import { cleanName } from '../lettering.ts';
import type { ViewedPart } from '../views/viewed-parts.ts';
import type { OpeningToCut } from './openings.ts';

/** A section in words, for those who cannot look at it. */

const MOST_PARTS = 120;

export function describeSection(
  evaluation: Evaluation,
  what: string,
  opening: OpeningToCut | undefined,
  viewed: readonly ViewedPart[],
  seen: string,
): string {
  const name = cleanName(evaluation.design.name);
  const through = opening === undefined ? '' : ` through ${opening.words}`;
  const cut = viewed.flatMap((each) => (each.cut === undefined ? [] : [each.part]));
  const behind = viewed.flatMap((each) => (each.cut === undefined && each.seen.length > 0 ? [each.part] : []));
  const sentences = [
    `${what} of ${name === '' ? 'a piece without a name' : name}${through}, seen ${seen}`,
    ...(viewed.length === 0 ? ['Nothing is drawn yet'] : []),
    ...(cut.length === 0 ? [] : [`Cut: ${listed(cut)}`]),
    ...(behind.length === 0 ? [] : [`Seen behind: ${listed(behind)}`]),
  ];
  return `${sentences.join('. ')}.`;
}

export function listed(parts: readonly Part[]): string {
  const words = parts.slice(0, MOST_PARTS).map(({ label, mark }) => `${cleanName(label)} ${cleanName(mark)}`);
  const more = parts.length - words.length;
  return more > 0 ? `${words.join(', ')} and ${more} more` : words.join(', ');
}
