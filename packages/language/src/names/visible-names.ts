import type { LangiumDocument, LangiumDocuments } from 'langium';
import { isReference, isWord, type Statement } from '../generated/ast.ts';
import type { NameKind, SlotKind } from '../schema/index.ts';
import { type Declaration, fileDeclarations, pieceDeclarations, pieceOf } from './declarations.ts';
import { usedDocuments } from './used-files.ts';

/** What each kind of name is called in a sentence. */
export const nameKindWords: Readonly<Record<NameKind, string>> = {
  piece: 'piece',
  stock: 'stock',
  slide: 'slide',
  hinge: 'hinge',
  cell: 'front or opening',
  flitch: 'flitch',
  thing: 'thing',
  value: 'value',
  label: 'label',
  pull: 'pull',
  pattern: 'pattern',
  parameter: 'value of that pattern',
  tool: 'tool',
  dowel: 'dowel',
  screw: 'screw',
  tenon: 'loose tenon',
};

/** The kind of name a slot refers to; a quoted name in the place of a number is a named value. */
export function nameKindOfSlot(slot: SlotKind): NameKind {
  switch (slot) {
    case 'length':
    case 'number':
    case 'count':
      return 'value';
    case 'path':
      return 'label';
    default:
      return slot;
  }
}

/** All names of one kind that may be used at a statement; the nearest declaration of a name counts. */
export function visibleNames(
  documents: LangiumDocuments,
  document: LangiumDocument,
  statement: Statement,
  kind: NameKind,
): ReadonlyMap<string, Declaration> {
  if (kind === 'parameter') return parametersOf(documents, document, statement);
  const piece = pieceOf(statement);
  const own = piece === undefined ? undefined : pieceDeclarations(piece).get(kind);
  // Fronts are known inside their own piece only.
  if (kind === 'cell') return own ?? new Map();
  const visible = new Map(own);
  for (const each of [document, ...usedDocuments(documents, document)]) {
    for (const [name, declaration] of fileDeclarations(each).get(kind) ?? []) {
      if (!visible.has(name)) visible.set(name, declaration);
    }
  }
  return visible;
}

/** One name, without gathering all of them. */
export function findName(
  documents: LangiumDocuments,
  document: LangiumDocument,
  statement: Statement,
  kind: NameKind,
  name: string,
): Declaration | undefined {
  if (kind === 'parameter') return parametersOf(documents, document, statement).get(name);
  const piece = pieceOf(statement);
  const own = piece === undefined ? undefined : pieceDeclarations(piece).get(kind)?.get(name);
  if (own !== undefined || kind === 'cell') return own;
  const here = fileDeclarations(document).get(kind)?.get(name);
  if (here !== undefined) return here;
  for (const used of usedDocuments(documents, document)) {
    const found = fileDeclarations(used).get(kind)?.get(name);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** The pattern a piece is made from. */
export function patternOf(
  documents: LangiumDocuments,
  document: LangiumDocument,
  piece: Statement,
): Statement | undefined {
  const at = piece.parts.findIndex((part) => isWord(part) && part.word.toLowerCase() === 'from');
  const named = at < 0 ? undefined : piece.parts[at + 1];
  if (!isReference(named)) return undefined;
  return findName(documents, document, piece, 'pattern', named.target.$refText)?.statement;
}

/** What the pattern of this piece takes. */
function parametersOf(
  documents: LangiumDocuments,
  document: LangiumDocument,
  piece: Statement,
): ReadonlyMap<string, Declaration> {
  const pattern = patternOf(documents, document, piece);
  const values = pattern && pieceDeclarations(pattern).get('value');
  return new Map([...(values ?? [])].filter(([, each]) => each.statement.$container === pattern));
}
