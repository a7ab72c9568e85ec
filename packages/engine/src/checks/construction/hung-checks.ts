import {
  type Finding,
  hangsOnWall,
  hungCaseNotJoined,
  type Mend,
  nailerNotJoined,
  wallScrewTooShort,
} from '@fettle/findings';
import { planWallScrews } from '../../hardware/wall-screws.ts';
import { axisOf } from '../../joinery/feature.ts';
import type { Joint } from '../../joinery/joint.ts';
import { Rational } from '../../length/rational.ts';
import type { PartRole } from '../../parts/part.ts';
import { pieceWeight } from '../../stock/buying/piece-weight.ts';
import { inKilograms, inPounds } from '../../stock/weights.ts';
import { isMetric, SHELF_LOAD_PSF } from '../../tables/trade-limits.ts';
import { cellsIn } from '../trade/alike.ts';
import type { TradeCase } from '../trade/case-facts.ts';

/**
 * Whether a piece that hangs on a wall is held together by more than its back, and what it weighs. Screening only: what
 * a joint, a screw or a wall carries is not computed.
 */
export function hungFindings(one: TradeCase): readonly Finding[] {
  const { hung, plinth, toeSpace, feet } = one.design.carcase;
  // One that is also said to stand has its finding for that.
  if (hung === undefined || (plinth ?? toeSpace ?? feet) !== undefined) return [];
  return [...casesFallingApart(one), ...looseStrips(one), ...shortScrews(one), ...weights(one)];
}

/** Panels that carry what is in the piece or close it, and what they may hang on. */
const carried: ReadonlySet<PartRole> = new Set<PartRole>(['bottom', 'top', 'stretcher']);
const upright: ReadonlySet<PartRole> = new Set<PartRole>(['side', 'stile', 'rail']);
const words: Readonly<Partial<Record<PartRole, string>>> = { bottom: 'bottom', top: 'top', stretcher: 'stretchers' };

function casesFallingApart({ design, joints, parts }: TradeCase): readonly Finding[] {
  const { hung, nailers, back, top } = design.carcase;
  if (hung === undefined) return [];
  const roles = new Map(parts.map(({ id, role }) => [id, role]));
  const loose = joints.filter(isUnknown).flatMap(({ held, holding }) => {
    const [inner, outer] = [roles.get(held), roles.get(holding)];
    if (inner === undefined || outer === undefined) return [];
    // A side stands on a bottom that runs under it; a top that lies over the sides only rests on them.
    if (carried.has(inner) && upright.has(outer)) return [inner];
    return upright.has(inner) && outer === 'bottom' ? [outer] : [];
  });
  const panels = (['bottom', 'top', 'stretcher'] as const)
    .filter((role) => loose.includes(role) && (role !== 'top' || top?.placement === 'between'))
    .flatMap((role) => words[role] ?? []);
  if (panels.length > 0) {
    const mend = (how: string, said: string): Mend => ({
      how,
      values: {},
      changes: [{ kind: 'insert-words', after: hung.whole, words: said }],
    });
    return [
      hungCaseNotJoined.at(
        hung.origin,
        { panels: panels.join(' and '), isBack: false },
        { mends: [mend('dado', 'join dado'), mend('screws', 'join screws')] },
      ),
    ];
  }
  const isHeldByBack = nailers === undefined && back?.fixing === 'applied' && back.framed === undefined;
  if (!isHeldByBack || back.join !== undefined) return [];
  const at = back.appliedOrigin;
  return [
    hungCaseNotJoined.at(
      back.origin,
      { panels: '', isBack: true },
      {
        mends:
          at === undefined
            ? []
            : [{ how: 'back-screws', values: {}, changes: [{ kind: 'insert-words', after: at, words: ' by screws' }] }],
      },
    ),
  ];
}

/** Nothing is said of it: ends merely meet, and how they are fastened is not known. */
function isUnknown({ kind, isAssumed }: Joint): boolean {
  return kind === 'butt' && isAssumed;
}

