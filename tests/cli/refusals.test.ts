import { chmodSync, closeSync, existsSync, ftruncateSync, mkdirSync, openSync, writeSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { Bench, expectRefusal } from './running-cli.ts';

let bench: Bench;
beforeEach(() => {
  bench = new Bench();
});
afterEach(() => bench.remove());

const commands = [
  { command: 'check', words: (file: string) => ['check', file] },
  { command: 'make', words: (file: string) => ['make', file, '--out', 'drawn'] },
] as const;

describe.each(commands)('what $command cannot read is told in one line, exit 2:', ({ words }) => {
  afterEach(() => expect(existsSync(bench.path('drawn'))).toBe(false));

  test('a file that is not there', () => {
    expectRefusal(bench.run(words('gone.fettle')), 'gone.fettle is not there');
  });

  test('a file that is not there, of any name', () => {
    expectRefusal(bench.run(words('gone')), 'gone is not there');
  });

  test('a folder', () => {
    mkdirSync(bench.path('folder.fettle'));
    expectRefusal(bench.run(words('folder.fettle')), 'folder.fettle is a folder, not a file');
    expectRefusal(bench.run(words('.')), '. is a folder, not a file');
  });

  test('a path through a file', () => {
    expectRefusal(
      bench.run(words('shop.fettle/piece.fettle')),
      'shop.fettle/piece.fettle cannot be read: a part of its path is a file, not a folder',
    );
  });

  test('bytes that are no text', () => {
    bench.write('binary.fettle', Uint8Array.of(0x50, 0x4b, 3, 4, 0, 0, 0, 8));
    expectRefusal(bench.run(words('binary.fettle')), 'binary.fettle is not a text: it holds bytes of value zero');
    bench.write('latin.fettle', Uint8Array.of(0x2f, 0x2f, 0x20, 0xe9, 0x0a));
    expectRefusal(bench.run(words('latin.fettle')), 'latin.fettle is not written in UTF-8');
    bench.write('wide.fettle', Buffer.from('\ufeffunits inches', 'utf16le'));
    expectRefusal(bench.run(words('wide.fettle')), 'wide.fettle is written in UTF-16; save it as UTF-8');
  });

  test('50 MB, as a file and on the standard input', () => {
    const file = openSync(bench.path('large.fettle'), 'w');
    writeSync(file, 'units inches\n');
    ftruncateSync(file, 50_000_000);
    closeSync(file);
    expectRefusal(
      bench.run(words('large.fettle')),
      'large.fettle is too large to be a piece: 50 MB, the limit is 4 MB',
    );
    expectRefusal(
      bench.run(words('-'), { input: '// a line\n'.repeat(5_000_000) }),
      'standard input is too large to be a piece: more than 4 MB, the limit is 4 MB',
    );
  });

  test('a file without permission', () => {
    chmodSync(bench.folder, 0o755);
    chmodSync(bench.path('sideboard.fettle'), 0o000);
    expectRefusal(
      bench.run(words('sideboard.fettle'), { asNobody: true }),
      'sideboard.fettle may not be read: permission is missing',
    );
  });

  test('a file of another kind', () => {
    bench.write('notes.txt', 'units inches');
    expectRefusal(bench.run(words('notes.txt')), /^notes\.txt does not end in \.fettle; .*--as NAME\.fettle$/);
  });
});

test('what can be read is checked all the same, and the exit code is 2', () => {
  const { code, out, err } = bench.run(['check', 'gone.fettle', 'sideboard.fettle']);
  expect(code).toBe(2);
  expect(out).toContain('sideboard.fettle:');
  expect(err).toMatch(/^gone\.fettle is not there\n\d+ notes in 1 file\n$/);
  const json = bench.run(['check', 'gone.fettle', 'sideboard.fettle', '--format', 'json']);
  expect(json.code).toBe(2);
  expect(JSON.parse(json.out)).toMatchObject({
    files: ['sideboard.fettle'],
    refused: [{ file: 'gone.fettle', why: 'is not there' }],
  });
});

test('a used file that is no text is told, exit 2', () => {
  bench.write('shop.fettle', Uint8Array.of(1, 0, 2));
  const { code, err } = bench.run(['check', 'sideboard.fettle']);
  expect(code).toBe(2);
  expect(err).toMatch(/shop\.fettle is not a text/);
});

test('at the limit a text is still read', () => {
  const text = '// all one remark '.padEnd(4_000_000, '.');
  expect(bench.run(['check', '-'], { input: text }).code).toBe(0);
  expect(bench.run(['check', '-'], { input: `${text}/` }).code).toBe(2);
});

test.each([
  [[], /^Usage: fettle/],
  [['mend', 'sideboard.fettle'], "error: unknown command 'mend'"],
  [['check'], "error: missing required argument 'files'"],
  [['check', '--loud', 'sideboard.fettle'], "error: unknown option '--loud'"],
  [['check', '--format', 'xml', 'sideboard.fettle'], /^error: option '--format <format>' argument 'xml' is invalid/],
  [['make', 'sideboard.fettle'], "error: required option '--out <folder>' not specified"],
  [['make', 'sideboard.fettle', 'shop.fettle', '--out', 'drawn'], /^error: too many arguments/],
  [['check', '-', '--as', 'notes.txt'], 'standard input needs a name that ends in .fettle after --as'],
])('called wrongly, %j: a hint, exit 2', (words, line) => {
  const { code, out, err } = bench.run(words);
  expect(code).toBe(2);
  expect(out).toBe('');
  if (typeof line === 'string') expect(err).toBe(`${line}\n`);
  else expect(err).toMatch(line);
  expect(err).not.toMatch(/^\s+at /m);
});

test('help and version are answers, exit 0', () => {
  for (const words of [['--help'], ['check', '--help'], ['make', '--help']]) {
    const { code, out, err } = bench.run(words);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('Exit codes: 0 ');
  }
  expect(bench.run(['--version'])).toEqual({ code: 0, out: '0.1.0\n', err: '' });
});

test('a reader that stops reading gets no trace', () => {
  const uses = Array.from({ length: 4000 }, (_, at) => `use "gone ${at}.fettle"`).join('\n');
  bench.write('many.fettle', uses);
  const { out, err } = bench.shell('fettle check many.fettle | head -n 1; echo "ended $PIPESTATUS"');
  expect(out).toMatch(/^many\.fettle:1:5 error file-not-found .*\nended 1\n$/);
  expect(err).toBe('501 errors in 1 file\n');
});

test.runIf(existsSync('/dev/full'))('an output that takes nothing is told, exit 2', () => {
  const { code, err } = bench.shell('fettle check sideboard.fettle > /dev/full');
  expect(code).toBe(2);
  expect(err).toMatch(/the output could not be written: ENOSPC\n/);
  expect(err).not.toMatch(/^\s+at /m);
});
