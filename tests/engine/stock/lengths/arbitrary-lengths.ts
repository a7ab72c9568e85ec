import fc from 'fast-check';
import type { LengthProblem } from '../../../../packages/engine/src/stock/lengths/length-problem.ts';

/** Small problems of every shape: kerf, trim, stock that runs out, pieces that no stock holds. */
export const arbitraryLengthProblem: fc.Arbitrary<LengthProblem> = fc.record({
  stocks: fc
    .array(
      fc.record(
        {
          length: fc.integer({ min: 1, max: 120 }),
          available: fc.integer({ min: 0, max: 6 }),
          cost: fc.integer({ min: 0, max: 200 }),
        },
        { requiredKeys: ['length', 'cost'] },
      ),
      { maxLength: 4 },
    )
    .map((stocks) => stocks.map((stock, index) => ({ id: `stock ${index}`, ...stock }))),
  items: fc
    .array(fc.record({ length: fc.integer({ min: 1, max: 130 }), count: fc.integer({ min: 0, max: 9 }) }), {
      maxLength: 12,
    })
    .map((items) => items.map((item, index) => ({ id: `item ${index}`, ...item }))),
  kerf: fc.integer({ min: 0, max: 5 }),
  trim: fc.integer({ min: 0, max: 8 }),
});
