import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BestPatterns } from '../../../../packages/engine/src/stock/sheets/best-patterns.ts';
import { BEHIND, BLANK, SIDE_BY_SIDE } from '../../../../packages/engine/src/stock/sheets/cutting-forest.ts';
import { countBlanks, type PatternNode } from '../../../../packages/engine/src/stock/sheets/pattern-nodes.ts';
import { type PreparedSheets, prepareSheets } from '../../../../packages/engine/src/stock/sheets/prepare-sheets.ts';
import { StripPatterns } from '../../../../packages/engine/src/stock/sheets/strip-patterns.ts';

/** The best worth for a rectangle of every size, by trying every cut at every whole place: slow and plain. */
function plainWorths({ types }: PreparedSheets, worths: Float64Array, width: number, length: number): number {
  const table = Array.from({ length: width + 1 }, () => new Array<number>(length + 1).fill(0));
  const at = (x: number, y: number) => table[x]?.[y] ?? 0;
  for (let x = 1; x <= width; x++) {
    for (let y = 1; y <= length; y++) {
      let best = 0;
      types.forEach((type, place) => {
        const straight = type.width <= x && type.length <= y;
        if (straight || (type.mayTurn && type.length <= x && type.width <= y))
          best = Math.max(best, worths[place] ?? 0);
      });
      for (let cut = 1; 2 * cut <= x; cut++) best = Math.max(best, at(cut, y) + at(x - cut, y));
      for (let cut = 1; 2 * cut <= y; cut++) best = Math.max(best, at(x, cut) + at(x, y - cut));
      (table[x] as number[])[y] = best;
    }
  }
  return at(width, length);
}

const side = fc.integer({ min: 15, max: 55 });
const anyPatternProblem = fc
  .record({
    sheets: fc.array(fc.record({ width: side, length: side }), { minLength: 1, maxLength: 2 }),
    blanks: fc.array(
      fc.record({
        width: fc.integer({ min: 3, max: 30 }),
        length: fc.integer({ min: 3, max: 30 }),
        mayTurn: fc.boolean(),
        worth: fc.integer({ min: 1, max: 900 }),
      }),
      { minLength: 1, maxLength: 6 },
    ),
  })
  .map(({ sheets, blanks }) => {
    const problem = prepareSheets({
      sheets: sheets.map((sheet, place) => ({ id: `${place}`, cost: 1, ...sheet })),
      blanks: blanks.map((blank, place) => ({ id: `${place}`, count: 1, ...blank })),
      kerf: 0,
    });
    const worths = Float64Array.from(problem.types, ({ blanks: [one] }) => blanks[Number(one?.id)]?.worth ?? 0);
    return { problem, worths };
  })
  .filter(({ problem }) => problem.types.length > 0);

describe('the most valuable pattern', () => {
  it('is what every cut at every place gives, and its blanks are worth that', () => {
    fc.assert(
      fc.property(anyPatternProblem, ({ problem, worths }) => {
        const table = BestPatterns.for(problem, 300);
        if (table === undefined || !table.exact) throw new Error('few places, and yet no exact table');
        for (const _ of table.fill(worths));
        problem.kinds.forEach(({ width, length }, kind) => {
          expect(table.worthOn(kind)).toBe(plainWorths(problem, worths, width, length));
          const worth = table.countsOn(kind).reduce((sum, count, type) => sum + count * (worths[type] ?? 0), 0);
          expect(worth).toBe(table.worthOn(kind));
        });
      }),
      { numRuns: 150 },
    );
  });

  it('on coarse places is worth at least as much', () => {
    fc.assert(
      fc.property(anyPatternProblem, ({ problem, worths }) => {
        const table = BestPatterns.for(problem, 22);
        if (table === undefined) return;
        for (const _ of table.fill(worths));
        problem.kinds.forEach(({ width, length }, kind) => {
          expect(table.worthOn(kind)).toBeGreaterThanOrEqual(plainWorths(problem, worths, width, length));
        });
      }),
      { numRuns: 150 },
    );
  });

  it('of published problems with limited numbers is never below the proved optimum', () => {
    const path = join(import.meta.dirname, '../../../fixtures/cutting/g2kp.json');
    const { instances } = JSON.parse(readFileSync(path, 'utf8')) as {
      instances: { id: string; sheet: [number, number]; opt: number; items: [number, number, number, number][] }[];
    };
    for (const { id, sheet, opt, items } of instances) {
      const problem = prepareSheets({
        sheets: [{ id: 'sheet', width: sheet[0], length: sheet[1], cost: 1 }],
        blanks: items.map(([width, length, , count], place) => ({
          id: `${place}`,
          width,
          length,
          count,
          mayTurn: false,
        })),
        kerf: 0,
      });
      const table = BestPatterns.for(problem, 400);
      if (table === undefined) continue;
      const worths = Float64Array.from(problem.types, ({ blanks }) =>
        Math.max(...blanks.map((blank) => items[Number(blank.id)]?.[2] ?? 0)),
      );
      for (const _ of table.fill(worths));
      expect(table.worthOn(0), id).toBeGreaterThanOrEqual(opt);
    }
  });
});

