import { AstUtils, type LangiumDocument } from 'langium';
import type { Statement, Text } from '../generated/ast.ts';
import { isStatement } from '../generated/ast.ts';
import { bareStatement, bodyOf, fileNoun, findStatement, type NameKind, type StatementSpec } from '../schema/index.ts';

/**
 * What each statement is in the vocabulary, and which names a text declares. Computed once for each tree and kept as
 * long as the tree lives.
 */
export interface SpecifiedStatement {
  readonly spec: StatementSpec;
  /** False when its word was misspelt and taken for the nearest one. */
  readonly exact: boolean;
}

const specs = new WeakMap<Statement, SpecifiedStatement>();

/** The vocabulary entry of a statement, by its word and by the statements around it. */
export function specOf(statement: Statement): SpecifiedStatement {
  const known = specs.get(statement);
  if (known !== undefined) return known;
  const container = statement.$container;
  const noun = isStatement(container) ? bodyOf(specOf(container).spec) : fileNoun;
  const found: SpecifiedStatement =
    statement.head === undefined
      ? { spec: bareStatement(noun), exact: true }
      : findStatement(noun, statement.head, {
          hasName: statement.name !== undefined,
          hasBody: statement.open !== undefined,
        });
  specs.set(statement, found);
  return found;
}

export interface Declaration {
  readonly kind: NameKind;
  readonly name: string;
  readonly statement: Statement;
}

export type NameTable = ReadonlyMap<NameKind, ReadonlyMap<string, Declaration>>;

const fileTables = new WeakMap<Text, NameTable>();

/** Names declared at the top level of a text: stock, hardware, values, pieces. */
export function fileDeclarations(document: LangiumDocument): NameTable {
  const root = document.parseResult.value as Text;
  let table = fileTables.get(root);
  if (table === undefined) {
    table = tabulate(root.statements);
    fileTables.set(root, table);
  }
  return table;
}

const pieceTables = new WeakMap<Statement, NameTable>();

/** Names declared anywhere inside one piece or pattern: its fronts and openings, its own values and things. */
export function pieceDeclarations(piece: Statement): NameTable {
  let table = pieceTables.get(piece);
  if (table === undefined) {
    table = tabulate(AstUtils.streamAllContents(piece).filter(isStatement));
    pieceTables.set(piece, table);
  }
  return table;
}

/** The first declaration of a name counts. */
function tabulate(statements: Iterable<Statement>): NameTable {
  const table = new Map<NameKind, Map<string, Declaration>>();
  for (const statement of statements) {
    const kind = specOf(statement).spec.declares;
    if (kind === undefined || statement.name === undefined) continue;
    let names = table.get(kind);
    if (names === undefined) {
      names = new Map();
      table.set(kind, names);
    }
    if (!names.has(statement.name)) names.set(statement.name, { kind, name: statement.name, statement });
  }
  return table;
}

/** The piece or pattern a statement stands in, if any. */
export function pieceOf(statement: Statement): Statement | undefined {
  let at: Statement | Text = statement;
  while (isStatement(at)) {
    const { declares } = specOf(at).spec;
    if (declares === 'piece' || declares === 'pattern') return at;
    at = at.$container;
  }
  return undefined;
}
