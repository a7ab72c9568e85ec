import {
  type AstNode,
  DefaultLangiumDocumentFactory,
  type LangiumDocument,
  type LangiumSharedCoreServices,
  type Mutable,
  type ParseResult,
  type URI,
} from 'langium';
import type { CancellationToken } from 'vscode-jsonrpc';
import { isText, type Text } from '../generated/ast.ts';
import { spliceParse } from './spliced-parse.ts';

/** Documents whose text changes are parsed anew only in the piece that changed, as far as that gives the same tree. */
export class SplicingDocumentFactory extends DefaultLangiumDocumentFactory {
  readonly #services: LangiumSharedCoreServices['ServiceRegistry'];
  /** Of the documents that are being brought up to date, by their uri. */
  readonly #before = new Map<string, ParseResult<Text>>();
  /** Texts that were taken over in part, for tests of what an edit costs. */
  splices = 0;

  constructor(services: LangiumSharedCoreServices) {
    super(services);
    this.#services = services.ServiceRegistry;
  }

  override async update<T extends AstNode = AstNode>(
    document: Mutable<LangiumDocument<T>>,
    token: CancellationToken,
  ): Promise<LangiumDocument<T>> {
    const key = document.uri.toString();
    const before: ParseResult = document.parseResult;
    if (isText(before.value)) this.#before.set(key, before as ParseResult<Text>);
    try {
      return await super.update(document, token);
    } finally {
      this.#before.delete(key);
    }
  }

  protected override parseAsync<T extends AstNode>(
    uri: URI,
    text: string,
    token: CancellationToken,
  ): Promise<ParseResult<T>> {
    const before = this.#before.get(uri.toString());
    const parser = this.#services.getServices(uri).parser.LangiumParser;
    const spliced = before && spliceParse(parser, before, text);
    if (spliced === undefined) return super.parseAsync(uri, text, token);
    this.splices++;
    return Promise.resolve(spliced as ParseResult<AstNode> as ParseResult<T>);
  }
}
