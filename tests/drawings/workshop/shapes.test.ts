import fc from 'fast-check';
import { expect, it } from 'vitest';
import { edgesOfCells } from '../../../packages/drawings/src/shapes/cell-edges.ts';
import {
  boxCell,
  type ConvexCell,
  cornersOf,
  type Extent,
  lessConvex,
} from '../../../packages/drawings/src/shapes/convex-cell.ts';
import { seenStretches, shadowOf } from '../../../packages/drawings/src/shapes/seen-edges.ts';
import { dot, minus, vector } from '../../../packages/drawings/src/shapes/vectors.ts';
import { FROM_FRONT } from '../../../packages/drawings/src/shapes/view-direction.ts';

/** The wood of pictures: what is cut away is gone and nothing else, and only real edges are drawn where one sees them. */

const interval = fc
  .tuple(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 1, max: 12 }))
  .map(([from, size]) => [from, from + size] as const);
const box: fc.Arbitrary<Extent> = fc.record({ x: interval, y: interval, z: interval });

function planes({ x, y, z }: Extent) {
  return boxCell({ x, y, z }).faces;
}

function volume({ x, y, z }: Extent): number {
  return (x[1] - x[0]) * (y[1] - y[0]) * (z[1] - z[0]);
}

function shared(a: Extent, b: Extent): number {
  return (['x', 'y', 'z'] as const)
    .map((axis) => Math.max(0, Math.min(a[axis][1], b[axis][1]) - Math.max(a[axis][0], b[axis][0])))
    .reduce((product, each) => product * each, 1);
}

/** Cells of boxes less boxes are boxes. */
function boxVolume(cell: ConvexCell): number {
  return (['x', 'y', 'z'] as const)
    .map((axis) => {
      const places = cornersOf(cell).map((corner) => corner[axis]);
      return Math.max(...places) - Math.min(...places);
    })
    .reduce((product, each) => product * each, 1);
}

it('a box less another is as large as it was less what both share', () => {
  fc.assert(
    fc.property(box, box, (wood, cut) => {
      const left = lessConvex(boxCell(wood), planes(cut)).reduce((sum, cell) => sum + boxVolume(cell), 0);
      expect(left).toBeCloseTo(volume(wood) - shared(wood, cut), 6);
    }),
  );
});

function edgeLength(cells: readonly ConvexCell[]): number {
  return edgesOfCells(cells).reduce((sum, { from, to }) => sum + Math.sqrt(dot(minus(to, from), minus(to, from))), 0);
}

it('a box that is only divided has the twelve edges it had', () => {
  fc.assert(
    fc.property(box, box, (wood, other) => {
      const left = lessConvex(boxCell(wood), planes(other));
      const inside = {
        x: [Math.max(wood.x[0], other.x[0]), Math.min(wood.x[1], other.x[1])],
        y: [Math.max(wood.y[0], other.y[0]), Math.min(wood.y[1], other.y[1])],
        z: [Math.max(wood.z[0], other.z[0]), Math.min(wood.z[1], other.z[1])],
      } as const;
      const filled = shared(wood, other) > 0 ? [...left, boxCell(inside)] : left;
      const { x, y, z } = wood;
      expect(edgesOfCells(filled)).toHaveLength(12);
      expect(edgeLength(filled)).toBeCloseTo(4 * (x[1] - x[0] + y[1] - y[0] + z[1] - z[0]), 6);
    }),
  );
});

it('a groove along a board adds its own edges and opens the board at both ends', () => {
  const board: Extent = { x: [0, 100], y: [0, 20], z: [0, 300] };
  const groove: Extent = { x: [40, 50], y: [12, 20], z: [0, 300] };
  // Both ends gain two walls of 8 and a floor of 10 for 10 of the rim; four long edges are new: two at the rim, two at the floor.
  expect(edgeLength(lessConvex(boxCell(board), planes(groove)))).toBeCloseTo(
    4 * (100 + 20 + 300) + 2 * (8 + 8 + 10 - 10) + 4 * 300,
    6,
  );
});

it('of a board behind another one sees what sticks out, and nothing through the seam of two', () => {
  const behind = { from: vector(0, 5, 10), to: vector(30, 5, 10) };
  const before = shadowOf(boxCell({ x: [10, 20], y: [0, 10], z: [0, 5] }), FROM_FRONT);
  const { seen, hidden } = seenStretches(behind, [before], FROM_FRONT);
  expect(seen.map(({ from, to }) => [from.u, to.u].map(Math.round))).toEqual([
    [0, 10],
    [20, 30],
  ]);
  expect(hidden.map(({ from, to }) => [from.u, to.u].map(Math.round))).toEqual([[10, 20]]);
  const upright = { from: vector(10, 0, 10), to: vector(10, 10, 10) };
  const left = shadowOf(boxCell({ x: [0, 10], y: [0, 10], z: [0, 5] }), FROM_FRONT);
  expect(seenStretches(upright, [left, before], FROM_FRONT).seen).toEqual([]);
  expect(seenStretches(upright, [before], FROM_FRONT).seen).toHaveLength(1);
});
