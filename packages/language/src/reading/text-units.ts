import type { Origin } from '@fettle/findings';
import { AstUtils, type LangiumDocuments, URI } from 'langium';
import type { Statement } from '../generated/ast.ts';
import { fileDeclarations, pieceOf, specOf } from '../names/declarations.ts';
import type { NameKind } from '../schema/index.ts';
import type { TextUnit } from './reader.ts';

/**
 * A unit of text is what origins count from: one piece, or one entry of a shop file. An entry is found again by its
 * file, kind and name, so that an evaluation stays valid while the text around both moves.
 */
export const pieceUnitId = 'piece';
export const fileUnitId = 'file';

const separator = '\u0000';

/** The unit of a shop entry or a pattern: its id survives whatever is written above it. */
export function entryUnit(statement: Statement): TextUnit {
  const document = AstUtils.getDocument(statement);
  // A value or a thing of the piece itself is part of the piece's own text, and so it is in a pattern.
  const whole = pieceOf(statement) ?? statement;
  const start = whole.$cstNode?.offset ?? 0;
  const { declares } = specOf(whole).spec;
  if (declares === 'piece') return { id: pieceUnitId, start, document };
  return {
    id: ['entry', document.uri.toString(), declares ?? 'label', whole.name ?? ''].join(separator),
    start,
    document,
  };
}

export interface Place {
  readonly uri: string;
  readonly start: number;
  readonly end: number;
}

/** Where an origin lies in a document as it stands now; undefined when its entry is gone. */
export function placeOf(
  origin: Origin,
  home: { readonly uri: string; readonly start: number },
  documents: LangiumDocuments,
): Place | undefined {
  if (origin.unit === pieceUnitId || origin.unit === fileUnitId) {
    const base = origin.unit === fileUnitId ? 0 : home.start;
    return { uri: home.uri, start: base + origin.start, end: base + origin.end };
  }
  const found = entryAt(origin.unit, documents);
  const start = found?.statement.$cstNode?.offset;
  return found === undefined || start === undefined
    ? undefined
    : { uri: found.uri, start: start + origin.start, end: start + origin.end };
}

/** The words of an entry as they stand now; empty when it is gone. */
export function entryText(unit: string, documents: LangiumDocuments): string {
  return entryAt(unit, documents)?.statement.$cstNode?.text ?? '';
}

function entryAt(
  unit: string,
  documents: LangiumDocuments,
): { readonly uri: string; readonly statement: Statement } | undefined {
  const [, uri, kind, name] = unit.split(separator);
  if (uri === undefined || kind === undefined || name === undefined) return undefined;
  const document = documents.getDocument(URI.parse(uri));
  const statement =
    document &&
    fileDeclarations(document)
      .get(kind as NameKind)
      ?.get(name)?.statement;
  return statement === undefined ? undefined : { uri, statement };
}
