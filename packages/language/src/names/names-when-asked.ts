import {
  type AstNode,
  AstUtils,
  DefaultIndexManager,
  DefaultLinker,
  type LangiumDocument,
  type LangiumDocuments,
  type LangiumSharedCoreServices,
  type ReferenceDescription,
  type Stream,
  stream,
  type URI,
} from 'langium';
import { isReference } from '../generated/ast.ts';
import { isAffectedByFiles } from './used-files.ts';

/**
 * Names are looked up when somebody asks what one stands for. Findings ask the name tables and never need a link, so
 * linking all names of a text at every key, and listing the links, was time that nobody got anything for.
 */
export class LinkerWhenAsked extends DefaultLinker {
  override async link(_document: LangiumDocument): Promise<void> {
    // Whoever reads what a name stands for links it.
  }
}

/** Lists the names of a text that stand for something when the first one is looked for since it changed. */
export class IndexWhenAsked extends DefaultIndexManager {
  readonly #services: LangiumSharedCoreServices;
  readonly #known: LangiumDocuments;
  readonly #waiting = new Map<string, LangiumDocument>();

  constructor(services: LangiumSharedCoreServices) {
    super(services);
    this.#services = services;
    this.#known = services.workspace.LangiumDocuments;
  }

  override async updateReferences(document: LangiumDocument): Promise<void> {
    const uri = document.uri.toString();
    this.referenceIndex.delete(uri);
    this.#waiting.set(uri, document);
  }

  override removeReferences(uri: URI): void {
    this.#waiting.delete(uri.toString());
    super.removeReferences(uri);
  }

  override findAllReferences(target: AstNode, path: string): Stream<ReferenceDescription> {
    for (const [uri, document] of this.#waiting) this.referenceIndex.set(uri, this.#references(document));
    this.#waiting.clear();
    return stream([...super.findAllReferences(target, path)]);
  }

  /** By the files it uses, whether or not it says a name of theirs: one that it lacked may have come. */
  override isAffected(document: LangiumDocument, changed: Set<string>): boolean {
    return isAffectedByFiles(this.#known, document, changed);
  }

  #references(document: LangiumDocument): ReferenceDescription[] {
    const { AstNodeLocator } = this.#services.ServiceRegistry.getServices(document.uri).workspace;
    const found: ReferenceDescription[] = [];
    for (const node of AstUtils.streamAllContents(document.parseResult.value).filter(isReference)) {
      const { ref, $nodeDescription: target, $refNode: words } = node.target;
      if (ref === undefined || target === undefined || words === undefined) continue;
      const { offset, end, length, range } = words;
      found.push({
        sourceUri: document.uri,
        sourcePath: AstNodeLocator.getAstNodePath(node),
        targetUri: target.documentUri,
        targetPath: target.path,
        segment: { offset, end, length, range },
        local: target.documentUri.toString() === document.uri.toString(),
      });
    }
    return found;
  }
}
