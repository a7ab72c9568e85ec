import type { Evaluation } from '@fettle/engine';
import { PEN_GROUPS, type Pens } from '../line-types.ts';
import type { Drawing, Primitive } from '../primitives.ts';
import { INCH_SCALES, METRIC_SCALES, type Scale, type Sheet, sheetsFor } from '../scale.ts';
import {
  capital,
  commonDrawing,
  commonWords,
  type DrawingName,
  errorWords,
  messageSheet,
  NOTE_LINES,
  overallWords,
  whyNotDrawn,
} from '../sheet-words.ts';
import { isInch } from '../shown-lengths.ts';
import { roomForView, type SheetWords, sheetFurniture } from '../title-block.ts';
import {
  bareView,
  type ComposedPlan,
  composePlan,
  type MarkedView,
  markView,
  movedPlan,
  type PlanWishes,
  type ViewPlan,
} from './composed-view.ts';
import { plainNotes } from './plain-parts.ts';

/**
 * One view on a standard sheet at the largest standard scale at which it fits with its dimensions; on the larger sheet
 * where it is too crowded. Never fails: what cannot be drawn is said on the sheet.
 */

export interface SheetSubject {
  readonly name: DrawingName;
  /** Absent where there is nothing to draw; then `why` says so. */
  readonly plan?: ViewPlan;
  readonly why?: string;
  /** Signs and words for the notes of the sheet, by what is drawn. */
  readonly notes: (content: readonly Primitive[]) => readonly string[];
}

const LANES = [5, 3, 2, 1, 0];
const LARGE_ENOUGH = 0.3;
const CROWDED = 4;

export function onStandardSheet(evaluation: Evaluation, subject: SheetSubject): Drawing {
  const { name, plan, why } = subject;
  const [wide, high] = plan === undefined ? [0, 0] : [plan.high.u - plan.low.u, plan.high.v - plan.low.v];
  const [small, large] = sheetsFor(isInch(evaluation.design.units), wide, high);
  const lacking = whyNotDrawn(evaluation);
  if (lacking !== undefined) return messageSheet(evaluation, name, small, lacking);
  if (plan === undefined || plan.viewed.length === 0) {
    return messageSheet(evaluation, name, small, [why ?? 'Nothing is drawn yet: no part is known.']);
  }
  const first = fitted(evaluation, plan, small);
  if (first === undefined) {
    return messageSheet(evaluation, name, small, ['The piece is larger than any scale can show.']);
  }
  if (first.composed.crowding <= CROWDED) return finished(evaluation, subject, first);
  const second = fitted(evaluation, plan, large);
  const best = second !== undefined && second.composed.crowding < first.composed.crowding ? second : first;
  return finished(evaluation, subject, best);
}

interface Fitted {
  readonly sheet: Sheet;
  readonly scale: Scale;
  readonly pens: Pens;
  readonly composed: ComposedPlan;
}

function fitted(evaluation: Evaluation, plan: ViewPlan, sheet: Sheet): Fitted | undefined {
  let best: (Fitted & { readonly fills: number }) | undefined;
  const known = new Map<number, MarkedView>();
  for (const lanes of LANES) {
    const trial = fittedWith(evaluation, plan, sheet, lanes, known);
    if (trial !== undefined && trial.fills > (best?.fills ?? 0)) best = trial;
    if (best !== undefined && best.fills >= LARGE_ENOUGH) break;
  }
  return best;
}

function fittedWith(
  evaluation: Evaluation,
  plan: ViewPlan,
  sheet: Sheet,
  lanes: number,
  known: Map<number, MarkedView>,
): (Fitted & { readonly fills: number }) | undefined {
  const { units } = evaluation.design;
  const room = roomForView(sheet, NOTE_LINES);
  const roomWide = room.right - room.left;
  const roomHigh = room.bottom - room.top;
  const wide = plan.high.u - plan.low.u;
  const high = plan.high.v - plan.low.v;
  for (const scale of isInch(units) ? INCH_SCALES : METRIC_SCALES) {
    const factor = 1 / scale.denominator;
    if (wide * factor > roomWide || high * factor > roomHigh) continue;
    const pens = pensFor(plan, factor);
    const laid = (figures: PlanWishes['figures'], marked: MarkedView): ComposedPlan =>
      composePlan(plan, units, factor, pens, { roomWide, roomHigh, mostLanes: lanes, figures }, marked);
    const fits = ({ extent: { left, right, top, bottom } }: ComposedPlan): boolean =>
      bottom - top <= roomHigh && right - left <= roomWide;
    // The marks take longest: they are not asked for where the dimensions alone have no room.
    const bare = bareView(plan, factor);
    if (!fits(laid('lying', bare)) && !fits(laid('along', bare))) continue;
    const marked = known.get(scale.denominator) ?? markView(plan, factor);
    known.set(scale.denominator, marked);
    for (const figures of ['lying', 'along'] as const) {
      const composed = laid(figures, marked);
      if (!fits(composed)) continue;
      const { left, right, top, bottom } = composed.extent;
      const x = (room.left + room.right - left - right) / 2;
      const y = (room.top + room.bottom - top - bottom) / 2;
      const fills = Math.max((wide * factor) / roomWide, (high * factor) / roomHigh);
      return { sheet, scale, pens, composed: movedPlan(composed, x, y), fills };
    }
  }
  return undefined;
}

/** The finer pens where the thinnest part would otherwise be nothing but outline. */
function pensFor(plan: ViewPlan, factor: number): Pens {
  const [normal, fine] = PEN_GROUPS;
  if (normal === undefined || fine === undefined) throw new Error('two groups of pens are listed');
  const thinnest = Math.min(
    ...plan.viewed.flatMap(({ areas }) => areas.map(({ low, high }) => Math.min(high.u - low.u, high.v - low.v))),
  );
  return thinnest * factor >= 3 * normal.wide ? normal : fine;
}

function finished(evaluation: Evaluation, subject: SheetSubject, { sheet, scale, pens, composed }: Fitted): Drawing {
  const { name } = subject;
  const errors = errorWords(evaluation);
  const words: SheetWords = {
    ...commonWords(evaluation, name),
    scale: scale.words,
    overall: overallWords(evaluation),
    notes: [...subject.notes(composed.groups), [...plainNotes(evaluation.parts), ...composed.notes].join(' ')].filter(
      (note) => note !== '',
    ),
    warnings: errors === undefined ? [] : [`${capital(errors)}.`],
  };
  const [frame, ...rest] = sheetFurniture(sheet, words);
  return {
    ...commonDrawing(evaluation, name, sheet),
    pens,
    paperPerReal: 1 / scale.denominator,
    focus: composed.extent,
    isDense: true,
    content: [...(frame === undefined ? [] : [frame]), ...composed.groups, ...rest],
  };
}
