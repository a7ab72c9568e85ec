import { blanksBetween } from './spacing.ts';
import type { BodyItem, Item, Piece, StatementItem } from './text-items.ts';
import { WrittenLines } from './written-lines.ts';

/**
 * The printer: one way to write any text of the language. Changes white space only, so names, lengths and quotation
 * marks stay as the maker wrote them.
 *
 * - Two spaces for each depth, one statement on a line, at most one blank line between them.
 * - A body whose braces stand on one line stays on one line, its statements three spaces apart, as long as it fits.
 * - A statement that does not fit is continued behind a comma, four spaces deeper.
 * - Neighbouring lines that declare names line up behind the longest name as soon as one of them is spaced out.
 */
export const longestLine = 120;
const betweenStatements = 3;

export function printText(items: readonly Item[], lineEnd: string): WrittenLines {
  const out = new WrittenLines(lineEnd);
  printItems(out, items, 0);
  out.end();
  return out;
}

function printItems(out: WrittenLines, items: readonly Item[], depth: number): void {
  const pads = alignment(items);
  items.forEach((item, index) => {
    const before = items[index - 1];
    if (before === undefined || !sharesLine(before, item)) {
      if (before !== undefined && firstLine(item) - lastLine(before) > 1) out.blankLine();
      out.line(depth);
    } else out.space();
    printItem(out, item, depth, pads.get(item) ?? 0);
  });
}

/** A comment in front of a statement stays in front of it. */
function sharesLine(before: Item, item: Item): boolean {
  if (before.kind !== 'loose' || before.pieces.at(-1)?.kind === 'line-comment') return false;
  return lastLine(before) === firstLine(item);
}

function printItem(out: WrittenLines, item: Item, depth: number, nameWidth: number): void {
  if (item.kind === 'loose') {
    printPieces(out, item.pieces, depth, 0);
    return;
  }
  const { pieces, body, after } = item;
  printPieces(out, pieces, depth, nameWidth);
  if (body !== undefined) {
    if (pieces.at(-1)?.kind === 'line-comment') out.line(depth);
    else out.space(pieces.length === 2 ? padBehind(pieces, 1, nameWidth) : 1);
    if (staysOnOneLine(item) && out.column + bodyWidth(body) <= longestLine) printOneLine(out, body);
    else printBlock(out, body, depth);
  }
  for (const piece of after) {
    if (piece.text !== ',') out.space(piece.kind === 'line-comment' ? 2 : 1);
    out.write(piece);
  }
}

function printBlock(out: WrittenLines, body: BodyItem, depth: number): void {
  out.write(body.open);
  for (const comment of body.afterOpen) {
    out.space();
    out.write(comment);
  }
  if (body.items.length > 0 || body.afterOpen.length > 0) {
    printItems(out, body.items, depth + 1);
    out.line(depth);
  } else out.space();
  out.write(body.close);
}

function printOneLine(out: WrittenLines, body: BodyItem): void {
  out.write(body.open);
  for (const comment of body.afterOpen) {
    out.space();
    out.write(comment);
  }
  body.items.forEach((item, index) => {
    const before = body.items[index - 1];
    out.space(before?.kind === 'statement' && item.kind === 'statement' ? betweenStatements : 1);
    printInline(out, item);
  });
  out.space();
  out.write(body.close);
}

function printInline(out: WrittenLines, item: Item): void {
  item.pieces.forEach((piece, index) => {
    const previous = item.pieces[index - 1];
    if (previous !== undefined) out.space(blanksBetween(item.pieces[index - 2], previous, piece));
    out.write(piece);
  });
  if (item.kind === 'loose') return;
  if (item.body !== undefined) {
    out.space();
    printOneLine(out, item.body);
  }
  for (const piece of item.after) {
    if (piece.text !== ',') out.space();
    out.write(piece);
  }
}

function printPieces(out: WrittenLines, pieces: readonly Piece[], depth: number, nameWidth: number): void {
  pieces.forEach((piece, index) => {
    const previous = pieces[index - 1];
    if (previous !== undefined) {
      const blanks = index === 2 ? padBehind(pieces, 1, nameWidth) : blanksBetween(pieces[index - 2], previous, piece);
      const full = previous.text === ',' && out.column + blanks + widthToComma(pieces, index) > longestLine;
      const ownLine = isComment(piece) && piece.line > previous.endLine;
      if (previous.kind === 'line-comment' || ownLine || full) out.line(depth + 2);
      else out.space(blanks);
    }
    out.write(piece);
  });
}

/** Blanks behind the piece at `index`, which is a name that others may line up with. */
function padBehind(pieces: readonly Piece[], index: number, nameWidth: number): number {
  const [piece, next] = [pieces[index], pieces[index + 1]];
  const plain = piece === undefined || next === undefined ? 1 : blanksBetween(pieces[index - 1], piece, next);
  return nameWidth === 0 || plain === 0 ? plain : Math.max(plain, nameWidth - headWidth(pieces) + 1);
}

function isComment(piece: Piece): boolean {
  return piece.kind === 'line-comment' || piece.kind === 'block-comment';
}

/** Columns from the piece at `index` to the next comma, which stays with it. */
function widthToComma(pieces: readonly Piece[], index: number): number {
  let width = 0;
  for (let at = index; at < pieces.length; at++) {
    const piece = pieces[at] as Piece;
    const previous = pieces[at - 1];
    if (at > index && previous !== undefined) width += blanksBetween(pieces[at - 2], previous, piece);
    width += piece.text.length;
    if (piece.text === ',' || piece.kind === 'line-comment') break;
  }
  return width;
}

function staysOnOneLine({ pieces, body }: StatementItem): boolean {
  if (body === undefined || body.open.line !== body.close.endLine) return false;
  return pieces.every((piece) => piece.endLine === piece.line && piece.kind !== 'line-comment');
}

function bodyWidth(body: BodyItem): number {
  const trial = new WrittenLines('\n');
  printOneLine(trial, body);
  return trial.text.length;
}

/** How wide word and name of each item are to be, for those that line up. */
function alignment(items: readonly Item[]): ReadonlyMap<Item, number> {
  const widths = new Map<Item, number>();
  let run: StatementItem[] = [];
  const endRun = () => {
    if (run.some(isSpacedOut)) {
      const widest = Math.max(...run.map((item) => headWidth(item.pieces)));
      for (const item of run) widths.set(item, widest);
    }
    run = [];
  };
  for (const item of items) {
    const last = run.at(-1);
    const declares = item.kind === 'statement' && item.pieces[0]?.kind === 'word' && item.pieces[1]?.kind === 'name';
    if (last !== undefined && firstLine(item) - lastLine(last) > 1) endRun();
    if (declares && firstLine(item) === lastLine(item)) run.push(item);
    else endRun();
  }
  endRun();
  return widths;
}

function isSpacedOut({ pieces, body }: StatementItem): boolean {
  const name = pieces[1];
  const next = pieces[2] ?? body?.open;
  return name !== undefined && next !== undefined && !isComment(next) && next.start - name.end > 1;
}

function headWidth(pieces: readonly Piece[]): number {
  const [word, name] = pieces;
  return (word?.text.length ?? 0) + 1 + (name?.text.length ?? 0);
}

function firstLine(item: Item): number {
  return item.pieces[0]?.line ?? 0;
}

function lastLine(item: Item): number {
  const after = item.kind === 'statement' ? item.after.at(-1) : undefined;
  const close = item.kind === 'statement' ? item.body?.close : undefined;
  return (after ?? close ?? item.pieces.at(-1))?.endLine ?? 0;
}
