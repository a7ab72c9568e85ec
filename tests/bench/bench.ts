import { readdirSync, readFileSync, statSync } from 'node:fs';
import { cpus, release, totalmem, type } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { type Bundle, bundles } from '../protocol/server-bundles.ts';
import { measureActivation } from './activation.ts';
import { Calibration } from './calibration.ts';
import { measureEvaluating, measureWall } from './evaluating.ts';
import { measureStart, measureTyping, measureWallMemory, type Typing } from './typing.ts';
import { measureVolumes } from './volumes.ts';

/** `npm run bench`: prints times and sizes and judges nothing. Run from a bundle; its argument is the repository. */

interface Row {
  readonly what: string;
  readonly p50: number;
  readonly p95?: number;
  readonly unit: 'ms' | 'µs';
}

function printTable(rows: readonly Row[], calibrationMs: number): void {
  const number = (value: number) =>
    value >= 100 ? value.toFixed(0) : value >= 10 ? value.toFixed(1) : value.toFixed(2);
  const ratio = (value: number, unit: Row['unit']) => number((unit === 'µs' ? value / 1000 : value) / calibrationMs);
  const cells = [
    ['', 'p50', 'p95', '', 'p50 / calibration', 'p95 / calibration'],
    ...rows.map(({ what, p50, p95, unit }) => [
      what,
      number(p50),
      p95 === undefined ? '' : number(p95),
      unit,
      ratio(p50, unit),
      p95 === undefined ? '' : ratio(p95, unit),
    ]),
  ];
  const widths = cells[0]?.map((_, column) => Math.max(...cells.map((row) => row[column]?.length ?? 0))) ?? [];
  for (const row of cells) {
    const words = row.map((cell, column) =>
      column === 0 || column === 3 ? cell.padEnd(widths[column] ?? 0) : cell.padStart(widths[column] ?? 0),
    );
    console.log(words.join('  ').trimEnd());
  }
}

/** Lines to print, taken at once: whoever builds meanwhile takes the bundles away. */
function sizeLines(repository: string): readonly string[] {
  const kilobytes = (count: number) => `${(count / 1000).toFixed(0)} KB`.padStart(8);
  const bundles = readdirSync(join(repository, 'dist'))
    .filter((name) => /\.(cjs|js|css)$/.test(name))
    .map((name) => ({ name, bytes: readFileSync(join(repository, 'dist', name)) }));
  return [
    ...bundles.map(
      ({ name, bytes }) => `${name.padEnd(20)}${kilobytes(bytes.length)}  zipped${kilobytes(gzipSync(bytes).length)}`,
    ),
    `${'fettle.vsix'.padEnd(20)}${kilobytes(statSync(join(repository, 'out/fettle.vsix')).size)}`,
  ];
}

async function measureStarts(repository: string): Promise<readonly Row[]> {
  const rows: Row[] = [];
  for (const bundle of bundles) {
    rows.push({
      what: `server start to its answer, ${bundle}`,
      ...(await measureStart(repository, bundle, 7)),
      unit: 'ms',
    });
  }
  return rows;
}

function rowsOfTyping(bundle: Bundle, typing: Typing): readonly Row[] {
  const { long, openMs, squiggle, processorMs, completion, hover, burst, picture, pictureAfter } = typing;
  const size = `${long.lines} lines, ${bundle}`;
  return [
    { what: `open → squiggle, ${size}, ${long.pieces} pieces`, p50: openMs, unit: 'ms' },
    { what: `key → squiggle, ${size}`, ...squiggle, unit: 'ms' },
    ...(processorMs === undefined
      ? []
      : [{ what: '  of it processor time, all threads, mean', p50: processorMs, unit: 'ms' } as const]),
    { what: `key → completion, ${size}`, ...completion, unit: 'ms' },
    { what: `hover, ${size}`, ...hover, unit: 'ms' },
    { what: `30 keys at 20 ms: last key → verdict, ${size}`, ...burst.settled, unit: 'ms' },
    { what: `key → picture, ${size}`, ...picture, unit: 'ms' },
    { what: '  of it after its squiggle', ...pictureAfter, unit: 'ms' },
  ];
}

