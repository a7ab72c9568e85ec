import { BEHIND, BLANK, SIDE_BY_SIDE, WASTE } from './cutting-forest.ts';

/** A tree of cuts with blanks' types at its leaves. */
export interface PatternNode {
  readonly kind: number;
  readonly width: number;
  readonly length: number;
  /** Of a blank. */
  readonly type: number;
  readonly children: readonly PatternNode[];
}

interface Size {
  readonly width: number;
  readonly length: number;
}

export function waste(width: number, length: number): PatternNode {
  return { kind: WASTE, width, length, type: 0, children: [] };
}

/** A blank in the corner of a piece: the rests become waste. */
export function cornerBlank(type: number, blank: Size, piece: Size): PatternNode {
  const leaf: PatternNode = { kind: BLANK, width: blank.width, length: blank.length, type, children: [] };
  const column = joined(BEHIND, blank.width, piece.length, [leaf]);
  return joined(SIDE_BY_SIDE, piece.width, piece.length, [column]);
}

/** As many of one blank as fit into a piece, in rows and columns. */
export function gridOf(type: number, blank: Size, piece: Size): PatternNode {
  const leaf: PatternNode = { kind: BLANK, width: blank.width, length: blank.length, type, children: [] };
  const deep = Math.floor(piece.length / blank.length);
  const column = joined(
    BEHIND,
    blank.width,
    piece.length,
    Array.from({ length: deep }, () => leaf),
  );
  const broad = Math.floor(piece.width / blank.width);
  return joined(
    SIDE_BY_SIDE,
    piece.width,
    piece.length,
    Array.from({ length: broad }, () => column),
  );
}

/** Joins pieces into one node: directions alternate, and what they leave is one piece of waste. */
export function joined(kind: number, width: number, length: number, pieces: readonly PatternNode[]): PatternNode {
  const flat = pieces.flatMap((piece) => (piece.kind === kind ? piece.children : [piece]));
  const useful = flat.filter((piece) => piece.kind !== WASTE);
  if (useful.length === 0) return waste(width, length);
  const side = kind === SIDE_BY_SIDE;
  const filled = useful.reduce((sum, piece) => sum + (side ? piece.width : piece.length), 0);
  const rest = (side ? width : length) - filled;
  const children = rest === 0 ? useful : [...useful, side ? waste(rest, length) : waste(width, rest)];
  const [only] = children;
  if (children.length === 1 && only !== undefined) return only;
  return { kind, width, length, type: 0, children };
}

/** How many blanks of each type a pattern holds. */
export function countBlanks(pattern: PatternNode, types: number): Float64Array {
  const counts = new Float64Array(types);
  const count = (node: PatternNode): void => {
    if (node.kind === BLANK) counts[node.type] = (counts[node.type] as number) + 1;
    else node.children.forEach(count);
  };
  count(pattern);
  return counts;
}
