import { Length } from '@fettle/engine';
import { type Content, downTo, type Household, type Stature, type System, wholeNumberOf } from './answers.ts';
import { slideFor } from './starter-shop.ts';

/**
 * From the place where a piece stands, what it holds and who lives with it to its overall size. Exact. Figures without
 * a source are common practice.
 */

/** Where a piece stands, or the piece itself. */
export interface Place {
  readonly width: Length;
  readonly height: Length;
  readonly depth: Length;
}

/** What is kept free on each side, behind and above, so that the piece goes in. */
export function clearance(system: System): Length {
  return system.of(Length.inches(1, 2), 12);
}

/** The longest side or bottom that one sheet gives. */
function longest(system: System): Length {
  return system.of(Length.inches(96), 2400);
}

/**
 * The widest column: a shelf of 3/4" plywood (23/32" real, E 950,000 psi) under 50 lb a square foot keeps to 1/144 of its
 * length up to 35.6" (Architectural Woodwork Standards 2009, 10-4.4.14.10; 34" for 17.5 mm).
 */
function widestColumn(system: System, size: Place, kinds: readonly Kind[], zone: Length): Length {
  const limits = [system.of(Length.inches(35), 850)];
  // A drawer wider than twice its depth racks, a door wider than high sags (common practice, no source).
  if (kinds.includes('drawers')) limits.push(slideFor(system, size.depth).length.times(2));
  if (kinds.includes('doors')) limits.push(zone.times(2));
  return limits.reduce((least, each) => least.min(each));
}
/** The narrowest column that is worth making beside another. */
function narrowestColumn(system: System): Length {
  return system.of(Length.inches(14), 350);
}

export function hasDrawers(holds: readonly Content[]): boolean {
  return holds.includes('papers') || holds.includes('clothes');
}

export type Kind = 'shelves' | 'doors' | 'drawers';

/** What kinds of space the contents ask for, from top to bottom. */
export function kindsFor(holds: readonly Content[]): readonly Kind[] {
  const kinds: Kind[] = [];
  if (holds.includes('books')) kinds.push('shelves');
  if (holds.includes('boxes')) kinds.push('doors');
  if (hasDrawers(holds)) kinds.push('drawers');
  return kinds;
}

export function widestThatGoesIn(system: System, place: Length): Length {
  return downTo(system.grid, place.minus(clearance(system).times(2)).min(longest(system)));
}

/** What goes in, and no wider than one sheet makes its back, which may lie either way. */
export function overallWidth(system: System, place: Length, height: Length): Length {
  const acrossSheet = system.of(Length.inches(48), 1220);
  const most = widestThatGoesIn(system, place);
  return height.minus(plinthHeight(system)).compare(acrossSheet) <= 0
    ? most
    : most.min(downTo(system.grid, acrossSheet));
}

export function overallDepth(system: System, place: Length, holds: readonly Content[]): Length {
  const wanted =
    holds.length === 1 && holds[0] === 'books' ? system.of(Length.inches(12), 300) : system.of(Length.inches(18), 460);
  return downTo(system.grid, place.minus(clearance(system)).min(wanted));
}

/** The narrowest, lowest and shallowest place that something can be built for; how low depends on how wide it is. */
export function leastPlace(system: System, holds: readonly Content[], width: Length): Place {
  return {
    width: system.of(Length.inches(13), 330),
    height: clearance(system).plus(leastHeight(system, holds, widestThatGoesIn(system, width))),
    // A drawer on slides of 10" or 250 mm.
    depth: hasDrawers(holds) ? system.of(Length.inches(25, 2), 312) : system.of(Length.inches(17, 2), 212),
  };
}

/** Beyond this a slip of the keyboard or of the unit is likelier than such a room. */
export function largestPlace(system: System): Length {
  return system.of(Length.inches(480), 12000);
}

/** Plinth, bottom and top, and ten inches for each kind of space that stands above another. */
function leastHeight(system: System, holds: readonly Content[], width: Length): Length {
  const kinds = kindsFor(holds);
  const above = standApart(system, width, kinds) ? 1 : kinds.length;
  return frameHeight(system).plus(system.of(Length.inches(10), 250).times(above));
}

/** Whether each kind of space gets a column of its own in a piece of this width. */
function standApart(system: System, width: Length, kinds: readonly Kind[]): boolean {
  return insideWidth(system, width).compare(narrowestColumn(system).times(kinds.length)) >= 0;
}