function looseStrips({ design, joints, parts }: TradeCase): readonly Finding[] {
  const { nailers } = design.carcase;
  if (nailers === undefined) return [];
  const strips = new Set(parts.filter(({ role }) => role === 'nailer').map(({ id }) => id));
  if (strips.size === 0) return [];
  const ends = joints.filter(({ held, at }) => strips.has(held) && axisOf(at) === 'x');
  const isFree = [...strips].some((id) => ends.every(({ held }) => held !== id));
  if (!isFree && !ends.some(isUnknown)) return [];
  const mend = (how: string, said: string): Mend => ({
    how,
    values: {},
    changes: [{ kind: 'insert-words', after: nailers.whole, words: `, ${said}` }],
  });
  return [
    nailerNotJoined.at(
      nailers.origin,
      { isFree },
      { mends: isFree || nailers.join !== undefined ? [] : [mend('screws', 'by screws'), mend('dowels', 'by dowels')] },
    ),
  ];
}

function shortScrews(one: TradeCase): readonly Finding[] {
  const plan = planWallScrews(one);
  if (plan?.asked === undefined) return [];
  const { asked, needed, before } = plan;
  const length = asked.screw.length.length;
  if (length.compare(needed.length) >= 0) return [];
  return [
    wallScrewTooShort.at(
      asked.origin,
      {
        screw: asked.screw.name,
        length,
        before: before.length,
        needed: needed.length,
        by: needed.length.minus(length),
      },
      { related: [{ role: 'screw', values: { screw: asked.screw.name }, origin: asked.screw.origin }] },
    ),
  ];
}

/** What something can stand on, up to the whole width and depth of the case. */
const levels: ReadonlySet<PartRole> = new Set<PartRole>(['bottom', 'shelf', 'divider-panel']);

function weights(one: TradeCase): readonly Finding[] {
  const { design, parts, face, layout } = one;
  const { hung } = design.carcase;
  if (hung === undefined) return [];
  const { kilograms: itself, unweighed } = pieceWeight(parts);
  const held = (face === undefined ? [] : cellsIn(face.root)).reduce((sum, { laid: { cell } }) => {
    const things = cell.kind === 'open' || cell.kind === 'front' ? (cell.holds ?? []) : [];
    return things.reduce(
      (all, { thing: { weighs }, count }) =>
        weighs === undefined ? all : all.plus(inKilograms(weighs.amount, weighs.unit).times(count)),
      sum,
    );
  }, Rational.zero);
  const squareFeet = parts
    .filter(({ role }) => levels.has(role))
    .reduce((sum, { box }) => sum.plus(box.x.size.length.in('ft').times(box.z.size.length.in('ft'))), Rational.zero);
  const full = itself.plus(inKilograms(squareFeet.times(SHELF_LOAD_PSF), 'lb'));
  const inMetres = isMetric(layout.unit);
  const say = (kilograms: Rational) => (inMetres ? `${rounded(kilograms)} kg` : `${rounded(inPounds(kilograms))} lb`);
  const plan = planWallScrews(one);
  return [
    hangsOnWall.at(hung.origin, {
      itself: say(itself),
      ...(held.sign() > 0 ? { held: say(itself.plus(held)) } : {}),
      most: say(full.max(itself.plus(held))),
      spread: inMetres ? METRIC_SPREAD : `${SHELF_LOAD_PSF} lb a square foot`,
      ...(plan === undefined ? {} : { screws: plan.rows.length * plan.inEach }),
      unweighed: unweighed.length,
    }),
  ];
}

/** 50 lb a square foot are 244.1 kg a square metre: 50 · 0.45359237 / 0.3048². */
const METRIC_SPREAD = '244 kg a square metre';

/** Densities are averages: nothing finer than a whole pound or kilogram is meant. */
function rounded(amount: Rational): string {
  return amount.toNumber().toFixed(0);
}
