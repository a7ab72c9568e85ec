import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { derive } from '../../../packages/engine/src/design/derive.ts';
import type { Figure } from '../../../packages/engine/src/design/figure.ts';
import type { AxisCell, AxisRequest, SolvedCell } from '../../../packages/engine/src/layout/axis.ts';
import { solveAxis } from '../../../packages/engine/src/layout/solve-axis.ts';
import { Length } from '../../../packages/engine/src/length/length.ts';
import { expectTrueDerivation, figure, type Mixture, randomRequest } from './axis-examples.ts';
import { sizesByElimination } from './exact-elimination.ts';
import { openingsByLinearPrograms } from './linear-programs.ts';

const everything: Mixture = {
  kinds: ['fixed', 'fixed', 'share', 'share', 'rest', 'graded', 'same', 'same', 'measured'],
  limits: false,
};

/** All cells, also those of a row in which some came out at nothing: sizes are compared all the same. */
function allCells(request: AxisRequest): readonly SolvedCell[] | undefined {
  const result = solveAxis(request);
  if (result.kind === 'solved') return result.cells;
  if (result.failure.kind !== 'nothing-left') return undefined;
  const cells = new Map([...result.known, ...result.failure.squeezed].map((cell) => [cell.id, cell]));
  return cells.size === request.cells.length ? request.cells.flatMap(({ id }) => cells.get(id) ?? []) : undefined;
}

const deltaOf = (cell: AxisCell): Length => derive('', [...cell.deltaStart, ...cell.deltaEnd]).length;

describe('without limits', () => {
  it('2,000 random rows and stacks agree with exact elimination, fraction for fraction', () => {
    let compared = 0;
    let solved = 0;
    fc.assert(
      fc.property(randomRequest(everything), (request) => {
        const found = solveAxis(request);
        const expected = sizesByElimination(request);
        expect(expected, 'the statements should decide every size').toBeDefined();
        const isPositive =
          expected?.every((one) => !/^(-|0$)/.test(one.opening) && !/^(-|0$)/.test(one.front)) ?? false;
        expect(found.kind).toBe(isPositive ? 'solved' : 'failed');
        if (found.kind === 'solved') solved += 1;
        const cells = allCells(request);
        if (cells === undefined) return;
        compared += 1;
        expect(
          cells.map(({ opening, front }) => ({
            opening: opening.length.exactInches,
            front: (front ?? opening).length.exactInches,
          })),
        ).toEqual(expected);
      }),
      { numRuns: 2000 },
    );
    expect(compared).toBeGreaterThan(1000);
    expect(solved).toBeGreaterThan(800);
  });
});

