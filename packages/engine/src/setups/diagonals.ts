import type { Evaluation, Span } from '../evaluation.ts';
import { groupedBy } from '../grouping.ts';
import type { FeatureKind } from '../joinery/feature.ts';
import { Length, type LengthUnit } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import type { Part } from '../parts/part.ts';

/**
 * Diagonals of what has to come out square. A root is no fraction: it is given as the nearest mark of the ruler and as
 * a decimal, never as a length to reckon with.
 */
export interface Diagonal {
  readonly what: string;
  readonly parts: readonly string[];
  readonly width: Length;
  readonly height: Length;
  readonly mark: Length;
  /** In the unit of the piece, to three places. */
  readonly decimal: string;
}

export function diagonalsOf({ design, layout, parts }: Evaluation): readonly Diagonal[] {
  const { unit, ruler } = design.units;
  const { carcase } = layout;
  const of = (what: string, ids: readonly string[], width: Length, height: Length): Diagonal[] =>
    width.isPositive() && height.isPositive()
      ? [{ what, parts: ids, width, height, ...diagonalOf(width, height, unit, Length.of(ruler, unit)) }]
      : [];
  return [
    ...(carcase === undefined
      ? []
      : [
          ...of('the case', [], carcase.body.x.size.length, carcase.body.y.size.length),
          ...of('the face', [], carcase.face.x.size.length, carcase.face.y.size.length),
        ]),
    ...parts
      .filter(({ role }) => role === 'back')
      .flatMap(({ id, label, blank }) => of(`the ${label}`, [id], blank.x.size.length, blank.y.size.length)),
    ...frames(parts, of),
    ...boxes(parts, of),
  ];
}

type Make = (what: string, ids: readonly string[], width: Length, height: Length) => Diagonal[];

/** From end to end of the rails, and from the outer edge of the one to that of the other. */
function frames(parts: readonly Part[], make: Make): readonly Diagonal[] {
  return [
    ...groupedBy(
      parts.filter(({ role }) => role === 'divider-rail'),
      ({ frame }) => frame,
    ).values(),
  ].flatMap((members) => {
    const [first] = members;
    const place = first?.label.replace(/^[a-z]+ (?:rail|runner) ?/, '') ?? '';
    const ids = members.map(({ id }) => id);
    const what = `the web frame ${place}`.trimEnd();
    // One measures what lies on the bench: whole ends that go into dadoes, but shoulders where there are tails or tenons.
    const isShouldered = members.some(({ features }) =>
      features.some(({ kind, entry }) => isCheek(kind) && entry.endsWith('x')),
    );
    return isShouldered
      ? make(`${what}, at its shoulders`, ids, reach(members, 'x', 'box'), reach(members, 'z', 'box'))
      : make(what, ids, reach(members, 'x', 'blank'), reach(members, 'z', 'box'));
  });
}

function boxes(parts: readonly Part[], make: Make): readonly Diagonal[] {
  return [
    ...groupedBy(
      parts.filter(({ role }) => role === 'drawer-side'),
      ({ cell }) => cell,
    ).values(),
  ].flatMap((sides) => {
    const of = /( of ".*")$/.exec(sides[0]?.label ?? '')?.[1] ?? '';
    return make(
      `the drawer box${of}`,
      sides.map(({ id }) => id),
      reach(sides, 'x', 'box'),
      reach(sides, 'z', 'box'),
    );
  });
}

function isCheek(kind: FeatureKind): boolean {
  return kind === 'tail-cheek' || kind === 'tenon-shoulder' || kind === 'tongue-shoulder';
}

function reach(parts: readonly Part[], axis: 'x' | 'z', of: 'box' | 'blank'): Length {
  const spans: readonly Span[] = parts.map((part) => part[of][axis]);
  const [first] = spans;
  if (first === undefined) return Length.zero;
  const from = spans.reduce((least, { start }) => least.min(start.length), first.start.length);
  const to = spans.reduce((most, { end }) => most.max(end.length), first.end.length);
  return to.minus(from);
}

/** `step`: from one mark to the next; where it is not positive the thousandth of the unit serves. Halfway the lower. */
export function diagonalOf(
  width: Length,
  height: Length,
  unit: LengthUnit,
  step: Length,
): { readonly mark: Length; readonly decimal: string } {
  const thousandth = Length.of(Rational.of(1, 1000), unit);
  const mark = step.isPositive() ? step : thousandth;
  const decimal = marksIn(width, height, thousandth);
  const whole = decimal / 1000n;
  return {
    mark: mark.times(Rational.of(marksIn(width, height, mark))),
    decimal: `${whole}.${(decimal % 1000n).toString().padStart(3, '0')}`,
  };
}

/** The whole number of steps nearest to the diagonal, exactly: (2k + 1)² is compared with four times its square. */
function marksIn(width: Length, height: Length, step: Length): bigint {
  const [w, h] = [width.ratioTo(step), height.ratioTo(step)];
  const square = w.times(w).plus(h.times(h));
  const below = wholeRoot(square.numerator / square.denominator);
  const half = 2n * below + 1n;
  return half * half * square.denominator < 4n * square.numerator ? below + 1n : below;
}

/** The largest whole number whose square is not more. By Newton's steps from above. */
function wholeRoot(of: bigint): bigint {
  if (of < 2n) return of;
  let root = 1n << BigInt((of.toString(2).length + 1) >> 1);
  for (;;) {
    const next = (root + of / root) >> 1n;
    if (next >= root) return root;
    root = next;
  }
}
