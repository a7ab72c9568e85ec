import { evaluatePiece, type FrontFit } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { mended } from '../checks/applying-changes.ts';
import { mendTitles, sentence } from '../checks/wording.ts';
import { caseWithFace, drawer, front, partition, rest, stack } from '../design-builder.ts';
import { onlyFinding, wrongIn } from '../reading-layouts.ts';
import { lipped, overlay, overlayBy } from './reading-faces.ts';

// Worked by hand before the code was written; no published source.

const code = 'fronts-do-not-add-up';

/** Two drawers, the fronts as written, in a case 24 high with edges of 3/4; a divider of 3/4 between them. */
function twoDrawers(fit: FrontFit, mode: 'shown' | 'behind', upper: string, lower: string) {
  const cells = [drawer('upper', front(upper)), drawer('lower', front(lower))];
  const root = stack('stack', rest, cells, [partition('d', '3/4', { form: 'panel', mode })]);
  return caseWithFace('20', '22-1/2', root, { fit });
}

describe('written fronts that lie on the case', () => {
  it.each([
    // Full, reveal 1/16, gap 1/8: the fronts may cover 24 - 1/8 = 23-7/8. 12 + 12 + 1/8 = 24-1/8: 1/4 too much.
    [overlay('full', '1/8'), 'behind', '12', '12', 'need 193/8", there is 191/8" of height: 1/4" too much'],
    // 12 + 11-3/4 + 1/8 = 23-7/8. Half: 22-1/2 + 3/4 = 23-1/4; 11-1/2 + 11-1/2 + 1/8 = 23-1/8: 1/8 left over.
    [overlay('half', '1/8'), 'behind', '11-1/2', '11-1/2', 'need 185/8", there is 93/4" of height: 1/8" left over'],
    // By 1/4: 23 to cover; 3/4 - 1/2 = 1/4 of the divider is seen: 11 + 12 + 1/4 = 23-1/4.
    [overlayBy('1/4', '1/8'), 'shown', '11', '12', 'need 93/4", there is 23" of height: 1/4" too much'],
    // Lipped 5/16: 22-1/2 + 5/8 = 23-1/8; 1/8 of the divider is seen: 11-1/2 + 11-1/2 + 1/8 = 23-1/8 would do.
    [lipped('5/16', '1/16'), 'shown', '11-1/2', '11-9/16', 'need 371/16", there is 185/8" of height: 1/16" too much'],
  ] as const)('%#: %s', (fit, mode, upper, lower, words) => {
    const design = twoDrawers(fit, mode, upper, lower);
    const finding = onlyFinding(evaluatePiece(design), code);
    expect(sentence(finding)).toBe(`fronts and gaps ${words}`);
    expect(finding.mends.length).toBeGreaterThan(2);
    for (const mend of finding.mends) expect(wrongIn(evaluatePiece(mended(design, mend)))).toEqual([]);
  });

  it.each([
    [overlay('full', '1/8'), 'behind', '12', '11-3/4'],
    [overlay('half', '1/8'), 'behind', '11-5/8', '11-1/2'],
    [overlayBy('1/4', '1/8'), 'shown', '11', '11-3/4'],
    [lipped('5/16', '1/16'), 'shown', '11-1/2', '11-1/2'],
  ] as const)('%#: that add up are no finding', (fit, mode, upper, lower) => {
    expect(wrongIn(evaluatePiece(twoDrawers(fit, mode, upper, lower)))).toEqual([]);
  });

  it('are told how to come out', () => {
    const finding = onlyFinding(evaluatePiece(twoDrawers(overlay('full', '1/8'), 'behind', '12', '12')), code);
    expect(mendTitles(finding)).toEqual([
      'Make "upper" 47/4", 1/4" less',
      'Let "upper" take the rest',
      'Share the 1/4" among both, 1/8" less each',
      'Make "lower" 47/4", 1/4" less',
    ]);
  });
});
