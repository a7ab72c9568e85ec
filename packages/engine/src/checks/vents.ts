import {
  type Finding,
  type Mend,
  ventBlocked,
  ventCornerTooRound,
  ventLayerShows,
  ventLeavesNoWood,
  ventLedgeTooDeep,
} from '@fettle/findings';
import type { Rectangle } from '../evaluation.ts';
import { type VentInPlace, type VentLayerInPlace, ventsInPlace } from '../hardware/vent-layers.ts';
import { Length } from '../length/length.ts';
import type { UnmarkedPart } from '../parts/slab.ts';
import { boundsMeet, sharedInterval } from '../solids/bounds.ts';
import { boxOf, type Interval } from '../solids/index.ts';
import { limitIn } from '../tables/trade-limits.ts';
import { LEAST_BEFORE_LEDGE, LEAST_BESIDE_VENT } from '../tables/vent-limits.ts';
import type { TradeCase } from './trade/case-facts.ts';
import { givenAt } from './written-sizes.ts';

/**
 * Openings for air: whether they leave wood around them, whether air gets through them, and whether they can be cut. That
 * a vent meets a groove or a joint is told where cuts of all kinds are held against one another.
 */
export function ventFindings(one: TradeCase): readonly Finding[] {
  if (one.face === undefined) return [];
  return ventsInPlace({ face: one.face.root, parts: one.parts }).flatMap((each) => [
    ...tooRound(each),
    ...tooNearEdge(each, one),
    ...smallerBehind(each),
    ...blocked(each, one),
    ...ledgeTooDeep(each, one),
  ]);
}

function tooRound({ vent }: VentInPlace): readonly Finding[] {
  const { corners, cornersOrigin: at, lining, width, height } = vent;
  if (corners === undefined || at === undefined || !corners.length.isPositive()) return [];
  const isMoreThanHalf = corners.length.times(2).compare(width.length.min(height.length)) > 0;
  if (lining === undefined && !isMoreThanHalf) return [];
  return [
    ventCornerTooRound.at(
      at,
      { radius: corners.length, why: isMoreThanHalf ? 'it is more than half of the opening' : 'a lining is square' },
      {
        related: lining === undefined ? [] : [{ role: 'lining', values: {}, origin: lining.origin }],
        mends: [{ how: 'square', values: {}, changes: [{ kind: 'set-words', at, words: 'square corners' }] }],
      },
    ),
  ];
}

/** The worst place of the whole vent. */
function tooNearEdge({ vent, layers }: VentInPlace, { layout }: TradeCase): readonly Finding[] {
  const limit = limitIn(LEAST_BESIDE_VENT, layout.unit);
  const places = layers.flatMap((layer) => edgesOf(layer).map((edge) => ({ layer, ...edge })));
  const [worst] = places.filter(({ left }) => left.compare(limit) < 0).sort((a, b) => a.left.compare(b.left));
  if (worst === undefined) return [];
  const { layer, edge, left } = worst;
  return [
    ventLeavesNoWood.at(
      vent.origin,
      {
        part: layer.part.label,
        edge,
        left: left.abs(),
        limit,
        beyond: left.isNegative() ? 'yes' : 'no',
      },
      {
        severity: left.isNegative() ? 'error' : 'warning',
        mends: layer.what === 'front' ? awayFromEdge(vent, layer, limit) : [],
      },
    ),
  ];
}

function edgesOf({ hole, part }: VentLayerInPlace) {
  const { x, y } = part.box;
  return [
    { edge: 'left', left: hole.x.start.length.minus(x.start.length) },
    { edge: 'right', left: x.end.length.minus(hole.x.end.length) },
    { edge: 'lower', left: hole.y.start.length.minus(y.start.length) },
    { edge: 'upper', left: y.end.length.minus(hole.y.end.length) },
  ] as const;
}

/** It goes up or down where there is room for it, and gets narrower where it is too wide. */
function awayFromEdge(vent: VentInPlace['vent'], layer: VentLayerInPlace, limit: Length): readonly Mend[] {
  const [left, , lower, upper] = edgesOf(layer).map((edge) => edge.left);
  if (left === undefined || lower === undefined || upper === undefined) return [];
  const [isTooWide, isTooLow, isTooHigh] = [left, lower, upper].map((each) => each.compare(limit) < 0);
  const [atWidth, atUp] = [givenAt(vent.width), givenAt(vent.up)];
  const mends: Mend[] = [];
  if (isTooWide === true && isTooLow === false && isTooHigh === false && atWidth !== undefined) {
    const size = vent.width.length.minus(limit.minus(left).times(2));
    if (size.isPositive())
      mends.push({ how: 'smaller', values: { size }, changes: [{ kind: 'set-length', at: atWidth, to: size }] });
  }
  const room = lower.plus(upper).compare(limit.times(2)) >= 0;
  if (isTooWide === false && room && atUp !== undefined) {
    const by = isTooLow === true ? limit.minus(lower) : upper.minus(limit);
    const size = vent.up.length.plus(by);
    mends.push({ how: 'move', values: { size }, changes: [{ kind: 'set-length', at: atUp, to: size }] });
  }
  return mends;
}

