import { contentsDoNotFit, type Finding, type Mend } from '@fettle/findings';
import { fillSpaces } from '../../contents/fill-spaces.ts';
import type { Space } from '../../contents/how-many-fit.ts';
import { roomInside } from '../../contents/room-inside.ts';
import type { HeldDesign, ThingDesign } from '../../design/contents-design.ts';
import type { FrontCell, OpenCell } from '../../design/design.ts';
import type { LaidCell } from '../../evaluation.ts';
import type { Length } from '../../length/length.ts';
import { rowDistances } from '../../parts/pin-rows.ts';
import { cellsIn, whoIs } from './alike.ts';
import type { TradeCase } from './case-facts.ts';

/** Whether what an opening must hold goes into it. */
export function contentsFindings({ face, layout }: TradeCase): readonly Finding[] {
  if (face === undefined) return [];
  return cellsIn(face.root).flatMap(({ laid, group }) => {
    if (!holdsSomething(laid)) return [];
    // Where shelves lie is not known while a distance of their rows is less than nothing.
    const { pins } = laid.cell.shelves ?? {};
    if (pins !== undefined && rowDistances(pins).some(({ length }) => length.isNegative())) return [];
    const room = roomInside(laid, face.design, layout);
    const [width, depth] = [room.width.length, room.depth.length];
    const spaces = room.heights.map(({ length: height }): Space => ({ width, depth, height }));
    const space = spaces.reduce((highest, each) => (each.height.compare(highest.height) > 0 ? each : highest));
    if (!width.isPositive() || !depth.isPositive() || spaces.some(({ height }) => !height.isPositive())) return [];
    return fillSpaces(laid.cell.holds ?? [], spaces)
      .filter(({ held, placed }) => placed < held.count)
      .map(({ held, placed, perSpace }) =>
        contentsDoNotFit.at(
          held.countOrigin ?? held.origin,
          {
            ...whoIs(laid.cell, group),
            thing: held.thing.name,
            count: held.count,
            fits: placed,
            rooms: spaces.length,
            spaces: spaces.every(({ height }) => height.equals(space.height)) ? 'alike' : 'differ',
            ...space,
            ...(perSpace > 0 ? {} : lacking(held.thing, space)),
          },
          {
            related: [{ role: 'opening', values: whoIs(laid.cell, group), origin: laid.cell.origin }],
            mends: fewer(held, placed),
          },
        ),
      );
  });
}

function holdsSomething(laid: LaidCell): laid is LaidCell & { readonly cell: FrontCell | OpenCell } {
  const { cell } = laid;
  return (cell.kind === 'open' || cell.kind === 'front') && (cell.holds?.length ?? 0) > 0;
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
