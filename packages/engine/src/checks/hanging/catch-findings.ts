import { type Finding, nothingToCatchOn } from '@fettle/findings';
import { groupAlike } from '../../grouping.ts';
import { type CatchPlan, planCatches } from '../../hardware/catches.ts';
import { hungLeaves } from '../../hardware/hung-leaves.ts';
import { whoIs } from '../trade/alike.ts';
import type { TradeCase } from '../trade/case-facts.ts';

/** Catches and stops with nothing over or under the door to hold them. Each statement once. */
export function catchFindings(one: TradeCase): readonly Finding[] {
  if (one.face === undefined) return [];
  const leaves = hungLeaves(one.face.design, one.layout, one.face.root);
  const plans = planCatches(leaves, one.layout.facePlane, one.parts, one.layout.unit);
  const bare = plans.filter(({ wood }) => wood === undefined);
  return groupAlike(bare, ({ asked, at }) => [asked.origin, at]).map(([plan]) => {
    const { leaf, asked, at } = plan;
    const other = at === 'top' ? 'bottom' : 'top';
    const said = asked.atOrigins?.[at];
    const isMended = said !== undefined && !asked.at.includes(other) && hasWoodAt(other, plan, one);
    return nothingToCatchOn.at(
      said ?? asked.origin,
      { ...whoIs(leaf.cell, leaf.group), what: asked.kind, where: at === 'top' ? 'over' : 'under' },
      {
        mends: isMended
          ? [{ how: other, values: {}, changes: [{ kind: 'set-words', at: said, words: `at ${other}` }] }]
          : [],
      },
    );
  });
}

function hasWoodAt(at: CatchPlan['at'], { leaf, asked }: CatchPlan, one: TradeCase): boolean {
  const turned = { ...leaf, cell: { ...leaf.cell, catches: [{ ...asked, at: [at] }] } };
  return planCatches([turned], one.layout.facePlane, one.parts, one.layout.unit).every(
    ({ wood }) => wood !== undefined,
  );
}
