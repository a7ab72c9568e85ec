import type { FindingJson } from './finding-json.ts';
import type { BoxJson, LengthJson, RectangleJson } from './length-json.ts';

/**
 * What `fettle make` writes as `NAME-evaluation.json`: everything that was worked out for one piece. Written by hand at
 * the border, so that inner types may change without the file changing. README.md of this package lists every field.
 *
 * A field that is not known is absent, never zero. All lengths are exact.
 */
export interface EvaluationJson {
  readonly format: 'fettle-evaluation';
  /** Rises when a field changes its meaning or goes away; not when one is added. */
  readonly version: 1;
  /** The name of the piece. */
  readonly piece: string;
  /** The file it is written in, as given on the command line. */
  readonly file: string;
  /** No error stands against the piece. */
  readonly sound: boolean;
  readonly units: UnitsJson;
  readonly size: SizeJson;
  readonly carcase?: CarcaseJson;
  /** The outermost opening; rows and stacks hold the others. */
  readonly face?: CellJson;
  readonly parts: readonly PartJson[];
  /** In the order in which one cuts. */
  readonly cutList: readonly CutListRowJson[];
  /** Those of the piece, and those of the file that belong to no piece. */
  readonly findings: readonly FindingJson[];
  /** What the text leaves open and a habit of the trade stands in for. */
  readonly assumed: readonly AssumedJson[];
}

export interface UnitsJson {
  readonly unit: 'in' | 'mm' | 'cm' | 'ft';
  /** The finest mark of the ruler, in `unit`, in lowest terms: "1/32". "0" when there is none. */
  readonly ruler: string;
}

/** The piece as a whole, top and plinth included. */
export interface SizeJson {
  readonly width?: LengthJson;
  readonly height?: LengthJson;
  readonly depth?: LengthJson;
}

export interface CarcaseJson {
  /** Sides, bottom and what closes the top, without overhangs of the top and without the plinth. */
  readonly body: BoxJson;
  /** The space between sides, bottom and what closes the top. */
  readonly face: RectangleJson;
  /** From the front of the body to the front of the back. */
  readonly inside: Pick<BoxJson, 'depth' | 'front' | 'back'>;
}

export interface CellJson {
  /** Stable while the text around it changes; parts name it. */
  readonly id: string;
  readonly name?: string;
  readonly kind: 'row' | 'stack' | 'open' | 'door' | 'drawer' | 'lid' | 'false-front';
  readonly opening: RectangleJson;
  /** The whole front, across both leaves of a pair. */
  readonly front?: RectangleJson;
  /** One for a single front, two for a pair, left first. */
  readonly leaves: readonly RectangleJson[];
  /** The box of a drawer, outside. */
  readonly box?: BoxJson;
  /** From left to right in a row, from top to bottom in a stack. */
  readonly cells: readonly CellJson[];
  readonly dividers: readonly DividerJson[];
}

export interface DividerJson {
  readonly id: string;
  readonly form: 'partition' | 'web-frame' | 'panel';
  readonly mode: 'shown' | 'behind';
  readonly at: RectangleJson;
}

export interface PartJson {
  readonly id: string;
  /** As on the drawing, in the cut list and on the wood. */
  readonly mark: string;
  readonly label: string;
  readonly role: string;
  /** The name of its stock; absent while none is chosen. */
  readonly stock?: string;
  /** Finished sizes. The length lies along the grain, or is the longest edge where there is no grain. */
  readonly length: LengthJson;
  readonly width: LengthJson;
  readonly thickness: LengthJson;
  readonly grain: 'left-to-right' | 'upright' | 'front-to-back' | 'none';
  readonly position: BoxJson;
  /** The `id` of the cell it belongs to. */
  readonly cell?: string;
}

/** Parts that are cut alike. */
export interface CutListRowJson {
  readonly quantity: number;
  readonly marks: readonly string[];
  /** The `id`s of the parts, in the order of the marks. */
  readonly parts: readonly string[];
  readonly labels: readonly string[];
  readonly stock?: string;
  readonly length: LengthJson;
  readonly width: LengthJson;
  readonly thickness: LengthJson;
  readonly grain: 'along-length' | 'none';
}

export interface AssumedJson {
  /** What the length is of: 'free under the box'. */
  readonly what: string;
  readonly length: LengthJson;
  readonly because: string;
  /** The `id`s of the parts whose size or place depends on it. */
  readonly parts: readonly string[];
}
