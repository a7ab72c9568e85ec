import { checkLengthPlan } from '../../../../packages/engine/src/stock/lengths/check-length-plan.ts';
import type { LengthPlan, LengthProblem } from '../../../../packages/engine/src/stock/lengths/length-problem.ts';
import { planLengths } from '../../../../packages/engine/src/stock/lengths/plan-lengths.ts';

export interface Planned {
  readonly plan: LengthPlan;
  readonly plans: readonly LengthPlan[];
  readonly bound: number;
  readonly steps: number;
  readonly isDone: boolean;
}

/** Runs the search for at most so many steps, and checks on the way what every step must keep. */
export function planWithin(problem: LengthProblem, mostSteps: number, seed = 1): Planned {
  const plans: LengthPlan[] = [];
  let bound = 0;
  let progress = 0;
  let steps = 0;
  let isDone = false;
  for (const step of planLengths(problem, seed)) {
    steps += 1;
    if (step.plan !== undefined) {
      const wrong = checkLengthPlan(problem, step.plan);
      if (wrong.length > 0) throw new Error(wrong.join('; '));
      plans.push(step.plan);
    }
    if (step.bound < bound) throw new Error(`the bound fell from ${bound} to ${step.bound}`);
    if (step.progress < progress) throw new Error(`the progress fell from ${progress} to ${step.progress}`);
    ({ bound, progress } = step);
    isDone = step.done;
    if (isDone || steps >= mostSteps) break;
  }
  const plan = plans.at(-1);
  if (plan === undefined) throw new Error('there is no plan');
  return { plan, plans, bound, steps, isDone };
}
