import { elevation, toSvg } from '@fettle/drawings';
import { divisionLines } from './division-lines.ts';
import type { SheetMaker } from './sheet-maker.ts';

/** The piece seen from the front; what cannot be drawn is said on the sheet. */
export const elevationSheet: SheetMaker = {
  id: 'elevation',
  title: 'Elevation',
  shows: 'drawing',
  suits: () => true,
  make({ evaluation, say }) {
    const drawing = elevation(evaluation);
    return {
      kind: 'drawing',
      title: 'Elevation',
      svg: toSvg(drawing),
      description: drawing.description,
      divisions: divisionLines(evaluation, drawing, say),
    };
  },
  files: { svg: ({ evaluation }) => toSvg(elevation(evaluation), { standalone: true }) },
};
