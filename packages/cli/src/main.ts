import { runCommandLine } from './command-line.ts';
import { onTerminal } from './findings-as-text.ts';
import { exit, type Terminal } from './terminal.ts';

/** Entry of the command line: the process's own streams and its exit code. A maker never sees a trace. */

const terminal: Terminal = {
  out: (text) => void process.stdout.write(text),
  err: (line) => void process.stderr.write(`${line}\n`),
};

/** Whoever reads may stop reading, as `head` does; what was found stays found. Any other trouble is told. */
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') return;
  process.exitCode = exit.unable;
  terminal.err(`the output could not be written: ${error.code ?? error.message}`);
});
process.stderr.on('error', () => {});

function ownFault(error: unknown): void {
  process.exitCode = exit.unable;
  const words = error instanceof Error ? error.message : String(error);
  terminal.err(onTerminal(`fettle failed, a fault of its own: ${words.split('\n')[0] ?? ''}`));
  if (process.env['FETTLE_TRACE'] === '1' && error instanceof Error) terminal.err(error.stack ?? '');
}
process.on('uncaughtException', ownFault);

// Not process.exit: what is still on its way to a slow reader would be lost.
runCommandLine(process.argv.slice(2), terminal).then((code) => {
  // Output that failed meanwhile has the last word.
  process.exitCode ??= code;
}, ownFault);
