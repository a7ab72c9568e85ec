import {
  type Finding,
  frontsDoNotAddUp,
  limitsDisagree,
  type Measure,
  type Mend,
  type Origin,
  type Related,
  sameLeadsNowhere,
  shareNotPositive,
  sizesNotPositive,
} from '@fettle/findings';
import { derive, rootOrigin } from '../design/derive.ts';
import type { Cell, GroupCell } from '../design/design.ts';
import type { AxisFailure, Blame, LimitClash, SolvedCell } from '../layout/axis.ts';
import { plainCellLabel } from '../layout/cell-names.ts';
import type { FaceLayout } from '../layout/lay-out-face.ts';
import type { SameCircle } from '../layout/resolve-same.ts';
import type { SolvedAxis } from '../layout/solve-face.ts';
import { Length } from '../length/length.ts';
import { innerSizes } from './inner-sizes.ts';
import { sharingMends, sumMends } from './sum-mends.ts';
import { givenAt } from './written-sizes.ts';

/**
 * Turns what the axis solver could not do into findings: whose words are to blame, who else is party to it, and what
 * would mend it. Solves nothing itself. `mark` is the finest of the maker's ruler.
 */
export function sumFindings(layout: FaceLayout, mark: Length): readonly Finding[] {
  return [
    ...layout.circles.flatMap((circle) => circleFinding(layout, circle)),
    ...layout.axes.flatMap((axis) => [
      ...(axis.result.kind === 'failed' ? failureFindings(axis, axis.result.failure, mark) : []),
      ...axis.result.clashes.map((clash) => clashFinding(axis, clash)),
    ]),
  ];
}

/** At the first cell of the circle that copies; the others are party to it. */
function circleFinding(layout: FaceLayout, circle: SameCircle): readonly Finding[] {
  const places = circle.cells.flatMap(({ id }) => {
    const axis = layout.axes.find((one) => cellOf(one, id) !== undefined);
    const cell = axis === undefined ? undefined : cellOf(axis, id);
    return axis === undefined || cell === undefined ? [] : [{ axis, cell }];
  });
  const first = places.find(({ cell }) => cell.along.kind === 'same');
  if (first === undefined || first.cell.along.kind !== 'same') return [];
  return [
    sameLeadsNowhere.at(
      first.cell.along.origin,
      { as: first.cell.along.as, why: 'circular' },
      {
        related: places
          .filter((place) => place !== first)
          .map(({ axis, cell }) => ({ role: 'circle', values: whoIs(axis, cell), origin: cell.sizeOrigin })),
        mends: [restInstead(first.cell.sizeOrigin)],
      },
    ),
  ];
}

function restInstead(at: Origin): Mend {
  return { how: 'let-rest', values: {}, changes: [{ kind: 'set-words', at, words: 'rest' }] };
}

function failureFindings(axis: SolvedAxis, failure: AxisFailure, mark: Length): readonly Finding[] {
  switch (failure.kind) {
    case 'difference':
      return [differenceFinding(axis, failure, mark)];
    case 'nothing-left':
      return [nothingLeftFinding(axis, failure)];
    case 'not-positive':
      return failure.cells.map((solved) => {
        const cell = cellOf(axis, solved.id);
        return sizesNotPositive.at(originOf(axis, cell), notPositiveFacts(axis, cell, solved));
      });
    case 'share-not-positive':
      return failure.ids.map((id) => {
        const cell = cellOf(axis, id);
        const at = originOf(axis, cell);
        const weight = cell?.along.kind === 'share' ? cell.along.weight.toString() : '0';
        return shareNotPositive.at(
          at,
          { weight },
          { mends: [{ how: 'one-share', values: {}, changes: [{ kind: 'set-words', at, words: 'share 1' }] }] },
        );
      });
    case 'unknown-same':
      return failure.cells.flatMap(({ id, why }) => {
        const cell = cellOf(axis, id);
        // A circle is reported once for all its cells; where the other size is not known, what keeps it from being
        // known is reported.
        if (cell?.along.kind !== 'same' || why === 'circular' || why === 'not-laid-out') return [];
        const mends = [restInstead(cell.sizeOrigin)];
        return [sameLeadsNowhere.at(cell.along.origin, { as: cell.along.as, why }, { mends })];
      });
    default: {
      const unknown: never = failure;
      return unknown;
    }
  }
}

