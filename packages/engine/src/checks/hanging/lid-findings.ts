import {
  type Finding,
  lidCanFall,
  lidHingesNotPlaced,
  lidMeetsWall,
  lidSupportHalfTold,
  lidSupportNotPlaced,
  lidSupportTooStrong,
  lidSupportTooWeak,
  lidWithoutSupport,
  type Mend,
} from '@fettle/findings';
import type { TopDesign } from '../../design/design.ts';
import type { LidDesign, LidSupport } from '../../design/lid-design.ts';
import type { HingeEntry } from '../../design/shop.ts';
import { untoldOfPlace } from '../../hardware/lid-supports.ts';
import { weightOfParts } from '../../hardware/weight-of-parts.ts';
import { Length, type LengthUnit } from '../../length/length.ts';
import { Rational } from '../../length/rational.ts';
import { upToMark } from '../../length/ruler-marks.ts';
import { exactSource } from '../../length/trade-formats.ts';
import type { UnmarkedPart } from '../../parts/slab.ts';
import { inPounds } from '../../stock/weights.ts';
import { MOST_OF_THE_LID } from '../../tables/hanging-habits.ts';
import { limitIn, USUAL_MARK } from '../../tables/trade-limits.ts';
import type { TradeCase } from '../trade/case-facts.ts';
import { givenAt } from '../written-sizes.ts';

/** Whether a lid finds room to open, and what keeps it from falling. A screening: what a standard asks is tested. */
export function lidFindings({ design, layout, parts, shop }: TradeCase): readonly Finding[] {
  const { top } = design.carcase;
  const part = parts.find(({ id }) => id === 'case/top');
  if (top?.lid === undefined || part === undefined) return [];
  const { lid } = top;
  return [
    ...hingeFindings(lid, shop.hinges ?? []),
    ...wallFindings(top, lid, part, layout.unit),
    ...supportFindings(top, lid, part),
  ];
}

/** What has no place on the lid: there is nothing of it that could be checked. */
function hingeFindings(
  { hinges, hingesOrigin, isHung, origin }: LidDesign,
  known: readonly HingeEntry[],
): readonly Finding[] {
  if (hinges === undefined)
    return isHung ? [] : [lidHingesNotPlaced.at(origin, { hinge: '', why: 'none', missing: [] })];
  const missing = untold(hinges);
  if (hinges.form === 'butt' && missing.length === 0) return [];
  const at = hingesOrigin ?? origin;
  const better = known.filter((each) => each.form === 'butt' && untold(each).length === 0).slice(0, 3);
  return [
    lidHingesNotPlaced.at(
      at,
      { hinge: hinges.name, why: hinges.form === 'butt' ? 'sizes' : 'no-butt', missing },
      {
        related: [{ role: 'hinge', values: { hinge: hinges.name }, origin: hinges.origin }],
        mends: better.map(({ name }) => ({
          how: 'use-hinge',
          values: { hinge: name },
          changes: [{ kind: 'set-name', at, name }],
        })),
      },
    ),
  ];
}

function untold({ length, leafWidth, closed }: HingeEntry): readonly string[] {
  return [
    ...(length === undefined ? ['… long'] : []),
    ...(leafWidth === undefined ? ['leaf … wide'] : []),
    ...(closed === undefined ? ['… closed'] : []),
  ];
}

const right = Rational.of(90);

function wallFindings(top: TopDesign, lid: LidDesign, part: UnmarkedPart, unit: LengthUnit): readonly Finding[] {
  const angle = lid.opens ?? right;
  const reach = reachBehind(top, part, angle, unit);
  const room = top.overhangBack.length.plus(lid.fromWall.length);
  if (reach.compare(room) <= 0) return [];
  const difference = reach.minus(room);
  const size = lid.fromWall.length.plus(difference);
  return [
    lidMeetsWall.at(
      givenAt(lid.fromWall) ?? lid.origin,
      { angle: angle.toString(), reach, room, difference },
      { mends: away(top, lid, size, unit) },
    ),
  ];
}

