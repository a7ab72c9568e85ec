import { chmodSync, existsSync, mkdirSync, readdirSync } from 'node:fs';
import type { EvaluationJson, SchedulesJson, ShoppingJson } from '@fettle/cli';
import { byEachOther } from '@fettle/engine';
import { DOMParser } from '@xmldom/xmldom';
import Papa from 'papaparse';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { Bench, expectRefusal } from './running-cli.ts';

let bench: Bench;
beforeEach(() => {
  bench = new Bench();
});
afterEach(() => bench.remove());

/** Besides the sheets of parts and of cutting plans, of which there are as many as are needed. */
const files = [
  'games-sideboard-cut-list.csv',
  'games-sideboard-cuts.csv',
  'games-sideboard-doors.csv',
  'games-sideboard-drawers.csv',
  'games-sideboard-elevation.svg',
  'games-sideboard-evaluation.json',
  'games-sideboard-exploded.svg',
  'games-sideboard-hardware.csv',
  'games-sideboard-inside.svg',
  'games-sideboard-plan.svg',
  'games-sideboard-schedules.json',
  'games-sideboard-section.svg',
  'games-sideboard-setups.csv',
  'games-sideboard-shopping-list.csv',
  'games-sideboard-shopping-list.json',
  'games-sideboard-side.svg',
];
const isOfParts = (name: string): boolean => /games-sideboard-(?:parts|cutting)-\d+\.svg$/.test(name);
const overfull = ['drawer "blankets" rest', 'drawer "blankets" front 11 high'] as const;

function evaluation(name: string): EvaluationJson {
  return JSON.parse(bench.read(name)) as EvaluationJson;
}

function rowsOf(name: string): readonly Record<string, string>[] {
  const { data, errors } = Papa.parse<Record<string, string>>(bench.read(name), { header: true, skipEmptyLines: true });
  expect(errors).toEqual([]);
  return data;
}

test('lists and drawings of the sideboard, and their names are told', () => {
  const { code, out, err } = bench.run(['make', 'sideboard.fettle', '--out', 'drawn/hall']);
  expect(code).toBe(0);
  const written = readdirSync(bench.path('drawn/hall')).sort();
  expect(written.filter((name) => !isOfParts(name))).toEqual(files);
  expect(written).toContain('games-sideboard-parts-1.svg');
  expect(readdirSync(bench.path('drawn'))).toEqual(['hall']);
  expect(out.trimEnd().split('\n').sort()).toEqual(written.map((name) => `drawn/hall/${name}`));
  expect(err).toMatch(/(?:^|\n)\d+ notes in 1 file\n$/);
  expect(err).toContain(' note anchor-to-wall ');
  expect(err).not.toContain('not-checked-yet');

  const drawings = written.filter((name) => name.endsWith('.svg'));
  expect(drawings.length).toBeGreaterThan(6);
  for (const name of drawings) {
    const svg = bench.read(`drawn/hall/${name}`);
    const drawing = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
    expect(drawing?.nodeName).toBe('svg');
    expect(drawing?.getAttribute('width')).toMatch(/^[\d.]+mm$/);
  }

  const { parts, cutList, sound } = evaluation('drawn/hall/games-sideboard-evaluation.json');
  expect(sound).toBe(true);
  const rows = rowsOf('drawn/hall/games-sideboard-cut-list.csv');
  expect(rows).toHaveLength(cutList.length);
  expect(rows.map((row) => Number(row['Quantity'])).reduce((sum, count) => sum + count)).toBe(parts.length);
  expect(rows.map((row) => row['Length'])).toEqual(cutList.map((row) => row.length.shown));
});

test('what to buy is the same in the table and for machines, and every part of the cut list is planned', () => {
  expect(bench.run(['make', 'sideboard.fettle', '--out', 'drawn']).code).toBe(0);
  const list = JSON.parse(bench.read('drawn/games-sideboard-shopping-list.json')) as ShoppingJson;
  expect(list.notPlanned).toEqual([]);
  const rows = rowsOf('drawn/games-sideboard-shopping-list.csv').slice(0, list.buy.length);
  expect(rows.map((row) => [row['Buy'], row['Quantity'], row['Length']])).toEqual(
    list.buy.map(({ kind, name, quantity, length }) =>
      kind === 'edging'
        ? [`Edging: ${name}`, `${quantity}`, length?.shown]
        : [name, `${quantity}`, length?.shown ?? ''],
    ),
  );
  const planned = new Set(list.buy.flatMap(({ parts }) => parts));
  const { parts } = evaluation('drawn/games-sideboard-evaluation.json');
  expect(parts.map(({ id }) => id).filter((id) => !planned.has(id))).toEqual([]);
  const cuts = rowsOf('drawn/games-sideboard-cuts.csv');
  expect(cuts.map((row) => Number(row['Cut']))).toEqual(list.cuts.map(({ number }) => number));
  expect(cuts.map((row) => row['From']?.replace(/^(sheet|board) /, ''))).toEqual(list.cuts.map(({ of }) => of));
  expect(existsSync(bench.path('drawn/games-sideboard-cutting-1.svg'))).toBe(true);
});

