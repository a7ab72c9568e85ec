import { groupAlike } from '../grouping.ts';
import type { Length, LengthUnit } from '../length/length.ts';
import { type CoreSize, coreOf, type RoughSize, roughOf } from './core-and-rough.ts';
import { cutSignature } from './cut-signature.ts';
import type { EdgingStrip, Part, PartRole } from './part.ts';

/**
 * The cut list: parts that are cut alike stand in one row; a part and its mirror image are not. In the order in which one cuts: stock by stock, thick before
 * thin, wide before narrow, long before short.
 */
export interface CutListRow {
  readonly quantity: number;
  readonly marks: readonly string[];
  /** Ids of the parts, in the same order as the marks. */
  readonly parts: readonly string[];
  readonly role: PartRole;
  /** The labels of the parts, each once. */
  readonly labels: readonly string[];
  /** The name of the stock; absent while none is chosen. */
  readonly stock?: string;
  /** Along the grain, or the longest edge where there is no grain. */
  readonly length: Part['length'];
  readonly width: Part['width'];
  readonly thickness: Part['thickness'];
  /** Whether the length has to lie along the grain. */
  readonly grain: 'along-length' | 'none';
  /** What strips are put on; absent where none are. */
  readonly core?: CoreSize;
  /** What is sawn first; absent while no stock is chosen. */
  readonly rough?: RoughSize;
  readonly edging: readonly EdgingStrip[];
  readonly features: Part['features'];
}

/** `unit`: allowances are round figures of the maker's system. */
export function cutList(parts: readonly Part[], unit: LengthUnit = 'in'): readonly CutListRow[] {
  const groups = groupAlike(parts, (part) => [
    part.stock?.name ?? null,
    part.role,
    part.grain === 'none',
    part.length.length.exactInches,
    part.width.length.exactInches,
    part.thickness.length.exactInches,
    cutSignature(part),
  ]);
  return groups.map((group) => rowOf(group[0], group, unit)).sort(asOneCuts);
}

function rowOf(first: Part, group: readonly Part[], unit: LengthUnit): CutListRow {
  const [core, rough] = [coreOf(first), roughOf(first, unit)];
  return {
    quantity: group.length,
    marks: group.map((part) => part.mark),
    parts: group.map((part) => part.id),
    role: first.role,
    labels: [...new Set(group.map((part) => part.label))],
    ...(first.stock === undefined ? {} : { stock: first.stock.name }),
    length: first.length,
    width: first.width,
    thickness: first.thickness,
    grain: first.grain === 'none' ? 'none' : 'along-length',
    ...(core === undefined ? {} : { core }),
    ...(rough === undefined ? {} : { rough }),
    edging: first.edging,
    features: first.features,
  };
}

function asOneCuts(a: CutListRow, b: CutListRow): number {
  return (
    // A row without stock comes last: it cannot be cut yet.
    byText(a.stock ?? '\uffff', b.stock ?? '\uffff') ||
    largestFirst(a.thickness.length, b.thickness.length) ||
    largestFirst(a.width.length, b.width.length) ||
    largestFirst(a.length.length, b.length.length) ||
    byText(a.marks[0] ?? '', b.marks[0] ?? '')
  );
}

function largestFirst(a: Length, b: Length): number {
  return b.compare(a);
}

/** By code unit, so that the order is the same on every machine. */
function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
