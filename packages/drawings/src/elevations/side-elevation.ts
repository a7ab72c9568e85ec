import type { Evaluation, PartRole } from '@fettle/engine';
import { cleanName } from '../lettering.ts';
import type { Drawing } from '../primitives.ts';
import { listed } from '../sections/describe-section.ts';
import { chains, depthChain, openingsChain, railsChain, wholeChain } from '../sections/section-chains.ts';
import { FROM_RIGHT } from '../shapes/view-direction.ts';
import { realMm } from '../shown-lengths.ts';
import { isInSight } from '../views/spots.ts';
import { onStandardSheet } from '../views/standard-sheet.ts';
import { type ViewedPart, viewedParts } from '../views/viewed-parts.ts';
import { elevationNotes } from './elevation-notes.ts';
import { wordsOf } from './inside-elevation.ts';

/** Hidden edges of what holds the case together; those of drawers and partitions would only clutter the sheet. */
const SHOWN_HIDDEN: readonly PartRole[] = ['top', 'bottom', 'stretcher', 'back', 'plinth', 'side', 'shelf'];

/** The right-hand side, its front to the left. Never fails: what cannot be drawn is said on the sheet. */
export function sideElevation(evaluation: Evaluation): Drawing {
  const { carcase } = evaluation.layout;
  const piece = cleanName(evaluation.design.name);
  const viewed = viewedParts({
    parts: evaluation.parts,
    from: FROM_RIGHT,
    showsHidden: ({ role }) => SHOWN_HIDDEN.includes(role),
  });
  // Of a panel in its frame no edge is its own, but one sees it.
  const isSeen = (each: ViewedPart): boolean => each.seen.length > 0 || isInSight(each, viewed, FROM_RIGHT);
  const seen = viewed.filter(isSeen).map(({ part }) => part);
  const name = {
    id: 'side',
    words: 'Side elevation',
    description: [
      `Side elevation of ${piece === '' ? 'a piece without a name' : piece}, seen from the right, the front to the left`,
      seen.length === 0 ? 'Nothing is drawn yet' : `Seen: ${listed(seen)}`,
    ]
      .map((sentence) => `${sentence}.`)
      .join(' '),
  };
  if (carcase === undefined) return onStandardSheet(evaluation, { name, notes: () => [] });
  const { y, z } = carcase.outside;
  const parts = viewed.filter((each) => each.hidden.length > 0 || isSeen(each));
  return onStandardSheet(evaluation, {
    name,
    plan: {
      viewed: parts,
      from: FROM_RIGHT,
      low: { u: realMm(z.start.length), v: realMm(y.start.length) },
      high: { u: realMm(z.end.length), v: realMm(y.end.length) },
      seenAs: 'edge',
      chains: {
        left: chains('case', [railsChain(evaluation.parts, 'case/side-right'), wholeChain(evaluation, 'y')]),
        right: chains('case', [openingsChain(evaluation, [], 'y')]),
        above: [],
        below: chains('case', [depthChain(evaluation, seen, undefined), wholeChain(evaluation, 'z')]),
      },
      standsOnFloor: evaluation.design.carcase.hung === undefined,
      wordsOf,
      mayGoWithout: ({ seen: edges }) => edges.length === 0,
    },
    notes: (content) => elevationNotes(evaluation, content, ''),
  });
}
