import { type Finding, hingeReachAssumed } from '@fettle/findings';
import type { HingePlan } from '../../hardware/hinge-plans.ts';
import { whoIs } from '../trade/alike.ts';

/**
 * Concealed hinges whose entries leave open what drawers behind their door have to pass: it is told what was taken
 * instead. `isAngleTold`: a finding has told that of their angle.
 */
export function assumedReach(plans: readonly HingePlan[], isAngleTold: boolean): readonly Finding[] {
  const told = new Set<string>();
  return plans.flatMap(({ form, hinge, leaf }): readonly Finding[] => {
    const { cell, group } = leaf;
    const place = leaf.hingesOrigin ?? cell.origin;
    if (form !== 'concealed' || told.has(hinge.name)) return [];
    told.add(hinge.name);
    const isAngleOpen = hinge.opens === undefined && hinge.openDoorIn === undefined && !isAngleTold;
    const missing = [
      ...(hinge.standsIn === undefined ? (['stands'] as const) : []),
      ...(isAngleOpen ? (['opens'] as const) : []),
    ];
    if (missing.length === 0) return [];
    return [
      hingeReachAssumed.at(
        place,
        { ...whoIs(cell, group), hinge: hinge.name, missing },
        { related: [{ role: 'hinge', values: { hinge: hinge.name }, origin: hinge.origin }] },
      ),
    ];
  });
}
