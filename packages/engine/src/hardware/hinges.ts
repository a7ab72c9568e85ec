import { fitCup } from './cup-hinges.ts';
import type { HardwareCase } from './fit-hardware.ts';
import { notFitted } from './hinge-listing.ts';
import { type HingePlan, planHinges, roomMissing } from './hinge-plans.ts';
import { hungLeaves } from './hung-leaves.ts';
import { fitButt, fitKnife } from './leaf-hinges.ts';
import type { FittedHardware } from './placed-hardware.ts';

/** Puts the hinges of all doors in their places: gains and cups in door and case, screws where they hold. */
export function fitHinges(one: HardwareCase): FittedHardware {
  const { design, layout, face: root, parts } = one;
  if (design.face === undefined) return notFitted;
  const plans = hungLeaves(design.face, layout, root).flatMap((leaf) => planHinges(leaf, parts, layout.unit) ?? []);
  // Hinges that find no room on their door have no place at all.
  const onTheirDoors = plans.filter((plan) => roomMissing(plan) === undefined);
  return together(onTheirDoors.map((plan) => fitPlan(plan, one)));
}

function fitPlan(plan: HingePlan, one: HardwareCase): FittedHardware {
  switch (plan.form) {
    case 'butt':
      return together(plan.middles.map((middle, at) => fitButt(plan, one, middle, at)));
    case 'knife':
      return together([fitKnife(plan, one, 'lower'), fitKnife(plan, one, 'upper')]);
    case 'concealed':
      return together(plan.middles.map((middle, at) => fitCup(plan, one, middle, at)));
    default: {
      const unknown: never = plan.form;
      return unknown;
    }
  }
}

function together(fitted: readonly FittedHardware[]): FittedHardware {
  return { placed: fitted.flatMap(({ placed }) => placed), features: fitted.flatMap(({ features }) => features) };
}
