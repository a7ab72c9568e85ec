import { explain, type Part } from '@fettle/engine';
import type { EvaluatedDocument, EvaluatedPiece, PlacedFinding } from '@fettle/language';
import type { PartView, Picture, PictureFinding, PieceView, SheetView, TextSpan } from '@fettle/protocol';
import type { SheetMaker } from './sheets/sheet-maker.ts';
import { verdictWords } from './verdict.ts';

/** Turns what the engine found in a document into the picture that crosses to the page. Pure. */

/** Where a part's words are in this document; for a part written elsewhere, the piece that brings it in. */
function spanOfPart(piece: EvaluatedPiece, part: Part, uri: string): TextSpan {
  const place = piece.locate(part.origin);
  return place?.uri === uri ? { start: place.start, end: place.end } : piece.range;
}

function derivationOf(part: Part, piece: EvaluatedPiece): string {
  const sizes = [
    ['Length', part.length],
    ['Width', part.width],
    ['Thickness', part.thickness],
  ] as const;
  return sizes.map(([name, figure]) => `${name} ${explain(figure, piece.say)}`).join('\n');
}

function viewOfPart(part: Part, piece: EvaluatedPiece, uri: string): PartView {
  return {
    id: part.id,
    label: `${part.label}, mark ${part.mark}`,
    span: spanOfPart(piece, part, uri),
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
  document: { readonly uri: string; readonly version: number },
  evaluated: EvaluatedDocument,
  makers: readonly SheetMaker[],
  onFailure: (sheet: string, error: unknown) => void,
): Picture {
  const { uri, version } = document;
  const pieces = evaluated.pieces.map(
    (piece): PieceView => ({
      name: piece.name,
      span: piece.range,
      sheets: sheetsOf(piece, makers, onFailure),
      parts: piece.evaluation.parts.map((part) => viewOfPart(part, piece, uri)),
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
