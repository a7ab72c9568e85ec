import {
  type Change,
  caseGainTooDeep,
  closingEdgeNeedsBevel,
  cupBeyondStile,
  cupDistanceOutside,
  cupTooDeep,
  doorHingedOnNothing,
  type Finding,
  hingeLeafTooWide,
  hingeScrewsInEdging,
  hingeSideNotSaid,
  hingesDoNotFit,
  hingesNotPlaced,
  hingeThinnerThanGap,
  type Mend,
  type Related,
  tooFewHinges,
} from '@fettle/findings';
import type { HingeEntry } from '../../design/shop.ts';
import { type Group, groupAlike } from '../../grouping.ts';
import { clearsItsGap, leastBevel, sweepInWords } from '../../hardware/closing-sweep.ts';
import { canPlace, type HingePlan, planHinges } from '../../hardware/hinge-plans.ts';
import { gapAtClosing, type HungLeaf, hungLeaves } from '../../hardware/hung-leaves.ts';
import { Length } from '../../length/length.ts';
import { exactSource } from '../../length/trade-formats.ts';
import { inPounds } from '../../stock/weights.ts';
import { LEAST_BEFORE_CUP } from '../../tables/hanging-habits.ts';
import { limitIn } from '../../tables/trade-limits.ts';
import { whoIs } from '../trade/alike.ts';
import type { TradeCase } from '../trade/case-facts.ts';
import { hingesSuit } from '../trade/doors.ts';
import { givenAt } from '../written-sizes.ts';
import { type HingeTrouble, hingeTrouble } from './hinge-troubles.ts';

/** What is wrong with how doors hang. Doors that hang alike have one finding. */
export function hingeFindings(one: TradeCase): readonly Finding[] {
  if (one.face === undefined) return [];
  const leaves = hungLeaves(one.face.design, one.layout, one.face.root);
  const hung = leaves.filter(({ laid, hinge }) => hinge !== undefined && hingesSuit(one, laid, hinge));
  const plans = hung.flatMap((leaf) => planHinges(leaf, one.parts, one.layout.unit) ?? []);
  return [
    ...sideFindings(hung),
    ...groupAlike(
      hung.filter((leaf) => leaf.hinge?.form !== undefined && leaf.side !== undefined && !canPlace(leaf)),
      ({ hinge, fit }) => [hinge?.name, fit.kind],
    ).map((group) => notPlaced(group, one)),
    ...groupAlike(
      plans.flatMap((plan) => {
        const trouble = troubleOf(plan, one);
        return trouble === undefined ? [] : [{ plan, trouble }];
      }),
      ({ plan, trouble }) => [plan.hinge.name, trouble],
    ).map((group) => troubleFinding(group, one)),
    ...groupAlike(
      plans.filter(({ count, needed }) => count < needed),
      ({ hinge, count, needed, leaf }) => [hinge.name, count, needed, leaf.leaf.y.size.length],
    ).map((group) => tooFew(group, one)),
    ...groupAlike(
      plans.filter((plan) => !clearsItsGap(edgeOf(plan)) && plan.form !== 'concealed'),
      (plan) => [plan.hinge.name, edgeOf(plan)],
    ).map((group) => bevelFinding(group, one)),
  ];
}

function notPlaced(leaves: Group<HungLeaf>, one: TradeCase): Finding {
  const [leaf, ...others] = leaves;
  const { hinge, fit, cell, group } = leaf;
  const cells = new Set([cell]);
  const also = others.flatMap((other): Related[] => {
    if (cells.has(other.cell)) return [];
    cells.add(other.cell);
    return [{ role: 'also', values: whoIs(other.cell, other.group), origin: other.cell.origin }];
  });
  return hingesNotPlaced.at(
    leaf.hingesOrigin ?? cell.origin,
    { ...whoIs(cell, group), hinge: hinge?.name ?? '', form: hinge?.form ?? 'butt', fit: fit.kind },
    {
      related: [
        ...(hinge === undefined
          ? []
          : [{ role: 'hinge', values: { hinge: hinge.name }, origin: hinge.origin } as const]),
        ...also,
      ],
      mends: hingesFor(leaves, hinge?.name ?? '', one),
    },
  );
}

