import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { EditorSession } from './editor-session.ts';
import { type LongText, manySideboards } from './many-sideboards.ts';
import { type Quantiles, quantiles } from './quantiles.ts';

/** What one feels while typing, over the real protocol with the server as it is shipped. */

export interface Typing {
  readonly long: LongText;
  readonly openMs: number;
  readonly squiggle: Quantiles;
  /** Mean for each key, of all threads of the server together. */
  readonly processorMs: number | undefined;
  /** With a preview open that is shown the whole text. */
  readonly picture: Quantiles;
  /** How long after its squiggles the picture arrives. */
  readonly pictureAfter: Quantiles;
  readonly residentMegabytes: number | undefined;
}

/** Keys that are typed before anything is measured: the server's code is fast only after a while. */
const warmUps = 20;

async function inFolder<T>(repository: string, work: (folder: string) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-bench-'));
  try {
    copyFileSync(join(repository, 'examples/shop.fettle'), join(folder, 'shop.fettle'));
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export function measureTyping(
  repository: string,
  lines: number,
  keys: { readonly squiggles: number; readonly pictures: number },
): Promise<Typing> {
  return inFolder(repository, async (folder) => {
    const long = manySideboards(readFileSync(join(repository, 'examples/sideboard.fettle'), 'utf8'), lines);
    const file = join(folder, 'long.fettle');
    writeFileSync(file, long.text);
    const uri = pathToFileURL(file).href;
    const { session } = await EditorSession.start(join(repository, 'dist/server.cjs'), folder);
    const openMs = await session.open(uri, long.text);
    await typeOn(session, uri, long, warmUps, 'squiggles');
    const before = session.processorMs();
    const { took: squiggle } = await typeOn(session, uri, long, keys.squiggles, 'squiggles');
    const after = session.processorMs();
    const processorMs = before === undefined || after === undefined ? undefined : (after - before) / keys.squiggles;
    await session.watchPicture(uri, long.keyPiece);
    await typeOn(session, uri, long, 4, 'picture');
    const { took: picture, after: pictureAfter } = await typeOn(session, uri, long, keys.pictures, 'picture');
    const residentMegabytes = session.residentMegabytes();
    await session.end();
    return { long, openMs, squiggle, processorMs, picture, pictureAfter, residentMegabytes };
  });
}

/** So many keys, an even number. A digit typed makes a front far too high, the same digit deleted makes it right again: each must show. */
async function typeOn(
  session: EditorSession,
  uri: string,
  long: LongText,
  keys: number,
  wanted: 'squiggles' | 'picture',
): Promise<{ readonly took: Quantiles; readonly after: Quantiles }> {
  const times: number[] = [];
  const afters: number[] = [];
  for (let key = 0; key < keys; key++) {
    const typing = key % 2 === 0;
    const { tookMs, afterSquigglesMs, errors } = await session.key(
      uri,
      long.key,
      typing ? 0 : 1,
      typing ? '1' : '',
      wanted,
    );
    if (errors > 0 !== typing) throw new Error(`${errors} errors after ${typing ? 'typing' : 'deleting'} the digit`);
    times.push(tookMs);
    afters.push(afterSquigglesMs);
  }
  return { took: quantiles(times), after: quantiles(afters) };
}

export function measureStart(repository: string, runs: number): Promise<Quantiles> {
  return inFolder(repository, async (folder) => {
    const times: number[] = [];
    for (let run = 0; run < runs; run++) {
      const { session, tookMs } = await EditorSession.start(join(repository, 'dist/server.cjs'), folder);
      times.push(tookMs);
      await session.end();
    }
    return quantiles(times);
  });
}
