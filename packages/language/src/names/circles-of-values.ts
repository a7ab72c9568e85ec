import { AstUtils, type LangiumDocument, type LangiumDocuments } from 'langium';
import { isReference, type Reference, type Statement } from '../generated/ast.ts';
import { expressionIn, readParts } from '../reading/phrases.ts';
import { specOf } from './declarations.ts';
import { findName } from './visible-names.ts';

/** Named values that lead back to themselves, by way of each other. */

/** More values than any chain of them; beyond this nothing is followed. */
const mostFollowed = 1000;

/** Whether the circle that this name leads into is told in this document, where one of its values stands. */
export function circleIsToldIn(documents: LangiumDocuments, document: LangiumDocument, reference: Reference): boolean {
  const start = declarationOf(documents, reference);
  const seen = new Set<Statement>();
  const waiting = start === undefined ? [] : [start];
  for (let at = waiting.pop(); at !== undefined && seen.size < mostFollowed; at = waiting.pop()) {
    if (seen.has(at)) continue;
    seen.add(at);
    if (AstUtils.getDocument(at) === document && circleThrough(documents, at) !== undefined) return true;
    waiting.push(...leadsTo(documents, at));
  }
  return false;
}

/** The values from `start` back to it, each leading to the next; undefined where none leads back. */
export function circleThrough(documents: LangiumDocuments, start: Statement): Statement[] | undefined {
  const cameFrom = new Map<Statement, Statement>();
  const waiting = [start];
  for (let at = waiting.shift(); at !== undefined && cameFrom.size < mostFollowed; at = waiting.shift()) {
    for (const next of leadsTo(documents, at)) {
      if (next === start) return pathTo(at, start, cameFrom);
      if (cameFrom.has(next)) continue;
      cameFrom.set(next, at);
      waiting.push(next);
    }
  }
  return undefined;
}

function pathTo(end: Statement, start: Statement, cameFrom: ReadonlyMap<Statement, Statement>): Statement[] {
  const path = [end];
  for (let at = end; at !== start; ) {
    at = cameFrom.get(at) ?? start;
    path.unshift(at);
  }
  return path;
}

function leadsTo(documents: LangiumDocuments, statement: Statement): Statement[] {
  const expression = expressionIn(readParts(statement, specOf(statement).spec).phrases[0]);
  if (expression === undefined) return [];
  const references = [expression, ...AstUtils.streamAllContents(expression)].filter(isReference);
  return references.flatMap((each) => declarationOf(documents, each) ?? []);
}

function declarationOf(documents: LangiumDocuments, reference: Reference): Statement | undefined {
  const statement = AstUtils.getContainerOfType(reference, (node): node is Statement => node.$type === 'Statement');
  return (
    statement &&
    findName(documents, AstUtils.getDocument(statement), statement, 'value', reference.target.$refText)?.statement
  );
}
