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
import { isReference, type Statement } from '../generated/ast.ts';
import { kindOfReference } from './kind-of-reference.ts';
import { isOlderCopy } from './used-files.ts';
import { findName } from './visible-names.ts';

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
  /** An older copy of a text declares nothing for others, or every name would be found twice while two are compared. */
  override async collectExportedSymbols(document: LangiumDocument): Promise<AstNodeDescription[]> {
    return isOlderCopy(document.uri) ? [] : super.collectExportedSymbols(document);
  }

  override async collectLocalSymbols(_document: LangiumDocument): Promise<MultiMap<never, AstNodeDescription>> {
    return new MultiMap();
  }
}
