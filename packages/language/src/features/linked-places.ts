import { type LangiumDocument, type LangiumDocuments, URI, UriUtils } from 'langium';
import type { EvaluatedPiece } from '../evaluation/evaluate-document.ts';
import type { PlaceOf } from './derivations.ts';

/** Where the terms of a piece's sizes are written, as seen from the text that is read. */
export function linkedPlaces(documents: LangiumDocuments, home: LangiumDocument, piece: EvaluatedPiece): PlaceOf {
  return (origin) => {
    const place = piece.locate(origin);
    if (place === undefined) return undefined;
    const uri = URI.parse(place.uri);
    const document = UriUtils.equals(uri, home.uri) ? home : documents.getDocument(uri);
    if (document === undefined) return undefined;
    const line = document.textDocument.positionAt(place.start).line + 1;
    return { uri: place.uri, line, ...(document === home ? {} : { file: UriUtils.basename(uri) }) };
  };
}