function differenceFinding(
  axis: SolvedAxis,
  failure: Extract<AxisFailure, { kind: 'difference' }>,
  mark: Length,
): Finding {
  const first = failure.blame[0];
  const blamed = first === undefined ? undefined : cellOf(axis, first.id);
  const laps = lapsAtEnds(axis);
  return frontsDoNotAddUp.at(
    blamed === undefined ? axis.group.sizeOrigin : blamed.sizeOrigin,
    {
      needed: failure.needed.length.plus(laps),
      available: failure.available.length.plus(laps),
      difference: failure.difference,
      tooMuch: failure.tooMuch,
      axis: axis.direction,
      of: axis.request.cells.some((cell) => cell.hasFront) ? 'fronts' : 'openings',
      ...shownBetween(axis),
    },
    {
      related: [
        ...totalRelated(axis, failure.available, laps),
        ...fixedRelated(axis, failure.blame, undefined),
        ...dividersRelated(axis),
        ...gapsRelated(axis, failure, laps),
      ],
      mends: sumMends(axis, failure, mark),
    },
  );
}

/** Each divider that is seen between the spaces. */
function dividersRelated(axis: SolvedAxis): readonly Related[] {
  if (shownBetween(axis).between === undefined) return [];
  return axis.group.dividers
    .filter(({ form, mode }) => form !== 'none' && mode === 'shown')
    .map(({ origin, material }) => {
      const words = axis.group.kind === 'row' ? 'partition' : 'divider';
      return { role: 'divider', values: { words, size: material.thickness.length }, origin };
    });
}

/** What is left of the sum beside fronts and what is seen between them. Openings without fronts have no gaps. */
function gapsRelated(
  axis: SolvedAxis,
  { needed, blame }: Extract<AxisFailure, { kind: 'difference' }>,
  laps: Length,
): readonly Related[] {
  const { cells } = axis.request;
  const deltas = cells.flatMap(({ deltaStart, deltaEnd }) => [...deltaStart, ...deltaEnd]);
  const gap = deltas.find(({ sign, label }) => sign === '-' && label === 'gap')?.figure;
  const origin = gap && rootOrigin(gap);
  if (gap === undefined || origin === undefined || !cells.every(({ hasFront }) => hasFront)) return [];
  const fronts = cells.flatMap(({ id, deltaStart, deltaEnd }) => {
    const size = blame.find((one) => one.id === id);
    if (size === undefined) return [];
    const { basis, figure } = size;
    return [basis === 'front' ? figure.length : derive('', [...deltaStart, ...deltaEnd]).length.plus(figure.length)];
  });
  if (fronts.length < cells.length) return [];
  const between = shownBetween(axis).between?.total ?? Length.zero;
  const size = needed.length.plus(laps).minus(Length.sum(fronts)).minus(between);
  if (!size.isPositive()) return [];
  const count = gap.length.isPositive() ? size.ratioTo(gap.length) : undefined;
  const counted = count?.isWhole() === true ? { count: count.toNumber(), each: gap.length } : {};
  return [{ role: 'gaps', values: { size, ...counted }, origin }];
}

/** The wood that is seen between the spaces; of what fronts lap only some is seen, and it counts among the gaps. */
function shownBetween({ group, request }: SolvedAxis): {
  readonly between?: { readonly words: 'partitions' | 'dividers'; readonly total: Length };
} {
  const shown = group.dividers.filter(({ form, mode }) => form !== 'none' && mode === 'shown');
  const isLapped = request.cells.some(({ deltaStart, deltaEnd }) =>
    [deltaStart, deltaEnd].some((delta) => derive('', delta).length.isPositive()),
  );
  if (shown.length === 0 || isLapped) return {};
  const total = Length.sum(shown.map(({ material }) => material.thickness.length));
  return { between: { words: group.kind === 'row' ? 'partitions' : 'dividers', total } };
}

/**
 * What the first and the last front lap beyond the face: where all spaces have fronts, a maker counts the fronts and
 * what is seen between them against what they may cover.
 */
function lapsAtEnds(axis: SolvedAxis): Length {
  const { cells } = axis.request;
  const [first, last] = [cells[0], cells.at(-1)];
  if (first === undefined || last === undefined || !cells.every((cell) => cell.hasFront)) return Length.zero;
  return Length.sum([first.deltaStart, last.deltaEnd].map((delta) => derive('', delta).length.max(Length.zero)));
}

