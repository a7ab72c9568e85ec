import { createGrammarConfig, EmptyFileSystem, inject, type LangiumSharedCoreServices, type Module } from 'langium';
import {
  createDefaultModule,
  createDefaultSharedModule,
  type DefaultSharedModuleContext,
  type LangiumServices,
  type LangiumSharedServices,
  type PartialLangiumServices,
  type PartialLangiumSharedServices,
} from 'langium/lsp';
import { DocumentEvaluator } from './evaluation/evaluate-document.ts';
import { FettleValidator } from './evaluation/fettle-validator.ts';
import { FettleCodeActions } from './features/code-actions.ts';
import { FettleCodeLensProvider } from './features/code-lens.ts';
import { FettleCompletionProvider } from './features/completion.ts';
import { FettleFormatter } from './features/formatting.ts';
import { FettleHoverProvider } from './features/hover.ts';
import { FettleInlayHintProvider } from './features/inlay-hints.ts';
import { FettleDocumentSymbolProvider } from './features/outline.ts';
import { FettleRenameProvider } from './features/rename.ts';
import { FettleSemanticTokenProvider } from './features/semantic-tokens.ts';
import { FettleSignatureHelp } from './features/signature-help.ts';
import { FettleDocumentLinkProvider } from './features/use-links.ts';
import { FettleGeneratedModule, FettleGeneratedSharedModule } from './generated/module.ts';
import { FettleScopeComputation, FettleScopeProvider } from './names/fettle-scopes.ts';
import { IndexWhenAsked, LinkerWhenAsked } from './names/names-when-asked.ts';
import { UsingDocumentBuilder } from './names/using-document-builder.ts';
import { SplicingDocumentFactory } from './splicing/splicing-document-factory.ts';
import { FettleLexer } from './tokens/fettle-lexer.ts';
import { FettleTokenBuilder } from './tokens/fettle-token-builder.ts';
import { QuotedNameConverter } from './tokens/names-in-quotes.ts';
import { createSurvivingParser } from './tokens/surviving-parser.ts';

/** What the language adds to Langium's own services. */
export interface FettleAddedServices {
  readonly evaluation: { readonly DocumentEvaluator: DocumentEvaluator };
}
export type FettleServices = LangiumServices & FettleAddedServices;

const fettleModule: Module<FettleServices, PartialLangiumServices & FettleAddedServices> = {
  evaluation: {
    DocumentEvaluator: (services) => new DocumentEvaluator(services.shared as LangiumSharedCoreServices),
  },
  lsp: {
    CodeActionProvider: (services) => new FettleCodeActions(services),
    CodeLensProvider: (services) => new FettleCodeLensProvider(services),
    CompletionProvider: (services) => new FettleCompletionProvider(services),
    DocumentLinkProvider: (services) => new FettleDocumentLinkProvider(services),
    DocumentSymbolProvider: (services) => new FettleDocumentSymbolProvider(services),
    Formatter: (services) => new FettleFormatter(services),
    HoverProvider: (services) => new FettleHoverProvider(services),
    InlayHintProvider: (services) => new FettleInlayHintProvider(services),
    RenameProvider: (services) => new FettleRenameProvider(services),
    SemanticTokenProvider: (services) => new FettleSemanticTokenProvider(services),
    SignatureHelp: (services) => new FettleSignatureHelp(services),
  },
  parser: {
    GrammarConfig: (services) => ({ ...createGrammarConfig(services), multilineCommentRules: ['BLOCK_COMMENT'] }),
    TokenBuilder: () => new FettleTokenBuilder(),
    Lexer: (services) => new FettleLexer(services),
    ValueConverter: () => new QuotedNameConverter(),
    LangiumParser: (services) => createSurvivingParser(services),
  },
  references: {
    Linker: (services) => new LinkerWhenAsked(services),
    ScopeProvider: (services) => new FettleScopeProvider(services),
    ScopeComputation: (services) => new FettleScopeComputation(services),
  },
  validation: {
    DocumentValidator: (services) => new FettleValidator(services),
  },
};

const fettleSharedModule: Module<LangiumSharedServices, PartialLangiumSharedServices> = {
  workspace: {
    DocumentBuilder: (services) => new UsingDocumentBuilder(services),
    IndexManager: (services) => new IndexWhenAsked(services),
    LangiumDocumentFactory: (services) => new SplicingDocumentFactory(services),
  },
};

/**
 * All services of the language, wired. `context` brings the connection and the file system, or neither; `host` replaces
 * shared services where whoever runs the language knows better, as the server does about when to build.
 */
export function createFettleServices(
  context: DefaultSharedModuleContext = EmptyFileSystem,
  host: Module<LangiumSharedServices, PartialLangiumSharedServices> = {},
): {
  readonly shared: LangiumSharedServices;
  readonly Fettle: FettleServices;
} {
  const shared = inject(createDefaultSharedModule(context), FettleGeneratedSharedModule, fettleSharedModule, host);
  const Fettle = inject(createDefaultModule({ shared }), FettleGeneratedModule, fettleModule);
  shared.ServiceRegistry.register(Fettle);
  return { shared, Fettle };
}
