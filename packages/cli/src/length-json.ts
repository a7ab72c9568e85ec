import { shown } from '@fettle/drawings';
import type { Length, Span, Units } from '@fettle/engine';

/** Lengths as they leave the program: exact for machines, and as they are shown for people. */

export interface LengthJson {
  /** In the piece's units, in lowest terms: "591/64", or "57" for a whole number. */
  readonly exact: string;
  /** As drawings and lists write it, on the piece's ruler: `9-7/32" + 1/64"`. */
  readonly shown: string;
}

/** A stretch of the front view. All from the left end of the piece and from the floor. */
export interface RectangleJson {
  readonly width: LengthJson;
  readonly height: LengthJson;
  readonly left: LengthJson;
  readonly right: LengthJson;
  readonly bottom: LengthJson;
  readonly top: LengthJson;
}

/** As a rectangle, and from the foremost point of the piece to the back. */
export interface BoxJson extends RectangleJson {
  readonly depth: LengthJson;
  readonly front: LengthJson;
  readonly back: LengthJson;
}

export function lengthJson(length: Length, units: Units): LengthJson {
  return { exact: length.in(units.unit).toString(), shown: shown(length, units) };
}

export function rectangleJson(at: { readonly x: Span; readonly y: Span }, units: Units): RectangleJson {
  const { x, y } = at;
  return {
    width: lengthJson(x.size.length, units),
    height: lengthJson(y.size.length, units),
    left: lengthJson(x.start.length, units),
    right: lengthJson(x.end.length, units),
    bottom: lengthJson(y.start.length, units),
    top: lengthJson(y.end.length, units),
  };
}

export function boxJson(at: { readonly x: Span; readonly y: Span; readonly z: Span }, units: Units): BoxJson {
  const { width, height, ...sides } = rectangleJson(at, units);
  return {
    width,
    height,
    depth: lengthJson(at.z.size.length, units),
    ...sides,
    front: lengthJson(at.z.start.length, units),
    back: lengthJson(at.z.end.length, units),
  };
}

/** JSON for files: indented, and each length on one line, so that a person finds a number and `diff` shows one change. */
export function jsonText(value: unknown): string {
  const string = '"(?:[^"\\\\\\n]|\\\\.)*"';
  const spread = new RegExp(`\\{\\n *"exact": (${string}),\\n *"shown": (${string})\\n *\\}`, 'g');
  return `${JSON.stringify(value, undefined, 2).replaceAll(spread, '{ "exact": $1, "shown": $2 }')}\n`;
}
