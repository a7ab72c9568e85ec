import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createServicesForGrammar } from 'langium/grammar';
import { type Quantiles, quantiles, timesOf } from './quantiles.ts';

/**
 * How fast this machine is right now: the parser library alone, on a frozen grammar and a frozen text of some 640 lines.
 * Beside every time stands its ratio to this one, which can be compared between machines and days.
 */
export class Calibration {
  readonly #parse: () => void;
  readonly lines: number;

  private constructor(parse: () => void, lines: number) {
    this.#parse = parse;
    this.lines = lines;
  }

  static async prepare(folder: string): Promise<Calibration> {
    const text = readFileSync(join(folder, 'frozen.fettle'), 'utf8');
    const grammar = readFileSync(join(folder, 'frozen.langium'), 'utf8');
    const { parser } = await createServicesForGrammar({ grammar });
    const { lexerErrors, parserErrors } = parser.LangiumParser.parse(text);
    const fault = lexerErrors[0] ?? parserErrors[0];
    if (fault !== undefined) throw new Error(`the frozen text is not read whole: ${fault.message}`);
    return new Calibration(() => void parser.LangiumParser.parse(text), text.split('\n').length - 1);
  }

  measure(): Quantiles {
    return quantiles(timesOf(this.#parse, 20, 40));
  }
}
