import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { CheckJson } from '@fettle/cli';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { Bench } from './running-cli.ts';

/** `fettle check` in the formats that services read: SARIF 2.1.0 and the workflow commands of GitHub's runners. */

let bench: Bench;
beforeEach(() => {
  bench = new Bench();
});
afterEach(() => bench.remove());

const overfull = ['drawer "blankets" rest', 'drawer "blankets" front 11 high'] as const;

interface Region {
  readonly startLine: number;
  readonly startColumn: number;
  readonly endLine: number;
  readonly endColumn: number;
  readonly charOffset: number;
  readonly charLength: number;
}
interface Location {
  readonly id?: number;
  readonly message?: { readonly text: string };
  readonly physicalLocation: { readonly artifactLocation: { readonly uri: string }; readonly region: Region };
}
interface Fix {
  readonly description: { readonly text: string };
  readonly artifactChanges: readonly {
    readonly replacements: readonly { readonly deletedRegion: Region; readonly insertedContent: { text: string } }[];
  }[];
}
interface Result {
  readonly ruleId: string;
  readonly ruleIndex: number;
  readonly level: string;
  readonly message: { readonly text: string };
  readonly locations: readonly Location[];
  readonly relatedLocations?: readonly Location[];
  readonly fixes?: readonly Fix[];
}
interface Run {
  readonly tool: { readonly driver: { readonly rules: readonly { readonly id: string }[] } };
  readonly columnKind: string;
  readonly invocations: readonly {
    readonly executionSuccessful: boolean;
    readonly toolExecutionNotifications?: readonly { readonly message: { readonly text: string } }[];
  }[];
  readonly results: readonly Result[];
}

/** The schema as Microsoft's package for SARIF ships it, and the validator that package uses. */
const besideSchema = createRequire(createRequire(import.meta.url).resolve('@microsoft/jest-sarif/package.json'));
interface Validator {
  addMetaSchema(schema: object): void;
  compile(schema: object): { (value: unknown): boolean; readonly errors?: readonly object[] | null };
}
const Ajv = besideSchema('ajv') as new (options: object) => Validator;
const ajv = new Ajv({ schemaId: 'auto', allErrors: true, unknownFormats: ['uri-reference'] });
ajv.addMetaSchema(besideSchema('ajv/lib/refs/json-schema-draft-04.json') as object);
const isSarif = ajv.compile(
  JSON.parse(readFileSync(besideSchema.resolve('./lib/schemas/sarif-2.1.0-rtm.5.json'), 'utf8')) as object,
);

/** The one run of a log that is valid by the published schema. */
function runOf(out: string): Run {
  const log = JSON.parse(out) as { readonly runs: readonly Run[] };
  isSarif(log);
  expect(isSarif.errors ?? []).toEqual([]);
  const [run, ...others] = log.runs;
  if (run === undefined) throw new Error('the log holds no run');
  expect(others).toEqual([]);
  return run;
}

function wordsAt(text: string, region: Region): string {
  return text.slice(region.charOffset, region.charOffset + region.charLength);
}