function nothingLeftFinding(axis: SolvedAxis, failure: Extract<AxisFailure, { kind: 'nothing-left' }>): Finding {
  const squeezed = failure.squeezed[0];
  const cell = squeezed === undefined ? undefined : cellOf(axis, squeezed.id);
  const facts =
    squeezed === undefined
      ? ({ what: 'opening', axis: axis.direction, size: failure.available.length } as const)
      : notPositiveFacts(axis, cell, squeezed);
  const { taken, available } = { taken: failure.taken.length, available: failure.available.length };
  // A front that would have a size over an opening that has none: the sum is not what is at fault.
  const isSum = available.minus(taken).sign() <= 0;
  return sizesNotPositive.at(originOf(axis, cell), isSum ? { ...facts, taken, available } : facts, {
    related: [...totalRelated(axis, failure.available, Length.zero), ...fixedRelated(axis, failure.blame, cell)],
    mends: sharingMends(axis, failure.blame),
  });
}

/** Where there is a front and it has no size left, the front is what the maker looks at. */
function notPositiveFacts(axis: SolvedAxis, cell: Cell | undefined, solved: SolvedCell) {
  const front = solved.front !== undefined && !solved.front.length.isPositive() ? solved.front : undefined;
  return {
    what: front === undefined ? 'opening' : 'front',
    ...whoIs(axis, cell),
    axis: axis.direction,
    size: (front ?? solved.opening).length,
  } as const;
}

function clashFinding(axis: SolvedAxis, clash: LimitClash): Finding {
  const cell = cellOf(axis, clash.id);
  const [size, limit] = clash.between;
  const sizeAt = givenAt(size);
  const limitAt = givenAt(limit);
  const who = whoIs(axis, cell);
  const values = (to: Measure): Record<string, Measure | string> => ({ ...who, size: to });
  const limitOrigin = rootOrigin(limit);
  return limitsDisagree.at(
    originOf(axis, cell),
    {
      ...(who.name === undefined ? {} : { name: who.name }),
      words: who.words,
      clash: clash.what,
      axis: axis.direction,
      size: size.length,
      limit: limit.length,
      difference: size.length.minus(limit.length).abs(),
    },
    {
      related:
        limitOrigin === undefined ? [] : [{ role: 'limit', values: { limit: limit.length }, origin: limitOrigin }],
      mends: [
        ...(sizeAt === undefined
          ? []
          : [
              {
                how: clash.what === 'least-over-most' ? 'move-limit' : 'set-size',
                values: values(limit.length),
                changes: [{ kind: 'set-length', at: sizeAt, to: limit.length } as const],
              },
            ]),
        ...(limitAt === undefined
          ? []
          : [
              {
                how: 'move-limit',
                values: values(size.length),
                changes: [{ kind: 'set-length', at: limitAt, to: size.length } as const],
              },
            ]),
      ],
    },
  );
}

function totalRelated(axis: SolvedAxis, available: SolvedCell['opening'], laps: Length): readonly Related[] {
  const origin = rootOrigin(available);
  if (origin === undefined) return [];
  return [{ role: 'total', values: { axis: axis.direction, available: available.length.plus(laps) }, origin }];
}

function fixedRelated(axis: SolvedAxis, blame: readonly Blame[], except: Cell | undefined): readonly Related[] {
  return blame.flatMap((one) => {
    const cell = cellOf(axis, one.id);
    if (cell === undefined) return [];
    const inner = innerSizes(cell, axis.group.kind).map(
      ({ cell: { id, along }, group }): Related => ({
        role: 'fixed',
        values: { ...whoIsIn(group, id), size: along.figure.length },
        origin: group.cells.find((each) => each.id === id)?.sizeOrigin ?? cell.sizeOrigin,
      }),
    );
    // Where the finding stands is not told again; what makes a row or stack so large is.
    if (cell === except) return inner;
    return [
      { role: 'fixed', values: { ...whoIs(axis, cell), size: one.figure.length }, origin: cell.sizeOrigin },
      ...inner,
    ];
  });
}

function cellOf(axis: SolvedAxis, id: string): Cell | undefined {
  return axis.group.cells.find((cell) => cell.id === id);
}

function whoIsIn(group: GroupCell, id: string): { readonly name?: string; readonly words: string } {
  const cell = group.cells.find((each) => each.id === id);
  if (cell === undefined) return { words: `the ${group.kind}` };
  const words = plainCellLabel(cell, group);
  return cell.name === undefined ? { words } : { name: cell.name, words };
}

function originOf(axis: SolvedAxis, cell: Cell | undefined): Origin {
  return cell === undefined ? axis.group.sizeOrigin : cell.sizeOrigin;
}

function whoIs(axis: SolvedAxis, cell: Cell | undefined): { readonly name?: string; readonly words: string } {
  if (cell === undefined) return { words: `the ${axis.group.kind}` };
  const words = plainCellLabel(cell, axis.group);
  return cell.name === undefined ? { words } : { name: cell.name, words };
}
