import { existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { Bench, type Ended } from './running-cli.ts';

/** Outputs appear whole or not at all, whatever goes wrong in the middle. */

let bench: Bench;
beforeEach(() => {
  bench = new Bench();
});
afterEach(() => bench.remove());

const svg = 'games-sideboard-elevation.svg';
const wider = ['size 60 wide', 'size 61 wide'] as const;

test('a file that cannot be finished leaves the old ones and nothing besides', () => {
  bench.run(['make', 'sideboard.fettle', '--out', 'drawn']);
  const before = bench.everythingIn('drawn');
  bench.write('wider.fettle', bench.sideboard(wider));
  // No file may grow beyond 16 KB: the drawing does, after a first part of it has been written.
  for (const out of ['drawn', 'fresh', 'fresh/deep']) {
    const ended = bench.shell(`trap '' XFSZ; ulimit -f 16; fettle make wider.fettle --out ${out}`);
    expect(ended.code).toBe(2);
    expect(ended.out).toBe('');
    expect(ended.err).toMatch(/ cannot be written: it grows larger than the system allows; nothing was changed\n$/);
    expect(ended.err).not.toMatch(/^\s+at /m);
  }
  expect(bench.everythingIn('drawn')).toEqual(before);
  expect(readdirSync(bench.path('drawn'))).toHaveLength(Object.keys(before).length);
  expect(readdirSync(bench.folder).filter((name) => name.includes('fresh'))).toEqual([]);
});

test('a folder in the place of one of the files leaves all of them', () => {
  bench.run(['make', 'sideboard.fettle', '--out', 'drawn']);
  bench.write('wider.fettle', bench.sideboard(wider));
  bench.shell(`rm drawn/games-sideboard-evaluation.json; mkdir drawn/games-sideboard-evaluation.json`);
  const before = bench.everythingIn('drawn');
  const { code, err } = bench.run(['make', 'wider.fettle', '--out', 'drawn']);
  expect(code).toBe(2);
  expect(err).toMatch(
    /^drawn\/games-sideboard-evaluation\.json is a folder and stands in the way; nothing was changed\n$/,
  );
  expect(bench.everythingIn('drawn')).toEqual(before);
});

test('a move that fails takes back those before it', () => {
  // The third file is made immovable while the first are already in place, by a stand-in for the system's move.
  bench.run(['make', 'sideboard.fettle', '--out', 'drawn']);
  bench.write('wider.fettle', bench.sideboard(wider));
  const before = bench.everythingIn('drawn');
  bench.write(
    'stubborn.cjs',
    `const fs = require('node:fs');
     const rename = fs.renameSync;
     let moves = 0;
     fs.renameSync = (from, to) => {
       if (!from.includes('replaced') && ++moves === 3) throw Object.assign(new Error('no'), { code: 'EPERM' });
       rename(from, to);
     };`,
  );
  const ended = bench.shell(`export NODE_OPTIONS='--require ./stubborn.cjs'; fettle make wider.fettle --out drawn`);
  expect(ended.code).toBe(2);
  expect(ended.err).toMatch(/may not be written: permission is missing; nothing was changed\n$/);
  expect(bench.everythingIn('drawn')).toEqual(before);
  expect(readdirSync(bench.path('drawn'))).toHaveLength(Object.keys(before).length);
});

/** Many pieces, so that writing takes a while; each of few parts, so that planning them does not. */
function manyCases(width: string): string {
  const piece = (at: number) => `piece "Case ${at}" {
  size ${width} wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   back thick 1/4 }
}`;
  return Array.from({ length: 80 }, (_, at) => piece(at)).join('\n');
}

/** How many files a run told that it wrote. */
function told({ code, out }: Ended): number {
  expect(code).toBe(0);
  return out.trimEnd().split('\n').length;
}

async function endInTheMiddle(out: string, hint: () => boolean, signal: NodeJS.Signals): Promise<number | null> {
  const child = bench.start(['make', 'many.fettle', '--out', out]);
  child.stdout.resume();
  child.stderr.resume();
  const ended = new Promise<number | null>((resolve) => child.once('exit', resolve));
  while (child.exitCode === null && child.signalCode === null && !hint()) {
    await new Promise((resolve) => setTimeout(resolve, 1));
  }
  expect(hint(), 'it was at work when the signal came').toBe(true);
  child.kill(signal);
  return ended;
}

test('killed while it writes, the old files are as they were, and the next run is complete', async () => {
  bench.write('many.fettle', manyCases('24'));
  const files = told(bench.run(['make', 'many.fettle', '--out', 'drawn']));
  expect(files).toBeGreaterThanOrEqual(80 * 3);
  const visible = () => Object.entries(bench.everythingIn('drawn')).filter(([path]) => !path.includes('.unfinished-'));
  const before = visible();
  expect(before).toHaveLength(files);

  bench.write('many.fettle', manyCases('25'));
  const atWork = () => readdirSync(bench.path('drawn')).some((name) => name.startsWith('.unfinished-'));
  expect(await endInTheMiddle('drawn', atWork, 'SIGKILL')).toBeNull();
  expect(visible()).toEqual(before);

  expect(told(bench.run(['make', 'many.fettle', '--out', 'drawn']))).toBe(files);
  const after = visible();
  expect(after.map(([path]) => path)).toEqual(before.map(([path]) => path));
  // A wider piece looks the same from the side; from the front and in numbers it does not.
  const old = new Map(before);
  const ofWidth = after.filter(([path]) => /-(elevation\.svg|cut-list\.csv|evaluation\.json)$/.test(path));
  expect(ofWidth).toHaveLength(240);
  expect(ofWidth.filter(([path, content]) => content === old.get(path))).toEqual([]);
});

test('killed while it writes a folder that was not there, the folder is not there', async () => {
  bench.write('many.fettle', manyCases('24'));
  mkdirSync(bench.path('made'));
  const atWork = () => readdirSync(bench.path('made')).some((name) => name.startsWith('.drawn-unfinished-'));
  expect(await endInTheMiddle('made/drawn', atWork, 'SIGKILL')).toBeNull();
  expect(existsSync(bench.path('made/drawn'))).toBe(false);
});

test('ended politely while it writes, it finishes', async () => {
  bench.write('many.fettle', manyCases('24'));
  mkdirSync(bench.path('made'));
  const atWork = () => readdirSync(bench.path('made')).some((name) => name.startsWith('.drawn-unfinished-'));
  expect(await endInTheMiddle('made/drawn', atWork, 'SIGTERM')).toBe(0);
  expect(readdirSync(bench.path('made'))).toEqual(['drawn']);
  // As many as when nobody ends it.
  const files = told(bench.run(['make', 'many.fettle', '--out', 'drawn']));
  expect(readdirSync(bench.path('made/drawn'))).toHaveLength(files);
});

test('a symbolic link to a folder is written through; one in the place of a file is replaced, not followed', () => {
  mkdirSync(bench.path('real'));
  writeFileSync(bench.path('precious.txt'), 'precious');
  bench.shell(`ln -s real drawn; ln -s ../precious.txt real/${svg}`);
  const files = told(bench.run(['make', 'sideboard.fettle', '--out', 'drawn']));
  expect(readdirSync(bench.path('real'))).toHaveLength(files);
  expect(bench.read('precious.txt')).toBe('precious');
  expect(bench.read(`real/${svg}`)).toContain('<svg');
});
