import { isTogether } from '@fettle/engine';
import {
  type EvaluatedDocument,
  type EvaluatedPiece,
  type PlacedFinding,
  verdictWords,
  whereverTheyHold,
} from '@fettle/language';
import { type Picture, type PictureFinding, type PieceView, standsInFor } from '@fettle/protocol';
import type { DrawnPieces, WrittenText } from './drawn-pieces.ts';
import { piecesToShow } from './pieces-to-show.ts';

/** Turns what the engine found in a document into the picture that crosses to the page. */

/** Which sheets of which piece, by its key, somebody looks at; for an unknown key the first sheet. */
export type ShownSheets = readonly { readonly piece: string; readonly sheet: string }[];

/** One key a piece, its name; a name that is used again carries its turn. */
export function pieceKeys(names: readonly string[]): readonly string[] {
  const turns = new Map<string, number>();
  const used = new Set<string>();
  return names.map((name) => {
    let turn = turns.get(name) ?? 0;
    let key: string;
    do {
      turn += 1;
      key = turn === 1 ? name : `${name} (${turn})`;
    } while (used.has(key));
    turns.set(name, turn);
    used.add(key);
    return key;
  });
}

/**
 * The sheets to draw of one piece. The first piece stands in for one that is not there, its first sheet likewise; for a
 * choice that is gone the first there is of the same sheet.
 */
function shownOf(key: string, at: number, keys: readonly string[], shown: ShownSheets, sheets: readonly string[]) {
  const wanted = shown.filter(({ piece }) => piece === key || (at === 0 && !keys.includes(piece)));
  return new Set(wanted.flatMap(({ sheet }) => standsInFor(sheet, sheets) ?? []));
}

/** The parts made by the words a finding stands on: all whose own words lie closest around them. */
function concerned(finding: PlacedFinding, pieces: readonly PieceView[]): Pick<PictureFinding, 'piece' | 'parts'> {
  const place = pieces.findIndex(({ span }) => span.start <= finding.start && finding.end <= span.end);
  const piece = pieces[place];
  if (piece === undefined) return { parts: [] };
  const start = finding.start - piece.span.start;
  const end = finding.end - piece.span.start;
  const around = piece.parts.filter(({ span }) => span.start <= start && end <= span.end);
  const closest = Math.min(...around.map(({ span }) => span.end - span.start));
  return {
    piece: place,
    parts: around.filter(({ span }) => span.end - span.start === closest).map(({ id }) => id),
  };
}

/** The pieces of which somebody looks at cutting plans. */
export function piecesToPlan(
  evaluated: EvaluatedDocument,
  drawn: DrawnPieces,
  shown: ShownSheets,
): readonly EvaluatedPiece[] {
  const pieces = piecesToShow(evaluated);
  const keys = pieceKeys(pieces.map(({ name }) => name));
  return pieces.filter((piece, at) =>
    drawn.showsPlans(shownOf(keys[at] ?? piece.name, at, keys, shown, drawn.tabsOf(piece))),
  );
}

export function pictureOfDocument(
  document: WrittenText & { readonly version: number },
  evaluated: EvaluatedDocument,
  drawn: DrawnPieces,
  shown: ShownSheets,
): Picture {
  const { uri, version } = document;
  const toShow = piecesToShow(evaluated);
  const keys = pieceKeys(toShow.map(({ name }) => name));
  const pieces = toShow.map((piece, at): PieceView => {
    const key = keys[at] ?? piece.name;
    const tabs = drawn.tabsOf(piece);
    const content = drawn.contentOf(piece, shownOf(key, at, keys, shown, tabs), document);
    const span = { start: piece.range.start, end: piece.range.end };
    const together = isTogether(piece.evaluation) ? { together: true as const } : {};
    return { key, name: piece.name, span, ...together, ...content };
  });
  const findings = whereverTheyHold(evaluated.findings)
    .filter((finding) => finding.uri === uri)
    .map(
      (finding): PictureFinding => ({
        code: finding.code,
        severity: finding.severity,
        sentence: finding.sentence,
        span: { start: finding.start, end: finding.end },
        ...concerned(finding, pieces.slice(0, evaluated.pieces.length)),
      }),
    );
  const { readable } = evaluated;
  return { uri, version, readable, pieces, findings, verdict: verdictWords(readable, evaluated.findings) };
}