function smallerBehind({ vent, layers }: VentInPlace): readonly Finding[] {
  for (const [at, layer] of layers.entries()) {
    const before = layers[at - 1];
    if (before === undefined) continue;
    const said = layer.what === 'back' ? vent.back : vent.box;
    for (const [along, axis] of [
      ['width', 'x'],
      ['height', 'y'],
    ] as const) {
      const size = before.clear[axis].size.length;
      const difference = size.minus(layer.clear[axis].size.length);
      if (!difference.isPositive()) continue;
      const written = givenAt(said?.[along]);
      return [
        ventLayerShows.at(
          written ?? said?.origin ?? vent.origin,
          { layer: layer.what, before: before.what, along, difference },
          {
            mends:
              written === undefined
                ? []
                : [{ how: 'larger', values: { size }, changes: [{ kind: 'set-length', at: written, to: size }] }],
          },
        ),
      ];
    }
  }
  return [];
}

/** Between the first opening and the last; behind the front of a drawer, as far as the front of its box. */
function blocked({ cell, vent, layers }: VentInPlace, { parts }: TradeCase): readonly Finding[] {
  const [first, last] = [layers[0], layers.at(-1)];
  if (first === undefined || last === undefined) return [];
  const from = first.part.box.z.end.length;
  const boxFront = parts
    .filter(({ role, cell: of }) => role === 'drawer-end' && of === cell.id)
    .map(({ box }) => box.z.end.length)
    .reduce<Length | undefined>((least, end) => least?.min(end) ?? end, undefined);
  const to = first === last ? boxFront : last.part.box.z.start.length;
  if (to === undefined || to.compare(from) <= 0) return [];
  const way = boxOf(intervalOn(first.clear, 'x'), intervalOn(first.clear, 'y'), { from, to });
  const through = new Set(layers.map(({ part }) => part.id));
  const found = parts.flatMap((part) => {
    if (through.has(part.id) || part.role === 'lining') return [];
    const box = boxAround(part);
    return boundsMeet(way, box) ? [{ part, ...covered(way, box) }] : [];
  });
  const [worst] = found.sort((a, b) => b.covers.compare(a.covers));
  if (worst === undefined) return [];
  const { part, covers, along } = worst;
  return [
    ventBlocked.at(
      vent.origin,
      { part: part.label, covers, of: vent[along].length, along },
      { related: [{ role: 'part', values: { part: part.label }, origin: part.origin }] },
    ),
  ];
}

function covered(
  way: ReturnType<typeof boxAround>,
  box: ReturnType<typeof boxAround>,
): { readonly covers: Length; readonly along: 'width' | 'height' } {
  const [x, y] = [sharedInterval(way.x, box.x), sharedInterval(way.y, box.y)];
  const size = (shared: Interval | undefined) => shared?.to.minus(shared.from) ?? Length.zero;
  const isAcross = size(x).equals(way.x.to.minus(way.x.from));
  return isAcross ? { covers: size(y), along: 'height' } : { covers: size(x), along: 'width' };
}

function intervalOn(rectangle: Rectangle, axis: 'x' | 'y'): Interval {
  return { from: rectangle[axis].start.length, to: rectangle[axis].end.length };
}

function boxAround({ box }: Pick<UnmarkedPart, 'box'>) {
  const along = (axis: 'x' | 'y' | 'z'): Interval => ({ from: box[axis].start.length, to: box[axis].end.length });
  return boxOf(along('x'), along('y'), along('z'));
}

function ledgeTooDeep({ vent, layers }: VentInPlace, { layout }: TradeCase): readonly Finding[] {
  const { ledge } = vent;
  const front = layers.find(({ what }) => what === 'front');
  if (ledge === undefined || front === undefined) return [];
  const thickness = front.part.thickness.length;
  const limit = thickness.minus(limitIn(LEAST_BEFORE_LEDGE, layout.unit));
  if (ledge.depth.length.compare(limit) <= 0) return [];
  const at = givenAt(ledge.depth);
  return [
    ventLedgeTooDeep.at(
      at ?? ledge.origin,
      { part: front.part.label, depth: ledge.depth.length, thickness, limit },
      {
        mends:
          at === undefined || !limit.isPositive()
            ? []
            : [{ how: 'shallower', values: { size: limit }, changes: [{ kind: 'set-length', at, to: limit }] }],
      },
    ),
  ];
}
