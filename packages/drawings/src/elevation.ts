import type { Evaluation } from '@fettle/engine';
import { describeElevation } from './describe.ts';
import { type ComposedView, composeView, letterView } from './elevation-view.ts';
import { leastExtent } from './least-extent.ts';
import { PEN_GROUPS } from './line-types.ts';
import { type ViewOfParts, viewOfParts } from './parts-in-view.ts';
import type { Drawing, Point, Primitive } from './primitives.ts';
import { INCH_SCALES, METRIC_SCALES, type Scale, type Sheet, sheetsFor } from './scale.ts';
import {
  capital,
  commonDrawing,
  commonWords,
  type DrawingName,
  errorWords,
  marksOf,
  messageSheet,
  missingSizes,
  NOTE_LINES,
  overallWords,
} from './sheet-words.ts';
import { isInch, realMm, shown, unitWords } from './shown-lengths.ts';
import { roomForView, type SheetWords, sheetFurniture } from './title-block.ts';
import { movedBox, movedGroup } from './views/on-paper.ts';
import { visibleRoles } from './visible-signs.ts';

/**
 * The front elevation of a piece on a standard sheet at a standard scale. Never fails: what cannot be drawn is said on
 * the sheet. Knows nothing of SVG or any other format.
 */
export function elevation(evaluation: Evaluation): Drawing {
  const { carcase } = evaluation.layout;
  const inch = isInch(evaluation.design.units);
  if (carcase === undefined) {
    return messageSheet(evaluation, nameOf(evaluation), sheetsFor(inch, 0, 0)[0], missingSizes(evaluation));
  }
  const width = realMm(carcase.outside.x.size.length);
  const height = realMm(carcase.outside.y.size.length);
  const [small, large] = sheetsFor(inch, width, height);
  if (!(width > 0 && height > 0)) {
    return messageSheet(evaluation, nameOf(evaluation), small, [
      'Width and height must be more than nothing before the piece can be drawn.',
    ]);
  }
  const view = viewOfParts(evaluation);
  const known: KnownLettering = new Map();
  const first = fitted(known, evaluation, view, small, width, height);
  if (first === undefined) {
    return messageSheet(evaluation, nameOf(evaluation), small, ['The piece is larger than any scale can show.']);
  }
  if (first.composed.crowding <= CROWDED) return finished(evaluation, view, first);
  const second = fitted(known, evaluation, view, large, width, height);
  return finished(
    evaluation,
    view,
    second !== undefined && second.composed.crowding < first.composed.crowding ? second : first,
  );
}

/** More labels and figures than this out of their places call for the larger sheet. */
const CROWDED = 8;
/** Lanes of dimensions on each side; fewer where they would leave too little of the sheet for the piece. */
const LANES = [5, 2, 1, 0];
/** A view that takes this share of the room one way or the other needs no fewer dimensions. */
const LARGE_ENOUGH = 0.3;

interface Fitted {
  readonly sheet: Sheet;
  readonly scale: Scale;
  readonly composed: ComposedView;
}

/** By the factor of their scale, at the origin of the paper: letters take longest, and trials on both sheets share them. */
type KnownLettering = Map<number, ReturnType<typeof letterView>>;

/** The largest standard scale at which view, labels and dimensions fit the sheet. */
function fitted(
  known: KnownLettering,
  evaluation: Evaluation,
  view: ViewOfParts,
  sheet: Sheet,
  width: number,
  height: number,
): Fitted | undefined {
  let best: (Fitted & { readonly fills: number }) | undefined;
  for (const lanes of LANES) {
    const trial = fittedWith(known, lanes, best?.fills ?? 0, evaluation, view, sheet, width, height);
    if (trial !== undefined) best = trial;
    if (best !== undefined && best.fills >= LARGE_ENOUGH) break;
  }
  return best;
}

/** Undefined unless the view takes more than `moreThan` of the room one way or the other. */
function fittedWith(
  known: KnownLettering,
  lanes: number,
  moreThan: number,
  evaluation: Evaluation,
  view: ViewOfParts,
  sheet: Sheet,
  width: number,
  height: number,
): (Fitted & { readonly fills: number }) | undefined {
  const room = roomForView(sheet, NOTE_LINES);
  const roomWide = room.right - room.left;
  const roomHigh = room.bottom - room.top;
  for (const scale of isInch(evaluation.design.units) ? INCH_SCALES : METRIC_SCALES) {
    const factor = 1 / scale.denominator;
    const fills = Math.max((width * factor) / roomWide, (height * factor) / roomHigh);
    if (fills <= moreThan) return undefined;
    const least = leastExtent(evaluation, lanes, factor);
    if (least.wide > roomWide || least.high > roomHigh) continue;
    const pens = pensFor(view, factor);
    const origin = { factor, x: 0, y: 0 };
    const lettered = known.get(factor) ?? letterView(evaluation, view, origin);
    known.set(factor, lettered);
    for (const figures of ['lying', 'along'] as const) {
      const wishes = { roomWide, roomHigh, mostLanes: lanes, figures };
      const trial = composeView(evaluation, view, origin, pens, wishes, lettered);
      const { left, right, top, bottom } = trial.extent;
      // Figures along their lines make a view narrower, never lower.
      if (bottom - top > roomHigh) break;
      if (right - left > roomWide) continue;
      // The projection begins at the piece's foot, which is where y lies.
      const x = anchored(room.left, room.right, { from: 0, to: width * factor }, { from: left, to: right });
      const y = anchored(room.top, room.bottom, { from: -height * factor, to: 0 }, { from: top, to: bottom });
      return {
        sheet,
        scale,
        composed: movedView(trial, { x, y }),
        fills,
      };
    }
  }
  return undefined;
}

