import type { Evaluation } from '../../evaluation.ts';
import type { Part } from '../../parts/part.ts';

/**
 * All pieces of a text as one, for what is bought and cut together: a wall of cases takes fewer sheets than its cases
 * one by one. It has the parts and nothing of where they stand, so nothing can be drawn of it but its cutting plans.
 */
export interface PiecesTogether extends Evaluation {
  /** All of the text, in its order; the mark of a part begins with the turn of its piece: `12-A1` is A1 of the twelfth. */
  readonly pieces: readonly Evaluation[];
}

/** Undefined for fewer than two pieces that have parts. Lengths are told in the units of the first of them. */
export function piecesTogether(name: string, pieces: readonly Evaluation[]): PiecesTogether | undefined {
  const [first, second] = pieces.filter(({ parts }) => parts.length > 0);
  if (first === undefined || second === undefined) return undefined;
  const { face: _, sequences: __, ...design } = first.design;
  return {
    design: { ...design, name, size: { origin: design.size.origin } },
    layout: {},
    parts: pieces.flatMap((piece, at) => partsAmongAll(piece, at + 1)),
    joints: [],
    hardware: [],
    ...(first.machines === undefined ? {} : { machines: first.machines }),
    findings: pieces.flatMap(({ findings }) => findings),
    pieces,
  };
}

export function isTogether(evaluation: Evaluation): evaluation is PiecesTogether {
  return 'pieces' in evaluation;
}

/** Its name among the parts of all pieces. */
export function idAmongAll(id: string, turn: number): string {
  return `${turn}/${id}`;
}

/** Whose a part is, by its name among all: the turn of its piece, counted from 1. */
export function turnAmongAll(id: string): number {
  return Number(id.slice(0, id.indexOf('/')));
}

interface Renamed {
  readonly turn: number;
  readonly parts: readonly Part[];
}

/** An edit changes one piece; the parts of all others are named already. */
const knownParts = new WeakMap<Evaluation, Renamed>();

function partsAmongAll(piece: Evaluation, turn: number): readonly Part[] {
  const known = knownParts.get(piece);
  if (known?.turn === turn) return known.parts;
  const parts = piece.parts.map((part) => partOf(part, turn));
  knownParts.set(piece, { turn, parts });
  return parts;
}

function partOf(part: Part, turn: number): Part {
  const { run } = part;
  return {
    ...part,
    id: idAmongAll(part.id, turn),
    mark: `${turn}-${part.mark}`,
    ...(run === undefined ? {} : { run: { ...run, id: idAmongAll(run.id, turn) } }),
  };
}
