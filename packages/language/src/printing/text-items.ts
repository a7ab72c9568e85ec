import type { IToken } from 'chevrotain';
import type { Structured } from '../tokens/structure.ts';

/**
 * A text as the printer sees it: statements with their bodies, and comments where they stand. Every token and every
 * comment of the text lies in exactly one item. Knows nothing of the vocabulary: where statements begin was decided by
 * the structure pass.
 */

/** A token or a comment as written; a comment has no blanks at its end. */
export interface Piece {
  readonly text: string;
  /** Where it stands in the text as written. */
  readonly start: number;
  readonly end: number;
  readonly line: number;
  readonly endLine: number;
  readonly kind: 'word' | 'number' | 'name' | 'mark' | 'line-comment' | 'block-comment';
}

export interface StatementItem {
  readonly kind: 'statement';
  /** Word, name, values, commas, and comments among them. */
  readonly pieces: Piece[];
  body: BodyItem | undefined;
  /** What follows the body on its last line: commas and comments. */
  readonly after: Piece[];
}

export interface BodyItem {
  readonly open: Piece;
  /** A comment on the line of the opening brace. */
  readonly afterOpen: Piece[];
  readonly items: Item[];
  close: Piece;
}

/** What belongs to no statement: comments, and commas before the first statement. */
export interface LooseItem {
  readonly kind: 'loose';
  readonly pieces: Piece[];
}

export type Item = StatementItem | LooseItem;

/** Every token and comment of a text, in order. */
export function piecesOf({ words, hidden }: Pick<Structured, 'words' | 'hidden'>): Piece[] {
  return [...words, ...hidden].map(toPiece).sort((a, b) => a.start - b.start);
}

/** Undefined when braces do not balance. */
export function toItems({ words, hidden, tokens }: Structured): readonly Item[] | undefined {
  const beginnings = new Set<number>();
  for (const token of tokens) {
    if (token.tokenType.name === 'HEAD' || token.tokenType.name === 'BEGIN') beginnings.add(token.startOffset);
  }
  const pieces = piecesOf({ words, hidden });
  const root: Item[] = [];
  const bodies: BodyItem[] = [];
  let items = root;
  /** The statement that may still take pieces. */
  let open: StatementItem | undefined;
  let lastLine = -1;
  for (const [index, piece] of pieces.entries()) {
    const isComment = piece.kind === 'line-comment' || piece.kind === 'block-comment';
    const sameLine = piece.line === lastLine;
    const last = items.at(-1);
    if (piece.kind === 'mark' && piece.text === '{') {
      if (open === undefined || open.body !== undefined) return undefined;
      const body: BodyItem = { open: piece, afterOpen: [], items: [], close: piece };
      open.body = body;
      bodies.push(body);
      items = body.items;
      open = undefined;
    } else if (piece.kind === 'mark' && piece.text === '}') {
      const body = bodies.pop();
      if (body === undefined) return undefined;
      body.close = piece;
      items = bodies.at(-1)?.items ?? root;
      open = undefined;
    } else if (isComment) {
      const body = bodies.at(-1);
      if (open !== undefined && (sameLine || goesOn(pieces, index, beginnings))) open.pieces.push(piece);
      else if (sameLine && last === undefined && body !== undefined) body.afterOpen.push(piece);
      else if (sameLine && last?.kind === 'statement' && last.body !== undefined) last.after.push(piece);
      else items.push({ kind: 'loose', pieces: [piece] });
    } else if (beginnings.has(piece.start)) {
      open = { kind: 'statement', pieces: [piece], body: undefined, after: [] };
      items.push(open);
    } else if (open !== undefined) {
      open.pieces.push(piece);
    } else if (last?.kind === 'statement') {
      last.after.push(piece);
    } else {
      items.push({ kind: 'loose', pieces: [piece] });
    }
    lastLine = piece.endLine;
  }
  return bodies.length === 0 ? root : undefined;
}

/** Whether the statement goes on behind the comment at `index`. */
function goesOn(pieces: readonly Piece[], index: number, beginnings: ReadonlySet<number>): boolean {
  for (let at = index + 1; at < pieces.length; at++) {
    const next = pieces[at];
    if (next === undefined) return false;
    if (next.kind === 'line-comment' || next.kind === 'block-comment') continue;
    return !beginnings.has(next.start) && next.text !== '}';
  }
  return false;
}

function toPiece(token: IToken): Piece {
  const text = token.image.trimEnd();
  const line = token.startLine ?? 1;
  return {
    text,
    start: token.startOffset,
    end: token.startOffset + text.length,
    line,
    endLine: line + text.split('\n').length - 1,
    kind: kindOf(token.tokenType.name),
  };
}

function kindOf(tokenKind: string): Piece['kind'] {
  switch (tokenKind) {
    case 'LINE_COMMENT':
      return 'line-comment';
    case 'BLOCK_COMMENT':
      return 'block-comment';
    case 'NUMBER':
      return 'number';
    case 'NAME':
      return 'name';
    case 'WORD':
      return 'word';
    default:
      return 'mark';
  }
}
