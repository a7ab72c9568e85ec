import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CoveringProgram } from '../../../packages/engine/src/stock/covering-program.ts';

/** Linear programs of covering: what a change of the demand costs. */

const ROWS = 4;

const arbitraryProgram = fc.record({
  columns: fc.array(
    fc.record({
      cost: fc.integer({ min: 1, max: 9 }),
      counts: fc.array(fc.integer({ min: 0, max: 3 }), { minLength: ROWS, maxLength: ROWS }),
    }),
    { minLength: 3, maxLength: 12 },
  ),
  before: fc.array(fc.integer({ min: 0, max: 9 }), { minLength: ROWS, maxLength: ROWS }),
  after: fc.array(fc.integer({ min: 0, max: 9 }), { minLength: ROWS, maxLength: ROWS }),
});

function programOf(
  columns: readonly { readonly cost: number; readonly counts: readonly number[] }[],
  demand: readonly number[],
) {
  const program = new CoveringProgram(Float64Array.from(demand), new Int8Array(ROWS).fill(1), 1000);
  for (const { cost, counts } of columns) {
    program.addColumn(
      cost,
      counts.flatMap((count, row) => (count > 0 ? [row, count] : [])),
    );
  }
  expect(program.cheapen(1000)).toBe(true);
  return program;
}

describe('a program that is repaired after its demand has changed', () => {
  test('costs what it costs from the start, and is left as soon as it is known to cost more than enough', () => {
    fc.assert(
      fc.property(arbitraryProgram, fc.integer({ min: 0, max: 60 }), ({ columns, before, after }, enough) => {
        const least = programOf(columns, after).value;
        const repaired = (limit?: number) => {
          const program = programOf(columns, before);
          after.forEach((demand, row) => {
            program.setDemand(row, demand);
          });
          program.refresh();
          expect(program.repair(1000, limit)).toBe(true);
          return program.value;
        };
        expect(repaired()).toBeCloseTo(least, 5);
        const stopped = repaired(enough);
        if (least <= enough) expect(stopped).toBeCloseTo(least, 5);
        else {
          expect(stopped).toBeGreaterThan(enough - 1e-6);
          expect(stopped).toBeLessThanOrEqual(least + 1e-5);
        }
      }),
      { numRuns: 500 },
    );
  });
});
