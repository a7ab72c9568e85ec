import { explain, type Part } from '@fettle/engine';
import type { EvaluatedDocument, EvaluatedPiece, PlacedFinding } from '@fettle/language';
import type { PartView, Picture, PictureFinding, PieceView, SheetView, TextSpan } from '@fettle/protocol';
import type { SheetMaker } from './sheets/sheet-maker.ts';
import { verdictWords } from './verdict.ts';

/** Turns what the engine found in a document into the picture that crosses to the page. Pure. */

/** The whole statement around an offset of the document. */
export type StatementAround = (offset: number) => TextSpan | undefined;

/** All that is said of a part in this document; for a part written elsewhere, the piece that brings it in. */
function spanOfPart(piece: EvaluatedPiece, part: Part, uri: string, statementAround: StatementAround): TextSpan {
  const place = piece.locate(part.origin);
  if (place?.uri !== uri) return { start: piece.range.start, end: piece.range.end };
  return statementAround(place.start) ?? { start: place.start, end: place.end };
}

function derivationOf(part: Part, piece: EvaluatedPiece): string {
  const sizes = [
    ['Length', part.length],
    ['Width', part.width],
    ['Thickness', part.thickness],
  ] as const;
  return sizes.map(([name, figure]) => `${name} ${explain(figure, piece.say)}`).join('\n');
}

function viewOfPart(part: Part, piece: EvaluatedPiece, span: TextSpan): PartView {
  return {
    id: part.id,
    label: `${part.label}, mark ${part.mark}`,
    span,
    derivation: derivationOf(part, piece),
  };
}

/** One sheet that fails leaves the others standing; `onFailure` hears of it. */
function sheetsOf(
  piece: EvaluatedPiece,
  makers: readonly SheetMaker[],
  onFailure: (sheet: string, error: unknown) => void,
): readonly SheetView[] {
  return makers.flatMap((maker) => {
    try {
      return maker.make(piece) ?? [];
    } catch (error) {
      onFailure(maker.id, error);
      return [];
    }
  });
}

/** The parts made by the words a finding stands on: all whose own words lie closest around them. */
function partsConcerned(finding: PlacedFinding, uri: string, pieces: readonly PieceView[]): readonly string[] {
  if (finding.uri !== uri) return [];
  const around = pieces
    .filter((piece) => piece.span.start <= finding.start && finding.end <= piece.span.end)
    .flatMap((piece) => piece.parts)
    .filter(({ span }) => span.start <= finding.start && finding.end <= span.end);
  const closest = Math.min(...around.map(({ span }) => span.end - span.start));
  return around.filter(({ span }) => span.end - span.start === closest).map(({ id }) => id);
}

export function pictureOfDocument(
  document: { readonly uri: string; readonly version: number; readonly statementAround: StatementAround },
  evaluated: EvaluatedDocument,
  makers: readonly SheetMaker[],
  onFailure: (sheet: string, error: unknown) => void,
): Picture {
  const { uri, version, statementAround } = document;
  const pieces = evaluated.pieces.map(
    (piece): PieceView => ({
      name: piece.name,
      span: piece.range,
      sheets: sheetsOf(piece, makers, onFailure),
      parts: piece.evaluation.parts.map((part) =>
        viewOfPart(part, piece, spanOfPart(piece, part, uri, statementAround)),
      ),
    }),
  );
  const findings = evaluated.findings
    .filter((finding) => finding.uri === uri)
    .map(
      (finding): PictureFinding => ({
        code: finding.code,
        severity: finding.severity,
        sentence: finding.sentence,
        span: { start: finding.start, end: finding.end },
        parts: partsConcerned(finding, uri, pieces),
      }),
    );
  const { readable } = evaluated;
  return { uri, version, readable, pieces, findings, verdict: verdictWords(readable, evaluated.findings) };
}
