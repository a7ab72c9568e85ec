import { drawersWithoutSlides, drawerTooWideForItsDepth, type Finding, frontTooLow, type Mend } from '@fettle/findings';
import type { Cell, Divider, GroupCell } from '../../design/design.ts';
import type { SlideEntry } from '../../design/slide-design.ts';
import { type Group, groupAlike } from '../../grouping.ts';
import type { Length } from '../../length/length.ts';
import { type LaidDrawer, laidDrawers } from '../../parts/laid-drawers.ts';
import { LOWEST_FRONT, limitIn, WIDEST_DRAWER_BY_DEPTH } from '../../tables/trade-limits.ts';
import { depthNeeded, suitsBox } from '../suits-box.ts';
import { givenAt } from '../written-sizes.ts';
import { alsoRelated, cellsIn, distinctOrigins, type NamedCell, whoIs } from './alike.ts';
import type { TradeCase } from './case-facts.ts';

/** Drawers that will not run, fronts too low for a box, and drawers that say nothing of what they run on. */
export function drawerProportions(one: TradeCase): readonly Finding[] {
  if (one.face === undefined) return [];
  const drawers = laidDrawers(one.face.design, one.layout, one.face.root);
  const named = cellsIn(one.face.root);
  const lowest = limitIn(LOWEST_FRONT, one.design.units.unit);
  return [...lowFronts(named, lowest), ...wideDrawers(one, drawers, named), ...withoutSlides(one, drawers, named)];
}

function lowFronts(named: readonly NamedCell[], lowest: Length): readonly Finding[] {
  const low = named.flatMap((each) => {
    const { cell, front } = each.laid;
    const height = front?.y.size.length;
    if (cell.kind !== 'front' || cell.what === 'false-front' || height === undefined) return [];
    if (!height.isPositive() || height.compare(lowest) >= 0) return [];
    return [{ ...each, cell, height }];
  });
  return groupAlike(low, ({ height, group }) => [group?.id, height.exactInches]).map((same) => {
    const [first, ...others] = same;
    return frontTooLow.at(
      first.cell.sizeOrigin,
      {
        ...whoIs(first.cell, first.group),
        height: first.height,
        limit: lowest,
        difference: lowest.minus(first.height),
      },
      { related: alsoRelated(others), mends: raiseMends(same, named, lowest) },
    );
  });
}

/** Where its stack has a front that takes the rest, and that one stays high enough. */
function raiseMends(
  same: Group<NamedCell & { readonly height: Length }>,
  named: readonly NamedCell[],
  lowest: Length,
): readonly Mend[] {
  const [{ laid, group, height }] = same;
  const { along } = laid.cell;
  if (same.length > 1 || group?.kind !== 'stack' || along.kind !== 'fixed') return [];
  const at = givenAt(along.figure);
  const size = along.figure.length.plus(lowest.minus(height));
  const resting = named.filter((each) => each.group === group && each.laid.cell.along.kind === 'rest');
  const isRoomy = resting.some(({ laid: { front, opening } }) => {
    const there = (front ?? opening).y.size.length;
    return there.minus(lowest.minus(height)).compare(lowest.times(2)) >= 0;
  });
  const isShared = resting.length !== 1 || resting.some(({ laid: { cell } }) => cell.atLeast !== undefined);
  if (at === undefined || !isRoomy || isShared || laid.cell.atMost !== undefined) return [];
  return [{ how: 'raise', values: { size: lowest }, changes: [{ kind: 'set-length', at, to: size }] }];
}

