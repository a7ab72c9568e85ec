import fc from 'fast-check';
import type { SheetProblem } from '../../../../packages/engine/src/stock/sheets/sheet-problem.ts';

const side = fc.integer({ min: 1, max: 60 });
const trim = fc.record({
  left: fc.integer({ min: 0, max: 3 }),
  right: fc.integer({ min: 0, max: 3 }),
  near: fc.integer({ min: 0, max: 3 }),
  far: fc.integer({ min: 0, max: 3 }),
});

/** Small orders of every sort: several kinds of sheets, few or many of them, trim, kerf, limits, blanks that cannot be. */
export const anySheetProblem: fc.Arbitrary<SheetProblem> = fc.record({
  sheets: fc
    .array(
      fc.record(
        {
          width: side,
          length: side,
          cost: fc.integer({ min: 0, max: 9 }),
          available: fc.integer({ min: 0, max: 4 }),
          trim,
        },
        { requiredKeys: ['width', 'length', 'cost'] },
      ),
      { minLength: 0, maxLength: 3 },
    )
    .map((sheets) => sheets.map((sheet, place) => ({ id: `sheet ${place}`, ...sheet }))),
  blanks: fc
    .array(fc.record({ width: side, length: side, count: fc.integer({ min: 0, max: 4 }), mayTurn: fc.boolean() }), {
      maxLength: 9,
    })
    .map((blanks) => blanks.map((blank, place) => ({ id: `blank ${place}`, ...blank }))),
  kerf: fc.integer({ min: 0, max: 5 }),
  limits: fc.record(
    {
      longestRip: side,
      longestCrosscut: side,
      narrowestStrip: fc.integer({ min: 0, max: 6 }),
      stages: fc.integer({ min: 1, max: 4 }),
    },
    { requiredKeys: [] },
  ),
});
