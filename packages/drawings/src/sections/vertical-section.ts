import type { Evaluation, LaidCell, Length } from '@fettle/engine';
import { cleanName } from '../lettering.ts';
import type { Drawing } from '../primitives.ts';
import { vector } from '../shapes/vectors.ts';
import { FROM_RIGHT } from '../shapes/view-direction.ts';
import { realMm } from '../shown-lengths.ts';
import { onStandardSheet } from '../views/standard-sheet.ts';
import { type ViewedPart, viewedParts } from '../views/viewed-parts.ts';
import { cuttingPlace } from './cutting-place.ts';
import { describeSection } from './describe-section.ts';
import { fittingsFromRight } from './fittings-in-section.ts';
import { type OpeningToCut, openingsToCut, openingToCutFirst } from './openings.ts';
import { boxesChain, chains, depthChain, frontsChain, openingsChain, wholeChain } from './section-chains.ts';
import { sectionNotes } from './section-notes.ts';

/**
 * The piece cut upright from front to back through an opening, seen from the right: its front is to the left. `opening`
 * is the id of a cell; without one, or with one that is gone, the opening that tells most. Never fails: what cannot be
 * drawn is said on the sheet.
 */
export function verticalSection(evaluation: Evaluation, opening?: string): Drawing {
  const chosen = openingsToCut(evaluation).find(({ id }) => id === opening) ?? openingToCutFirst(evaluation);
  const { carcase } = evaluation.layout;
  const place = placeOf(evaluation, chosen);
  const words = chosen === undefined ? 'Vertical section' : `Section, ${chosen.words}`;
  const viewed =
    place === undefined
      ? []
      : viewedParts({
          parts: evaluation.parts,
          from: FROM_RIGHT,
          plane: { normal: vector(1, 0, 0), offset: realMm(place) },
          showsHidden: () => false,
        });
  const name = {
    id: 'section',
    words,
    description: describeSection(
      evaluation,
      'Vertical section',
      chosen,
      viewed,
      'from the right, the front to the left',
    ),
  };
  if (carcase === undefined || place === undefined) return onStandardSheet(evaluation, { name, notes: () => [] });
  const { y, z } = carcase.outside;
  const fittings = fittingsFromRight(evaluation, place);
  return onStandardSheet(evaluation, {
    name,
    plan: {
      viewed,
      from: FROM_RIGHT,
      low: { u: realMm(z.start.length), v: realMm(y.start.length) },
      high: { u: realMm(z.end.length), v: realMm(y.end.length) },
      seenAs: 'behind',
      fittings,
      chains: upright(evaluation, viewed, place, chosen?.laid),
      standsOnFloor: evaluation.design.carcase.hung === undefined,
      wordsOf: (part) => [cleanName(part.mark)],
      mayGoWithout: ({ cut }) => cut === undefined,
    },
    notes: () => sectionNotes(evaluation, viewed, FROM_RIGHT, fittings),
  });
}

function placeOf(evaluation: Evaluation, opening: OpeningToCut | undefined): Length | undefined {
  const { carcase } = evaluation.layout;
  if (opening !== undefined) return cuttingPlace(evaluation, opening, 'x');
  return carcase?.interior.x.start.length.plus(carcase.interior.x.size.length.dividedBy(2));
}

function upright(evaluation: Evaluation, viewed: readonly ViewedPart[], place: Length, chosen: LaidCell | undefined) {
  const cut = viewed.flatMap((each) => (each.cut === undefined ? [] : [each.part]));
  const root = evaluation.layout.face;
  const cells = root === undefined ? [] : cellsAt(root, place);
  return {
    left: chains('fronts', [frontsChain(evaluation, cut, 'y'), wholeChain(evaluation, 'y')]),
    right: chains(
      'openings',
      [boxesChain(cells, evaluation.parts, 'y'), openingsChain(evaluation, cells, 'y')],
      ['boxes', 'openings'],
    ),
    above: [],
    below: chains('case', [depthChain(evaluation, cut, chosen), wholeChain(evaluation, 'z')]),
  };
}

/** The innermost openings that a plane across the piece passes through. */
function cellsAt(laid: LaidCell, place: Length): readonly LaidCell[] {
  const { start, end } = laid.opening.x;
  if (place.compare(start.length) < 0 || place.compare(end.length) > 0) return [];
  return laid.cells.length === 0 ? [laid] : laid.cells.flatMap((cell) => cellsAt(cell, place));
}
