import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as findings from '@fettle/findings';
import { describe, expect, test } from 'vitest';

/** The catalogue holds together: every entry is offered, documented, and raised somewhere in the source. */

const packages = fileURLToPath(new URL('../../packages/', import.meta.url));
const source = (['engine', 'language'] as const).flatMap((room) => sourcesIn(`${packages}${room}/src`)).join('\n');

function sourcesIn(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    if (entry.isDirectory()) return entry.name === 'generated' ? [] : sourcesIn(`${folder}/${entry.name}`);
    return entry.name.endsWith('.ts') ? [withoutImports(readFileSync(`${folder}/${entry.name}`, 'utf8'))] : [];
  });
}

function withoutImports(text: string): string {
  return text.replace(/^import [\s\S]*?;$/gm, '');
}

function identifierOf(code: string): string {
  return code.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
}

const entries = [...findings.catalogue.values()].map((entry) => [entry.code, entry] as const);

test('it has forty entries at least', () => {
  expect(entries.length).toBeGreaterThanOrEqual(40);
});

test('each file of the folder is one entry, named for its code', () => {
  const files = readdirSync(`${packages}findings/src/catalogue`).filter((name) => name !== 'index.ts');
  expect(files.sort()).toEqual(entries.map(([code]) => `${code}.ts`).sort());
});

test('no title is given twice', () => {
  const titles = entries.map(([, { title }]) => title);
  expect([...new Set(titles)]).toEqual(titles);
});

describe.each(entries)('%s', (code, entry) => {
  test('is made of words with hyphens between them', () => {
    expect(code).toMatch(/^[a-z]+(-[a-z]+)+$/);
  });

  test('is offered by the room under its own name', () => {
    expect((findings as Readonly<Record<string, unknown>>)[identifierOf(code)]).toBe(entry);
  });

  test('has a title without a full stop, and a help page of its own words', () => {
    expect(entry.title).toMatch(/^[A-Z].*[^.]$/);
    const prose = entry.help.replace(/```[\s\S]*?```/g, '').trim();
    expect(prose.length).toBeGreaterThan(60);
    expect(entry.help).not.toContain('TO BE WRITTEN');
  });

  test('is raised somewhere, with all its ways out and all its other parties', () => {
    expect(source).toMatch(new RegExp(`\\b${identifierOf(code)}\\b`));
    for (const word of [...Object.keys(entry.mends), ...Object.keys(entry.related)]) {
      // As a value, or as the key it is given under.
      expect(source, word).toMatch(new RegExp(`'${word}'`));
    }
  });
});
