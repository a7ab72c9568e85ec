import type { Evaluation, LaidCell, Length } from '@fettle/engine';
import { cleanName } from '../lettering.ts';
import type { Drawing } from '../primitives.ts';
import { vector } from '../shapes/vectors.ts';
import { FROM_ABOVE } from '../shapes/view-direction.ts';
import { realMm } from '../shown-lengths.ts';
import { onStandardSheet } from '../views/standard-sheet.ts';
import { type ViewedPart, viewedParts } from '../views/viewed-parts.ts';
import { cuttingPlace } from './cutting-place.ts';
import { describeSection } from './describe-section.ts';
import { fittingsFromAbove } from './fittings-in-section.ts';
import { type OpeningToCut, openingsToCut, openingToCutFirst } from './openings.ts';
import { overhangingAbove } from './overhanging-above.ts';
import { boxesChain, chains, depthChain, frontsChain, openingsChain, wholeChain } from './section-chains.ts';
import { sectionNotes } from './section-notes.ts';

/**
 * The piece cut level through an opening, seen from above: its front is at the foot of the sheet. `opening` is the id of
 * a cell; without one, or with one that is gone, the opening that tells most. Never fails: what cannot be drawn is said
 * on the sheet.
 */
export function planSection(evaluation: Evaluation, opening?: string): Drawing {
  const chosen = openingsToCut(evaluation).find(({ id }) => id === opening) ?? openingToCutFirst(evaluation);
  const { carcase } = evaluation.layout;
  const place = placeOf(evaluation, chosen);
  const words = chosen === undefined ? 'Plan section' : `Plan, ${chosen.words}`;
  const viewed =
    place === undefined
      ? []
      : viewedParts({
          parts: evaluation.parts,
          from: FROM_ABOVE,
          plane: { normal: vector(0, 1, 0), offset: realMm(place) },
          showsHidden: () => false,
        });
  const name = {
    id: 'plan',
    words,
    description: describeSection(evaluation, 'Plan section', chosen, viewed, 'from above, the front at the foot'),
  };
  if (carcase === undefined || place === undefined) return onStandardSheet(evaluation, { name, notes: () => [] });
  const { x, z } = carcase.outside;
  const fittings = fittingsFromAbove(evaluation, place);
  const above = overhangingAbove(evaluation.parts, viewed, place);
  return onStandardSheet(evaluation, {
    name,
    plan: {
      viewed,
      from: FROM_ABOVE,
      low: { u: realMm(x.start.length), v: realMm(z.start.length) },
      high: { u: realMm(x.end.length), v: realMm(z.end.length) },
      seenAs: 'behind',
      fittings,
      chains: lying(evaluation, viewed, place, chosen?.laid),
      standsOnFloor: false,
      before: above.stretches,
      wordsOf: (part) => [cleanName(part.mark)],
      mayGoWithout: ({ cut }) => cut === undefined,
    },
    notes: () => sectionNotes(evaluation, viewed, FROM_ABOVE, fittings, above.parts),
  });
}

function placeOf(evaluation: Evaluation, opening: OpeningToCut | undefined): Length | undefined {
  const { carcase } = evaluation.layout;
  if (opening !== undefined) return cuttingPlace(evaluation, opening, 'y');
  return carcase?.interior.y.start.length.plus(carcase.interior.y.size.length.dividedBy(2));
}

function lying(evaluation: Evaluation, viewed: readonly ViewedPart[], place: Length, chosen: LaidCell | undefined) {
  const cut = viewed.flatMap((each) => (each.cut === undefined ? [] : [each.part]));
  const root = evaluation.layout.face;
  const cells = root === undefined ? [] : cellsAt(root, place);
  return {
    left: chains('case', [wholeChain(evaluation, 'z')]),
    right: chains('case', [depthChain(evaluation, cut, chosen)]),
    above: chains(
      'openings',
      [boxesChain(cells, evaluation.parts, 'x'), openingsChain(evaluation, cells, 'x')],
      ['boxes', 'openings'],
    ),
    below: chains('fronts', [frontsChain(evaluation, cut, 'x'), wholeChain(evaluation, 'x')]),
  };
}

/** The innermost openings that a level plane passes through. */
function cellsAt(laid: LaidCell, place: Length): readonly LaidCell[] {
  const { start, end } = laid.opening.y;
  if (place.compare(start.length) < 0 || place.compare(end.length) > 0) return [];
  return laid.cells.length === 0 ? [laid] : laid.cells.flatMap((cell) => cellsAt(cell, place));
}
