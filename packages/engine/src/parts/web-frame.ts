import type { DustPanelDesign } from '../design/construction-design.ts';
import { derive, less, plus } from '../design/derive.ts';
import type { Divider, GroupCell } from '../design/design.ts';
import type { Figure } from '../design/figure.ts';
import type { LaidCell, Rectangle, Span } from '../evaluation.ts';
import { spanFrom, spanUpTo } from '../layout/spans.ts';
import type { LengthUnit } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { usual, WEB_FRAME_RAIL } from '../tables/trade-habits.ts';
import { slab, type UnmarkedPart } from './slab.ts';

/** The rails and runners of a web frame. Knows nothing of what lies above or below it but the partitions on it. */

/** Where partitions stand on the divider after this place of a stack, from the left. */
export function standingOn(neighbours: readonly LaidCell[], group: GroupCell, at: number): readonly Span[] {
  const above = group.kind === 'stack' ? neighbours.find((laid) => laid.cell === group.cells[at]) : undefined;
  return above === undefined ? [] : partitionsAtFoot(above);
}

function partitionsAtFoot(laid: LaidCell): readonly Span[] {
  if (laid.cell.kind === 'stack') {
    const lowest = laid.cells.find((inner) => laid.cell.kind === 'stack' && inner.cell === laid.cell.cells.at(-1));
    return lowest === undefined ? [] : partitionsAtFoot(lowest);
  }
  if (laid.cell.kind !== 'row') return [];
  return [
    ...laid.cells.flatMap(partitionsAtFoot),
    ...laid.dividers.filter(({ divider }) => divider.form === 'partition').map(({ at }) => at.x),
  ].sort((a, b) => a.start.length.compare(b.start.length));
}

/**
 * A front rail, a rear rail and a runner at each end between them, all of one width; in an opening too narrow for that
 * the runners take half of it each. Under each partition that stands on the frame lies a runner more, its middle under
 * that of the partition, so that what slides on either side of it runs on wood. Where a panel closes
 * it, one lies between each runner and the next.
 */
export function webFrameParts(
  divider: Divider,
  at: Rectangle,
  z: Span,
  thin: 'x' | 'y',
  run: 'x' | 'y',
  between: string,
  unit: LengthUnit,
  standing: readonly Span[],
): readonly UnmarkedPart[] {
  const width = divider.railWidth ?? usual(WEB_FRAME_RAIL, unit);
  const front = spanFrom(z.start, width);
  const rear = spanUpTo(z.end, width);
  const runnerDeep: Span = { start: front.end, size: runnerLength(z.size, width), end: rear.start };
  const common = {
    role: 'divider-rail',
    stock: divider.material.stock,
    thin,
    origin: divider.origin,
    frame: divider.id,
  } as const;
  const along = at[run];
  const isNarrow = along.size.length.compare(width.length.times(2)) < 0;
  const runnerWide = isNarrow
    ? derive('the runners meet', [plus('length of the rails', along.size, Rational.of(1, 2))])
    : width;
  const runner = (place: Span): Pick<Rectangle, 'x' | 'y'> => (run === 'x' ? { ...at, x: place } : { ...at, y: place });
  const middle = standing.flatMap((partition) => {
    const place = middleRunner(partition, width);
    // Beside an end runner there is wood already.
    const isApart =
      place.start.length.compare(along.start.length.plus(runnerWide.length)) >= 0 &&
      place.end.length.compare(along.end.length.minus(runnerWide.length)) <= 0;
    return isApart ? [place] : [];
  });
  const [first, last] = [spanFrom(along.start, runnerWide), spanUpTo(along.end, runnerWide)];
  return [
    slab({ ...common, ...at, id: `${divider.id}/rail-front`, label: `front rail${between}`, z: front, grain: run }),
    slab({ ...common, ...at, id: `${divider.id}/rail-rear`, label: `rear rail${between}`, z: rear, grain: run }),
    slab({
      ...common,
      ...runner(first),
      id: `${divider.id}/runner-start`,
      label: `${run === 'x' ? 'left' : 'lower'} runner${between}`,
      z: runnerDeep,
      grain: 'z',
    }),
    slab({
      ...common,
      ...runner(last),
      id: `${divider.id}/runner-end`,
      label: `${run === 'x' ? 'right' : 'upper'} runner${between}`,
      z: runnerDeep,
      grain: 'z',
    }),
    ...middle.map((place, index) =>
      slab({
        ...common,
        ...runner(place),
        id: `${divider.id}/runner-middle${index === 0 ? '' : `-${index + 1}`}`,
        label: `middle runner${between}`,
        z: runnerDeep,
        grain: 'z',
      }),
    ),
    ...(divider.dustPanel === undefined || isNarrow
      ? []
      : dustPanels(divider, divider.dustPanel, at, thin, run, between, runnerDeep, [first, ...middle, last])),
  ];
}

/** One between each runner and the next, in the middle of the thickness of the frame. */
function dustPanels(
  divider: Divider,
  dust: DustPanelDesign,
  at: Rectangle,
  thin: 'x' | 'y',
  run: 'x' | 'y',
  between: string,
  z: Span,
  runners: readonly Span[],
): readonly UnmarkedPart[] {
  const lies = spanFrom(
    derive('the panel lies in the middle of the frame', [
      plus('where the frame begins', at[thin].start),
      plus('thickness of the frame', at[thin].size, Rational.of(1, 2)),
      less('thickness of the panel', dust.thickness, Rational.of(1, 2)),
    ]),
    dust.thickness,
  );
  return runners.slice(1).map((next, index) => {
    const before = runners[index] as Span;
    const across: Span = {
      start: before.end,
      size: derive('from runner to runner', [
        plus('where the next runner begins', next.start),
        less('where the runner before it ends', before.end),
      ]),
      end: next.start,
    };
    const place = run === 'x' ? { x: across, y: lies } : { x: lies, y: across };
    return slab({
      ...place,
      id: `${divider.id}/dust-panel${index === 0 ? '' : `-${index + 1}`}`,
      label: `dust panel${between}`,
      role: 'dust-panel',
      stock: dust.stock,
      z,
      thin,
      grain: run,
      origin: dust.origin,
      frame: divider.id,
    });
  });
}

function middleRunner(partition: Span, width: Figure): Span {
  return spanFrom(
    derive('the runner lies under the middle of the partition', [
      plus('where the partition begins', partition.start),
      plus('thickness of the partition', partition.size, Rational.of(1, 2)),
      less('width of the runner', width, Rational.of(1, 2)),
    ]),
    width,
  );
}

function runnerLength(frame: Figure, rail: Figure): Figure {
  return derive('length of the runners', [plus('depth of the frame', frame), less('width of the rails', rail, 2)]);
}
