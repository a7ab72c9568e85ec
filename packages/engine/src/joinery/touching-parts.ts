import type { Span } from '../evaluation.ts';
import type { Axis, UnmarkedPart } from '../parts/slab.ts';
import type { FaceOfPart } from './feature.ts';

/**
 * Which parts meet face to face, found by where they stand. Two parts touch where a face of one lies in the plane of a
 * face of the other and they have some area in common. Knows nothing of joints.
 */

export interface Contact {
  /** The part whose face on side `at` is touched, and the one that touches it. */
  readonly one: UnmarkedPart;
  readonly at: FaceOfPart;
  readonly other: UnmarkedPart;
  readonly axis: Axis;
}

const axes: readonly Axis[] = ['x', 'y', 'z'];
/** In inches: farther apart than this two parts surely do not touch, and what is nearer is asked exactly. */
const SLACK = 1e-6;

interface Rough {
  readonly part: UnmarkedPart;
  readonly from: readonly number[];
  readonly to: readonly number[];
}

/** Each pair once, in the order of the parts; `one` is the part that ends where the other begins. */
export function touchingParts(parts: readonly UnmarkedPart[]): readonly Contact[] {
  const rough = parts.map(roughly).sort((a, b) => (a.from[0] as number) - (b.from[0] as number));
  const contacts: Contact[] = [];
  for (let i = 0; i < rough.length; i++) {
    const a = rough[i] as Rough;
    for (let j = i + 1; j < rough.length; j++) {
      const b = rough[j] as Rough;
      if ((b.from[0] as number) > (a.to[0] as number) + SLACK) break;
      if (!mayTouch(a, b)) continue;
      const contact = contactOf(a.part, b.part) ?? contactOf(b.part, a.part);
      if (contact !== undefined) contacts.push(contact);
    }
  }
  return contacts;
}

function roughly(part: UnmarkedPart): Rough {
  const spans = axes.map((axis) => part.box[axis]);
  return {
    part,
    from: spans.map((span) => span.start.length.approximateInches),
    to: spans.map((span) => span.end.length.approximateInches),
  };
}

function mayTouch(a: Rough, b: Rough): boolean {
  for (let at = 0; at < 3; at++) {
    if ((b.from[at] as number) > (a.to[at] as number) + SLACK || (a.from[at] as number) > (b.to[at] as number) + SLACK)
      return false;
  }
  return true;
}

/** Where `one` ends and `other` begins; undefined where they do not meet that way round. */
function contactOf(one: UnmarkedPart, other: UnmarkedPart): Contact | undefined {
  for (const axis of axes) {
    if (!one.box[axis].end.length.equals(other.box[axis].start.length)) continue;
    const shares = axes.every((each) => each === axis || overlap(one.box[each], other.box[each]));
    if (shares) return { one, at: `+${axis}`, other, axis };
  }
  return undefined;
}

export function overlap(a: Span, b: Span): boolean {
  return a.start.length.compare(b.end.length) < 0 && b.start.length.compare(a.end.length) < 0;
}
