import { elevation, toSvg } from '@fettle/drawings';
import type { SheetMaker } from './sheet-maker.ts';

/** The piece seen from the front; what cannot be drawn is said on the sheet. */
export const elevationSheet: SheetMaker = {
  id: 'elevation',
  make({ evaluation }) {
    const drawing = elevation(evaluation);
    return {
      kind: 'drawing',
      id: 'elevation',
      title: 'Elevation',
      svg: toSvg(drawing),
      description: drawing.description,
    };
  },
};