describe('with limits', () => {
  const limited: Mixture = { kinds: ['fixed', 'share', 'share', 'rest', 'graded', 'same', 'measured'], limits: true };

  it('openings and boundaries always add up to the total, and every derivation is true', () => {
    let held = 0;
    fc.assert(
      fc.property(randomRequest(limited), (request) => {
        const result = solveAxis(request);
        if (result.kind === 'failed') return;
        const openings = Length.sum(result.cells.map((cell) => cell.opening.length));
        const boundaries = Length.sum(request.boundaries.map((boundary) => boundary.thickness.length));
        expect(openings.plus(boundaries).exactInches).toBe(request.total.length.exactInches);
        const seen = new Set<Figure>();
        result.cells.forEach((cell, at) => {
          const asked = request.cells[at];
          expect(cell.id).toBe(asked?.id);
          expect(cell.opening.length.isPositive()).toBe(true);
          expect(cell.front !== undefined).toBe(asked?.hasFront);
          expectTrueDerivation(cell.opening, seen);
          if (cell.front === undefined || asked === undefined) return;
          expect(cell.front.length.isPositive()).toBe(true);
          expect(cell.front.length.minus(cell.opening.length).equals(deltaOf(asked))).toBe(true);
          expectTrueDerivation(cell.front, seen);
          if (cell.by === 'at-least' || cell.by === 'at-most') held += 1;
        });
      }),
      { numRuns: 2000 },
    );
    expect(held).toBeGreaterThan(200);
  });

  it('free cells keep their proportion; held ones stand at their limit, and would be beyond it', () => {
    let checked = 0;
    fc.assert(
      fc.property(randomRequest(limited), (request) => {
        const result = solveAxis(request);
        if (result.kind === 'failed' || result.share === undefined) return;
        const { figure: share, basis } = result.share;
        result.cells.forEach((cell, at) => {
          const asked = request.cells[at];
          if (asked === undefined || asked.measured !== undefined) return;
          const { kind } = asked.asked;
          if (kind === 'fixed' || kind === 'same') return;
          checked += 1;
          const steps = asked.asked.kind === 'graded' ? asked.asked.by.length.times(asked.asked.step) : Length.zero;
          const weight = asked.asked.kind === 'share' ? asked.asked.weight : 1;
          const free = share.length.times(weight).plus(steps);
          const size = (cell.front !== undefined && basis === 'front' ? cell.front : cell.opening).length;
          const limitFace = cell.front ?? cell.opening;
          const freeFace = free.plus(limitFace.length.minus(size));
          switch (cell.by) {
            case 'share':
              expect(size.equals(free)).toBe(true);
              if (asked.atLeast !== undefined)
                expect(size.plus(limitFace.length.minus(size)).compare(asked.atLeast.length)).not.toBe(-1);
              if (asked.atMost !== undefined) expect(limitFace.length.compare(asked.atMost.length)).not.toBe(1);
              break;
            case 'at-least':
              expect(limitFace.length.exactInches).toBe(asked.atLeast?.length.exactInches);
              expect(freeFace.compare(limitFace.length)).toBe(-1);
              break;
            case 'at-most':
              expect(limitFace.length.exactInches).toBe(asked.atMost?.length.exactInches);
              expect(freeFace.compare(limitFace.length)).toBe(1);
              break;
            default:
              expect.fail(`a sharing cell is sized by ${cell.by}`);
          }
        });
      }),
      { numRuns: 1000 },
    );
    expect(checked).toBeGreaterThan(1000);
  });

  it('1,000 random rows and stacks agree with a linear-programming library within a millionth of an inch', () => {
    const uncopied: Mixture = { kinds: ['fixed', 'share', 'share', 'rest', 'graded', 'measured'], limits: true };
    let compared = 0;
    let impossible = 0;
    let heldCells = 0;
    fc.assert(
      fc.property(randomRequest(uncopied), (request) => {
        const result = solveAxis(request);
        if (result.kind === 'failed' && result.failure.kind === 'not-positive') return;
        const expected = openingsByLinearPrograms(request);
        if (result.kind === 'failed' && result.failure.kind === 'difference') {
          impossible += 1;
          expect(expected).toBeUndefined();
          return;
        }
        const cells = allCells(request);
        expect(expected).toBeDefined();
        if (cells === undefined) return;
        compared += 1;
        heldCells += cells.filter((cell) => cell.by === 'at-least' || cell.by === 'at-most').length;
        cells.forEach((cell, at) => {
          expect(Math.abs(cell.opening.length.approximateInches - (expected?.[at] ?? Number.NaN))).toBeLessThan(1e-6);
        });
      }),
      { numRuns: 1000 },
    );
    expect(compared).toBeGreaterThan(300);
    expect(heldCells).toBeGreaterThan(100);
    expect(impossible).toBeGreaterThan(200);
  });

  it('a failed sum is out by exactly what it says, and a larger total of that much is filled', () => {
    let failures = 0;
    fc.assert(
      fc.property(randomRequest(limited), (request) => {
        const result = solveAxis(request);
        if (result.kind === 'solved' || result.failure.kind !== 'difference') return;
        failures += 1;
        const { difference, tooMuch, needed } = result.failure;
        expect(difference.isPositive()).toBe(true);
        expectTrueDerivation(needed);
        const total = tooMuch ? request.total.length.plus(difference) : request.total.length.minus(difference);
        expect(needed.length.equals(total)).toBe(true);
        const retried = solveAxis({ ...request, total: figure(total.exactInches) });
        expect(retried.kind === 'failed' && retried.failure.kind === 'difference').toBe(false);
      }),
      { numRuns: 1000 },
    );
    expect(failures).toBeGreaterThan(50);
  });
});
