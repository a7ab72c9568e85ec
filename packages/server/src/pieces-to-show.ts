import { type Evaluation, type Part, type PiecesTogether, piecesTogether, turnAmongAll } from '@fettle/engine';
import type { EvaluatedDocument, EvaluatedPiece } from '@fettle/language';

/** The pieces of a text, and behind them all of them as one where there are several: what is bought and cut together. */
export function piecesToShow(evaluated: EvaluatedDocument): readonly EvaluatedPiece[] {
  let shown = known.get(evaluated);
  if (shown === undefined) {
    const all = allPieces(evaluated.pieces);
    shown = all === undefined ? evaluated.pieces : [...evaluated.pieces, all];
    known.set(evaluated, shown);
  }
  return shown;
}

const known = new WeakMap<EvaluatedDocument, readonly EvaluatedPiece[]>();

/** Whose words a part is written in: of all pieces as one each part is its own piece's. */
export function ownerOf(piece: EvaluatedPiece, part: Pick<Part, 'id'>): EvaluatedPiece {
  return owners.get(piece)?.[turnAmongAll(part.id) - 1] ?? piece;
}

const owners = new WeakMap<EvaluatedPiece, readonly EvaluatedPiece[]>();

/** By the first of its pieces: as long as none of them changed it is the same object, so that its plans are found again. */
const keptTogether = new WeakMap<Evaluation, PiecesTogether>();

function together(name: string, pieces: readonly Evaluation[]): PiecesTogether | undefined {
  const [first] = pieces;
  const kept = first === undefined ? undefined : keptTogether.get(first);
  if (kept?.pieces.length === pieces.length && kept.pieces.every((piece, at) => piece === pieces[at])) return kept;
  const made = piecesTogether(name, pieces);
  if (first !== undefined && made !== undefined) keptTogether.set(first, made);
  return made;
}

function allPieces(pieces: readonly EvaluatedPiece[]): EvaluatedPiece | undefined {
  const [first] = pieces;
  const name = 'All pieces';
  const evaluation = together(
    name,
    pieces.map((piece) => piece.evaluation),
  );
  if (first === undefined || evaluation === undefined) return undefined;
  const ranges = pieces.map(({ range }) => range);
  const all: EvaluatedPiece = {
    ...first,
    name,
    evaluation,
    range: { start: Math.min(...ranges.map(({ start }) => start)), end: Math.max(...ranges.map(({ end }) => end)) },
  };
  owners.set(all, pieces);
  return all;
}
