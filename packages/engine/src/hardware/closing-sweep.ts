import { Length, type LengthUnit } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { isMetric, limitIn, USUAL_MARK } from '../tables/trade-limits.ts';

/**
 * Whether the closing edge of a door clears what stands beside it. The door turns on the front corner of the edge that it
 * hangs on; the back corner of its closing edge runs on a circle whose radius is the root of a sum of squares. Roots are
 * never worked out to compare them: the squares are compared, exactly.
 */
export interface ClosingEdge {
  readonly width: Length;
  readonly thickness: Length;
  /** Between the closing edge and what stands beside it. */
  readonly gap: Length;
  /** What is taken off the closing edge at the back of the door. */
  readonly bevel: Length;
}

export function clearsItsGap({ width, thickness, gap, bevel }: ClosingEdge): boolean {
  const square = (length: Length) => length.in('in').power(2);
  const reach = square(width.minus(bevel).max(Length.zero)).plus(square(thickness));
  return reach.compare(square(width.plus(gap))) <= 0;
}

/** How far the back corner would run beyond the closing edge: only to be shown. Inches as a decimal. */
export function sweepOf({ width, thickness, bevel }: ClosingEdge): number {
  const [w, t, b] = [width, thickness, bevel].map((length) => length.approximateInches) as [number, number, number];
  // √(w² + t²) - w without the loss of a difference between two numbers nearly alike.
  const across = w - b;
  return (t * t) / (Math.hypot(across, t) + across) - b;
}

/** With three figures that count, in inches or millimetres. */
export function sweepInWords(edge: ClosingEdge, unit: LengthUnit): string {
  const inches = sweepOf(edge);
  return isMetric(unit) ? `${Number((inches * 25.4).toPrecision(3))} mm` : `${Number(inches.toPrecision(3))}"`;
}

/** The least bevel on the ruler's usual marks that lets the door close; undefined where none of a moderate size does. */
export function leastBevel(edge: ClosingEdge, unit: LengthUnit): Length | undefined {
  const mark = limitIn(USUAL_MARK, unit);
  for (let marks = 1; marks <= MOST_MARKS; marks++) {
    const bevel = mark.times(Rational.of(marks));
    if (clearsItsGap({ ...edge, bevel })) return bevel;
  }
  return undefined;
}

/** More than 3/4" or 12 mm is another door. */
const MOST_MARKS = 24;
