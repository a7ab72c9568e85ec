import { evaluateDocument, type PlacedFinding, type PlacedFix } from '@fettle/language';
import { fileName, openFixture, textAfter } from '../../language/harness/workbench.ts';

/** Texts of one piece and the little of a shop they need, read and evaluated as in the editor. */

export interface Read {
  readonly findings: readonly PlacedFinding[];
  /** The text after one of the fixes. */
  taking(fix: PlacedFix): string;
}

export async function read(text: string): Promise<Read> {
  const workbench = await openFixture({ files: [{ name: 'piece.fettle', text }] });
  const document = workbench.document('piece.fettle');
  return {
    findings: evaluateDocument(workbench.services, document).findings,
    taking: (fix) => {
      const stray = fix.edits.find((edit) => fileName(edit.uri) !== 'piece.fettle');
      if (stray !== undefined) throw new Error(`the fix touches ${stray.uri}`);
      return textAfter(
        document,
        fix.edits.map(({ start, end, text: newText }) => ({
          range: { start: document.textDocument.positionAt(start), end: document.textDocument.positionAt(end) },
          newText,
        })),
      );
    },
  };
}

/** Everything found but the caution about tipping and what is understood and not checked yet. */
export async function codesIn(text: string): Promise<string[]> {
  const { findings } = await read(text);
  return findings.map(({ code }) => code).filter((code) => code !== 'anchor-to-wall' && code !== 'not-checked-yet');
}
