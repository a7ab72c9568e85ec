import { brokenAround } from './broken-lines.ts';
import type { LaneSide, Lanes } from './dimension-lanes.ts';
import { type Box, type Group, type Line, unionOf } from './primitives.ts';

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

/** Of what is drawn around `box`. */
export function extentOf(box: Box, writing: readonly Box[], lanes: readonly (readonly [LaneSide, Lanes])[]): Box {
  let { left, right, top, bottom } = unionOf([box, ...writing]) ?? box;
  const reachTo = ({ from, to }: Line): void => {
    left = Math.min(left, from.x, to.x);
    right = Math.max(right, from.x, to.x);
    top = Math.min(top, from.y, to.y);
    bottom = Math.max(bottom, from.y, to.y);
  };
  for (const [, side] of lanes) {
    for (const extension of side.extensions) reachTo(extension);
    for (const { dimensions } of side.lanes) {
      for (const { line, ticks } of dimensions) {
        reachTo(line);
        for (const tick of ticks) reachTo(tick);
      }
    }
  }
  return { left, right, top, bottom };
}