test('drawers, doors and hardware are the same in the tables and for machines', () => {
  expect(bench.run(['make', 'sideboard.fettle', '--out', 'drawn']).code).toBe(0);
  const { drawers, doors, hardware } = JSON.parse(bench.read('drawn/games-sideboard-schedules.json')) as SchedulesJson;
  expect(rowsOf('drawn/games-sideboard-drawers.csv').map((row) => [row['Drawer'], row['Box']])).toEqual(
    drawers.map(({ name, box }) => [
      name,
      byEachOther(...[box?.width, box?.height, box?.depth].map((size) => size?.shown ?? '?')),
    ]),
  );
  expect(rowsOf('drawn/games-sideboard-doors.csv').map((row) => row['Hangs'])).toEqual(
    doors.map(({ hangs }) => `on its ${hangs} edge`),
  );
  const counts = rowsOf('drawn/games-sideboard-hardware.csv').map((row) => Number(row['Quantity']));
  expect(counts).toEqual(hardware.flatMap(({ settings }) => settings.map(({ all }) => all.length)));
  expect(counts.reduce((sum, count) => sum + count)).toBe(hardware.reduce((sum, { count }) => sum + count, 0));
});

test('the standard input is made, too', () => {
  const input = bench.read('sideboard.fettle');
  expect(bench.run(['make', '-', '--out', 'drawn'], { input }).code).toBe(0);
  const written = readdirSync(bench.path('drawn')).sort();
  expect(written.filter((name) => !isOfParts(name))).toEqual(files);
  expect(evaluation('drawn/games-sideboard-evaluation.json').file).toBe('standard-input.fettle');
});

test('made twice, it is the same to the byte; other files in the folder stay', () => {
  bench.write('drawn/letter.txt', 'to the sawmill');
  bench.run(['make', 'sideboard.fettle', '--out', 'drawn']);
  const first = bench.everythingIn('drawn');
  expect(Object.keys(first).filter((name) => !isOfParts(name))).toHaveLength(files.length + 1);
  expect(bench.run(['make', 'sideboard.fettle', '--out', 'drawn']).code).toBe(0);
  expect(bench.everythingIn('drawn')).toEqual(first);
  expect(bench.read('drawn/letter.txt')).toBe('to the sawmill');
});

test('with an error nothing is written, what stands there stays, exit 1', () => {
  bench.run(['make', 'sideboard.fettle', '--out', 'drawn']);
  const before = bench.everythingIn('drawn');
  bench.write('over.fettle', bench.sideboard(overfull));
  const { code, out, err } = bench.run(['make', 'over.fettle', '--out', 'drawn']);
  expect(code).toBe(1);
  expect(out).toBe('');
  expect(err).toContain(' error fronts-do-not-add-up ');
  expect(err).toMatch(
    /\nnothing was written: an error stands against it; --even-with-errors writes it all the same\n$/,
  );
  expect(bench.everythingIn('drawn')).toEqual(before);
  expect(bench.run(['make', 'over.fettle', '--out', 'fresh']).code).toBe(1);
  expect(existsSync(bench.path('fresh'))).toBe(false);
});

test('when asked for even with errors, lists and drawings say that nothing is to be built from them, exit 1', () => {
  bench.write('over.fettle', bench.sideboard(overfull));
  const { code, out } = bench.run(['make', 'over.fettle', '--out', 'drawn', '--even-with-errors']);
  expect(code).toBe(1);
  const written = out.trimEnd().split('\n');
  expect(written.length).toBeGreaterThan(files.length);
  const { sound, findings } = evaluation('drawn/games-sideboard-evaluation.json');
  expect(sound).toBe(false);
  expect(findings.filter((finding) => finding.severity === 'error')).toHaveLength(1);
  expect(rowsOf('drawn/games-sideboard-cut-list.csv')[0]).toMatchObject({
    Mark: '',
    Notes: 'Do not cut from this list: 1 error against the piece',
  });
  for (const name of written.filter((each) => each.endsWith('.svg'))) {
    expect(bench.read(name)).toContain('Do not build from this sheet');
  }
});

