import { GrammarUtils, type LangiumDocument } from 'langium';
import type { Part, Statement, Text } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import { type ReadPhrase, readParts } from '../reading/phrases.ts';
import type { StatementSpec } from '../schema/index.ts';

/** What stands at an offset of a text, in terms of statements and phrases. Knows nothing of the engine. */

export interface SpotRange {
  readonly start: number;
  readonly end: number;
}

interface StatementSpot {
  readonly statement: Statement;
  readonly spec: StatementSpec;
  /** The words at the spot. */
  readonly range: SpotRange;
}

export type Spot =
  | (StatementSpot & { readonly kind: 'head' })
  | (StatementSpot & { readonly kind: 'name'; readonly name: string })
  /** A word, number, name or text after the head; `phrase` is absent where the vocabulary does not take it. */
  | (StatementSpot & { readonly kind: 'part'; readonly part: Part; readonly phrase: ReadPhrase | undefined });

/** Undefined between statements, on braces and in comments. At the seam of two words the one that begins there counts. */
export function spotAt(document: LangiumDocument, offset: number): Spot | undefined {
  const statement = statementAt(document, offset);
  if (statement === undefined) return undefined;
  const { spec } = specOf(statement);
  const spots: Spot[] = [];
  const head = propertyRange(statement, 'head');
  if (head !== undefined) spots.push({ kind: 'head', statement, spec, range: head });
  const nameRange = propertyRange(statement, 'name');
  if (nameRange !== undefined && statement.name !== undefined) {
    spots.push({ kind: 'name', statement, spec, range: nameRange, name: statement.name });
  }
  const { phrases } = readParts(statement, spec);
  for (const part of statement.parts) {
    const cst = part.$cstNode;
    if (cst === undefined) continue;
    const phrase = phrases.find((read) => read.parts.includes(part));
    spots.push({ kind: 'part', statement, spec, range: { start: cst.offset, end: cst.end }, part, phrase });
  }
  const touching = spots.filter(({ range }) => range.start <= offset && offset <= range.end);
  return touching.find(({ range }) => offset < range.end) ?? touching[0];
}

/** The innermost statement at an offset. */
export function statementAt(document: LangiumDocument, offset: number): Statement | undefined {
  return innermost((document.parseResult.value as Text).statements, offset);
}

/** The range of the property's words in the text; undefined when it is absent. */
export function propertyRange(statement: Statement, property: 'head' | 'name'): SpotRange | undefined {
  const node = GrammarUtils.findNodeForProperty(statement.$cstNode, property);
  return node === undefined || node.length === 0 ? undefined : { start: node.offset, end: node.end };
}

function innermost(statements: readonly Statement[], offset: number): Statement | undefined {
  // Of two statements that touch at the offset, the later one begins there.
  for (let at = statements.length - 1; at >= 0; at--) {
    const statement = statements[at];
    const cst = statement?.$cstNode;
    if (statement === undefined || cst === undefined || offset < cst.offset || offset > cst.end) continue;
    return innermost(statement.statements, offset) ?? statement;
  }
  return undefined;
}
