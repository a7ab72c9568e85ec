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
}

export function moveTree(node: CstNode, move: Move): void {
  if (isCompositeCstNode(node)) {
    (node as unknown as RememberingComposite)._rangeCache = undefined;
    for (const each of node.content) moveTree(each, move);
    return;
  }
  const leaf = node as unknown as MovableLeaf;
  if (leaf._startLine === move.onLine) leaf._startColumn += move.columns;
  if (leaf._endLine === move.onLine) leaf._endColumn += move.columns;
  leaf._offset += move.offset;
  leaf._startLine += move.lines;
  leaf._endLine += move.lines;
}

export function countLeaves(node: CompositeCstNode): number {
  return node.content.reduce((sum, each) => sum + (isCompositeCstNode(each) ? countLeaves(each) : 1), 0);
}
