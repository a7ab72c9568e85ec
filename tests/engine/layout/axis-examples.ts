import fc from 'fast-check';
import { expect } from 'vitest';
import { derive, given, less, plus } from '../../../packages/engine/src/design/derive.ts';
import type { SizeAsked } from '../../../packages/engine/src/design/design.ts';
import type { Figure, Operand } from '../../../packages/engine/src/design/figure.ts';
import type { AxisCell, AxisRequest, AxisResult, SolvedCell } from '../../../packages/engine/src/layout/axis.ts';
import { Length } from '../../../packages/engine/src/length/length.ts';
import { Rational } from '../../../packages/engine/src/length/rational.ts';

/** Rows and stacks for the tests: a short way to write one, and random ones. */

export const nowhere = { unit: 'test', start: 0, end: 0 };

export function length(text: string): Length {
  return Length.of(Rational.parse(text) ?? expect.fail(`no fraction: ${text}`), 'in');
}

export function figure(text: string): Figure {
  return given(length(text), nowhere);
}

/** Inset: one gap at each end. */
export function inset(gap: Figure): Pick<AxisCell, 'hasFront' | 'deltaStart' | 'deltaEnd'> {
  return { hasFront: true, deltaStart: [less('gap', gap)], deltaEnd: [less('gap', gap)] };
}

export const bare: Pick<AxisCell, 'hasFront' | 'deltaStart' | 'deltaEnd'> = {
  hasFront: false,
  deltaStart: [],
  deltaEnd: [],
};

export const fixed = (text: string, basis: 'front' | 'opening' = 'front'): SizeAsked => ({
  kind: 'fixed',
  basis,
  figure: figure(text),
});
export const rest: SizeAsked = { kind: 'rest' };
export const share = (weight: string): SizeAsked => ({
  kind: 'share',
  weight: Rational.parse(weight) ?? expect.fail(weight),
});
export const graded = (by: string, step: number): SizeAsked => ({ kind: 'graded', by: figure(by), step });
export const same = (as: string, basis: 'front' | 'opening' = 'opening'): SizeAsked => ({
  kind: 'same',
  basis,
  as,
  origin: nowhere,
});

export function cell(
  id: string,
  asked: SizeAsked,
  edges: Pick<AxisCell, 'hasFront' | 'deltaStart' | 'deltaEnd'>,
  more: Partial<Pick<AxisCell, 'atLeast' | 'atMost' | 'measured'>> = {},
): AxisCell {
  return { id, name: id, label: `"${id}"`, asked, ...edges, ...more };
}

export function request(total: string, cells: readonly AxisCell[], boundaries: readonly string[] = []): AxisRequest {
  return {
    total: figure(total),
    totalLabel: 'width of the face',
    cells,
    boundaries: boundaries.map((thickness) => ({ label: 'partition', thickness: figure(thickness) })),
  };
}

export function solvedOf(result: AxisResult): readonly SolvedCell[] {
  return result.kind === 'solved' ? result.cells : expect.fail(`not solved: ${result.failure.kind}`);
}

export function sizesOf(cells: readonly SolvedCell[]): Record<string, string> {
  return Object.fromEntries(
    cells.map(({ id, opening, front }) => [
      id,
      front === undefined ? opening.length.exactInches : `${front.length.exactInches} in ${opening.length.exactInches}`,
    ]),
  );
}

/** Every sum below a figure must really come to what the figure says. Only for figures without named operands. */
export function expectTrueDerivation(found: Figure, seen = new Set<Figure>()): void {
  if (found.reason.kind !== 'derived' || seen.has(found)) return;
  seen.add(found);
  const { operands, rule } = found.reason;
  if (!derive('', operands).length.equals(found.length)) expect.fail(`${rule}: the terms do not make ${found.length}`);
  for (const operand of operands) {
    if (operand.sign === '') expect.fail(`${rule}: ${operand.label} does not count`);
    expectTrueDerivation(operand.figure, seen);
  }
}

