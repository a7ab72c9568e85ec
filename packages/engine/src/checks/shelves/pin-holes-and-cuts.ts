import { type Finding, type Mend, pinHoleTooDeep, pinRowMeetsCut } from '@fettle/findings';
import { groupAlike } from '../../grouping.ts';
import type { PinnedShelves } from '../../hardware/shelf-pins.ts';
import { type Feature, isHoleOfHardware } from '../../joinery/feature.ts';
import { Length } from '../../length/length.ts';
import { exactSource } from '../../length/trade-formats.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';
import { AXES, type Axis, type Bounds, boundsOf, meets, overlapOf, thinnestGap } from '../../solids/index.ts';
import { BEHIND_PIN_HOLE } from '../../tables/shelf-limits.ts';
import { limitIn } from '../../tables/trade-limits.ts';
import { featureWords } from '../joinery/joined-case.ts';
import type { TradeCase } from '../trade/case-facts.ts';
import { givenAt, isSameOrigin } from '../written-sizes.ts';

/** What holes for shelf pins leave of their part, and what they open into. The worst of each statement. */
export function pinHoleFindings(one: TradeCase, all: readonly PinnedShelves[]): readonly Finding[] {
  return all.flatMap((pinned) => {
    const bored = one.parts.flatMap((part) => {
      const holes = part.features.filter(
        ({ kind, origin }) => isPinHole(kind) && isSameOrigin(origin, pinned.pins.origin),
      );
      return holes.length === 0 ? [] : [{ part, holes }];
    });
    const deep = tooDeep(pinned, one, bored);
    return deep.length > 0 ? deep : meeting(pinned, one, bored);
  });
}

interface Bored {
  readonly part: UnmarkedPart;
  readonly holes: readonly Feature[];
}

function isPinHole(kind: Feature['kind']): boolean {
  return kind === 'pin-hole';
}

function tooDeep({ pins }: PinnedShelves, one: TradeCase, bored: readonly Bored[]): readonly Finding[] {
  const limit = limitIn(BEHIND_PIN_HOLE, one.layout.unit);
  const worst = bored
    .map(({ part }) => ({ part, thickness: part.box.x.size.length }))
    .filter(({ thickness }) => thickness.minus(pins.depth.length).compare(limit) < 0)
    .sort((a, b) => a.thickness.compare(b.thickness));
  return worst.slice(0, 1).map(({ part, thickness }) => {
    const left = thickness.minus(pins.depth.length);
    const size = thickness.dividedBy(2);
    const at = givenAt(pins.depth);
    const through = !left.isPositive();
    const mends: readonly Mend[] =
      thickness.minus(size).compare(limit) < 0 ? [] : [deepTo(size, at, pins.origin, one.layout.unit)];
    return pinHoleTooDeep.at(
      at ?? pins.origin,
      { part: part.label, depth: pins.depth.length, thickness, through, left: left.max(Length.zero), limit },
      { mends, ...(through ? { severity: 'error' as const } : {}) },
    );
  });
}

function deepTo(
  size: Length,
  at: ReturnType<typeof givenAt>,
  pins: Feature['origin'],
  unit: TradeCase['layout']['unit'],
): Mend {
  return {
    how: 'shallower',
    values: { size },
    changes: [
      at === undefined
        ? { kind: 'insert-words', after: pins, words: `${exactSource(size, unit)} deep` }
        : { kind: 'set-length', at, to: size },
    ],
  };
}

interface Clash {
  readonly part: UnmarkedPart;
  readonly hole: Feature;
  readonly other: Feature;
}

function meeting(pinned: PinnedShelves, one: TradeCase, bored: readonly Bored[]): readonly Finding[] {
  const clashes = bored.flatMap(({ part, holes }) => clashesIn(part, holes));
  const joints = { joints: one.joints, parts: one.parts };
  return groupAlike(clashes, ({ other }) => [other.kind, other.origin]).map((same) => {
    const [{ part, hole, other }] = same;
    const what = isPinHole(other.kind) ? 'row of holes from its other face' : featureWords(other, joints);
    const by = overlapOf(hole.solid, other.solid)?.leastParting.by ?? Length.zero;
    return pinRowMeetsCut.at(
      pinned.pins.origin,
      { row: rowOf(hole, pinned), part: part.label, other: what, by },
      {
        related: [{ role: 'other', values: { what }, origin: other.origin }],
        mends: [...shallower(same, pinned, one), ...shorter(same, pinned, one)],
      },
    );
  });
}

