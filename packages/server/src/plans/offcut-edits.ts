import { type BuyingPlan, exactSource, type Length, laidOut, type StockAfter, stockAfter } from '@fettle/engine';
import { type EvaluatedPiece, statementAround } from '@fettle/language';
import type { ChangedFile, KeepOffcutsAnswer } from '@fettle/protocol';
import type { LangiumDocument } from 'langium';

/**
 * What the shop files have to say once a piece is cut: offcuts that were used go, those worth keeping come. Each entry of
 * a stock is written anew as a whole; whatever else stands in it stays.
 */
export function offcutEdits(
  piece: EvaluatedPiece,
  plan: BuyingPlan,
  documentOf: (uri: string) => LangiumDocument | undefined,
): KeepOffcutsAnswer {
  const { unit } = piece.evaluation.design.units;
  const changes = stockAfter(laidOut(plan), unit);
  const files = new Map<string, ChangedFile & { readonly edits: ChangedFile['edits'][number][] }>();
  let [kept, used] = [0, 0];
  for (const change of changes) {
    const entry = piece.locate(change.stock.origin);
    const document = entry === undefined ? undefined : documentOf(entry.uri);
    const span = entry === undefined || document === undefined ? undefined : statementAround(document, entry.start);
    if (entry === undefined || document === undefined || span === undefined) continue;
    const text = document.textDocument.getText();
    const places = change.used.map(({ offcut, count }) => {
      const at = piece.locate(offcut.origin);
      return {
        count,
        all: offcut.count,
        span: at?.uri === entry.uri ? statementAround(document, at.start) : undefined,
      };
    });
    const file = files.get(entry.uri) ?? { uri: entry.uri, text, edits: [] };
    files.set(entry.uri, file);
    file.edits.push({ span, text: entryAfter(text, span, places, change, (length) => exactSource(length, unit)) });
    kept += change.kept.reduce((sum, { count }) => sum + count, 0);
    used += change.used.reduce((sum, { count }) => sum + count, 0);
  }
  if (files.size === 0) {
    return { kind: 'refused', sentence: 'Nothing that is left over is large enough to keep, and no offcut was used' };
  }
  return { kind: 'edits', files: [...files.values()], sentence: sentenceOf(kept, used) };
}

interface Span {
  readonly start: number;
  readonly end: number;
}

/** The words of one entry with its offcuts as they are then. */
function entryAfter(
  text: string,
  entry: Span,
  used: readonly { readonly count: number; readonly all: number; readonly span: Span | undefined }[],
  { kept }: StockAfter,
  say: (length: Length) => string,
): string {
  let words = text.slice(entry.start, entry.end);
  for (const { count, all, span } of [...used].sort((a, b) => (b.span?.start ?? 0) - (a.span?.start ?? 0))) {
    if (span === undefined) continue;
    const [start, end] = [span.start - entry.start, span.end - entry.start];
    const own = words.slice(start, end);
    const left = all - count;
    // With the last of them goes the space before it.
    words =
      left > 0
        ? words.slice(0, start) + withCount(own, left) + words.slice(end)
        : words.slice(0, start).trimEnd() + words.slice(end);
  }
  const lines = kept.map(({ length, width, thickness, count }) => {
    const thick = thickness === undefined ? '' : `, ${say(thickness)} thick`;
    return `  offcut ${say(length)} long, ${say(width)} wide${thick}${count === 1 ? '' : `, ${count} of them`}`;
  });
  if (words.endsWith('}')) {
    const body = words.slice(0, -1).trimEnd();
    if (lines.length === 0) return body.endsWith('{') ? body.slice(0, -1).trimEnd() : words;
    return [body, ...lines, '}'].join('\n');
  }
  return lines.length === 0 ? words : [`${words} {`, ...lines, '}'].join('\n');
}

/** The statement with so many of them instead of as many as it says. */
function withCount(words: string, count: number): string {
  const said = /,?\s*[^\s,]+\s+of\s+them/;
  return count === 1 ? words.replace(said, '') : words.replace(said, `, ${count} of them`);
}

function sentenceOf(kept: number, used: number): string {
  const offcuts = (count: number) => (count === 1 ? '1 offcut' : `${count} offcuts`);
  const gone = used === 0 ? '' : `, ${offcuts(used)} that the plan uses taken out`;
  return kept === 0 ? `${offcuts(used)} that the plan uses taken out` : `${offcuts(kept)} written to the shop${gone}`;
}
