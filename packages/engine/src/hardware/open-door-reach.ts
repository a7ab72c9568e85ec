import type { Figure } from '../design/figure.ts';
import type { HingeEntry } from '../design/shop.ts';
import { Length, type LengthUnit } from '../length/length.ts';
import { Rational } from '../length/rational.ts';
import { upToMark } from '../length/ruler-marks.ts';
import { limitIn, USUAL_MARK } from '../tables/trade-limits.ts';

/**
 * How far a door that is open stands in its own opening, where drawers behind it have to pass.
 *
 * A door turns on the front corner of the edge that it hangs on, which lies `gap` inside the wood beside its opening;
 * less than nothing where the door laps that. Open at an angle a its back corner there stands t sin a farther in, and as
 * long as it is open less than a right angle its width w stands across the opening, w cos a of it. Concealed hinges lift
 * a door off a little on the way: their data sheet may tell, and is then believed.
 */
export interface OpenDoor {
  /** In degrees. */
  readonly angle: Rational;
  /** The entry does not tell: a right angle is taken. */
  readonly isAssumed: boolean;
  /** From the wood beside the opening; nothing or less where the way is free. Never less than it really is. */
  readonly stands: Length;
}

const right = Rational.of(90);

export function openDoor(
  hinge: HingeEntry,
  door: { readonly width: Length; readonly thickness: Length; readonly gap: Figure },
  unit: LengthUnit,
): OpenDoor {
  const angle = hinge.opens ?? right;
  const isAssumed = hinge.opens === undefined;
  if (hinge.openDoorIn !== undefined) return { angle, isAssumed, stands: hinge.openDoorIn.length };
  return { angle, isAssumed, stands: door.gap.length.plus(turnedIn(angle, door, unit)) };
}

/** Exact for a right and a straight angle; else rounded up to the next 1/32" or 1/2 mm, for sines have no fractions. */
function turnedIn(
  angle: Rational,
  { width, thickness }: { readonly width: Length; readonly thickness: Length },
  unit: LengthUnit,
): Length {
  if (angle.equals(right)) return thickness;
  const radians = (Math.min(Math.max(angle.toNumber(), 0), 180) * Math.PI) / 180;
  if (radians === Math.PI) return Length.zero;
  const inches =
    thickness.approximateInches * Math.sin(radians) + width.approximateInches * Math.max(Math.cos(radians), 0);
  return upToMark(Length.of(Rational.of(Math.ceil(inches * 1e6), 1e6), 'in'), limitIn(USUAL_MARK, unit));
}