function clashesIn(part: UnmarkedPart, holes: readonly Feature[]): readonly Clash[] {
  const [first, last] = [holes[0], holes.at(-1)];
  if (first === undefined || last === undefined) return [];
  // Holes of one opening never meet one another; those of another are bored from the other face, or elsewhere.
  const others = part.features.filter(
    (each) => !isSameOrigin(each.origin, first.origin) && !isLaterPinHole(each, first) && !isHoleOfHardware(each),
  );
  // Most cuts lie apart from all of the holes at once: these come row by row, each row from below.
  const whole = hullOf([boundsOf(first.solid), boundsOf(last.solid)]);
  const near = others.filter(({ solid }) => boundsTouch(whole, boundsOf(solid)));
  if (near.length === 0) return [];
  return holes.flatMap((hole) => {
    const around = boundsOf(hole.solid);
    return near
      .filter((other) => boundsTouch(around, boundsOf(other.solid)) && meetsOrTouches(hole, other))
      .map((other): Clash => ({ part, hole, other }));
  });
}

/** Where no wood is left between them the hole opens into the cut as soon as a bit wanders. */
function meetsOrTouches(hole: Feature, other: Feature): boolean {
  return meets(hole.solid, other.solid) || thinnestGap(hole.solid, other.solid)?.wall.isZero() === true;
}

function boundsTouch(a: Bounds, b: Bounds): boolean {
  return AXES.every((axis) => a[axis].from.compare(b[axis].to) <= 0 && b[axis].from.compare(a[axis].to) <= 0);
}

function hullOf(all: readonly Bounds[]): Bounds {
  const along = (axis: Axis) =>
    all.map((each) => each[axis]).reduce((a, b) => ({ from: a.from.min(b.from), to: a.to.max(b.to) }));
  return { x: along('x'), y: along('y'), z: along('z') };
}

/** Of two rows that meet the one that is bored from the right is told. */
function isLaterPinHole(other: Feature, hole: Feature): boolean {
  return isPinHole(other.kind) && hole.entry === '-x';
}

function rowOf(hole: Feature, { rows: [front] }: PinnedShelves): 'front' | 'back' {
  const { from, to } = boundsOf(hole.solid).z;
  const middle = front.middle.length;
  return from.compare(middle) < 0 && middle.compare(to) < 0 ? 'front' : 'back';
}

/** A cut from the far face is cleared by less depth. */
function shallower(same: readonly Clash[], { pins }: PinnedShelves, one: TradeCase): readonly Mend[] {
  const limit = limitIn(BEHIND_PIN_HOLE, one.layout.unit);
  const depths = same.map(({ hole, other }) => {
    if (other.entry === hole.entry || !other.entry.endsWith('x')) return undefined;
    const [a, b] = [boundsOf(hole.solid).x, boundsOf(other.solid).x];
    const free = hole.entry === '+x' ? a.to.minus(b.to) : b.from.minus(a.from);
    return free.minus(limit);
  });
  const [first] = depths;
  if (first === undefined || depths.includes(undefined)) return [];
  const size = depths.reduce<Length>((least, each) => least.min(each ?? least), first);
  return size.compare(limit) < 0 ? [] : [deepTo(size, givenAt(pins.depth), pins.origin, one.layout.unit)];
}

/** What only the lowest or the highest holes meet is cleared by a row that begins higher or ends lower. */
function shorter(same: readonly Clash[], { pins, laid }: PinnedShelves, one: TradeCase): readonly Mend[] {
  const limit = limitIn(BEHIND_PIN_HOLE, one.layout.unit);
  const [floor, ceiling] = [laid.opening.y.start.length, laid.opening.y.end.length];
  const middle = floor.plus(ceiling).dividedBy(2);
  const radius = pins.diameter.length.dividedBy(2);
  const cuts = same.map(({ other }) => boundsOf(other.solid).y);
  const [low, high] = [givenAt(pins.lowest), givenAt(pins.highest)];
  const tops = cuts.reduce((most, { to }) => most.max(to), floor);
  const feet = cuts.reduce((least, { from }) => least.min(from), ceiling);
  if (low !== undefined && tops.compare(middle) < 0) {
    const size = tops.minus(floor).plus(radius).plus(limit);
    return [{ how: 'raise', values: { size }, changes: [{ kind: 'set-length', at: low, to: size }] }];
  }
  if (high !== undefined && feet.compare(middle) > 0) {
    const size = feet.minus(floor).minus(radius).minus(limit);
    return [{ how: 'lower', values: { size }, changes: [{ kind: 'set-length', at: high, to: size }] }];
  }
  return [];
}
