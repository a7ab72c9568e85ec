import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { type LengthInstance, lengthInstances, problemOf } from '../../../fixtures/cutting/length-instances.ts';
import { type Planned, planWithin } from './planning.ts';

/**
 * Published problems of cutting lengths with the best values known for them; sources in tests/fixtures/cutting/README.md.
 * So many steps are given that a plan is there that cannot be more than one length, or one part in a hundred, above the
 * least. How far one gets in a second is for `npm run bench -- cutting`.
 */

const folder = join(import.meta.dirname, '../../../fixtures/cutting');

const STEPS = 110;

const planned = new Map<LengthInstance, Planned>();

/** Each problem is planned once, however many tests look at it. */
function planOf(instance: LengthInstance): Planned {
  const done = planned.get(instance) ?? planWithin(problemOf(instance), STEPS);
  planned.set(instance, done);
  return done;
}

const classic = lengthInstances(folder, '1d');

describe('one length of stock', () => {
  for (const instance of [...classic, ...lengthInstances(folder, 'kerf-1d')]) {
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
  for (const instance of lengthInstances(folder, '1d-multistock')) {
    test(`${instance.id} is planned within a hundredth of the bound, which is at least as strong as the published one`, () => {
      const { plan, bound } = planWithin(problemOf(instance), 160);
      expect(plan.unplaced).toEqual([]);
      expect(bound).toBeGreaterThanOrEqual(instance.lb ?? Number.NaN);
      expect(bound).toBeLessThanOrEqual(instance.ub ?? Number.NaN);
      expect(plan.cost).toBeLessThanOrEqual(1.01 * bound);
    });
  }
});