describe('as SARIF', () => {
  test('the schema refuses what is no SARIF', () => {
    expect(isSarif({ version: '2.1.0', runs: [{ tool: {} }] })).toBe(false);
  });

  test('the same findings at the same places, and their mends as fixes that clear them', () => {
    const text = bench.sideboard(overfull);
    bench.write('over.fettle', text);
    const asJson = JSON.parse(bench.run(['check', 'over.fettle', '--format', 'json']).out) as CheckJson;
    const { code, out } = bench.run(['check', 'over.fettle', '--format', 'sarif']);
    expect(code).toBe(1);
    const run = runOf(out);
    expect(run.columnKind).toBe('utf16CodeUnits');
    expect(run.invocations[0]?.executionSuccessful).toBe(true);
    expect(run.results.map(({ ruleId, level }) => [ruleId, level])).toEqual(
      asJson.findings.map((finding) => [finding.code, finding.severity]),
    );
    for (const each of run.results) {
      // 3.27.6: the index leads to the rule of that id.
      expect(run.tool.driver.rules[each.ruleIndex]?.id).toBe(each.ruleId);
    }
    const error = run.results.find(({ level }) => level === 'error');
    const [location] = error?.locations ?? [];
    if (error === undefined || location === undefined) throw new Error('there is no error with a place');
    expect(location.physicalLocation.artifactLocation.uri).toBe('over.fettle');
    const { region } = location.physicalLocation;
    expect(wordsAt(text, region)).toBe('front 11 high');
    const line = text.split('\n')[region.startLine - 1] ?? '';
    // 3.30.6 and 3.30.8: columns count from 1, the end column is one behind the last character.
    expect(line.slice(region.startColumn - 1, region.endColumn - 1)).toBe('front 11 high');
    expect(error.relatedLocations?.map(({ id }) => id)).toEqual(error.relatedLocations?.map((_, index) => index + 1));

    const replacements = error.fixes?.[0]?.artifactChanges.flatMap((change) => change.replacements) ?? [];
    expect(replacements.length).toBeGreaterThan(0);
    let mended = text;
    for (const { deletedRegion, insertedContent } of [...replacements].sort(
      (a, b) => b.deletedRegion.charOffset - a.deletedRegion.charOffset,
    )) {
      const end = deletedRegion.charOffset + deletedRegion.charLength;
      mended = mended.slice(0, deletedRegion.charOffset) + insertedContent.text + mended.slice(end);
    }
    expect(bench.run(['check', '-'], { input: mended }).code).toBe(0);
  });

  test('braces and brackets in words are no placeholders and no links (3.11.5, 3.11.6)', () => {
    bench.write('named.fettle', bench.sideboard(['"knife 2"', '"{0} [here](1)"']));
    const run = runOf(bench.run(['check', 'named.fettle', '--format', 'sarif']).out);
    const messages = run.results.filter(({ ruleId }) => ruleId === 'unknown-name').map(({ message }) => message.text);
    expect(messages.length).toBeGreaterThan(0);
    for (const message of messages) expect(message).toContain('{{0}} \\[here](1)');
    for (const { message } of run.results) expect(message.text).not.toMatch(/(?<!\{)\{\d/);
  });

  test('names of files are URIs; what lies outside the folder is absolute', () => {
    bench.write('two words #1/over ü.fettle', bench.sideboard(overfull, ['"shop.fettle"', '"../shop.fettle"']));
    const inside = runOf(bench.run(['check', './two words #1/over ü.fettle', '--format', 'sarif']).out);
    const uris = inside.results.map((each) => each.locations[0]?.physicalLocation.artifactLocation.uri);
    expect(new Set(uris)).toEqual(new Set(['two%20words%20%231/over%20%C3%BC.fettle']));
    const absolute = runOf(bench.run(['check', bench.path('two words #1/over ü.fettle'), '--format', 'sarif']).out);
    expect(absolute.results[0]?.locations[0]?.physicalLocation.artifactLocation.uri).toMatch(
      /^file:\/\/\/.*two%20words%20%231/,
    );
  });

  test('what could not be read is told in the log as well', () => {
    const { code, out } = bench.run(['check', 'nowhere.fettle', 'sideboard.fettle', '--format', 'sarif']);
    expect(code).toBe(2);
    const [invocation] = runOf(out).invocations;
    expect(invocation?.executionSuccessful).toBe(false);
    expect(invocation?.toolExecutionNotifications?.[0]?.message.text).toContain('nowhere.fettle');
  });

  test('a clean text gives a log without results', () => {
    expect(runOf(bench.run(['check', '-', '--format', 'sarif'], { input: '' }).out).results).toEqual([]);
  });
});

/** A workflow command as GitHub's runner takes it apart. */
function readCommand(line: string) {
  const found = /^::(?<name>\w+)(?: (?<properties>[^:]*))?::(?<data>.*)$/.exec(line)?.groups;
  if (found === undefined) throw new Error(`no workflow command: ${line}`);
  const plain = (words: string) =>
    words
      .replaceAll('%0D', '\r')
      .replaceAll('%0A', '\n')
      .replaceAll('%3A', ':')
      .replaceAll('%2C', ',')
      .replaceAll('%25', '%');
  const given = (found['properties'] ?? '').split(',').filter((each) => each !== '');
  const properties = Object.fromEntries(
    given.map((each) => [each.slice(0, each.indexOf('=')), plain(each.slice(each.indexOf('=') + 1))]),
  );
  return { name: found['name'], properties, data: plain(found['data'] ?? '') };
}

describe('as workflow commands', () => {
  test('one command for each finding, with place, heading, sentence and ways out', () => {
    const text = bench.sideboard(overfull);
    bench.write('over.fettle', text);
    const { code, out } = bench.run(['check', 'over.fettle', '--format', 'github']);
    expect(code).toBe(1);
    const commands = out.trimEnd().split('\n').map(readCommand);
    const [error, ...others] = commands.filter(({ name }) => name === 'error');
    expect(others).toEqual([]);
    const { col, endColumn, file, line, title } = error?.properties ?? {};
    expect(file).toBe('over.fettle');
    expect(title).toBe('Fronts and gaps do not add up to the face');
    expect(text.split('\n')[Number(line) - 1]?.slice(Number(col) - 1, Number(endColumn) - 1)).toBe('front 11 high');
    expect(error?.data).toMatch(/^fronts and gaps need 29-15\/32".*27\/32" too much\nmend: /);
    expect(new Set(commands.map(({ name }) => name))).toEqual(new Set(['error', 'notice']));
  });

  test('nothing in a name or a path ends a property, a command or a line', () => {
    const file = 'a,b::c%0A 100%.fettle';
    bench.write(file, bench.sideboard(['"knife 2"', '"kni::error,%0A fe"']));
    const lines = bench.run(['check', file, '--format', 'github']).out.trimEnd().split('\n');
    const commands = lines.map(readCommand);
    for (const { properties } of commands) expect(properties['file']).toBe(file);
    const unknown = commands.filter(({ data }) => data.includes('kni::error,%0A fe'));
    expect(unknown.length).toBeGreaterThan(0);
  });

  test('what could not be read is an error without a place', () => {
    const { code, out } = bench.run(['check', 'nowhere.fettle', '--format', 'github']);
    expect(code).toBe(2);
    expect(readCommand(out.trimEnd())).toEqual({
      name: 'error',
      properties: {},
      data: expect.stringContaining('nowhere.fettle'),
    });
  });
});
