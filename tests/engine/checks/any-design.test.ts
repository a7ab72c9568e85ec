import { cutList, evaluatePiece, explain, type FrontFit, Length, type PieceDesign, Rational } from '@fettle/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyFit, mixedFits, withFits } from '../arbitrary-fits.ts';
import { panel, written } from '../design-builder.ts';
import { say, wrongIn } from '../reading-layouts.ts';
import { sideboard, sideMount12, sideMount14 } from '../sideboard-design.ts';
import { mendTitles, relatedSentences, sentence } from './wording.ts';

/** Statements that a text may leave out. */
const optional = new Set([
  'top',
  'plinth',
  'sides',
  'bottom',
  'stretchers',
  'back',
  'frame',
  'face',
  'fronts',
  'drawers',
  'shelves',
  'slides',
  'stock',
  'railWidth',
  'slidesOrigin',
]);

/** Lengths nobody means, beside those that nearly fit. */
const odd: fc.Arbitrary<Length> = fc.oneof(
  fc.constantFrom(
    Length.zero,
    Length.inches(-1, 2),
    Length.inches(1, 64),
    Length.inches(10n ** 40n),
    Length.millimetres(1, 3),
  ),
  fc.integer({ min: -400, max: 4000 }).map((sixtyFourths) => Length.inches(sixtyFourths, 64)),
);

/** The sideboard with some lengths replaced and some of its statements left out. */
function spoiled(design: PieceDesign, spoils: readonly Length[], every: number, dropEvery: number): PieceDesign {
  let lengths = 0;
  let statements = 0;
  const isDropped = (key: string, within: string) => {
    if (!optional.has(key) && within !== 'size') return false;
    statements += 1;
    return key !== 'origin' && statements % dropEvery === 0;
  };
  const walk = (value: unknown, within: string): unknown => {
    if (value instanceof Length) {
      lengths += 1;
      return lengths % every === 0 ? (spoils[lengths % spoils.length] ?? value) : value;
    }
    if (value instanceof Rational) return value;
    if (Array.isArray(value)) return value.map((inner) => walk(inner, within));
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).flatMap(([key, inner]) => (isDropped(key, within) ? [] : [[key, walk(inner, key)]])),
    );
  };
  return walk(design, 'piece') as PieceDesign;
}

/** The sideboard behind a face frame, its fronts sitting in any way. */
function framedSideboard(fit: FrontFit, fits: readonly (FrontFit | undefined)[]): PieceDesign {
  const design = sideboard();
  const { face } = design;
  const root = face?.root;
  if (face === undefined || root?.kind !== 'row') throw new Error('the sideboard is a row');
  const frame = { ...panel('3/4'), stiles: written('1-1/2'), topRail: written('1-1/2'), bottomRail: written('1') };
  return { ...design, carcase: { ...design.carcase, frame }, face: { ...face, fit, root: withFits(root, fits) } };
}

describe('any design', () => {
  it('is evaluated without a throw, and everything said of it can be said', () => {
    fc.assert(
      fc.property(
        fc.array(odd, { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 2, max: 30 }),
        fc.option(fc.tuple(anyFit, mixedFits)),
        (spoils, every, dropEvery, fits) => {
          const whole = fits === null ? sideboard() : framedSideboard(...fits);
          const design = spoiled(whole, spoils, every, dropEvery);
          const evaluation = evaluatePiece(design, { slides: [sideMount12, sideMount14] });
          for (const finding of evaluation.findings) {
            for (const words of [sentence(finding), ...relatedSentences(finding), ...mendTitles(finding)]) {
              expect(words).not.toMatch(/undefined|NaN|\[object|\.$/);
            }
            expect(finding.origin.end).toBeGreaterThan(finding.origin.start);
          }
          for (const part of evaluation.parts) {
            for (const figure of [part.length, part.width, part.thickness]) {
              expect(figure.length.isPositive()).toBe(true);
              expect(explain(figure, say).split('\n').length).toBeLessThanOrEqual(16);
            }
          }
          expect(cutList(evaluation.parts).reduce((sum, row) => sum + row.quantity, 0)).toBe(evaluation.parts.length);
        },
      ),
      { numRuns: 300 },
    );
  }, 60_000);

  it('that is only a name and a size has nothing wrong and no parts', () => {
    const { carcase, face: _face, ...bare } = sideboard();
    const evaluation = evaluatePiece({ ...bare, carcase: { origin: carcase.origin } });
    expect(wrongIn(evaluation)).toEqual([]);
    expect(evaluation.parts).toEqual([]);
    expect(evaluation.layout.carcase?.face.x.size.length.exactInches).toBe('60');
  });
});
