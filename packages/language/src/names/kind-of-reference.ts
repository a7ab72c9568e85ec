import { AstUtils } from 'langium';
import { isStatement, type Reference, type Statement } from '../generated/ast.ts';
import { readParts } from '../reading/phrases.ts';
import type { NameKind } from '../schema/index.ts';
import { specOf } from './declarations.ts';
import { nameKindOfSlot } from './visible-names.ts';

/** The kind of name a reference stands for, by the slot it stands in. */
export function kindOfReference(reference: Reference): { statement: Statement; kind: NameKind } | undefined {
  const statement = AstUtils.getContainerOfType(reference, isStatement);
  if (statement === undefined) return undefined;
  for (const read of readParts(statement, specOf(statement).spec).phrases) {
    let slot = 0;
    for (const item of read.phrase.items) {
      if (item.kind === 'word') continue;
      if (read.slots[slot] === reference) return { statement, kind: nameKindOfSlot(item.slot) };
      slot++;
    }
  }
  // Inside a sum, or where no phrase takes it: a named value.
  return { statement, kind: 'value' };
}