/** Between the sides, nearly. */
function insideWidth(system: System, width: Length): Length {
  return width.minus(system.of(Length.inches(3, 2), 36));
}

export function plinthHeight(system: System): Length {
  // At least 3" high and 2" deep leaves room for the toes (ANSI/KCMA A161.1, list of requirements).
  return system.of(Length.inches(3), 76);
}

function frameHeight(system: System): Length {
  return plinthHeight(system).plus(system.of(Length.inches(3, 2), 36));
}

/** Above this a drawer cannot be looked into, and a piece is likelier to be stood up from lying than carried upright. */
export function chestHeight(system: System): Length {
  return system.of(Length.inches(54), 1370);
}

/**
 * How high a piece of that stature is. Undefined where it does not fit the place, what it holds, or whoever lives with
 * it.
 */
export function heightOf(
  stature: Stature,
  of: {
    readonly system: System;
    readonly place: Place;
    readonly holds: readonly Content[];
    readonly people: Household;
  },
): Length | undefined {
  const { system, holds, people, place } = of;
  const most = highest(of);
  const wanted = {
    low: system.of(Length.inches(18), 450),
    side: system.of(Length.inches(34), 860),
    chest: system.of(Length.inches(48), 1200),
    tall: system.of(Length.inches(78), 2000),
    full: most,
  }[stature];
  // Somebody seated reaches 48" high from the side (2010 ADA Standards, 308.3.1).
  const reach = people === 'seated' ? system.of(Length.inches(48), 1219) : undefined;
  const drawersOnly = kindsFor(holds).every((kind) => kind === 'drawers') ? chestHeight(system) : undefined;
  const limit = [reach, drawersOnly].reduce<Length>(
    (least, each) => (each === undefined ? least : least.min(each)),
    most,
  );
  const height = stature === 'full' ? downTo(system.grid, limit) : wanted;
  if (
    height.compare(limit) > 0 ||
    height.compare(leastHeight(system, holds, overallWidth(system, place.width, height))) < 0
  )
    return undefined;
  return height;
}

/** As high as goes in: less the clearance; and what is stood up from lying must turn under the ceiling. */
function highest({ system, place, holds }: { system: System; place: Place; holds: readonly Content[] }): Length {
  const most = downTo(system.grid, place.height.minus(clearance(system)).min(longest(system)));
  if (most.compare(chestHeight(system)) <= 0) return most;
  const depth = overallDepth(system, place.depth, holds).in(system.unit);
  const ceiling = place.height.in(system.unit);
  const turns = (height: Length) => {
    const side = height.in(system.unit);
    return side.times(side).plus(depth.times(depth)).compare(ceiling.times(ceiling)) <= 0;
  };
  let height = most;
  while (!turns(height) && height.compare(chestHeight(system)) > 0) height = height.minus(system.grid);
  return height.max(downTo(system.grid, chestHeight(system)));
}

/** How many columns, and which kinds each holds from top to bottom. */
export function columnsFor(system: System, size: Place, holds: readonly Content[]): readonly (readonly Kind[])[] {
  const kinds = kindsFor(holds);
  const inside = insideWidth(system, size.width);
  const apart = standApart(system, size.width, kinds);
  // What each kind gets of the height, with room to spare for what divides them.
  const zone = size.height
    .minus(frameHeight(system))
    .dividedBy(apart ? 1 : kinds.length)
    .minus(system.of(Length.inches(2), 50));
  const needed = Math.max(1, -wholeNumberOf(inside.negated(), widestColumn(system, size, kinds, zone)));
  if (!apart) return Array.from({ length: needed }, () => kinds);
  const count = Math.max(needed, kinds.length);
  const others = kinds.filter((kind) => kind !== 'drawers');
  const above = others.at(-1);
  return symmetrical(kinds, count).map((kind) =>
    // No drawer stands higher than one can look into: something else goes above.
    kind === 'drawers' && above !== undefined && size.height.compare(chestHeight(system)) > 0 ? [above, kind] : [kind],
  );
}

/** Each kind at least once; the same from left and from right where the count allows: doors, drawers, doors. */
function symmetrical(kinds: readonly Kind[], count: number): readonly Kind[] {
  const mirrored = count >= 2 * kinds.length - 1;
  return Array.from({ length: count }, (_, index) => {
    const place = mirrored ? Math.min(index, count - 1 - index) : index;
    return kinds[place % kinds.length] ?? 'doors';
  });
}
