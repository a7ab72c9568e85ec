import { Rational } from '../../length/rational.ts';
import type { PlannedBoards, PlannedSheets } from './plan-buying.ts';

/** How good a plan is: what it may still be above the least that is possible. Zero is proved least. */
export interface Standing {
  readonly above: Rational;
  readonly counted: 'sheets' | 'board feet';
}

export function standingOfSheets({ plan, bound }: PlannedSheets): Standing {
  const least = Rational.of(Math.ceil(bound - 1e-9));
  return { above: Rational.of(plan.cost).minus(least).max(Rational.zero), counted: 'sheets' };
}

/** Board feet are exact ones: boards cost what they measure. */
export function standingOfBoards({ order, plan, bound }: PlannedBoards): Standing {
  const above = Rational.of(Math.max(0, plan.cost - Math.ceil(bound - 1e-9)));
  return { above: above.times(order.prepared.costUnit), counted: 'board feet' };
}

/** 'proved least', or by how much it may be more. */
export function standingWords({ above, counted }: Standing): string {
  if (above.isZero()) return 'proved least';
  // Rounded up: it is the most that it can be.
  const tenths = above.times(10).negated().floor().negated();
  const words = counted === 'sheets' ? `${above}` : (Number(tenths.numerator) / 10).toFixed(1);
  const unit = words === '1' ? 'sheet' : counted;
  return `at most ${words} ${unit} above the least possible`;
}
