import { type CstNode, DefaultValueConverter, type GrammarAST, type ValueType } from 'langium';

/** Takes the quotation marks off names; a name that was never closed keeps every letter it has. */
export class QuotedNameConverter extends DefaultValueConverter {
  protected override runConverter(rule: GrammarAST.AbstractRule, input: string, cstNode: CstNode): ValueType {
    if (rule.name === 'NAME' || rule.name === 'REF' || rule.name === 'TEXT') return nameInQuotes(input);
    return super.runConverter(rule, input, cstNode);
  }
}

export function nameInQuotes(quoted: string): string {
  return quoted
    .replace(/^["“”]/, '')
    .replace(/["“”]$/, '')
    .trim();
}