function wideDrawers(
  { shop }: TradeCase,
  drawers: readonly LaidDrawer[],
  named: readonly NamedCell[],
): readonly Finding[] {
  const wide = drawers.filter(({ box }) => isTooWide(box.x.size.length, box.z.size.length));
  return groupAlike(wide, ({ box }) => [box.x.size.length.exactInches, box.z.size.length.exactInches]).map((same) => {
    const [first, ...others] = same;
    const width = first.box.x.size.length;
    const depth = first.box.z.size.length;
    const limit = depth.times(WIDEST_DRAWER_BY_DEPTH);
    const places = distinctOrigins(same.map(({ drawer }) => drawer.slidesOrigin));
    const deeper = places === undefined ? [] : (shop.slides ?? []).filter((slides) => suits(slides, drawers));
    return drawerTooWideForItsDepth.at(
      first.cell.sizeOrigin,
      { ...whoOf(first), width, depth, limit, difference: width.minus(limit) },
      {
        related: alsoRelated(named.filter(({ laid }) => others.some((other) => other.laid === laid))),
        mends: deeper.slice(0, 3).map((slides) => ({
          how: 'use-slides',
          values: { slides: slides.name },
          changes: (places ?? []).map((at) => ({ kind: 'set-name', at, name: slides.name }) as const),
        })),
      },
    );
  });
}

function isTooWide(width: Length, depth: Length): boolean {
  return depth.isPositive() && width.compare(depth.times(WIDEST_DRAWER_BY_DEPTH)) > 0;
}

/** Slides that go into the case and onto the box of each of these drawers, and make none of them too wide. */
function suits(slides: SlideEntry, drawers: readonly LaidDrawer[]): boolean {
  return drawers.every((one) => {
    const { drawer, laid, box } = one;
    const width = laid.opening.x.size.length.minus(slides.clearanceEachSide.length.times(2));
    return (
      // A width that is written was right for the slides there are now.
      drawer.boxWidth === undefined &&
      suitsBox(slides, one) &&
      depthNeeded(slides).compare(box.depthThere.length) <= 0 &&
      (slides.height === undefined || slides.height.length.compare(box.y.size.length) <= 0) &&
      width.isPositive() &&
      !isTooWide(width, slides.length.length)
    );
  });
}

/** A drawer over a frame or a panel runs on that. */
function withoutSlides(
  { shop }: TradeCase,
  drawers: readonly LaidDrawer[],
  named: readonly NamedCell[],
): readonly Finding[] {
  const bare = drawers.filter(({ drawer, cell }) => {
    const within = named.find(({ laid }) => laid.cell === cell)?.within ?? [];
    const runs = drawer.slides !== undefined || drawer.slidesOrigin !== undefined || drawer.runners !== undefined;
    return !runs && !standsOnRunners(cell, within);
  });
  if (bare.length === 0) return [];
  return groupAlike(bare, ({ drawer }) => drawer.origin).flatMap((same) => {
    const [first] = same;
    const fitting = (shop.slides ?? [])
      .filter((slides) => suits(slides, same))
      .sort((a, b) => b.length.length.compare(a.length.length));
    const longest = fitting[0];
    if (longest === undefined) return [];
    const after = first.drawer.lastStatement;
    return [
      drawersWithoutSlides.at(
        first.drawer.origin,
        { ...whoOf(first), count: same.length, slides: longest.name, length: longest.length.length },
        {
          mends:
            after === undefined
              ? []
              : fitting.slice(0, 3).map((slides) => ({
                  how: 'use-slides',
                  values: { slides: slides.name, count: same.length },
                  changes: [{ kind: 'insert-words', after, words: `   slides "${slides.name}"` } as const],
                })),
        },
      ),
    ];
  });
}

/**
 * Whether a frame or a panel lies directly below a drawer. The lowest of a stack whose others stand on such runs on what
 * closes the stack below, as on one more of them. `within`: the rows and stacks it stands in, the innermost last.
 */
function standsOnRunners(cell: Cell, within: readonly GroupCell[]): boolean {
  let inner = cell;
  for (const group of [...within].reverse()) {
    if (group.kind === 'stack') {
      const at = group.cells.findIndex(({ id }) => id === inner.id);
      const below = group.dividers[at];
      if (below !== undefined) return carries(below);
      if (group.dividers.some(carries)) return true;
    }
    inner = group;
  }
  return false;
}

function carries({ form }: Divider): boolean {
  return form === 'web-frame' || form === 'panel';
}

function whoOf({ cell, words }: LaidDrawer): { readonly name?: string; readonly words: string } {
  return cell.name === undefined ? { words } : { name: cell.name, words };
}