function troubleOf(plan: HingePlan, { parts, layout }: TradeCase): HingeTrouble | undefined {
  return hingeTrouble(plan, parts, layout.facePlane.length, layout.unit);
}

function who({ leaf }: HingePlan): { readonly name?: string; readonly words: string; readonly hinge: string } {
  return { ...whoIs(leaf.cell, leaf.group), hinge: leaf.hinge?.name ?? '' };
}

function at({ leaf }: HingePlan) {
  return leaf.hingesOrigin ?? leaf.cell.origin;
}

/** The entry of the hinges, and the other doors that hang alike, each once. */
function related([first, ...others]: Group<HingePlan>): readonly Related[] {
  const cells = new Set([first.leaf.cell]);
  const also: Related[] = [];
  for (const { leaf } of others) {
    if (cells.has(leaf.cell)) continue;
    cells.add(leaf.cell);
    also.push({ role: 'also', values: whoIs(leaf.cell, leaf.group), origin: leaf.cell.origin });
  }
  return [{ role: 'hinge', values: { hinge: first.hinge.name }, origin: first.hinge.origin }, ...also];
}

function troubleFinding(group: Group<{ plan: HingePlan; trouble: HingeTrouble }>, one: TradeCase): Finding {
  const plans = group.map(({ plan }) => plan) as unknown as Group<HingePlan>;
  const [{ plan, trouble }] = group;
  const facts = who(plan);
  const more = { related: related(plans), mends: otherHinges(plans, one) };
  switch (trouble.kind) {
    case 'no-wood':
      return doorHingedOnNothing.at(
        at(plan),
        { ...facts, where: trouble.place },
        { ...more, mends: [...otherSide(plans, one), ...more.mends] },
      );
    case 'no-room':
      return hingesDoNotFit.at(
        at(plan),
        { ...facts, count: plan.count, needs: trouble.needs, height: trouble.height },
        more,
      );
    case 'cup-too-deep': {
      const { depth, left, limit } = trouble;
      const thickness = plan.leaf.deep.size.length;
      return cupTooDeep.at(
        at(plan),
        { ...facts, depth, thickness, left: left.max(Length.zero), limit, through: !left.isPositive() },
        more,
      );
    }
    case 'cup-distance': {
      const { distance, limit, isTooNear } = trouble;
      return cupDistanceOutside.at(
        at(plan),
        { ...facts, distance, limit, difference: distance.minus(limit).abs(), tooNear: isTooNear },
        more,
      );
    }
    case 'cup-beyond-stile': {
      const { reach, room, isAtGroove } = trouble;
      return cupBeyondStile.at(
        at(plan),
        { ...facts, reach, room, difference: reach.minus(room), isAtGroove },
        { ...more, mends: [...more.mends, ...widerStiles(plans, one, trouble)] },
      );
    }
    case 'leaf-too-wide': {
      const { leaf, left, limit } = trouble;
      const thickness = plan.leaf.deep.size.length;
      return hingeLeafTooWide.at(
        at(plan),
        { ...facts, leaf, thickness, left: left.max(Length.zero), limit, comesOut: !left.isPositive() },
        { ...more, severity: left.isPositive() ? 'warning' : 'error' },
      );
    }
    case 'thinner-than-gap': {
      const { closed, gap } = trouble;
      return hingeThinnerThanGap.at(at(plan), { ...facts, closed, gap, difference: gap.minus(closed) }, more);
    }
    case 'case-gain-too-deep': {
      const { depth, limit } = trouble;
      const said = plan.leaf.cell.hanging?.caseGain;
      const written = said?.reason.kind === 'given' ? said.reason.origin : undefined;
      const half = limit.dividedBy(2);
      return caseGainTooDeep.at(
        written ?? (said?.reason.kind === 'measured' ? said.reason.origin : at(plan)),
        { ...facts, depth, limit, difference: depth.minus(limit) },
        {
          related: related(plans),
          mends:
            written === undefined
              ? []
              : [{ how: 'halve', values: { size: half }, changes: [{ kind: 'set-length', at: written, to: half }] }],
        },
      );
    }
    case 'screws-in-edging': {
      const { screw, edging, limit } = trouble;
      return hingeScrewsInEdging.at(at(plan), { ...facts, screw, edging, limit, difference: limit.minus(screw) }, more);
    }
    default: {
      const unknown: never = trouble;
      return unknown;
    }
  }
}

