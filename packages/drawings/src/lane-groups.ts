import { brokenAround } from './broken-lines.ts';
import type { LaneSide, Lanes } from './dimension-lanes.ts';
import { type Box, type Group, unionOf } from './primitives.ts';

/** Lanes of dimensions beside a view as groups of a drawing, and how far they reach. */

/** A stretch widened about its middle to `room`, never narrowed. */
export function stretched(low: number, high: number, room: number): readonly [number, number] {
  const more = Math.max(0, room - (high - low)) / 2;
  return [low - more, high + more];
}

export function laneGroups(side: LaneSide, laid: Lanes, writing: readonly Box[]): readonly Group[] {
  if (laid.lanes.length === 0) return [];
  const extensions: Group = {
    kind: 'group',
    id: `extensions-${side}`,
    name: 'extensions',
    children: laid.extensions.flatMap((whole) => brokenAround(whole, writing)),
  };
  const lanes = laid.lanes.map(
    (lane): Group => ({
      kind: 'group',
      id: `lane-${side}-${lane.id}`,
      name: 'lane',
      children: [...lane.dimensions, ...(lane.caption === undefined ? [] : [lane.caption])],
    }),
  );
  return [extensions, ...lanes];
}

export function extentOf(boxes: readonly Box[], lanes: readonly (readonly [LaneSide, Lanes])[]): Box {
  const lines = lanes.flatMap(([, side]) => [
    ...side.extensions,
    ...side.lanes.flatMap((lane) => lane.dimensions.flatMap(({ line: measured, ticks }) => [measured, ...ticks])),
  ]);
  const lineBoxes = lines.map(({ from, to }) => ({
    left: Math.min(from.x, to.x),
    right: Math.max(from.x, to.x),
    top: Math.min(from.y, to.y),
    bottom: Math.max(from.y, to.y),
  }));
  return unionOf([...boxes, ...lineBoxes]) ?? { left: 0, right: 0, top: 0, bottom: 0 };
}
