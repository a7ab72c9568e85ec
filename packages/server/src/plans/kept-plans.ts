import { type BuyingPlan, buyingRequest, type Evaluation, planBuyingAtOnce } from '@fettle/engine';

/**
 * Plans of pieces as long as their evaluations are kept: a piece whose words did not change is not planned again, whichever
 * of its sheets is looked at. Short of patience, for it is done between two keys; files are planned with more of it.
 */
const plans = new WeakMap<Evaluation, BuyingPlan>();

const PATIENCE = { steps: 8, seed: 1 };

export function planOf(evaluation: Evaluation): BuyingPlan {
  const known = plans.get(evaluation);
  if (known !== undefined) return known;
  const { parts, machines, design } = evaluation;
  const plan = planBuyingAtOnce(buyingRequest(parts, machines ?? [], design.units.unit), PATIENCE);
  plans.set(evaluation, plan);
  return plan;
}
