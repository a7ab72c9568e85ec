import { Length } from '../length/length.ts';

/**
 * What stock plans cut: one part, or several that must come from one piece of stock in a fixed order, with allowances for
 * what is planed or trimmed later.
 */
export interface Blank {
  readonly id: string;
  /** In order, at least one. */
  readonly parts: readonly BlankPart[];
  /** The way the parts follow each other: side by side across the grain, or behind each other along it. */
  readonly order: 'across' | 'along';
  /** What each cut between two parts removes: one fewer than there are parts. Missing ones remove nothing. */
  readonly between: readonly Length[];
  readonly allowance?: BlankAllowance;
  /** Whether the length may lie across the grain of the stock. */
  readonly mayTurn: boolean;
}

export interface BlankPart {
  readonly part: string;
  /** Across the grain. */
  readonly width: Length;
  /** Along the grain. */
  readonly length: Length;
}

/** What the blank is larger by than its parts and the cuts between them, on each of its edges. */
export interface BlankAllowance {
  readonly left: Length;
  readonly right: Length;
  readonly near: Length;
  readonly far: Length;
}

export interface BlankSize {
  readonly width: Length;
  readonly length: Length;
}

/** A part of a blank and where it lies, from the left and near corner of the blank as it lies in the stock. */
export interface PartInBlank extends BlankSize {
  readonly part: string;
  readonly x: Length;
  readonly y: Length;
}

const NO_ALLOWANCE: BlankAllowance = { left: Length.zero, right: Length.zero, near: Length.zero, far: Length.zero };

/** The size of a blank with its grain along the length, exact. */
export function sizeOfBlank(blank: Blank): BlankSize {
  const { left, right, near, far } = blank.allowance ?? NO_ALLOWANCE;
  const across = blank.order === 'across';
  const together = Length.sum([
    ...blank.parts.map((part) => (across ? part.width : part.length)),
    ...blank.between.slice(0, blank.parts.length - 1),
  ]);
  const widest = blank.parts.reduce((most, part) => most.max(across ? part.length : part.width), Length.zero);
  return {
    width: left.plus(across ? together : widest).plus(right),
    length: near.plus(across ? widest : together).plus(far),
  };
}

/**
 * Where in a blank each of its parts lies, exact. A part smaller than its neighbours lies at the left or near edge. With
 * `turned` the blank lies with its length across the stock: places and sizes are those of the stock.
 */
export function partsInBlank(blank: Blank, turned: boolean): readonly PartInBlank[] {
  const { left, near } = blank.allowance ?? NO_ALLOWANCE;
  const across = blank.order === 'across';
  let at = across ? left : near;
  return blank.parts.map(({ part, width, length }, place) => {
    const x = across ? at : left;
    const y = across ? near : at;
    at = at.plus(across ? width : length).plus(blank.between[place] ?? Length.zero);
    return turned ? { part, x: y, y: x, width: length, length: width } : { part, x, y, width, length };
  });
}
