import type { LangiumDocument } from 'langium';
import type { Formatter } from 'langium/lsp';
import type {
  DocumentOnTypeFormattingParams,
  DocumentRangeFormattingParams,
  Range,
  TextEdit,
} from 'vscode-languageserver';
import type { FettleServices } from '../fettle-module.ts';
import { printText } from '../printing/print-text.ts';
import { piecesOf, toItems } from '../printing/text-items.ts';
import type { WrittenLines } from '../printing/written-lines.ts';
import { FettleLexer } from '../tokens/fettle-lexer.ts';
import type { Structured } from '../tokens/structure.ts';
import { indentationOnType, indentingCharacters } from './indentation-on-type.ts';

/**
 * Formatting, as edits of white space only. A text that had to be mended to be read is left alone: what looks like
 * indentation may be the only trace of what its maker meant.
 */
export class FettleFormatter implements Formatter {
  readonly #lexer: FettleLexer;

  constructor(services: FettleServices) {
    const lexer = services.parser.Lexer;
    if (!(lexer instanceof FettleLexer)) throw new Error('the formatter needs the lexer that sorts words');
    this.#lexer = lexer;
  }

  formatDocument(document: LangiumDocument): TextEdit[] {
    return this.#edits(document);
  }

  formatDocumentRange(document: LangiumDocument, params: DocumentRangeFormattingParams): TextEdit[] {
    return this.#edits(document).filter((edit) => meets(edit.range, params.range));
  }

  formatDocumentOnType(document: LangiumDocument, params: DocumentOnTypeFormattingParams): TextEdit[] {
    return indentationOnType(this.#lexer, document, params);
  }

  get formatOnTypeOptions() {
    return indentingCharacters;
  }

  #edits(document: LangiumDocument): TextEdit[] {
    const { textDocument } = document;
    const text = textDocument.getText();
    const before = piecesOf(this.#lexer.structure(text));
    const printed = this.#settled(text);
    if (printed === undefined) return [];
    const edits: TextEdit[] = [];
    let [oldEnd, newEnd] = [0, 0];
    const replaceGap = (oldStart: number, newStart: number) => {
      const blanks = printed.text.slice(newEnd, newStart);
      if (text.slice(oldEnd, oldStart) === blanks) return;
      const [start, end] = [textDocument.positionAt(oldEnd), textDocument.positionAt(oldStart)];
      edits.push({ range: { start, end }, newText: blanks });
    };
    printed.places.forEach(({ piece, start }, index) => {
      const old = before[index];
      if (old === undefined) return;
      replaceGap(old.start, start);
      oldEnd = old.end;
      newEnd = start + piece.text.length;
    });
    replaceGap(text.length, printed.text.length);
    return edits;
  }

  /** Printed until printing changes nothing more; undefined where the text is better left alone. */
  #settled(text: string): WrittenLines | undefined {
    const lineEnd = text.includes('\r\n') ? '\r\n' : '\n';
    let sorted = this.#lexer.structure(text);
    const first = sorted;
    let last = text;
    for (let times = 0; times < mostTimes; times++) {
      const items = sorted.slips.length > 0 ? undefined : toItems(sorted);
      if (items === undefined) return undefined;
      const printed = printText(items, lineEnd);
      if (printed.text === last) return printed;
      sorted = this.#lexer.structure(printed.text);
      // The last guard: whatever the printer did, the words are the same and mean the same.
      if (!meansTheSame(first, sorted)) return undefined;
      last = printed.text;
    }
    return undefined;
  }
}

/** A body that no longer fits on its line can cost its neighbours their alignment, and that another line its own. */
const mostTimes = 5;

function meansTheSame(before: Structured, after: Structured): boolean {
  return after.slips.length === 0 && alike(before.tokens, after.tokens) && alike(before.hidden, after.hidden);
}

type Tokens = Structured['hidden'];

function alike(before: Tokens, after: Tokens): boolean {
  if (before.length !== after.length) return false;
  return before.every((token, index) => {
    const other = after[index];
    return token.tokenType === other?.tokenType && token.image.trimEnd() === other.image.trimEnd();
  });
}

function meets(a: Range, b: Range): boolean {
  const before = (first: Range, second: Range) =>
    first.end.line < second.start.line ||
    (first.end.line === second.start.line && first.end.character < second.start.character);
  return !before(a, b) && !before(b, a);
}
