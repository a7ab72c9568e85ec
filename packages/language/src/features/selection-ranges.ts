import type { LangiumDocument } from 'langium';
import type { Position, SelectionRange } from 'vscode-languageserver';
import { isStatement, type Statement, type Text } from '../generated/ast.ts';
import type { SpotRange } from './spot.ts';
import { spotAt } from './spot.ts';

/**
 * What a selection grows to, step by step: a word, its phrase, what the statement says, the statement with its body, all
 * that stands between the same braces, and so on outwards to the whole text.
 */
export function selectionRanges(document: LangiumDocument, positions: readonly Position[]): SelectionRange[] {
  return positions.map((position) => {
    const steps = growing(document, document.textDocument.offsetAt(position));
    const { textDocument } = document;
    // From the widest inwards: each is told the one around it.
    return steps.reduceRight<SelectionRange | undefined>((parent, { start, end }) => {
      const range = { start: textDocument.positionAt(start), end: textDocument.positionAt(end) };
      return parent === undefined ? { range } : { range, parent };
    }, undefined) as SelectionRange;
  });
}

/** Each within the next, none twice; the last is the whole text. */
function growing(document: LangiumDocument, offset: number): SpotRange[] {
  const text = document.textDocument.getText();
  const wanted: SpotRange[] = [];
  const spot = spotAt(document, offset);
  if (spot !== undefined) {
    wanted.push(spot.range);
    if (spot.kind === 'part' && spot.phrase !== undefined) {
      const [first, last] = [spot.phrase.parts[0]?.$cstNode, spot.phrase.parts.at(-1)?.$cstNode];
      if (first !== undefined && last !== undefined) wanted.push({ start: first.offset, end: last.end });
    }
  }
  let at: Statement | Text | undefined = spot?.statement ?? around(document, offset);
  while (at !== undefined && isStatement(at)) {
    const cst = at.$cstNode;
    if (cst !== undefined) {
      const head = headEnd(at);
      if (offset <= head) wanted.push({ start: cst.offset, end: head });
      else if (at.open !== undefined) wanted.push(...insideBraces(text, head, cst.end));
      wanted.push({ start: cst.offset, end: cst.end });
    }
    at = at.$container;
  }
  wanted.push({ start: 0, end: text.length });
  const steps: SpotRange[] = [{ start: offset, end: offset }];
  for (const range of wanted) {
    const last = steps.at(-1) as SpotRange;
    const grows = range.start <= last.start && last.end <= range.end && range.end - range.start > last.end - last.start;
    if (grows) steps.push(range);
  }
  return steps.length > 1 ? steps.slice(1) : steps;
}

/** Where what the statement says itself ends, before its body. */
function headEnd(statement: Statement): number {
  const cst = statement.$cstNode;
  const start = cst?.offset ?? 0;
  const said = statement.parts.at(-1)?.$cstNode?.end;
  if (said !== undefined) return said;
  const head = /^[^\s{]*(?:\s+["“][^"”\n{]*["”]?)?/.exec(cst?.text ?? '')?.[0].length ?? 0;
  return start + head;
}

/** What stands between the braces, without the blanks at its ends, then with them. */
function insideBraces(text: string, from: number, end: number): SpotRange[] {
  const open = text.indexOf('{', from);
  const close = text[end - 1] === '}' ? end - 1 : end;
  if (open < 0 || open >= close) return [];
  const inside = text.slice(open + 1, close);
  const trimmed = {
    start: open + 1 + inside.length - inside.trimStart().length,
    end: open + 1 + inside.trimEnd().length,
  };
  const whole = { start: open + 1, end: close };
  return trimmed.start < trimmed.end ? [trimmed, whole] : [whole];
}

/** The innermost statement around an offset that lies on no word of any. */
function around(document: LangiumDocument, offset: number): Statement | undefined {
  let found: Statement | undefined;
  let inside: readonly Statement[] = (document.parseResult.value as Text).statements;
  for (;;) {
    const next = inside.find(({ $cstNode: cst }) => cst !== undefined && cst.offset <= offset && offset <= cst.end);
    if (next === undefined) return found;
    found = next;
    inside = next.statements;
  }
}
