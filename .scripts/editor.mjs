// @ts-check
/**
 * `npm run editor`: the examples in an editor with Fettle in it. An installed VS Code is used when `code` is on the path;
 * otherwise a real VS Code is served on this machine's loopback for any browser.
 */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { onThePath } from '../tests/editor/set-up/debian-packages.mjs';
import { cacheFolder, EditorSetUpError, setUpRealEditor } from '../tests/editor/set-up/real-editor.mjs';
import { startEditor } from '../tests/editor/set-up/running-editor.mjs';
import { ensureInstalled } from './installing.mjs';
import { giveUp, heading, repository, runNode } from './running.mjs';

const examples = join(repository, 'examples');
const firstFile = join(examples, 'sideboard.fettle');

ensureInstalled();
const installed = onThePath('code');
if (installed !== undefined) openInstalled(installed);
else await serve();

/** The extension is run from here for that one window; nothing is installed into the reader's editor. @param {string} code */
function openInstalled(code) {
  heading('Building');
  if (runNode('esbuild.mjs') !== 0) giveUp('not opened: the build failed');
  heading('Opening the examples in VS Code');
  const { status } = spawnSync(
    code,
    ['--new-window', `--extensionDevelopmentPath=${repository}`, examples, firstFile],
    {
      stdio: 'inherit',
    },
  );
  if (status !== 0) giveUp(`${code} ended with ${status}`);
}

async function serve() {
  if (runNode('.scripts/package.mjs') !== 0) giveUp('not opened: the package was not built');
  heading('Starting an editor on this machine');
  try {
    const editor = await startEditor({
      serverMain: await setUpRealEditor(console.log),
      stateFolder: join(cacheFolder, 'editor-state'),
      extensionPackage: join(repository, 'out/fettle.vsix'),
    });
    console.log(`\nOpen in a browser:  ${editor.addressOf(examples)}`);
    console.log('Then open sideboard.fettle and press the picture button above the text. Stop with Ctrl+C.');
    for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP'])) {
      process.on(signal, () => {
        editor.stop();
        process.exit(0);
      });
    }
    await new Promise((_, fail) => editor.onEnd(() => fail(new EditorSetUpError('the editor has ended'))));
  } catch (error) {
    if (error instanceof EditorSetUpError) giveUp(error.message);
    throw error;
  }
}
