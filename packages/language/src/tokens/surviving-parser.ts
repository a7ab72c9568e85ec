import {
  createLangiumParser,
  type LangiumCoreServices,
  type LangiumParser,
  type ParseResult,
  type ParserOptions,
} from 'langium';
import type { Slip } from './slips.ts';

type ParsingServices = LangiumCoreServices;

/**
 * Langium's parser keeps its half-built stack after a throw and is of no use from then on. This one is replaced after
 * a throw; the text that caused it is then an empty tree with one slip over all of it.
 */
export function createSurvivingParser(services: ParsingServices): LangiumParser {
  let parser = createLangiumParser(services);
  return new Proxy(parser, {
    get(_target, property) {
      if (property !== 'parse') {
        const value: unknown = Reflect.get(parser, property, parser);
        return typeof value === 'function' ? value.bind(parser) : value;
      }
      return (input: string, options?: ParserOptions): ParseResult => {
        try {
          return parser.parse(input, options);
        } catch {
          parser = createLangiumParser(services);
          const slip: Slip = { kind: 'too-deep', start: 0, end: input.length, limit: 0 };
          const empty = parser.parse('', options);
          return {
            ...empty,
            lexerReport: { diagnostics: [], slips: [slip], tokens: 0 } as ParseResult['lexerReport'] & object,
          };
        }
      };
    },
  });
}
