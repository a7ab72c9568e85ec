import { derive, plus } from '../design/derive.ts';
import type { Figure, Operand } from '../design/figure.ts';
import type { AxisCell, AxisRequest, AxisResult, SameTarget, SolvedCell } from './axis.ts';
import { copiedFigure, faceMeant, measuredOf, solvedFrom } from './axis-plan.ts';
import { solveAxis } from './solve-axis.ts';

/**
 * Solves all rows and stacks of a face, each after those it copies a size from (`same as`) and after the one that gives
 * it its total. Knows nothing of where anything lies, and makes no findings.
 */

export interface AxisToSolve extends Pick<AxisRequest, 'totalLabel' | 'cells' | 'boundaries'> {
  readonly id: string;
  /** The space there is: known, or the opening that the cell with this id gets in an axis of these. */
  readonly total:
    | { readonly kind: 'given'; readonly figure: Figure }
    | { readonly kind: 'opening-of'; readonly cell: string; readonly less?: readonly Operand[] };
}

export interface SolvedAxes {
  /** An axis is absent while its total is unknown: the one that gives it failed. In the order they were solved. */
  readonly results: ReadonlyMap<string, AxisResult>;
  /** Sizes that wait for each other, one entry for each circle. */
  readonly circles: readonly SameCircle[];
}

/** Each cell waits for the next, the last for the first. */
export interface SameCircle {
  readonly cells: readonly { readonly id: string; readonly label: string }[];
}

/**
 * Never throws. Where a name stands twice the first cell in the order of `axes` is meant. A written or measured size is
 * copied even while its own row or stack cannot be solved. A circle is reported also where the sizes in it would follow
 * from each other by arithmetic (two rows that each copy a share of the other): a maker could not check such a piece.
 */
export function solveAxes(axes: readonly AxisToSolve[]): SolvedAxes {
  const links = new SameLinks(axes);
  const solved = new Map<string, SolvedCell>();
  for (const axis of axes) {
    for (const cell of axis.cells) {
      const settled = links.settled(cell);
      if (settled !== undefined) solved.set(cell.id, settled);
    }
  }
  const { order, stuck } = orderOf(axes, links);
  const circling = circlesAmong(stuck, links);
  const circles = [...links.circles, ...circling.circles];
  const results = new Map<string, AxisResult>();
  for (const axis of [...order, ...stuck]) {
    const total = totalOf(axis.total, solved);
    if (total === undefined) continue;
    const result = solveAxis({ ...axis, total, sameAs: (id) => links.targetOf(id, solved, circling.axes) });
    results.set(axis.id, result);
    for (const cell of result.kind === 'solved' ? result.cells : result.known) solved.set(cell.id, cell);
  }
  return { results, circles };
}

export function totalOf(
  total: AxisToSolve['total'],
  solved: ReadonlyMap<string, Pick<SolvedCell, 'opening'>>,
): Figure | undefined {
  if (total.kind === 'given') return total.figure;
  const opening = solved.get(total.cell)?.opening;
  if (opening === undefined || total.less === undefined) return opening;
  return derive('what the opening leaves', [plus('width of the opening', opening), ...total.less]);
}

interface Place {
  readonly cell: AxisCell;
  readonly axis: AxisToSolve;
}

/** What waits: `waiting` cannot be known before `on` is solved. */
interface Wait {
  readonly waiting: AxisCell;
  readonly on: AxisToSolve;
}

/** Who copies whom, by cell. */
class SameLinks {
  readonly circles: readonly SameCircle[];
  private readonly places = new Map<string, Place>();
  private readonly named = new Map<string, AxisCell>();
  private readonly circular = new Set<string>();
  private readonly settledCells = new Map<string, SolvedCell | undefined>();

  constructor(axes: readonly AxisToSolve[]) {
    for (const axis of axes) {
      for (const cell of axis.cells) {
        this.places.set(cell.id, { cell, axis });
        if (cell.name !== undefined && !this.named.has(cell.name)) this.named.set(cell.name, cell);
      }
    }
    this.circles = this.findCircles();
  }

  /** The size of a cell that is written, measured, or copied from one that is, whatever happens around it. */
  settled(cell: AxisCell): SolvedCell | undefined {
    const chain: AxisCell[] = [];
    let current: AxisCell | undefined = cell;
    while (current !== undefined && !this.settledCells.has(current.id) && !this.circular.has(current.id)) {
      chain.push(current);
      current = this.next(current);
    }
    let settled = current === undefined ? undefined : this.settledCells.get(current.id);
    for (const link of chain.reverse()) {
      const found = measuredOf(link);
      if (found !== undefined) {
        settled = solvedFrom(link, found.face, found.figure, 'measured');
      } else if (link.asked.kind === 'fixed') {
        settled = solvedFrom(link, faceMeant(link), link.asked.figure, 'fixed');
      } else {
        const copied: Figure | undefined = settled === undefined ? undefined : copiedFigure(link, settled);
        settled = copied === undefined ? undefined : solvedFrom(link, faceMeant(link), copied, 'same');
      }
      this.settledCells.set(link.id, settled);
    }
    return settled;
  }

