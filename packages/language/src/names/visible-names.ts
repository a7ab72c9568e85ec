import type { LangiumDocument, LangiumDocuments } from 'langium';
import type { Statement } from '../generated/ast.ts';
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