/**
 * How far a lid that turns on the back edge of its underside reaches behind that: its back corner runs on a circle of
 * the overhang o and the thickness t, o cos a + t sin a, at most the root of the sum of their squares; open farther than
 * a right angle its front edge, d before the hinge, leans back by d cos a. Exact for a lid without overhang at a right
 * angle, else rounded up to the next 1/32" or 1/2 mm.
 */
export function reachBehind(top: TopDesign, part: UnmarkedPart, angle: Rational, unit: LengthUnit): Length {
  const over = top.overhangBack.length;
  const thick = part.thickness.length;
  if (over.isZero() && angle.equals(right)) return thick;
  const before = part.box.z.size.length.minus(over);
  const [o, t, d] = [over, thick, before].map((length) => length.approximateInches) as [number, number, number];
  const radians = (Math.min(Math.max(angle.toNumber(), 0), 180) * Math.PI) / 180;
  const highest = Math.atan2(t, o);
  const corner = radians >= highest ? Math.hypot(o, t) : o * Math.cos(radians) + t * Math.sin(radians);
  const leaning = radians > Math.PI / 2 ? -d * Math.cos(radians) + t * Math.sin(radians) : 0;
  const inches = Length.of(Rational.of(Math.ceil(Math.max(corner, leaning) * 1e6 - 1e-3), 1e6), 'in');
  return upToMark(inches, limitIn(USUAL_MARK, unit));
}

function away(top: TopDesign, lid: LidDesign, size: Length, unit: LengthUnit): readonly Mend[] {
  const at = givenAt(lid.fromWall);
  const after = givenAt(top.thickness);
  if (at !== undefined) return [{ how: 'away', values: { size }, changes: [{ kind: 'set-length', at, to: size }] }];
  if (after === undefined) return [];
  const words = `, ${exactSource(size, unit)} from wall`;
  return [{ how: 'away', values: { size }, changes: [{ kind: 'insert-words', after, words }] }];
}

/** Lighter ones fall without harm: common practice, no source. */
const LIGHT_POUNDS = Rational.of(2);

function supportFindings(top: TopDesign, lid: LidDesign, part: UnmarkedPart): readonly Finding[] {
  const kilograms = weightOfParts([part]);
  const pounds = kilograms && inPounds(kilograms);
  const arm = part.box.z.size.length.dividedBy(2).minus(top.overhangBack.length);
  const moment = pounds?.times(arm.in('in'));
  const facts = {
    weight: pounds === undefined ? '' : `${tenths(pounds)} lb`,
    moment: moment === undefined ? '' : `${whole(moment)} inch-pounds`,
  };
  const caution = lidCanFall.at(lid.origin, { isTorsion: lid.support?.how === 'torsion' });
  if (lid.support === undefined)
    return pounds !== undefined && pounds.compare(LIGHT_POUNDS) <= 0
      ? []
      : [lidWithoutSupport.at(lid.origin, facts), caution];
  const { support } = lid;
  const { carries, count, origin } = support;
  const half = [...halfTold(support, moment), ...withoutPlace(support)];
  if (carries === undefined || moment === undefined) return [...half, caution];
  const each = carries.unit === 'inch-pounds' ? carries.moment : carries.moment.times(INCH_POUNDS_IN_NEWTON_METRE);
  const rated = each.times(count);
  const told = { ...facts, count, rated: `${whole(rated)} inch-pounds` };
  if (rated.compare(moment) >= 0) {
    // What only holds a lid open does not lift it.
    if (support.how !== 'torsion' || rated.compare(moment.times(MOST_OF_THE_LID)) <= 0) return [...half, caution];
    const mends = [...exactly(support, moment, 'weaker'), ...moreOrFewer(support, moment, each)];
    return [...half, lidSupportTooStrong.at(origin, { ...told, most: MOST_OF_THE_LID.toString() }, { mends }), caution];
  }
  return [
    ...half,
    lidSupportTooWeak.at(
      origin,
      { ...told, missing: `${whole(moment.minus(rated))} inch-pounds` },
      { mends: [...exactly(support, moment, 'stronger'), ...moreOrFewer(support, moment, each)] },
    ),
    caution,
  ];
}