async function main(repository: string): Promise<void> {
  const sizes = sizeLines(repository);
  const processors = cpus();
  const gigabytes = (totalmem() / 1e9).toFixed(1);
  console.log(`Node ${process.version}, ${type()} ${release()} ${process.arch}`);
  console.log(`${processors.length} × ${processors[0]?.model.trim() ?? 'unknown processor'}, ${gigabytes} GB\n`);

  const calibration = await Calibration.prepare(join(repository, 'tests/bench'));
  const before = calibration.measure();
  const activation = measureActivation(repository, 9);
  const starts = await measureStarts(repository);
  const evaluating = await measureEvaluating(repository);
  const wall = await measureWall(repository);
  const wallMegabytes = await measureWallMemory(repository);
  const volumes = measureVolumes();
  const typings: { readonly bundle: Bundle; readonly typing: Typing }[] = [];
  for (const bundle of bundles) {
    const short = await measureTyping(repository, bundle, 640, { squiggles: 100, pictures: 100, bursts: 10 });
    const long = await measureTyping(repository, bundle, 6400, { squiggles: 60, pictures: 40, bursts: 6 });
    typings.push({ bundle, typing: short }, { bundle, typing: long });
  }
  const after = calibration.measure();
  const calibrationMs = (before.p50 + after.p50) / 2;

  const rows: Row[] = [
    { what: `calibration, ${calibration.lines} lines, before`, ...before, unit: 'ms' },
    { what: 'calibration, after', ...after, unit: 'ms' },
    { what: "extension's bundle until it is loaded", ...activation.load, unit: 'ms' },
    { what: '  and from then until it is activated', ...activation.activate, unit: 'ms' },
    ...starts,
    ...typings.flatMap(({ bundle, typing }) => rowsOfTyping(bundle, typing)),
  ];
  const { whole, parts } = evaluating;
  rows.push(
    { what: `evaluation of the sideboard, ${parts} parts`, ...whole, unit: 'ms' },
    { what: 'evaluation per part', p50: (whole.p50 * 1000) / parts, p95: (whole.p95 * 1000) / parts, unit: 'µs' },
    { what: 'evaluation of a wall of forty cases, nothing kept', ...wall, unit: 'ms' },
  );
  const inMicroseconds = ({ p50, p95 }: { readonly p50: number; readonly p95: number }) =>
    ({ p50: p50 * 1000, p95: p95 * 1000, unit: 'µs' }) as const;
  rows.push(
    ...volumes.pairs.flatMap(({ what, meets, overlap }) => [
      { what: `whether a ${what} meet`, ...inMicroseconds(meets) },
      { what: '  and by how much', ...inMicroseconds(overlap) },
    ]),
    { what: 'all features of 150 parts, 60 each', ...volumes.piece, unit: 'ms' },
  );
  printTable(rows, calibrationMs);
  for (const { bundle, typing } of typings) {
    const { builds } = typing.burst;
    console.log(
      `30 keys at 20 ms, ${typing.long.lines} lines, ${bundle}: built ${builds.p50} times, at most ${builds.p95}`,
    );
  }
  const memory = (what: string, megabytes: number | undefined) => {
    if (megabytes !== undefined) console.log(`server memory ${what}: ${megabytes.toFixed(0)} MB`);
  };
  for (const { typing } of typings) memory(`at ${typing.long.lines} lines`, typing.residentMegabytes);
  memory('with a wall of forty cases open', wallMegabytes);
  console.log('');
  for (const line of sizes) console.log(line);
}

const repository = process.argv[2];
if (repository === undefined) throw new Error('say where the repository is');
main(repository).catch((error: unknown) => {
  console.error(error);
  process.exitCode = 1;
});
