import {
  type Drawing,
  explodedView,
  insideElevation,
  openingsToCut,
  partDrawings,
  partSheets,
  planSection,
  sideElevation,
  verticalSection,
} from '@fettle/drawings';
import type { Evaluation } from '@fettle/engine';

/** Every drawing of a piece besides its elevation, by name. */
export function workshopDrawings(evaluation: Evaluation): Readonly<Record<string, () => Drawing>> {
  return {
    section: () => verticalSection(evaluation),
    plan: () => planSection(evaluation),
    inside: () => insideElevation(evaluation),
    side: () => sideElevation(evaluation),
    exploded: () => explodedView(evaluation),
    ...Object.fromEntries(
      partSheets(evaluation).map((_, at) => [`parts-${at + 1}`, () => partDrawings(evaluation, at + 1)]),
    ),
  };
}

/** A vertical and a plan section through each opening. */
export function everySection(evaluation: Evaluation): readonly Drawing[] {
  return openingsToCut(evaluation).flatMap(({ id }) => [verticalSection(evaluation, id), planSection(evaluation, id)]);
}
