import { readdirSync, readFileSync, statSync } from 'node:fs';
import { cpus, release, totalmem, type } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { Calibration } from './calibration.ts';
import { measureEvaluating, measureWall } from './evaluating.ts';
import { measureStart, measureTyping } from './typing.ts';
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

async function main(repository: string): Promise<void> {
  const sizes = sizeLines(repository);
  const processors = cpus();
  const memory = (totalmem() / 1e9).toFixed(1);
  console.log(`Node ${process.version}, ${type()} ${release()} ${process.arch}`);
  console.log(`${processors.length} × ${processors[0]?.model.trim() ?? 'unknown processor'}, ${memory} GB\n`);

  const calibration = await Calibration.prepare(join(repository, 'tests/bench'));
  const before = calibration.measure();
  const start = await measureStart(repository, 7);
  const evaluating = await measureEvaluating(repository);
  const wall = await measureWall(repository);
  const volumes = measureVolumes();
  const short = await measureTyping(repository, 640, { squiggles: 100, pictures: 100 });
  const long = await measureTyping(repository, 6400, { squiggles: 60, pictures: 20 });
  const after = calibration.measure();
  const calibrationMs = (before.p50 + after.p50) / 2;

  const rows: Row[] = [
    { what: `calibration, ${calibration.lines} lines, before`, ...before, unit: 'ms' },
    { what: 'calibration, after', ...after, unit: 'ms' },
    { what: 'server start to its answer', ...start, unit: 'ms' },
  ];
  for (const { long: text, openMs, squiggle, processorMs, picture, pictureAfter } of [short, long]) {
    const size = `${text.lines} lines, ${text.pieces} pieces`;
    rows.push(
      { what: `open → squiggle, ${size}`, p50: openMs, unit: 'ms' },
      { what: `key → squiggle, ${size}`, ...squiggle, unit: 'ms' },
      ...(processorMs === undefined
        ? []
        : [{ what: '  of it processor time, all threads, mean', p50: processorMs, unit: 'ms' } as const]),
      { what: `key → picture, ${size}`, ...picture, unit: 'ms' },
      { what: '  of it after its squiggle', ...pictureAfter, unit: 'ms' },
    );
  }
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
  for (const { long: text, residentMegabytes } of [short, long]) {
    if (residentMegabytes === undefined) continue;
    console.log(`server memory at ${text.lines} lines: ${residentMegabytes.toFixed(0)} MB`);
  }
  console.log('');
  for (const line of sizes) console.log(line);
}

const repository = process.argv[2];
if (repository === undefined) throw new Error('say where the repository is');
main(repository).catch((error: unknown) => {
  console.error(error);
  process.exitCode = 1;
});