/** The same view at another place of the paper. */
function movedView(view: ComposedView, by: Point): ComposedView {
  return {
    ...view,
    extent: movedBox(view.extent, by),
    draw: () => view.draw().map((group) => movedGroup(group, by)),
  };
}

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** A view gives way to what is written around it in steps of so many mm. */
const STEP_ASIDE = 6;

/**
 * Where a piece that reaches from and to so much of its own origin has that origin: in the middle of the room, wherever
 * all that is written around it leaves it there, else aside by whole steps. So a figure that grows by a letter moves
 * nothing else.
 */
function anchored(low: number, high: number, piece: Stretch, all: Stretch): number {
  const middle = (low + high - piece.from - piece.to) / 2;
  const least = low - all.from;
  const most = high - all.to;
  const aside = middle < least ? least - middle : middle > most ? most - middle : 0;
  const stepped = middle + Math.sign(aside) * Math.ceil(Math.abs(aside) / STEP_ASIDE) * STEP_ASIDE;
  return Math.min(most, Math.max(least, stepped));
}

/** The finer pens where the thinnest edge in sight would otherwise run together with its neighbour. */
function pensFor(view: ViewOfParts, factor: number) {
  const [normal, fine] = PEN_GROUPS;
  if (normal === undefined || fine === undefined) throw new Error('two groups of pens are listed');
  const thinnest = Math.min(
    ...view.parts
      .filter((entry) => entry.edges.seen.length > 0)
      .map(({ slab }) => Math.min(slab.x1 - slab.x0, slab.y1 - slab.y0)),
  );
  return thinnest * factor >= 3 * normal.wide ? normal : fine;
}

function finished(evaluation: Evaluation, view: ViewOfParts, { sheet, scale, composed }: Fitted): Drawing {
  const content = composed.draw();
  const words: SheetWords = {
    ...commonWords(evaluation, nameOf(evaluation)),
    scale: scale.words,
    overall: overallWords(evaluation),
    notes: [...generalNotes(evaluation, view, content, composed.sides), ...composed.notes],
    warnings: warningsOf(evaluation, view),
  };
  const [frame, ...rest] = sheetFurniture(sheet, words);
  return {
    ...commonDrawing(evaluation, nameOf(evaluation), sheet),
    pens: composed.pens,
    paperPerReal: 1 / scale.denominator,
    focus: composed.extent,
    content: [...(frame === undefined ? [] : [frame]), ...content, ...rest],
  };
}

function nameOf(evaluation: Evaluation): DrawingName {
  return { id: 'elevation', words: 'Front elevation', description: describeElevation(evaluation) };
}

/** Signs are explained only on a sheet that has them. */
function generalNotes(
  evaluation: Evaluation,
  view: ViewOfParts,
  content: readonly Primitive[],
  sides: string,
): readonly string[] {
  const { face, units } = evaluation.design;
  const roles = visibleRoles(content);
  const fronts = view.parts.some((entry) => entry.isFront);
  const key = [
    `Dimensions are finished sizes in ${unitWords(units)}`,
    ...(face === undefined || !fronts ? [] : [`gaps ${shown(face.fit.gap.length, units)}`]),
  ].join('; ');
  const signs = [
    ...(roles.has('hidden') ? ['dashed: hidden'] : []),
    ...(roles.has('swing') ? ['dashes with two dots: swing, meeting at the hinges'] : []),
    ...(view.hingeUnknown > 0 ? ['hinge side of single doors not given'] : []),
    ...(roles.has('grain') ? ['double arrows: direction of grain'] : []),
  ].join('; ');
  return [sides === '' ? `${key}.` : `${key}. ${capital(sides)}.`, ...(signs === '' ? [] : [`${capital(signs)}.`])];
}

function warningsOf(evaluation: Evaluation, view: ViewOfParts): readonly string[] {
  const errors = errorWords(evaluation);
  const missing = [
    ...(evaluation.design.face === undefined
      ? ['no face is written, so only the case is drawn']
      : evaluation.layout.face === undefined
        ? ['the face could not be laid out, so only the case is drawn']
        : []),
    ...(view.parts.length === 0 ? ['no part is known yet'] : []),
    ...(view.withoutSize.length > 0 ? [`without a size and not drawn: ${marksOf(view.withoutSize)}`] : []),
  ];
  const lines: string[] = errors === undefined ? [] : [errors];
  if (missing.length > 0) lines.push(missing.join('; '));
  return lines.map((words) => `${capital(words)}.`);
}
