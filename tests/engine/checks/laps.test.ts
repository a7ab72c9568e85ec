import { evaluatePiece, type FrontFit, type PieceDesign } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { caseWithFace, door, drawer, front, partition, rest, row, share, stack } from '../design-builder.ts';
import { onlyFinding } from '../reading-layouts.ts';
import { lipped, overlay, overlayBy } from '../worked-layouts/reading-faces.ts';
import { mended } from './applying-changes.ts';
import { mendTitles, relatedSentences, sentence } from './wording.ts';

// Worked by hand, no published source. The case has edges of 3/4 all round.

function twoDoors(fit: FrontFit, thick: string, other?: FrontFit): PieceDesign {
  const right = door('right', share(1), other === undefined ? {} : { fit: other });
  const root = row('row', rest, [door('left', share(1)), right], [partition('p', thick)]);
  return caseWithFace('30', '20', root, { fit });
}

const codes = (design: PieceDesign) => evaluatePiece(design).findings.map((finding) => finding.code);

describe('two fronts over what is between them', () => {
  it('that leave 1/32 of it are no finding', () => {
    expect(codes(twoDoors(overlayBy('1/2', '1/8'), '1-1/32'))).toEqual([]);
  });

  it('that just touch are said', () => {
    const finding = onlyFinding(evaluatePiece(twoDoors(overlayBy('1/2', '1/8'), '1')), 'fronts-meet');
    expect(sentence(finding)).toBe(
      '"left" and the front beside it lap 1" together, there is 1" between them: no gap is left',
    );
  });

  it('that lap too much are told by how much, and half of what is there less a gap mends it', () => {
    const design = twoDoors(overlayBy('1/2', '1/8'), '3/4');
    const finding = onlyFinding(evaluatePiece(design), 'fronts-meet');
    expect(sentence(finding)).toBe(
      '"left" and the front beside it lap 1" together, there is 3/4" between them: 1/4" too much',
    );
    expect(relatedSentences(finding)).toEqual(['"right" laps 1/2"', 'what is between them, 3/4" thick']);
    expect(mendTitles(finding)).toEqual(['Lap 5/16"']);
    for (const mend of finding.mends) expect(codes(mended(design, mend))).toEqual([]);
  });

  it('that lap by amounts of their own are each told what the other leaves', () => {
    // A lip of 3/8 beside an overlay of 1/2 over 3/4: 1/8 too much. The overlay may lap 3/4 - 1/8 - 3/8 = 1/4, the lip
    // 3/4 - 1/16 - 1/2 = 3/16.
    const design = twoDoors(overlayBy('1/2', '1/8'), '3/4', lipped('3/8', '1/16'));
    const { findings } = evaluatePiece(design);
    expect(findings.map((finding) => finding.code)).toEqual(['fronts-meet', 'fronts-meet']);
    expect(findings.flatMap(mendTitles)).toEqual(['Lap 1/4"', 'Lap 3/16"']);
    for (const finding of findings) {
      for (const mend of finding.mends) expect(codes(mended(design, mend))).toEqual([]);
    }
  });

  it('full or half overlay never meet, whatever is beside them', () => {
    const by = overlayBy('3/8', '1/8');
    for (const thick of ['1/2', '3/4', '1']) {
      const covered = (fit: FrontFit) => {
        const doors = [door('left', share(1)), door('right', share(1), { fit: by })];
        const root = row('row', rest, doors, [partition('p', thick, { mode: 'behind' })]);
        return caseWithFace('30', '20', root, { fit });
      };
      expect(codes(covered(overlay('full', '1/8')))).toEqual([]);
      expect(codes(covered(overlay('half', '1/8')))).toEqual([]);
    }
  });

  it('offer no way out that would break a sum', () => {
    // Both drawers are written and add up only with this lap: 20 + 2 x 1/2 = 21 = 10 + 11.
    const cells = [drawer('upper', front('10')), drawer('lower', front('11-1/4'))];
    const root = stack('stack', rest, cells, [partition('d', '3/4', { form: 'panel' })]);
    const design = caseWithFace('30', '20', root, { fit: overlayBy('1/2', '1/8') });
    expect(codes(design)).toEqual(['fronts-meet']);
    expect(onlyFinding(evaluatePiece(design), 'fronts-meet').mends).toEqual([]);
  });
});

describe('a front at an edge of the case', () => {
  const alone = (fit: FrontFit) => caseWithFace('14', '20', door('only', rest), { fit });

  it('may lap all of it', () => {
    expect(codes(alone(overlayBy('3/4', '1/8')))).toEqual([]);
    expect(codes(alone(lipped('3/4', '1/8')))).toEqual([]);
  });

  it.each([
    [overlayBy('25/32', '1/8'), '25/32', '1/32'],
    [lipped('7/8', '1/8'), '7/8', '1/8'],
  ] as const)('that laps more than there is stands out beyond the case: %#', (fit, lap, over) => {
    const design = alone(fit);
    const finding = onlyFinding(evaluatePiece(design), 'lap-beyond-edge');
    expect(sentence(finding)).toBe(
      `"only" laps the left edge by ${lap}", the edge is 3/4": it stands out ${over}" beyond the case`,
    );
    expect(mendTitles(finding)).toEqual(['Lap 3/4"']);
    for (const mend of finding.mends) expect(codes(mended(design, mend))).toEqual([]);
  });
});
