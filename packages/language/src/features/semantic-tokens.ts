import { type AstNode, AstUtils, type CstNode, GrammarUtils } from 'langium';
import { AbstractSemanticTokenProvider, AllSemanticTokenModifiers, type SemanticTokenAcceptor } from 'langium/lsp';
import { SemanticTokenModifiers, SemanticTokenTypes } from 'vscode-languageserver';
import {
  isPlainText,
  isQuantity,
  isReference,
  isStatement,
  isWord,
  type Part,
  type Statement,
} from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import { readParts } from '../reading/phrases.ts';

/** On words that are understood and of which nothing is computed yet. */
export const notCheckedModifier = 'notChecked';

/**
 * What each word is, by the vocabulary and not by its letters: `rest` is a word of a phrase in one place and means
 * nothing in another. Words that mean nothing get no kind, so that they look as they are: unread.
 */
export class FettleSemanticTokenProvider extends AbstractSemanticTokenProvider {
  override get tokenModifiers(): Record<string, number> {
    return modifiers;
  }

  protected override highlightElement(node: AstNode, acceptor: SemanticTokenAcceptor): void {
    if (!isStatement(node)) return;
    const { spec } = specOf(node);
    const own = (cst: CstNode | undefined, type: string, ...modifier: string[]) => {
      if (cst !== undefined && cst.length > 0) acceptor({ cst, type, modifier });
    };
    const later = (checked: boolean) => (checked ? [] : [notCheckedModifier]);
    if (spec.word !== '') own(property(node, 'head'), SemanticTokenTypes.keyword, ...later(spec.checked));
    if (node.name !== undefined) {
      const isWhole = spec.declares === 'piece' || spec.declares === 'pattern';
      own(
        property(node, 'name'),
        isWhole ? SemanticTokenTypes.class : SemanticTokenTypes.variable,
        SemanticTokenModifiers.declaration,
      );
    }
    const { phrases } = readParts(node, spec);
    for (const { phrase, parts } of phrases) {
      for (const part of parts)
        this.#part(part, (cst, type) => own(cst, type, ...later(phrase.checked && spec.checked)));
    }
  }

  #part(part: Part, take: (cst: CstNode | undefined, type: string) => void): void {
    if (isWord(part)) take(part.$cstNode, SemanticTokenTypes.property);
    else if (isPlainText(part)) take(part.$cstNode, SemanticTokenTypes.string);
    else {
      for (const node of [part, ...AstUtils.streamAllContents(part)]) {
        if (isQuantity(node)) take(node.$cstNode, SemanticTokenTypes.number);
        else if (isReference(node)) take(node.$cstNode, SemanticTokenTypes.variable);
      }
    }
  }
}

const modifiers: Record<string, number> = {
  ...AllSemanticTokenModifiers,
  [notCheckedModifier]: 2 ** Object.keys(AllSemanticTokenModifiers).length,
};

function property(statement: Statement, name: 'head' | 'name'): CstNode | undefined {
  return GrammarUtils.findNodeForProperty(statement.$cstNode, name);
}
