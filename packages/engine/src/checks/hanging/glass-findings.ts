import { type Finding, glassNotSaidSafe, type Mend, paneDoesNotFit } from '@fettle/findings';
import type { FramedDesign, GlassDesign } from '../../design/construction-design.ts';
import type { Figure } from '../../design/figure.ts';
import { doorFrame, frontThickness } from '../../layout/front-thickness.ts';
import { Length, type LengthUnit } from '../../length/length.ts';
import { LEAST_BEFORE_CUP, LEAST_LAP_OF_GLASS } from '../../tables/hanging-habits.ts';
import { GLASS_CLEARANCE, GLASS_RABBET, usual } from '../../tables/trade-habits.ts';
import { limitIn } from '../../tables/trade-limits.ts';
import { cellsIn, whoIs } from '../trade/alike.ts';
import type { TradeCase } from '../trade/case-facts.ts';
import { givenAt } from '../written-sizes.ts';

/** Panes of doors: whether their rabbets hold them, and whether they are said to be safe. Each statement once. */
export function glassFindings(one: TradeCase): readonly Finding[] {
  if (one.face === undefined) return [];
  const face = one.face.design;
  const seen = new Set<GlassDesign>();
  return cellsIn(one.face.root).flatMap(({ laid: { cell }, group }): readonly Finding[] => {
    if (cell.kind !== 'front') return [];
    const frame = doorFrame(cell, face);
    const glass = frame?.glass;
    if (frame === undefined || glass === undefined || seen.has(glass)) return [];
    seen.add(glass);
    const who = whoIs(cell, group);
    const trouble = rabbetTrouble(glass, frame, frontThickness(cell, face).length, one.layout.unit);
    return [
      ...(trouble === undefined ? [] : [paneFinding(glass, who, trouble)]),
      ...(glass.isSafety
        ? []
        : [
            glassNotSaidSafe.at(glass.origin, who, {
              mends: [
                {
                  how: 'safety',
                  values: {},
                  changes: [{ kind: 'insert-words', after: glass.origin, words: 'safety' }],
                },
              ],
            }),
          ]),
    ];
  });
}

interface RabbetTrouble {
  readonly why: 'falls-out' | 'stands-proud' | 'thin-front' | 'thin-frame';
  readonly left: Length;
  readonly limit: Length;
  /** What to change, and to what. */
  readonly figure: Figure;
  readonly to: Length;
}

function rabbetTrouble(
  glass: GlassDesign,
  frame: FramedDesign,
  thickness: Length,
  unit: LengthUnit,
): RabbetTrouble | undefined {
  const { rabbetWidth, rabbetDepth, clearance } = glass;
  const lap = limitIn(LEAST_LAP_OF_GLASS, unit);
  // Pushed against one side, a pane leaves all of its clearance at the other.
  const held = rabbetWidth.length.minus(clearance.length);
  if (held.compare(lap) < 0) {
    const most = rabbetWidth.length.minus(lap).max(Length.zero);
    const to = usual(GLASS_CLEARANCE, unit).length.min(most);
    return { why: 'falls-out', left: held.max(Length.zero), limit: lap, figure: clearance, to };
  }
  if (glass.thickness.length.compare(rabbetDepth.length) > 0) {
    return {
      why: 'stands-proud',
      left: glass.thickness.length.minus(rabbetDepth.length),
      limit: rabbetDepth.length,
      figure: rabbetDepth,
      to: glass.thickness.length,
    };
  }
  const front = thickness.minus(rabbetDepth.length);
  const least = limitIn(LEAST_BEFORE_CUP, unit);
  const narrowest = [frame.stiles, frame.topRail, frame.bottomRail].reduce<Length>(
    (least, { length }) => least.min(length),
    frame.stiles.length,
  );
  const beside = narrowest.minus(rabbetWidth.length);
  const half = narrowest.dividedBy(2);
  if (narrowest.isPositive() && beside.compare(half) < 0) {
    const to = usual(GLASS_RABBET, unit).length.max(lap.plus(clearance.length)).min(half);
    return { why: 'thin-frame', left: beside.max(Length.zero), limit: half, figure: rabbetWidth, to };
  }
  return front.compare(least) < 0
    ? {
        why: 'thin-front',
        left: front.max(Length.zero),
        limit: least,
        figure: rabbetDepth,
        to: glass.thickness.length.max(thickness.dividedBy(2)).min(thickness.minus(least)),
      }
    : undefined;
}

const howToMend = {
  'falls-out': 'clearance',
  'stands-proud': 'deeper',
  'thin-front': 'shallower',
  'thin-frame': 'narrower',
} as const;

function paneFinding(
  glass: GlassDesign,
  who: ReturnType<typeof whoIs>,
  { why, left, limit, figure, to }: RabbetTrouble,
): Finding {
  const at = givenAt(figure);
  const how = howToMend[why];
  const mends: readonly Mend[] =
    at === undefined || !to.isPositive()
      ? []
      : [{ how, values: { size: to }, changes: [{ kind: 'set-length', at, to }] }];
  return paneDoesNotFit.at(at ?? glass.origin, { ...who, why, left, limit }, { mends });
}
