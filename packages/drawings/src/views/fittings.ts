import type { LineRole } from '../line-types.ts';
import type { Projection } from '../parts-in-view.ts';
import {
  type Box,
  boxAround,
  boxesOverlap,
  type Group,
  grown,
  type Line,
  type Point,
  type Polyline,
} from '../primitives.ts';
import type { Flat } from '../shapes/view-direction.ts';
import { onPaper } from './on-paper.ts';

/** What a view shows beside its parts: one line each. */
export interface Fitting {
  readonly id: string;
  readonly what: 'hinge' | 'pull' | 'swing';
  readonly role: Extract<LineRole, 'behind' | 'hidden' | 'swing'>;
  /** In real millimetres. */
  readonly points: readonly Flat[];
}

export function fittingBoxes(fittings: readonly Fitting[], to: Projection): readonly Box[] {
  return fittings.map(({ points }) => boxAround(points.map((point) => onPaper(point, to))));
}

/** Its straight pieces, for whoever has to keep clear of them. */
export function fittingLines(fittings: readonly Fitting[], to: Projection): readonly Line[] {
  return fittings.flatMap(({ role, points }) => {
    const paper = points.map((point) => onPaper(point, to));
    return paper.slice(1).flatMap((end, at): readonly Line[] => {
      const from = paper[at];
      return from === undefined ? [] : [{ kind: 'line', role, from, to: end }];
    });
  });
}

const ROOM_MM = 0.5;

/** Open around lettering, as any line; in one piece between it, so that its dashes run on. */
export function fittingsGroup(fittings: readonly Fitting[], to: Projection, writing: readonly Box[]): Group {
  return {
    kind: 'group',
    id: 'fittings',
    name: 'fittings',
    children: fittings.flatMap(({ role, points }) =>
      clearRuns(
        points.map((point) => onPaper(point, to)),
        writing,
      ).map((run): Polyline => ({ kind: 'polyline', role, points: run, closed: false })),
    ),
  };
}

function clearRuns(points: readonly Point[], writing: readonly Box[]): readonly (readonly Point[])[] {
  const runs: Point[][] = [];
  let run: Point[] = [];
  points.forEach((point, at) => {
    const before = points[at - 1];
    const isCovered =
      before !== undefined && writing.some((box) => boxesOverlap(grown(box, ROOM_MM), boxAround([before, point])));
    if (isCovered) {
      runs.push(run);
      run = [];
    }
    run.push(point);
  });
  runs.push(run);
  return runs.filter((each) => each.length > 1);
}
