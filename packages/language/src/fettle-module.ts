import { EmptyFileSystem, inject, type Module } from 'langium';
import {
  createDefaultModule,
  createDefaultSharedModule,
  type DefaultSharedModuleContext,
  type LangiumServices,
  type LangiumSharedServices,
  type PartialLangiumServices,
} from 'langium/lsp';
import { FettleGeneratedModule, FettleGeneratedSharedModule } from './generated/module.ts';
import { FettleLexer } from './tokens/fettle-lexer.ts';
import { QuotedNameConverter } from './tokens/names-in-quotes.ts';
import { createSurvivingParser } from './tokens/surviving-parser.ts';

export type FettleServices = LangiumServices;

const fettleModule: Module<FettleServices, PartialLangiumServices> = {
  parser: {
    Lexer: (services) => new FettleLexer(services),
    ValueConverter: () => new QuotedNameConverter(),
    LangiumParser: (services) => createSurvivingParser(services),
  },
};

/** All services of the language, wired. `context` brings the connection and the file system, or neither. */
export function createFettleServices(context: DefaultSharedModuleContext = EmptyFileSystem): {
  readonly shared: LangiumSharedServices;
  readonly Fettle: FettleServices;
} {
  const shared = inject(createDefaultSharedModule(context), FettleGeneratedSharedModule);
  const Fettle = inject(createDefaultModule({ shared }), FettleGeneratedModule, fettleModule);
  shared.ServiceRegistry.register(Fettle);
  return { shared, Fettle };
}
