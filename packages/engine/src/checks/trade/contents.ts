import { contentsDoNotFit, type Finding, type Mend, type Origin } from '@fettle/findings';
import { fillSpaces } from '../../contents/fill-spaces.ts';
import type { Space } from '../../contents/how-many-fit.ts';
import { type RoomInside, roomInside } from '../../contents/room-inside.ts';
import type { HeldDesign, ThingDesign } from '../../design/contents-design.ts';
import type { FaceDesign, FrontCell, OpenCell } from '../../design/design.ts';
import type { LaidCell } from '../../evaluation.ts';
import type { Length } from '../../length/length.ts';
import { rowDistances } from '../../parts/pin-rows.ts';
import { cellsIn, whoIs } from './alike.ts';
import type { TradeCase } from './case-facts.ts';

/** Whether what an opening must hold goes into it. */
export function contentsFindings({ face, layout }: TradeCase): readonly Finding[] {
  if (face === undefined) return [];
  return cellsIn(face.root).flatMap(({ laid, group }) => {
    if (!holdsSomething(laid, face.design)) return [];
    // Where shelves lie is not known while a distance of their rows is less than nothing.
    const { pins } = laid.cell.shelves ?? {};
    if (pins !== undefined && rowDistances(pins).some(({ length }) => length.isNegative())) return [];
    const room = roomInside(laid, face.design, layout);
    const [width, depth] = [room.width.length, room.depth.length];
    const spaces = spacesOf(room);
    if (!width.isPositive() || !depth.isPositive()) return [];
    // A compartment without any size is told of the compartments.
    if (spaces.some((each) => [each.width, each.depth, each.height].some((size) => !size.isPositive()))) return [];
    const who = whoIs(laid.cell, group);
    return [
      ...tooMuch(laid.cell.holds ?? [], spaces, who, laid.cell.origin),
      ...heldInCompartments(laid, face.design).flatMap(({ holds, at }) => {
        const space = spaces[at];
        return space === undefined
          ? []
          : tooMuch(holds, [space], { ...who, part: `compartment ${at + 1} of ` }, laid.cell.origin);
      }),
    ];
  });
}

function spacesOf({ width, depth, heights, compartments }: RoomInside): readonly Space[] {
  const whole = heights.map(({ length: height }): Space => ({ width: width.length, depth: depth.length, height }));
  if (compartments === undefined) return whole;
  const { way, sizes } = compartments;
  return whole.flatMap((space) =>
    sizes.map(({ length }): Space => (way === 'across' ? { ...space, width: length } : { ...space, depth: length })),
  );
}

function tooMuch(holds: readonly HeldDesign[], spaces: readonly Space[], who: Who, cell: Origin): readonly Finding[] {
  const [first] = spaces;
  if (first === undefined) return [];
  const space = spaces.reduce((largest, each) => (isLarger(each, largest) ? each : largest), first);
  const differ = spaces.some((each) => !each.width.equals(space.width) || !each.depth.equals(space.depth));
  const higher = spaces.some(({ height }) => !height.equals(space.height));
  return fillSpaces(holds, spaces)
    .filter(({ held, placed }) => placed < held.count)
    .map(({ held, placed, perSpace }) =>
      contentsDoNotFit.at(
        held.countOrigin ?? held.origin,
        {
          ...who,
          thing: held.thing.name,
          count: held.count,
          fits: placed,
          rooms: spaces.length,
          spaces: differ ? 'differ-in-size' : higher ? 'differ' : 'alike',
          ...space,
          ...(perSpace > 0 ? {} : lacking(held.thing, space)),
        },
        {
          related: [{ role: 'opening', values: { ...who }, origin: cell }],
          mends: fewer(held, placed),
        },
      ),
    );
}

type Who = ReturnType<typeof whoIs> & { readonly part?: string };

/** The highest, and of those the one with the largest floor. */
function isLarger(one: Space, other: Space): boolean {
  const higher = one.height.compare(other.height);
  if (higher !== 0) return higher > 0;
  return one.width.compare(other.width) > 0 || one.depth.compare(other.depth) > 0;
}

function heldInCompartments(
  { cell }: LaidCell,
  face: FaceDesign,
): readonly { readonly holds: readonly HeldDesign[]; readonly at: number }[] {
  const drawer = cell.kind === 'front' && cell.what === 'drawer' ? (cell.drawer ?? face.drawers) : undefined;
  return (drawer?.compartments?.each ?? []).flatMap(({ holds }, at) => (holds === undefined ? [] : [{ holds, at }]));
}

function holdsSomething(laid: LaidCell, face: FaceDesign): laid is LaidCell & { readonly cell: FrontCell | OpenCell } {
  const { cell } = laid;
  if (cell.kind !== 'open' && cell.kind !== 'front') return false;
  return (cell.holds?.length ?? 0) > 0 || heldInCompartments(laid, face).length > 0;
}

/** The measure, as the thing stands, that is missing most. */
function lacking(
  thing: ThingDesign,
  space: Space,
): { readonly side?: 'wide' | 'deep' | 'high'; readonly short?: Length } {
  const sides = [
    { side: 'wide', short: thing.width.length.minus(space.width) },
    { side: 'deep', short: thing.depth.length.minus(space.depth) },
    { side: 'high', short: thing.height.length.minus(space.height) },
  ] as const;
  const [first, ...rest] = sides;
  const worst = rest.reduce<(typeof sides)[number]>(
    (most, each) => (each.short.compare(most.short) > 0 ? each : most),
    first,
  );
  return worst.short.isPositive() ? worst : {};
}

function fewer({ countOrigin }: HeldDesign, placed: number): readonly Mend[] {
  if (countOrigin === undefined || placed === 0) return [];
  return [
    {
      how: 'fewer',
      values: { count: placed },
      changes: [{ kind: 'set-words', at: countOrigin, words: String(placed) }],
    },
  ];
}
