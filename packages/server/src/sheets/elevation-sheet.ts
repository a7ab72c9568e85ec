import { elevation, toSvg } from '@fettle/drawings';
import type { SheetMaker } from './sheet-maker.ts';

/** The piece seen from the front. */
export const elevationSheet: SheetMaker = {
  id: 'elevation',
  make({ evaluation }) {
    const drawing = elevation(evaluation);
    if (drawing === undefined) return undefined;
    return {
      kind: 'drawing',
      id: 'elevation',
      title: 'Elevation',
      svg: toSvg(drawing),
      description: drawing.description,
    };
  },
};
