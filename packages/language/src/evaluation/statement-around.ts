import { AstUtils, CstUtils, type LangiumDocument } from 'langium';
import { isStatement } from '../generated/ast.ts';

/**
 * The innermost statement around `offset`, its body included; undefined between statements. A part's origin is the few
 * words that name it; whoever points from text to part means all that is said about it.
 */
export function statementAround(
  document: LangiumDocument,
  offset: number,
): { readonly start: number; readonly end: number } | undefined {
  const root = document.parseResult.value.$cstNode;
  const leaf = root && CstUtils.findLeafNodeAtOffset(root, offset);
  const words = AstUtils.getContainerOfType(leaf?.astNode, isStatement)?.$cstNode;
  return words && { start: words.offset, end: words.end };
}
