import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Bundle } from '../protocol/server-bundles.ts';
import { EditorSession } from './editor-session.ts';
import { type LongText, manySideboards, placesInWords } from './many-sideboards.ts';
import { type Quantiles, quantiles } from './quantiles.ts';

/** What one feels while typing, over the real protocol with the server as it is shipped. */

export interface Typing {
  readonly long: LongText;
  readonly openMs: number;
  readonly squiggle: Quantiles;
  /** Mean for each key, of all threads of the server together; undefined of a worker. */
  readonly processorMs: number | undefined;
  /** From a key to the list of what may follow it. */
  readonly completion: Quantiles;
  /** At places all over the text. */
  readonly hover: Quantiles;
  readonly burst: Burst;
  /** With a preview open that is shown the whole text. */
  readonly picture: Quantiles;
  /** How long after its squiggles the picture arrives. */
  readonly pictureAfter: Quantiles;
  readonly residentMegabytes: number | undefined;
}

/** Thirty keys, one every 20 ms. */
export interface Burst {
  /** From the last key to the verdict on it. */
  readonly settled: Quantiles;
  /** How many times the text was built for thirty keys: the others were joined to one that came after them. */
  readonly builds: Quantiles;
}

export interface HowOften {
  readonly squiggles: number;
  readonly pictures: number;
  readonly bursts: number;
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

export function measureTyping(repository: string, bundle: Bundle, lines: number, often: HowOften): Promise<Typing> {
  return inFolder(repository, async (folder) => {
    const long = manySideboards(readFileSync(join(repository, 'examples/sideboard.fettle'), 'utf8'), lines);
    const file = join(folder, 'long.fettle');
    writeFileSync(file, long.text);
    const uri = pathToFileURL(file).href;
    const { session } = await EditorSession.start(repository, bundle, folder);
    const openMs = await session.open(uri, long.text);
    await typeOn(session, uri, long, warmUps, 'squiggles');
    const before = session.processorMs();
    const { took: squiggle } = await typeOn(session, uri, long, often.squiggles, 'squiggles');
    const after = session.processorMs();
    const processorMs = before === undefined || after === undefined ? undefined : (after - before) / often.squiggles;
    const completion = await completeOn(session, uri, long, often.squiggles);
    const hover = await hoverOver(session, uri, long, often.squiggles);
    const burst = await typeBursts(session, uri, long, often.bursts);
    await session.watchPicture(uri, long.keyPiece);
    await typeOn(session, uri, long, 4, 'picture');
    const { took: picture, after: pictureAfter } = await typeOn(session, uri, long, often.pictures, 'picture');
    const residentMegabytes = session.residentMegabytes();
    await session.end();
    return { long, openMs, squiggle, processorMs, completion, hover, burst, picture, pictureAfter, residentMegabytes };
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

async function completeOn(session: EditorSession, uri: string, long: LongText, keys: number): Promise<Quantiles> {
  const times: number[] = [];
  for (let key = 0; key < keys; key++) {
    const { tookMs, items } = await session.complete(uri, long.behind, ' ');
    if (items === 0) throw new Error('nothing is offered behind what is said of a drawer');
    times.push(tookMs);
    await session.key(uri, long.behind, 1, '');
  }
  return quantiles(times);
}

async function hoverOver(session: EditorSession, uri: string, long: LongText, count: number): Promise<Quantiles> {
  const times: number[] = [];
  let told = 0;
  for (const place of placesInWords(long, count)) {
    const { tookMs, says } = await session.hover(uri, place);
    times.push(tookMs);
    if (says) told += 1;
  }
  if (told < count * 0.9) throw new Error(`only ${told} of ${count} words have a hover`);
  return quantiles(times);
}

/** A name grows by thirty letters and shrinks back. */
async function typeBursts(session: EditorSession, uri: string, long: LongText, bursts: number): Promise<Burst> {
  const letters = 'as they are counted every year';
  const settled: number[] = [];
  const builds: number[] = [];
  for (let turn = 0; turn < bursts; turn++) {
    const { settledMs, verdicts } = await session.burst(uri, long.inName, letters, 20);
    settled.push(settledMs);
    builds.push(verdicts);
    const { errors } = await session.key(uri, long.inName, letters.length, '');
    if (errors > 0) throw new Error(`${errors} errors after a name was typed and taken back`);
  }
  return { settled: quantiles(settled), builds: quantiles(builds) };
}

export function measureStart(repository: string, bundle: Bundle, runs: number): Promise<Quantiles> {
  return inFolder(repository, async (folder) => {
    const times: number[] = [];
    for (let run = 0; run < runs; run++) {
      const { session, tookMs } = await EditorSession.start(repository, bundle, folder);
      times.push(tookMs);
      await session.end();
    }
    return quantiles(times);
  });
}

/** The server's memory with the wall of forty cases open, its picture watched and some keys typed. */
export function measureWallMemory(repository: string): Promise<number | undefined> {
  return inFolder(repository, async (folder) => {
    const text = readFileSync(join(repository, 'examples/wall.fettle'), 'utf8');
    const file = join(folder, 'wall.fettle');
    writeFileSync(file, text);
    const uri = pathToFileURL(file).href;
    const { session } = await EditorSession.start(repository, 'process', folder);
    await session.open(uri, text);
    await session.watchPicture(uri, '');
    const first = { line: 0, character: 2 };
    for (let key = 0; key < warmUps; key++) await session.key(uri, first, key % 2, key % 2 === 0 ? 'A' : '', 'picture');
    const megabytes = session.residentMegabytes();
    await session.end();
    return megabytes;
  });
}
