import { type Evaluation, evaluatePiece, Length } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { composeView, letterView } from '../../packages/drawings/src/elevation-view.ts';
import { leastExtent } from '../../packages/drawings/src/least-extent.ts';
import { PEN_GROUPS } from '../../packages/drawings/src/line-types.ts';
import { viewOfParts } from '../../packages/drawings/src/parts-in-view.ts';
import { INCH_SCALES, METRIC_SCALES } from '../../packages/drawings/src/scale.ts';
import { isInch } from '../../packages/drawings/src/shown-lengths.ts';
import { front } from '../engine/design-builder.ts';
import { drawerStack, sideboard } from '../engine/sideboard-design.ts';
import { gallery } from './pieces-to-draw.ts';

/**
 * A scale is passed over because a piece needs more room than the sheet has, before anything is laid out. That must never
 * be said of a scale at which the piece would have fitted.
 */

/** The last drawer's front is more than seven feet high. */
const oneDigitTooMany = (): Evaluation => evaluatePiece(sideboard(drawerStack(front('88'))));

function* laidOut(evaluation: Evaluation) {
  const view = viewOfParts(evaluation);
  const [pens] = PEN_GROUPS;
  if (pens === undefined) throw new Error('no pens');
  for (const { denominator } of isInch(evaluation.design.units) ? INCH_SCALES : METRIC_SCALES) {
    if (denominator < 4 || denominator > 50) continue;
    const to = { factor: 1 / denominator, x: 0, y: 0 };
    const lettered = letterView(evaluation, view, to);
    for (const mostLanes of [5, 1]) {
      const least = leastExtent(evaluation, mostLanes, to.factor);
      for (const figures of ['lying', 'along'] as const) {
        const wishes = { roomWide: 243, roomHigh: 157, mostLanes, figures };
        const { extent } = composeView(evaluation, view, to, pens, wishes, lettered);
        const [wide, high] = [extent.right - extent.left, extent.bottom - extent.top];
        yield { at: `1 : ${denominator}, ${mostLanes} lanes, ${figures}`, least, wide, high };
      }
    }
  }
}

describe('the least room an elevation takes', () => {
  it.each(Object.entries({ ...gallery, oneDigitTooMany }))('is no more than what it takes: %s', (_, make) => {
    const evaluation = make();
    if (evaluation.layout.carcase === undefined) {
      expect(leastExtent(evaluation, 5, 1)).toEqual({ wide: 0, high: 0 });
      return;
    }
    let count = 0;
    for (const { at, least, wide, high } of laidOut(evaluation)) {
      expect(least.wide, `wide at ${at}`).toBeLessThanOrEqual(wide);
      expect(least.high, `high at ${at}`).toBeLessThanOrEqual(high);
      count += 1;
    }
    expect(count).toBeGreaterThanOrEqual(16);
  });

  it('is that of the dimensions where a front is as high as a room', () => {
    // 34" piece, 88" front and what stands above it: no line of dimensions is shorter than the front.
    const evaluation = oneDigitTooMany();
    const front = Length.inches(88).approximateInches * 25.4;
    expect(leastExtent(evaluation, 5, 1 / 16).high).toBeGreaterThan(front / 16);
    expect(leastExtent(evaluation, 0, 1 / 16).high).toBeLessThan(front / 16);
  });
});
