import type { SequenceDesign, SequenceMember } from '@fettle/engine';
import { isReference, type Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import * as vocabulary from '../schema/piece.ts';
import { readParts } from './phrases.ts';
import { bodyStatements, originOf, type ReadContext, Reader } from './reader.ts';

/** Fronts that follow one another, as the maker names them. Names that mean nothing are told where names are. */
export function readSequences(context: ReadContext, holder: Statement): readonly SequenceDesign[] {
  return bodyStatements(holder, 'sequence').map((statement): SequenceDesign => {
    const reader = new Reader(statement, vocabulary.sequence, context);
    const grain = reader.has('grain upright') ? 'upright' : reader.has('grain across') ? 'across' : undefined;
    return {
      ...(statement.name === undefined ? {} : { name: statement.name }),
      origin: reader.origin,
      members: bodyStatements(statement, '').flatMap((each) => readMembers(context, each)),
      ...(grain === undefined ? {} : { grain }),
      isVeneered: reader.has('from flitch <flitch>'),
    };
  });
}

function readMembers(context: ReadContext, statement: Statement): readonly SequenceMember[] {
  return readParts(statement, specOf(statement).spec).phrases.flatMap(({ parts, slots }): readonly SequenceMember[] => {
    const [from, to] = slots.filter(isReference).map((slot) => slot.target.$refText);
    const [first, last] = [parts[0], parts.at(-1)];
    if (from === undefined || first === undefined || last === undefined) return [];
    return [{ from, ...(to === undefined ? {} : { to }), origin: originOf(context, first, last) }];
  });
}
