import {
  type Evaluation,
  evaluatePiece,
  given,
  Length,
  type PieceDesign,
  type SlideDatum,
  type SlideEntry,
} from '@fettle/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Screw } from '../../../packages/engine/src/hardware/placed-hardware.ts';
import { isHoleOfHardware } from '../../../packages/engine/src/joinery/feature.ts';
import { meets } from '../../../packages/engine/src/solids/index.ts';
import {
  caseWithFace,
  drawer,
  drawers,
  inches,
  opening,
  partition,
  place,
  rest,
  row,
  sideMount,
} from '../design-builder.ts';
import { partWithId } from '../reading-layouts.ts';

/** What holds for every drawer on slides, whatever its slides and wherever they are set. */

const quarters = (least: number, most: number) =>
  fc.integer({ min: least * 4, max: most * 4 }).map((count) => Length.inches(count, 4));
const figure = (length: Length) => given(length, place());

const slides: fc.Arbitrary<SlideEntry> = fc
  .record({
    takes: fc.integer({ min: 1, max: 12 }).map((count) => Length.inches(count, 16)),
    holes: fc.array(fc.record({ fromFront: quarters(0, 18), up: fc.option(quarters(-1, 3)) }), {
      minLength: 1,
      maxLength: 4,
    }),
    screws: fc.integer({ min: 2, max: 8 }).map((count) => Length.inches(count, 8)),
    setBack: quarters(0, 2),
  })
  .map(({ takes, holes, screws, setBack }) =>
    sideMount('any', '14', {
      clearanceEachSide: figure(takes),
      height: figure(inches('1-3/4')),
      setBack: figure(setBack),
      screws: { length: figure(screws), diameter: figure(inches('1/8')) },
      holes: holes.map(({ fromFront, up }) => ({
        fromFront: figure(fromFront),
        ...(up === null ? {} : { up: figure(up) }),
      })),
    }),
  );

const datum: fc.Arbitrary<SlideDatum | undefined> = fc.option(
  fc.record({
    line: fc.constantFrom('lower-edge' as const, 'screw-line' as const),
    from: fc.constantFrom('front' as const, 'opening' as const, 'box' as const),
    above: quarters(0, 4).map(figure),
  }),
  { nil: undefined },
);

/** Without a partition the right slide has only air beside it. */
const pieces: fc.Arbitrary<PieceDesign> = fc
  .record({ slides, datum, width: quarters(6, 20), isParted: fc.boolean() })
  .map(({ slides: entry, datum: at, width, isParted }) => {
    const cells = [
      drawer('d', { ...opening('1'), figure: figure(width) }),
      drawer('other', rest, { what: 'false-front' }),
    ];
    const between = { ...partition('p', '3/4'), ...(isParted ? {} : { form: 'none' as const }) };
    const design = drawers({ slides: entry, ...(at === undefined ? {} : { slidesAt: at }) });
    return caseWithFace('30', '6', row('row', rest, cells, [between]), { drawers: design });
  });

describe('a box on slides', () => {
  it('and what its slides take are as wide as the opening', () => {
    fc.assert(
      fc.property(pieces, (piece) => {
        const evaluation = evaluatePiece(piece);
        const takes = piece.face?.drawers?.slides?.clearanceEachSide.length.times(2) ?? Length.zero;
        const front = partWithId(evaluation, 'd/box-front').length.length;
        const cell = evaluation.layout.face?.cells[0];
        expect(front.plus(takes)).toEqual(cell?.opening.x.size.length);
      }),
      { numRuns: 60 },
    );
  });
});

describe('every screw that is not reported', () => {
  it('lies in solid wood, wherever one looks in its hole', () => {
    let sound = 0;
    fc.assert(
      fc.property(pieces, (piece) => {
        const evaluation = evaluatePiece(piece);
        const told = evaluation.findings.filter(({ code }) => code.startsWith('screw-'));
        const bad = evaluation.hardware.flatMap(({ screws }) => screws).filter((screw) => !isInWood(screw, evaluation));
        // What stands beside nothing, or is no sound case at all, is told as that.
        if (evaluation.findings.some(({ severity, code }) => severity === 'error' && !code.startsWith('screw-')))
          return;
        const counted = told.reduce((sum, { facts }) => sum + 1 + Number(facts['others']), 0);
        expect(bad.length, 'screws without wood are told').toBeLessThanOrEqual(counted);
        sound += evaluation.hardware.flatMap(({ screws }) => screws).length - counted;
      }),
      { numRuns: 150 },
    );
    expect(sound, 'some screws hold').toBeGreaterThan(20);
  });
});

/** Looks along the middle of its hole and along four lines on its rim, at many depths. */
function isInWood({ at, towards, diameter, length }: Screw, { parts }: Evaluation): boolean {
  const radius = diameter.dividedBy(2);
  const rim = [
    [Length.zero, Length.zero],
    [radius, Length.zero],
    [radius.negated(), Length.zero],
    [Length.zero, radius],
    [Length.zero, radius.negated()],
  ] as const;
  return Array.from({ length: 8 }, (_, step) => length.times(step).plus(length.dividedBy(2)).dividedBy(8)).every(
    (deep) =>
      rim.every(([up, along]) => {
        const x = towards === '-x' ? at.x.minus(deep) : at.x.plus(deep);
        const hair = Length.inches(1, 10_000);
        const around = (place: Length) => ({ from: place.minus(hair), to: place.plus(hair) });
        const [y, z] = [at.y.plus(up), at.z.plus(along)];
        const speck = { kind: 'box', x: around(x), y: around(y), z: around(z) } as const;
        return parts.some(
          ({ blank, features }) =>
            within(x, blank.x) &&
            within(y, blank.y) &&
            within(z, blank.z) &&
            // What is bored for the screws themselves is no lack of wood.
            !features.some(
              (feature) =>
                !isHoleOfHardware(feature) && meets(feature.solid, speck) && deeperThanTouch(feature.solid, x, y, z),
            ),
        );
      }),
  );
}

function within(
  place: Length,
  { start, end }: { readonly start: { readonly length: Length }; readonly end: { readonly length: Length } },
): boolean {
  return start.length.compare(place) <= 0 && end.length.compare(place) >= 0;
}

/** A rim may touch the wall of a cut without lying in it. */
function deeperThanTouch(solid: Parameters<typeof meets>[0], x: Length, y: Length, z: Length): boolean {
  if (solid.kind !== 'box') return true;
  return [
    [solid.x, x],
    [solid.y, y],
    [solid.z, z],
  ].every(([side, place]) => {
    const { from, to } = side as typeof solid.x;
    return from.compare(place as Length) < 0 && to.compare(place as Length) > 0;
  });
}
