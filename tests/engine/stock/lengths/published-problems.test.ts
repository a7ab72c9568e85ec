import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { LengthProblem } from '../../../../packages/engine/src/stock/lengths/length-problem.ts';
import { type Planned, planWithin } from './planning.ts';

/**
 * Published problems of cutting lengths with the best values known for them; sources in tests/fixtures/cutting/README.md.
 * So many steps are given that a plan is there that cannot be more than one length, or one part in a hundred, above the
 * least. How far one gets in a second is for `npm run bench -- cutting`.
 */

interface Instance {
  readonly id: string;
  readonly c?: number;
  readonly kerf?: number;
  readonly stocks?: readonly (readonly [length: number, available: number | null])[];
  readonly items: readonly (readonly [length: number, count: number])[];
  readonly opt?: number;
  readonly lb?: number;
  readonly ub?: number;
}

function instancesOf(file: string): readonly Instance[] {
  return JSON.parse(readFileSync(join(import.meta.dirname, '../../../fixtures/cutting', file), 'utf8')).instances;
}

function problemOf({ c = 0, kerf = 0, stocks, items }: Instance): LengthProblem {
  return {
    stocks: (stocks ?? [[c, null]]).map(([length, available], at) => ({
      id: `stock ${at}`,
      length,
      cost: stocks === undefined ? 1 : length,
      ...(available === null ? {} : { available }),
    })),
    items: items.map(([length, count], at) => ({ id: `item ${at}`, length, count })),
    kerf,
    trim: 0,
  };
}

const STEPS = 110;

const planned = new Map<Instance, Planned>();

/** Each problem is planned once, however many tests look at it. */
function planOf(instance: Instance): Planned {
  const done = planned.get(instance) ?? planWithin(problemOf(instance), STEPS);
  planned.set(instance, done);
  return done;
}

const classic = instancesOf('1d.json');

describe('one length of stock', () => {
  for (const instance of [...classic, ...instancesOf('kerf-1d.json')]) {
    test(`${instance.id} is planned with at most one length more than the least`, () => {
      const { plan, bound, isDone } = planOf(instance);
      const least = instance.opt ?? expect.fail('the fixture has no optimum');
      expect(plan.unplaced).toEqual([]);
      expect(bound).toBeLessThanOrEqual(least);
      expect(plan.cost).toBeGreaterThanOrEqual(least);
      expect(plan.cost).toBeLessThanOrEqual(least + 1);
      if (isDone) expect(bound).toBe(least);
    });
  }

  test('all but a few are proved least within those steps', () => {
    const open = classic.filter((instance) => planOf(instance).plan.cost !== planOf(instance).bound);
    expect(open.length).toBeLessThanOrEqual(3);
  });
});

describe('several lengths of stock', () => {
  for (const instance of instancesOf('1d-multistock.json')) {
    test(`${instance.id} is planned within a hundredth of the bound, which is at least as strong as the published one`, () => {
      const { plan, bound } = planWithin(problemOf(instance), 160);
      expect(plan.unplaced).toEqual([]);
      expect(bound).toBeGreaterThanOrEqual(instance.lb ?? Number.NaN);
      expect(bound).toBeLessThanOrEqual(instance.ub ?? Number.NaN);
      expect(plan.cost).toBeLessThanOrEqual(1.01 * bound);
    });
  }
});
