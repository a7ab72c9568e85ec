import type { LangiumDocument } from 'langium';
import type { TextEdit } from 'vscode-languageserver';
import type { PlacedFinding, TextChange } from '../evaluation/placed-findings.ts';

/**
 * The edits of all safe fixes of one text, one list for each fix, none touching another. Of two that would, the earlier
 * in the text is taken: the other one is found again, and offered, afterwards.
 */
export function safeEdits(
  document: LangiumDocument,
  findings: readonly PlacedFinding[],
): readonly (readonly TextEdit[])[] {
  const uri = document.uri.toString();
  const { textDocument } = document;
  const taken: TextChange[] = [];
  const fixes: TextEdit[][] = [];
  const own = findings.filter((each) => each.uri === uri).sort((a, b) => a.start - b.start);
  for (const { fixes: offered } of own) {
    const [fix] = offered;
    // The best way out only: where a safe one comes second, somebody has to choose.
    if (fix === undefined || !fix.safe || fix.edits.some((each) => each.uri !== uri)) continue;
    if (fix.edits.some((each) => taken.some((other) => touch(each, other)))) continue;
    taken.push(...fix.edits);
    fixes.push(
      fix.edits.map(({ start, end, text }) => ({
        range: { start: textDocument.positionAt(start), end: textDocument.positionAt(end) },
        newText: text,
      })),
    );
  }
  return fixes;
}

function touch(one: TextChange, other: TextChange): boolean {
  return one.start <= other.end && other.start <= one.end;
}