/** So wide that a wall as thick as one before a cup is left behind it, on the marks of the ruler. */
function widerStiles(
  plans: Group<HingePlan>,
  one: TradeCase,
  { reach, room, stile }: Extract<HingeTrouble, { readonly kind: 'cup-beyond-stile' }>,
): readonly Mend[] {
  const { unit, ruler } = one.design.units;
  const mark = Length.of(ruler, unit);
  const least = reach.minus(room).plus(stile).plus(limitIn(LEAST_BEFORE_CUP, unit));
  const size = mark.isPositive() ? mark.times(Math.ceil(least.ratioTo(mark).toNumber())) : least;
  const places = new Map(
    plans.flatMap(({ leaf: { cell } }) => {
      const framed = (cell.front ?? one.face?.design.fronts)?.framed;
      const written = framed === undefined ? undefined : givenAt(framed.stiles);
      return written === undefined ? [] : [[written.start, written] as const];
    }),
  );
  return places.size === 0
    ? []
    : [
        {
          how: 'widen',
          values: { size },
          changes: [...places.values()].map((place) => ({ kind: 'set-length', at: place, to: size }) as const),
        },
      ];
}

/** Hinges of the shop that are free of all this on every one of these doors. */
function otherHinges(plans: Group<HingePlan>, one: TradeCase): readonly Mend[] {
  return hingesFor(
    plans.map(({ leaf }) => leaf),
    plans[0].hinge.name,
    one,
  );
}

function hingesFor(leaves: readonly HungLeaf[], now: string, one: TradeCase): readonly Mend[] {
  const places = new Map(
    leaves.flatMap(({ hingesOrigin }) =>
      hingesOrigin === undefined ? [] : [[hingesOrigin.start, hingesOrigin] as const],
    ),
  );
  const suits = (hinge: HingeEntry): boolean =>
    leaves.every((leaf) => {
      const plan = planHinges({ ...leaf, hinge }, one.parts, one.layout.unit);
      return plan !== undefined && hingesSuit(one, leaf.laid, hinge) && troubleOf(plan, one) === undefined;
    });
  return (one.shop.hinges ?? [])
    .filter(({ name }) => name !== now)
    .filter(suits)
    .slice(0, 3)
    .map(({ name }) => ({
      how: 'use-hinge',
      values: { hinge: name },
      changes: [...places.values()].map((place) => ({ kind: 'set-name', at: place, name }) as const),
    }));
}

/** Where the other edge has wood, and the text says which edge it is. */
function otherSide(plans: Group<HingePlan>, one: TradeCase): readonly Mend[] {
  const changes = plans.map(({ leaf, side }) => {
    const turned: HungLeaf = { ...leaf, side: side === 'left' ? 'right' : 'left' };
    const plan = planHinges(turned, one.parts, one.layout.unit);
    const origin = leaf.cell.hingeSideOrigin;
    return plan === undefined || origin === undefined || troubleOf(plan, one) !== undefined
      ? undefined
      : ({ kind: 'set-words', at: origin, words: `hinged ${plan.side}` } as const);
  });
  const known = changes.filter((change) => change !== undefined);
  const [{ side }] = plans;
  return known.length < changes.length
    ? []
    : [{ how: 'other-side', values: { side: side === 'left' ? 'right' : 'left' }, changes: known }];
}

