import { Command, CommanderError, Option } from 'commander';
import manifest from '../package.json' with { type: 'json' };
import { type CheckFormat, check, checkFormats } from './check.ts';
import type { NamedText } from './evaluated-texts.ts';
import { make } from './make.ts';
import { type ExitCode, exit, type Terminal } from './terminal.ts';

/** Reads the words on the command line. Knows what can be asked for, and nothing of how it is answered. */

/** What the standard input counts as when nothing else is said: a text in the folder where the command runs. */
const nameOfInput = 'standard-input.fettle';

const exitCodesHelp = `
Exit codes: 0 no errors (notes and warnings allowed), 1 errors found, 2 called wrongly, or not readable or writable.`;

/** Never throws for anything that can be typed. */
export async function runCommandLine(words: readonly string[], terminal: Terminal): Promise<ExitCode> {
  let code: ExitCode = exit.clean;
  const program = describeProgram(terminal, (ended) => {
    code = ended;
  });
  try {
    await program.parseAsync([...words], { from: 'user' });
    return code;
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    // Help that was asked for is an answer; help instead of a command is a hint.
    return error.exitCode === 0 ? exit.clean : exit.unable;
  }
}

function describeProgram(terminal: Terminal, end: (code: ExitCode) => void): Command {
  const program = new Command('fettle')
    .description('Checks pieces of casework written in Fettle, draws them and lists their parts.')
    .version(manifest.version)
    .exitOverride()
    .configureOutput({
      writeOut: (text) => terminal.out(text),
      writeErr: (text) => terminal.err(text.trimEnd()),
    })
    .addHelpText('after', exitCodesHelp);
  // After the settings of the program, which commands take over when they are made.
  program
    .command('check')
    .description('Tell what is wrong: one line `file:line:column severity code sentence` for each finding.')
    .argument('<files...>', 'texts to check; - is the standard input')
    .addOption(new Option('--format <format>', 'how to tell it').choices(checkFormats).default('text'))
    .addOption(asOption())
    .addHelpText('after', exitCodesHelp)
    .action(async (files: string[], options: { format: CheckFormat; as: string }) => {
      end(
        await check(
          files.map((file) => namedText(file, options.as)),
          options.format,
          terminal,
        ),
      );
    });
  program
    .command('make')
    .description('Write the drawings (SVG), the cut list (CSV) and the evaluation (JSON) of each piece.')
    .argument('<file>', 'the text; - is the standard input')
    .requiredOption('--out <folder>', 'where to write; made if it is not there')
    .option('--even-with-errors', 'write although errors stand against a piece; drawing and list then say so', false)
    .addOption(asOption())
    .addHelpText('after', exitCodesHelp)
    .action(async (file: string, options: { out: string; evenWithErrors: boolean; as: string }) => {
      end(await make(namedText(file, options.as), options, terminal));
    });
  return program;
}

function asOption(): Option {
  return new Option('--as <path>', 'where the standard input counts as standing, for what it uses').default(
    nameOfInput,
  );
}

function namedText(file: string, as: string): NamedText {
  return { name: file, path: file === '-' ? as : file };
}