/** How it holds the lid and what it is rated for are two things: either may be missing. */
function halfTold(
  { how, carries, hasLostWords, origin }: LidSupport,
  moment: Rational | undefined,
): readonly Finding[] {
  if (hasLostWords) return [];
  const facts = { moment: moment === undefined ? '' : `${whole(moment)} inch-pounds` };
  const say = (words: string): Mend => ({
    how: 'say',
    values: { words },
    changes: [{ kind: 'insert-words', after: origin, words: ` ${words},` }],
  });
  return [
    ...(how === undefined
      ? [lidSupportHalfTold.at(origin, { ...facts, missing: 'how' }, { mends: [say('torsion'), say('stay')] })]
      : []),
    ...(carries === undefined ? [lidSupportHalfTold.at(origin, { ...facts, missing: 'carries' })] : []),
  ];
}

/** Each rated for its share of the lid, in the unit of the maker, up to the next whole one. */
function exactly({ carries, count }: LidSupport, moment: Rational, how: 'stronger' | 'weaker'): readonly Mend[] {
  if (carries?.origin === undefined || count < 1) return [];
  const share = moment.dividedBy(count);
  const words = `${roundedUp(carries.unit === 'inch-pounds' ? share : share.dividedBy(INCH_POUNDS_IN_NEWTON_METRE))}`;
  return [
    {
      how,
      values: { each: `${words} ${carries.unit}` },
      changes: [{ kind: 'set-words', at: carries.origin, words }],
    },
  ];
}

/** Hardly anybody puts more than these on one lid: common practice, no source. */
const MOST_SUPPORTS = 4;

/** As many as just carry the lid, where that many are neither too many nor still too strong. */
function moreOrFewer(
  { countOrigin, origin, count: now }: LidSupport,
  moment: Rational,
  each: Rational,
): readonly Mend[] {
  if (each.compare(Rational.zero) <= 0) return [];
  const count = roundedUp(moment.dividedBy(each)).toNumber();
  const isTooStrong = each.times(count).compare(moment.times(MOST_OF_THE_LID)) > 0;
  if (count > MOST_SUPPORTS || count === now || isTooStrong) return [];
  return [
    {
      how: count > now ? 'more' : 'fewer',
      values: { count },
      changes: [
        countOrigin === undefined
          ? { kind: 'insert-words', after: origin, words: ` ${count} of them,` }
          : { kind: 'set-words', at: countOrigin, words: `${count}` },
      ],
    },
  ];
}

function withoutPlace(support: LidSupport): readonly Finding[] {
  if (support.hasLostWords) return [];
  const missing = untoldOfPlace(support);
  const { countOrigin, origin } = support;
  const mends: readonly Mend[] =
    missing.includes('sides') && countOrigin !== undefined
      ? [{ how: 'two', values: {}, changes: [{ kind: 'set-words', at: countOrigin, words: '2' }] }]
      : [];
  return missing.length === 0 ? [] : [lidSupportNotPlaced.at(origin, { missing }, { mends })];
}

function roundedUp(value: Rational): Rational {
  return value.negated().floor().negated();
}

/** 1 / (0.45359237 · 9.80665 · 0.0254), exactly. */
const INCH_POUNDS_IN_NEWTON_METRE = Rational.of(45359237n * 980665n * 254n, 10n ** 17n).inverse();

function whole(value: Rational): string {
  return value.plus(Rational.of(1, 2)).floor().toString();
}

function tenths(value: Rational): string {
  return String(Number(value.toNumber().toFixed(1)));
}
