import {
  type AstNodeDescription,
  AstUtils,
  DefaultScopeComputation,
  DefaultScopeProvider,
  EMPTY_SCOPE,
  type LangiumCoreServices,
  type LangiumDocument,
  type LangiumDocuments,
  MapScope,
  MultiMap,
  type ReferenceInfo,
  type Scope,
} from 'langium';
import { isReference, isStatement, type Reference, type Statement } from '../generated/ast.ts';
import { readParts } from '../reading/phrases.ts';
import type { NameKind } from '../schema/index.ts';
import { specOf } from './declarations.ts';
import { findName, nameKindOfSlot } from './visible-names.ts';

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

/** Names are looked up by kind in a table, not by walking scopes. */
export class FettleScopeProvider extends DefaultScopeProvider {
  readonly #documents: LangiumDocuments;

  constructor(services: LangiumCoreServices) {
    super(services);
    this.#documents = services.shared.workspace.LangiumDocuments;
  }

  override getScope(context: ReferenceInfo): Scope {
    if (!isReference(context.container)) return EMPTY_SCOPE;
    const place = kindOfReference(context.container);
    if (place === undefined) return EMPTY_SCOPE;
    const document = AstUtils.getDocument(context.container);
    const wanted = context.reference.$refText;
    const found = findName(this.#documents, document, place.statement, place.kind, wanted);
    return found === undefined ? EMPTY_SCOPE : new MapScope([this.#describe(found.statement, wanted)]);
  }

  #describe(statement: Statement, name: string): AstNodeDescription {
    return this.descriptions.createDescription(statement, name);
  }
}

/** The scope provider asks the name tables, so there is nothing to compute beforehand but what other files may link to. */
export class FettleScopeComputation extends DefaultScopeComputation {
  override async collectLocalSymbols(_document: LangiumDocument): Promise<MultiMap<never, AstNodeDescription>> {
    return new MultiMap();
  }
}
