import { type Drawing, walk } from '@fettle/drawings';
import { divisionsOf, type Evaluation, Length, type Part, sizeAlong } from '@fettle/engine';
import type { Say } from '@fettle/findings';
import type { DivisionLine } from '@fettle/protocol';

/**
 * Where the lines between neighbours lie on a front elevation, so that they can be taken hold of there. Reads the
 * drawing's own coordinates back from a part that is drawn true to scale; works out no geometry of the piece.
 */

interface Projection {
  x(length: Length): number;
  y(length: Length): number;
  across(length: Length): number;
}

const mmPerInch = 25.4;

/** From the first part whose whole area is drawn; undefined on a sheet that shows no piece. */
function projectionOf(drawing: Drawing, parts: readonly Part[]): Projection | undefined {
  const scale = drawing.paperPerReal;
  if (scale === undefined) return undefined;
  const across = (length: Length) => length.approximateInches * mmPerInch * scale;
  const byId = new Map(parts.map((part) => [part.id, part]));
  for (const primitive of walk(drawing.content)) {
    if (primitive.kind !== 'group' || primitive.part === undefined) continue;
    const part = byId.get(primitive.part.id);
    const area = primitive.children.find((child) => child.kind === 'rectangle');
    if (part === undefined || area?.kind !== 'rectangle') continue;
    const left = area.box.left - across(part.box.x.start.length);
    const floor = area.box.bottom + across(part.box.y.start.length);
    return { x: (length) => left + across(length), y: (length) => floor - across(length), across };
  }
  return undefined;
}

export function divisionLines(evaluation: Evaluation, drawing: Drawing, say: Say): readonly DivisionLine[] {
  const projection = projectionOf(drawing, evaluation.parts);
  if (projection === undefined) return [];
  const { unit, ruler } = evaluation.design.units;
  const step = projection.across(Length.of(ruler, unit));
  if (!(step > 0)) return [];
  return divisionsOf(evaluation).flatMap((division): DivisionLine[] => {
    const { id, group, before, after, beforeLabel, afterLabel } = division;
    const [one, other] = [before.opening, after.opening];
    const isRow = group.kind === 'row';
    const middle = isRow
      ? one.x.end.length.plus(other.x.start.length).dividedBy(2)
      : one.y.start.length.plus(other.y.end.length).dividedBy(2);
    const ends = isRow
      ? [
          projection.y(one.y.end.length.max(other.y.end.length)),
          projection.y(one.y.start.length.min(other.y.start.length)),
        ]
      : [
          projection.x(one.x.start.length.min(other.x.start.length)),
          projection.x(one.x.end.length.max(other.x.end.length)),
        ];
    const [from = 0, to = 0] = ends;
    const at = isRow ? projection.x(middle) : projection.y(middle);
    if (![from, to, at].every(Number.isFinite)) return [];
    return [
      {
        id,
        label: `line between ${beforeLabel} and ${afterLabel}`,
        moves: isRow ? 'x' : 'y',
        at,
        from,
        to,
        step,
        sizes: `${beforeLabel} ${say.length(sizeAlong(before, group))}, ${afterLabel} ${say.length(sizeAlong(after, group))}`,
      },
    ];
  });
}
