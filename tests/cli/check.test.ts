import type { CheckJson, FindingJson } from '@fettle/cli';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { Bench } from './running-cli.ts';

let bench: Bench;
beforeEach(() => {
  bench = new Bench();
});
afterEach(() => bench.remove());

const overfull = ['drawer "blankets" rest', 'drawer "blankets" front 11 high'] as const;

test('the sideboard is clean: only notes, exit 0', () => {
  const { code, out, err } = bench.run(['check', 'sideboard.fettle']);
  expect(code).toBe(0);
  const lines = out.trimEnd().split('\n');
  expect(lines.length).toBeGreaterThan(0);
  for (const line of lines) expect(line).toMatch(/^sideboard\.fettle:\d+:\d+ note (not-checked-yet|anchor-to-wall) \S/);
  expect(err).toBe(`${lines.length} notes in 1 file\n`);
});

test('a shop file on its own is clean', () => {
  expect(bench.run(['check', 'shop.fettle']).code).toBe(0);
});

test('fronts that do not add up: place, sentence, the other words and the mends, exit 1', () => {
  const text = bench.sideboard(overfull);
  bench.write('over.fettle', text);
  const { code, out, err } = bench.run(['check', 'over.fettle']);
  expect(code).toBe(1);
  const lines = out.split('\n');
  const at = lines.findIndex((line) => line.includes(' error '));
  // 5 + 6 + 7 + 11 and five gaps of 3/32 are 29-15/32; the face is 28-5/8 high: 27/32 too much.
  const place = /^over\.fettle:(\d+):(\d+) error fronts-do-not-add-up .*29-15\/32".*28-5\/8".*27\/32" too much/.exec(
    lines[at] ?? '',
  );
  expect(place).not.toBeNull();
  const words = text.split('\n')[Number(place?.[1]) - 1]?.slice(Number(place?.[2]) - 1);
  expect(words).toMatch(/^(front )?11 high/);
  const indented = lines.slice(at + 1).filter((line) => line.startsWith('    '));
  expect(indented.some((line) => /^ {4}over\.fettle:\d+:\d+ \S/.test(line))).toBe(true);
  expect(indented.some((line) => line.startsWith('    mend: ') && line.includes('10-5/32"'))).toBe(true);
  expect(err).toMatch(/^1 error, \d+ notes in 1 file\n$/);
});

function errorsIn(json: string): readonly FindingJson[] {
  return (JSON.parse(json) as CheckJson).findings.filter((finding) => finding.severity === 'error');
}

test('as JSON the same with exact facts, and its mend makes the text clean', () => {
  const text = bench.sideboard(overfull);
  bench.write('over.fettle', text);
  const { code, out } = bench.run(['check', '--format', 'json', 'over.fettle']);
  expect(code).toBe(1);
  const report = JSON.parse(out) as CheckJson;
  expect(report).toMatchObject({ format: 'fettle-check', version: 1, files: ['over.fettle'], errors: 1, refused: [] });
  const [error] = errorsIn(out);
  expect(error).toMatchObject({
    code: 'fronts-do-not-add-up',
    file: 'over.fettle',
    facts: {
      needed: { exact: '943/32', shown: '29-15/32"' },
      available: { exact: '229/8', shown: '28-5/8"' },
      difference: { exact: '27/32', shown: '27/32"' },
    },
  });
  const mend = error?.mends[0];
  expect(mend?.preferred).toBe(true);
  let mended = text;
  for (const edit of [...(mend?.edits ?? [])].sort((a, b) => b.start.offset - a.start.offset)) {
    mended = mended.slice(0, edit.start.offset) + edit.text + mended.slice(edit.end.offset);
  }
  expect(mended).not.toBe(text);
  expect(bench.run(['check', '-'], { input: mended }).code).toBe(0);
});

test('the standard input is read, and counts as standing where --as says', () => {
  bench.write('hall/shop.fettle', bench.read('shop.fettle'));
  const input = bench.read('sideboard.fettle');
  bench.write('elsewhere/marker', '');
  const beside = bench.run(['check', '-', '--as', 'hall/piece.fettle'], { input });
  expect(beside.code).toBe(0);
  expect(beside.out).toMatch(/^hall\/piece\.fettle:\d+:\d+ note /);
  const alone = bench.run(['check', '-', '--as', 'elsewhere/piece.fettle'], { input });
  expect(alone.code).toBe(1);
  expect(alone.out).toContain('elsewhere/piece.fettle:2:5 error file-not-found ');
});

test('several texts: all findings, a text named twice once, and the worst decides', () => {
  bench.write('over.fettle', bench.sideboard(overfull));
  const { code, out, err } = bench.run(['check', 'sideboard.fettle', 'over.fettle', './sideboard.fettle']);
  expect(code).toBe(1);
  const files = new Set(out.match(/^[^ :]+(?=:)/gm));
  expect([...files]).toEqual(['sideboard.fettle', 'over.fettle']);
  expect(err).toMatch(/ in 2 files\n$/);
  const once = bench.run(['check', 'sideboard.fettle']).out;
  expect(out.startsWith(once)).toBe(true);
});

test('a finding in a used file names that file, once for all texts that use it', () => {
  bench.write('shop.fettle', bench.read('shop.fettle').replace('14 long', '14 loong'));
  bench.write('other.fettle', bench.read('sideboard.fettle'));
  const { out } = bench.run(['check', 'sideboard.fettle', 'other.fettle', 'shop.fettle', '--format', 'json']);
  const { findings } = JSON.parse(out) as CheckJson;
  const inShop = findings.filter((finding) => finding.severity === 'error' && finding.file === 'shop.fettle');
  expect(inShop.length).toBeGreaterThan(0);
  const places = inShop.map((finding) => `${finding.code} ${finding.start.offset}`);
  expect(new Set(places).size).toBe(places.length);
});

test('lines and columns hold with CR LF, a byte order mark and characters outside the basic plane', () => {
  const text = `\ufeff// \u{1fa9a}\r\nuse "nowhere.fettle"\r\n`;
  bench.write('marks.fettle', text);
  expect(bench.run(['check', 'marks.fettle']).out).toContain('marks.fettle:2:5 error file-not-found ');
  bench.write('marks.fettle', 'piece "\u{1fa9a}" { sizes 60 wide }');
  // Seven letters, the saw, which counts for two as in editors, and four more.
  expect(bench.run(['check', 'marks.fettle']).out).toContain('marks.fettle:1:14 error unknown-word ');
});

test('nothing in a name steers the terminal or starts a line of its own', () => {
  bench.write(
    'named.fettle',
    bench.sideboard(['"knife 2"', '"kni\u001b[31mfe\u202e 9"'], ['"ash" thick 7/8', '"a\u001b[2Jsh" thick 7/8']),
  );
  const { code, out } = bench.run(['check', 'named.fettle']);
  expect(code).toBe(1);
  expect(out).toContain('unknown-name');
  // biome-ignore lint/suspicious/noControlCharactersInRegex: that there is none of them is the point
  expect(out).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202e]/);
});

test('an empty text is clean', () => {
  expect(bench.run(['check', '-'], { input: '' }).code).toBe(0);
});
