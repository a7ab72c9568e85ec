import { type CompositeCstNode, type CstNode, isCompositeCstNode } from 'langium';

/**
 * Moves the words of a tree to where they stand in another text. The library has no way to say this, so its own fields
 * are written; `tests/language/splicing` holds every moved tree against one that was read afresh.
 */
export interface Move {
  readonly offset: number;
  readonly lines: number;
  /** Added to what stands on line `onLine`, counted before the move; elsewhere columns stay. */
  readonly columns: number;
  readonly onLine: number;
}

interface MovableLeaf {
  _offset: number;
  _startLine: number;
  _startColumn: number;
  _endLine: number;
  _endColumn: number;
}

interface RememberingComposite {
  _rangeCache: unknown;
  readonly content: readonly CstNode[];
}

/**
 * At every key all words behind it are moved, so this asks only for what either kind of node has as a field of its own:
 * the library's own question and its own iteration look further and take three times as long.
 */
export function moveTree(node: CstNode, move: Move): void {
  const leaf = node as unknown as MovableLeaf;
  if (leaf._offset === undefined) {
    const composite = node as unknown as RememberingComposite;
    composite._rangeCache = undefined;
    const { content } = composite;
    for (let at = 0; at < content.length; at++) moveTree(content[at] as CstNode, move);
    return;
  }
  if (leaf._startLine === move.onLine) leaf._startColumn += move.columns;
  if (leaf._endLine === move.onLine) leaf._endColumn += move.columns;
  leaf._offset += move.offset;
  leaf._startLine += move.lines;
  leaf._endLine += move.lines;
}

export function countLeaves(node: CompositeCstNode): number {
  return node.content.reduce((sum, each) => sum + (isCompositeCstNode(each) ? countLeaves(each) : 1), 0);
}