  targetOf(id: string, solved: ReadonlyMap<string, SolvedCell>, circling: ReadonlySet<AxisToSolve>): SameTarget {
    const place = this.places.get(id);
    if (this.circular.has(id)) return { kind: 'unknown', why: 'circular' };
    const target = place === undefined ? undefined : this.target(place.cell);
    const targetPlace = target === undefined ? undefined : this.places.get(target.id);
    if (place === undefined || targetPlace === undefined) return { kind: 'unknown', why: 'no-such-cell' };
    if (targetPlace.axis === place.axis) return { kind: 'here', id: targetPlace.cell.id };
    const known = solved.get(targetPlace.cell.id);
    if (known !== undefined) return { kind: 'known', cell: known };
    return { kind: 'unknown', why: circling.has(targetPlace.axis) ? 'circular' : 'not-laid-out' };
  }

  waitsOf(axis: AxisToSolve): readonly Wait[] {
    const waits: Wait[] = [];
    for (const cell of axis.cells) {
      const target = this.circular.has(cell.id) ? undefined : this.target(cell);
      const place = target === undefined ? undefined : this.places.get(target.id);
      if (target === undefined || place === undefined || place.axis === axis || this.settled(target)) continue;
      waits.push({ waiting: cell, on: place.axis });
    }
    const giver = axis.total.kind === 'opening-of' ? this.places.get(axis.total.cell) : undefined;
    if (giver !== undefined && this.settled(giver.cell) === undefined) {
      waits.push({ waiting: giver.cell, on: giver.axis });
    }
    return waits;
  }

  private next(cell: AxisCell): AxisCell | undefined {
    return measuredOf(cell) === undefined && cell.asked.kind === 'same' ? this.named.get(cell.asked.as) : undefined;
  }

  /**
   * The cell whose size is really copied: cells between that copy the same face on are passed over, so that a copy of a
   * copy in another stack comes home to its own.
   */
  private target(cell: AxisCell): AxisCell | undefined {
    let target = this.next(cell);
    while (target !== undefined && cell.asked.kind === 'same') {
      const { asked, hasFront } = target;
      const onwards = this.next(target);
      if (onwards === undefined || asked.kind !== 'same' || asked.basis !== cell.asked.basis) break;
      if (asked.basis === 'front' && !hasFront) break;
      target = onwards;
    }
    return target;
  }

  private findCircles(): readonly SameCircle[] {
    const circles: SameCircle[] = [];
    const seen = new Set<string>();
    for (const { cell } of this.places.values()) {
      const path: AxisCell[] = [];
      const onPath = new Map<string, number>();
      let current: AxisCell | undefined = cell;
      while (current !== undefined && !seen.has(current.id)) {
        seen.add(current.id);
        onPath.set(current.id, path.length);
        path.push(current);
        current = this.next(current);
      }
      const start = current === undefined ? undefined : onPath.get(current.id);
      if (start !== undefined) circles.push({ cells: path.slice(start).map(named) });
      // A cell that leads into a circle is as unknowable as those in it.
      if (start !== undefined || (current !== undefined && this.circular.has(current.id))) {
        for (const { id } of path) this.circular.add(id);
      }
    }
    return circles;
  }
}

function named(cell: AxisCell): { readonly id: string; readonly label: string } {
  return { id: cell.id, label: cell.label };
}

/** Axes that wait for nothing that is not before them, and those left over: in a circle, or behind one. */
function orderOf(
  axes: readonly AxisToSolve[],
  links: SameLinks,
): { readonly order: readonly AxisToSolve[]; readonly stuck: readonly AxisToSolve[] } {
  const waitingFor = new Map<AxisToSolve, number>();
  const followers = new Map<AxisToSolve, AxisToSolve[]>();
  for (const axis of axes) {
    const givers = new Set(links.waitsOf(axis).map((wait) => wait.on));
    waitingFor.set(axis, givers.size);
    for (const giver of givers) {
      const list = followers.get(giver) ?? [];
      list.push(axis);
      followers.set(giver, list);
    }
  }
  const order = axes.filter((axis) => waitingFor.get(axis) === 0);
  for (const axis of order) {
    for (const follower of followers.get(axis) ?? []) {
      const left = (waitingFor.get(follower) ?? 0) - 1;
      waitingFor.set(follower, left);
      if (left === 0) order.push(follower);
    }
  }
  const done = new Set(order);
  return { order, stuck: axes.filter((axis) => !done.has(axis)) };
}

/** Follows the first wait of each stuck axis until it comes back to where it was. */
function circlesAmong(
  stuck: readonly AxisToSolve[],
  links: SameLinks,
): { readonly circles: readonly SameCircle[]; readonly axes: ReadonlySet<AxisToSolve> } {
  const isStuck = new Set(stuck);
  const circles: SameCircle[] = [];
  const axes = new Set<AxisToSolve>();
  const seen = new Set<AxisToSolve>();
  for (const axis of stuck) {
    const path: Wait[] = [];
    const onPath = new Map<AxisToSolve, number>();
    let current = axis;
    while (!seen.has(current)) {
      seen.add(current);
      onPath.set(current, path.length);
      // One that is stuck waits for at least one other that is.
      const wait = links.waitsOf(current).find(({ on }) => isStuck.has(on));
      if (wait === undefined) break;
      path.push(wait);
      current = wait.on;
    }
    const start = onPath.get(current);
    if (start === undefined) continue;
    const circle = path.slice(start);
    for (const { on } of circle) axes.add(on);
    circles.push({ cells: circle.map(({ waiting }) => named(waiting)) });
  }
  return { circles, axes };
}