test('an error in one piece of two: the other is not written either, and only the one is unsound', () => {
  const second = bench
    .sideboard(['piece "Games sideboard"', 'piece "Second"'], overfull)
    .replace('use "shop.fettle"', '');
  bench.write('two.fettle', `${bench.read('sideboard.fettle')}\n${second}`);
  expect(bench.run(['make', 'two.fettle', '--out', 'drawn']).code).toBe(1);
  expect(existsSync(bench.path('drawn'))).toBe(false);
  expect(bench.run(['make', 'two.fettle', '--out', 'drawn', '--even-with-errors']).code).toBe(1);
  expect(evaluation('drawn/games-sideboard-evaluation.json').sound).toBe(true);
  expect(evaluation('drawn/second-evaluation.json').sound).toBe(false);
});

test('a text without a piece has nothing to make', () => {
  const { code, err } = bench.run(['make', 'shop.fettle', '--out', 'drawn']);
  expect(code).toBe(2);
  expect(err).toMatch(/\nshop\.fettle holds no piece, so there is nothing to make\n$/);
  expect(existsSync(bench.path('drawn'))).toBe(false);
});

function piece(name: string): string {
  return `piece "${name}" { size 30 wide, 36 high, 14 deep }\n`;
}

test('names of pieces become harmless names of files, numbered where they meet', () => {
  const long = 'drawer cabinet of many words '.repeat(20);
  const names = [
    '../../escape',
    '/etc/passwd',
    'Chest 2',
    'chest',
    'CHEST',
    'c:\\con',
    '...',
    '\u{1fa9a}',
    'Büfett',
    long,
  ];
  bench.write('named.fettle', names.map(piece).join(''));
  const ended = bench.run(['make', 'named.fettle', '--out', 'drawn', '--even-with-errors']);
  expect(ended.code).toBeLessThan(2);
  const made = readdirSync(bench.path('drawn')).sort();
  const bases = made
    .filter((name) => name.endsWith('-evaluation.json'))
    .map((name) => name.replace('-evaluation.json', ''));
  expect(bases).toHaveLength(names.length);
  expect(bases).toEqual(
    expect.arrayContaining([
      'escape',
      'etc-passwd',
      'chest-2',
      'chest',
      'chest-3',
      'c-con',
      'piece',
      'piece-2',
      'büfett',
    ]),
  );
  expect(Math.max(...made.map((name) => Buffer.byteLength(name)))).toBeLessThan(200);
  expect(evaluation('drawn/chest-2-evaluation.json').piece).toBe('Chest 2');
  expect(evaluation('drawn/chest-3-evaluation.json').piece).toBe('CHEST');
  expect(existsSync(bench.path('escape-evaluation.json'))).toBe(false);
});

test('an output that is a file, or lies below one, is refused and stays', () => {
  bench.write('drawn', 'a letter');
  const clear = /^\d+ notes in 1 file\n/;
  const onFile = bench.run(['make', 'sideboard.fettle', '--out', 'drawn']);
  expectRefusal(
    { ...onFile, err: onFile.err.replace(clear, '') },
    'drawn is a file, not a folder; nothing was changed',
  );
  const below = bench.run(['make', 'sideboard.fettle', '--out', 'drawn/hall']);
  expectRefusal(
    { ...below, err: below.err.replace(clear, '') },
    'drawn/hall cannot be written: a part of its path is a file, not a folder; nothing was changed',
  );
  expect(bench.read('drawn')).toBe('a letter');
});

test('a folder without permission is refused, whether it is there or is to be made', () => {
  chmodSync(bench.folder, 0o755);
  mkdirSync(bench.path('locked'));
  chmodSync(bench.path('locked'), 0o555);
  for (const out of ['locked', 'locked/inner']) {
    const ended = bench.run(['make', 'sideboard.fettle', '--out', out], { asNobody: true });
    expectRefusal(
      { ...ended, err: ended.err.replace(/^\d+ notes in 1 file\n/, '') },
      `${out} may not be written: permission is missing; nothing was changed`,
    );
  }
  expect(readdirSync(bench.path('locked'))).toEqual([]);
  // May be listed, may not even be entered.
  chmodSync(bench.path('locked'), 0o444);
  const ended = bench.run(['make', 'sideboard.fettle', '--out', 'locked'], { asNobody: true });
  expectRefusal(
    { ...ended, err: ended.err.replace(/^\d+ notes in 1 file\n/, '') },
    'locked may not be written: permission is missing; nothing was changed',
  );
  chmodSync(bench.path('locked'), 0o755);
});