function tooFew(plans: Group<HingePlan>, one: TradeCase): Finding {
  const [plan] = plans;
  const places = new Map(
    plans.flatMap(({ leaf: { cell } }) =>
      cell.hanging?.countOrigin === undefined
        ? []
        : [[cell.hanging.countOrigin.start, cell.hanging.countOrigin] as const],
    ),
  );
  return tooFewHinges.at(
    plan.leaf.cell.hanging?.countOrigin ?? at(plan),
    {
      ...who(plan),
      count: plan.count,
      needed: plan.needed,
      height: plan.leaf.leaf.y.size.length,
      weight: weightInWords(plan, one),
    },
    {
      related: related(plans),
      mends: [
        {
          how: 'more',
          values: { count: plan.needed },
          changes: [...places.values()].map(
            (place) => ({ kind: 'set-words', at: place, words: `${plan.needed}` }) as const,
          ),
        },
      ],
    },
  );
}

/** Rounded: it is an average of the wood's. Empty where it is not known. */
function weightInWords({ weight }: HingePlan, { layout }: TradeCase): string {
  if (weight === undefined) return '';
  const isMetricPiece = layout.unit === 'mm' || layout.unit === 'cm';
  return isMetricPiece ? `${weight.toNumber().toFixed(0)} kg` : `${inPounds(weight).toNumber().toFixed(0)} lb`;
}

function edgeOf({ leaf, side }: HingePlan) {
  return {
    width: leaf.leaf.x.size.length,
    thickness: leaf.deep.size.length,
    gap: gapAtClosing(leaf, side),
    bevel: leaf.cell.hanging?.bevel?.length ?? Length.zero,
  };
}

function bevelFinding(plans: Group<HingePlan>, one: TradeCase): Finding {
  const [plan] = plans;
  const edge = edgeOf(plan);
  const said = plan.leaf.cell.hanging?.bevel;
  const bevel = leastBevel(edge, one.layout.unit);
  const places = new Map(
    plans.flatMap(({ leaf: { cell } }) =>
      cell.hingesOrigin === undefined ? [] : [[cell.hingesOrigin.start, cell] as const],
    ),
  );
  const changes = [...places.values()].flatMap((cell): Change[] => {
    if (bevel === undefined || cell.hingesOrigin === undefined) return [];
    const written = givenAt(cell.hanging?.bevel);
    return written === undefined
      ? [
          {
            kind: 'insert-words',
            after: cell.hingesOrigin,
            words: `, closing edge bevelled ${exactSource(bevel, one.layout.unit)}`,
          },
        ]
      : [{ kind: 'set-length', at: written, to: bevel }];
  });
  return closingEdgeNeedsBevel.at(
    givenAt(said) ?? at(plan),
    {
      ...whoIs(plan.leaf.cell, plan.leaf.group),
      width: edge.width,
      thickness: edge.thickness,
      sweep: sweepInWords(edge, one.layout.unit),
      gap: edge.gap,
      bevelled: said !== undefined,
    },
    {
      related: related(plans).filter(({ role }) => role === 'also'),
      mends: bevel === undefined ? [] : [{ how: 'bevel', values: { bevel }, changes }],
    },
  );
}

/** Hinges whose place cannot be known, because nothing says on which edge the door hangs. */
function sideFindings(leaves: readonly HungLeaf[]): readonly Finding[] {
  return leaves
    .filter(({ side, hinge }) => side === undefined && hinge?.form !== undefined)
    .map(({ cell, group, hingesOrigin }) =>
      hingeSideNotSaid.at(cell.origin, whoIs(cell, group), {
        mends: (['left', 'right'] as const).map((side) => ({
          how: side,
          values: {},
          changes: [
            // 'hinged left' is a word of 'door', not of 'doors' that are a single one.
            cell.singleOrigin === undefined && hingesOrigin !== undefined
              ? { kind: 'insert-words', after: hingesOrigin, words: ` at ${side}` }
              : { kind: 'insert-words', after: cell.origin, words: `hinged ${side}` },
          ],
        })),
      }),
    );
}