/** Pieces that do not fill what they are cut from, and blanks that lie as they may not. */
function faultsOf(node: PatternNode, problem: PreparedSheets): readonly string[] {
  const { kind, width, length, type, children } = node;
  if (kind === BLANK) {
    const blank = problem.types[type];
    const straight = blank?.width === width && blank.length === length;
    const turned = blank?.mayTurn === true && blank.width === length && blank.length === width;
    return straight || turned ? [] : [`blank ${type} is ${width} × ${length}`];
  }
  if (kind !== SIDE_BY_SIDE && kind !== BEHIND) return [];
  const isRip = kind === SIDE_BY_SIDE;
  const filled = children.reduce((sum, child) => sum + (isRip ? child.width : child.length), 0);
  const isEven = children.every((child) => (isRip ? child.length === length : child.width === width));
  return [
    ...(filled === (isRip ? width : length) && isEven ? [] : [`pieces of ${width} × ${length} fill ${filled}`]),
    ...children.flatMap((child) => faultsOf(child, problem)),
  ];
}

describe('patterns of strips', () => {
  it.each([
    ['where every place is tried', true],
    ['on places that are too few', false],
  ])('can be cut, hold what they are worth and are never better than the best: %s', (_, isExact) => {
    fc.assert(
      fc.property(anyPatternProblem, fc.constantFrom(SIDE_BY_SIDE, BEHIND), ({ problem, worths }, direction) => {
        const table = BestPatterns.for(problem, 300);
        if (table === undefined) throw new Error('few places, and yet no table');
        for (const _ of table.fill(worths));
        const { across, along } = table.places;
        const places = direction === SIDE_BY_SIDE ? { across, along } : { across: along, along: across };
        const coarse = Int32Array.from({ length: 15 }, (_, k) => 4 * k);
        const strips = StripPatterns.for(problem, direction, isExact ? places : { across: coarse, along: coarse });
        strips.fill(worths);
        problem.kinds.forEach(({ width, length }, kind) => {
          const found = strips.bestOn(kind, 0, 10);
          expect(found.length > 0).toBe(table.worthOn(kind) > 0 && (isExact || found.length > 0));
          for (const { worth, pattern } of found) {
            expect([pattern.width, pattern.length]).toEqual([width, length]);
            expect(faultsOf(pattern, problem)).toEqual([]);
            const counts = countBlanks(pattern, problem.types.length);
            const held = counts.reduce((sum, count, type) => sum + count * (worths[type] ?? 0), 0);
            expect(held).toBeGreaterThanOrEqual(worth);
            expect(held).toBeLessThanOrEqual(table.worthOn(kind));
            expect(worth).toBeLessThanOrEqual(found[0]?.worth ?? 0);
          }
        });
      }),
      { numRuns: 150 },
    );
  });

  it('are the best there is where strips are all it takes', () => {
    const problem = prepareSheets({
      sheets: [{ id: 'sheet', width: 100, length: 200, cost: 1 }],
      blanks: [
        { id: 'wide', width: 60, length: 90, count: 1, mayTurn: false },
        { id: 'narrow', width: 40, length: 50, count: 1, mayTurn: false },
      ],
      kerf: 0,
    });
    const strips = StripPatterns.for(problem, SIDE_BY_SIDE, undefined);
    strips.fill(Float64Array.of(6, 2));
    // A strip of 60 with two of the wide, beside it a strip of 40 with four of the narrow.
    expect(strips.bestOn(0, 0, 1).map(({ worth }) => worth)).toEqual([2 * 6 + 4 * 2]);
  });
});