const size = (from: number, to: number): fc.Arbitrary<string> =>
  fc
    .tuple(fc.integer({ min: from * 64, max: to * 64 }), fc.constantFrom(64, 64, 64, 60, 127))
    .map(([n, d]) => Rational.of(n, d).toString());

const edge: fc.Arbitrary<readonly Operand[]> = fc.oneof(
  size(0, 1).map((gap) => [less('gap', figure(gap))]),
  size(0, 1).map((lap) => [plus('lap', figure(lap))]),
  fc
    .tuple(size(0, 1), size(0, 1))
    .map(([thickness, gap]) => [
      plus('covered divider', figure(thickness), Rational.of(1, 2)),
      less('gap', figure(gap), Rational.of(1, 2)),
    ]),
);

interface Shape {
  readonly hasFront: boolean;
  readonly basis: 'front' | 'opening';
  readonly start: readonly Operand[];
  readonly end: readonly Operand[];
  readonly pick: number;
  readonly size: string;
  readonly weight: number;
  readonly least?: string | undefined;
  readonly most?: string | undefined;
}

/** How often each way of asking occurs, in tenths. */
export interface Mixture {
  readonly kinds: readonly ('fixed' | 'share' | 'rest' | 'graded' | 'same' | 'measured')[];
  readonly limits: boolean;
}

/** One to nine cells; at least one shares. Whether it comes out, and with positive sizes, is left to chance. */
export function randomRequest(mixture: Mixture): fc.Arbitrary<AxisRequest> {
  const limit = mixture.limits ? fc.option(size(1, 12), { nil: undefined }) : fc.constant(undefined);
  const shape: fc.Arbitrary<Shape> = fc.record({
    hasFront: fc.boolean(),
    basis: fc.constantFrom('front', 'opening'),
    start: edge,
    end: edge,
    pick: fc.nat(1_000_000),
    size: size(1, 9),
    weight: fc.integer({ min: 1, max: 12 }),
    least: limit,
    most: limit,
  });
  return fc
    .tuple(
      fc.array(shape, { minLength: 1, maxLength: 9 }),
      fc.boolean(),
      size(40, 90),
      size(0, 1),
      fc.nat(8),
      size(0, 1),
    )
    .map(([shapes, allFronts, total, thickness, sharing, by]) => {
      const cells = shapes.map((one, at): AxisCell => {
        const kind =
          at === sharing % shapes.length ? 'share' : (mixture.kinds[one.pick % mixture.kinds.length] ?? 'rest');
        const hasFront = allFronts || one.hasFront;
        const basis = hasFront ? one.basis : 'opening';
        const asked: SizeAsked =
          kind === 'fixed' || kind === 'measured'
            ? fixed(one.size, basis)
            : kind === 'share'
              ? share(`${one.weight}/4`)
              : kind === 'graded'
                ? graded(by, one.pick % 5)
                : kind === 'same' && at > 0
                  ? sameAsEarlier(shapes, at, one.pick, allFronts, basis)
                  : rest;
        const lower =
          one.least !== undefined && one.most !== undefined && length(one.least).compare(length(one.most)) > 0;
        const [least, most] = lower ? [one.most, one.least] : [one.least, one.most];
        return cell(
          `c${at}`,
          asked,
          { hasFront, deltaStart: hasFront ? one.start : [], deltaEnd: hasFront ? one.end : [] },
          {
            ...(kind === 'measured' ? { measured: figure(one.size) } : {}),
            ...(least === undefined ? {} : { atLeast: figure(least) }),
            ...(most === undefined ? {} : { atMost: figure(most) }),
          },
        );
      });
      return request(
        total,
        cells,
        shapes.slice(1).map(() => thickness),
      );
    });
}

function sameAsEarlier(
  shapes: readonly Shape[],
  at: number,
  pick: number,
  allFronts: boolean,
  basis: 'front' | 'opening',
): SizeAsked {
  const target = pick % at;
  const hasFront = allFronts || shapes[target]?.hasFront === true;
  return same(`c${target}`, hasFront ? basis : 'opening');
}
