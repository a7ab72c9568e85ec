import {
  explodedView,
  insideElevation,
  openingsToCut,
  openingToCutFirst,
  partDrawings,
  partSheets,
  planSection,
  sideElevation,
  verticalSection,
} from '@fettle/drawings';
import type { EvaluatedPiece } from '@fettle/language';
import { drawingSheet } from './drawing-sheet.ts';
import type { SheetMaker, SheetOption } from './sheet-maker.ts';

/** Sections, further elevations, the piece come apart and its parts. */

/** The opening that tells most first, the others in the order of the text. */
function openings({ evaluation }: EvaluatedPiece): readonly SheetOption[] {
  const first = openingToCutFirst(evaluation);
  const all = openingsToCut(evaluation);
  const sorted = first === undefined ? all : [first, ...all.filter(({ id }) => id !== first.id)];
  return sorted.map(({ id, words }) => ({ id, words }));
}

const opening = { label: 'Opening', options: openings };

function sheetNumbers({ evaluation }: EvaluatedPiece): readonly SheetOption[] {
  const sheets = partSheets(evaluation);
  return sheets.map((parts, at) => {
    const marks = [parts[0], parts[parts.length - 1]].map((each) => each?.same[0]?.mark ?? '');
    return { id: `${at + 1}`, words: `${at + 1} of ${sheets.length}: ${marks[0]} to ${marks[1]}` };
  });
}

export const workshopSheets: readonly SheetMaker[] = [
  drawingSheet({ id: 'inside', title: 'Inside', draw: insideElevation }),
  drawingSheet({ id: 'side', title: 'Side', draw: sideElevation }),
  drawingSheet({ id: 'section', title: 'Section', choice: opening, draw: verticalSection }),
  drawingSheet({ id: 'plan', title: 'Plan', choice: opening, draw: planSection }),
  drawingSheet({ id: 'exploded', title: 'Exploded', draw: explodedView }),
  drawingSheet({
    id: 'parts',
    title: 'Parts',
    choice: { label: 'Sheet', options: sheetNumbers },
    draw: (evaluation, option) => partDrawings(evaluation, Number(option ?? 1)),
  }),
];
