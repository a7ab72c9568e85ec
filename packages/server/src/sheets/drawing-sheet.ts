import { type Drawing, toSvg } from '@fettle/drawings';
import type { Evaluation } from '@fettle/engine';
import type { PieceSheetMaker } from './sheet-maker.ts';

/** What a sheet needs that is one drawing, without lines that could be moved. */
interface DrawingSheet extends Pick<PieceSheetMaker, 'id' | 'title' | 'choice'> {
  draw(evaluation: Evaluation, option?: string): Drawing;
}

/** A piece without parts has no further drawing: its elevation says what is missing. */
export function drawingSheet({ id, title, choice, draw }: DrawingSheet): PieceSheetMaker {
  return {
    id,
    title,
    shows: 'drawing',
    ...(choice === undefined ? {} : { choice }),
    suits: ({ evaluation }) => evaluation.parts.length > 0,
    make({ evaluation }, option) {
      const drawing = draw(evaluation, option);
      return { kind: 'drawing', title, svg: toSvg(drawing), description: drawing.description, divisions: [] };
    },
    files: { svg: ({ evaluation }, option) => toSvg(draw(evaluation, option), { standalone: true }) },
  };
}
