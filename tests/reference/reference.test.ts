import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { catalogue } from '@fettle/findings';
import { findingsReference, languageReference, referenceExamples } from '@fettle/language';
import { describe, expect, test } from 'vitest';
import { findingsIn } from '../findings/applying-fixes.ts';
import { services } from '../language/harness/workbench.ts';

/** The two references are what vocabulary and catalogue say now; `npm run reference` writes them anew. */

const repository = fileURLToPath(new URL('../../', import.meta.url));
const examples = readdirSync(`${repository}examples`)
  .filter((name) => name.endsWith('.fettle'))
  .sort()
  .map((name) => readFileSync(`${repository}examples/${name}`, 'utf8'));

describe('the reference of the language', () => {
  const text = languageReference(services, examples);

  test('is up to date', async () => {
    await expect(text).toMatchFileSnapshot(`${repository}packages/language/REFERENCE.md`);
  });

  test('shows every statement as some text says it', () => {
    const sections = text.split(/^### /m).slice(1);
    const bare = sections.filter((section) => !section.includes('```fettle\n'));
    expect(bare.map((section) => section.split('\n')[0])).toEqual([]);
  });

  test('says what each kind of blank is filled with', () => {
    const blanks = new Set([...text.matchAll(/<(\w+)>/g)].map((found) => found[1]));
    for (const blank of blanks) expect(text).toContain(`| \`<${blank}>\` | `);
  });

  test('shows only what is right', async () => {
    const found = await findingsIn({ files: [{ name: 'piece.fettle', text: referenceExamples }] });
    const grave = found.filter((each) => each.severity === 'error');
    expect(grave.map((each) => `${each.code}: ${each.sentence}`)).toEqual([]);
  });
});

describe('the reference of findings', () => {
  const text = findingsReference();

  test('is up to date', async () => {
    await expect(text).toMatchFileSnapshot(`${repository}packages/findings/FINDINGS.md`);
  });

  test('has a page for every code', () => {
    for (const code of catalogue.keys()) expect(text).toContain(`\n## ${code}\n`);
  });
});
