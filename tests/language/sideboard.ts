import { readFileSync } from 'node:fs';
import type { FixtureFile } from './harness/fixture.ts';

/** The examples, as they are shipped. */
export function example(name: string): FixtureFile {
  return { name, text: readFileSync(new URL(`../../examples/${name}`, import.meta.url), 'utf8') };
}

export const sideboard = example('sideboard.fettle').text;
export const shop = example('shop.fettle').text;

/** The sideboard with some words replaced, and its shop file: a fixture. Throws where the words do not stand. */
export function sideboardWith(words: string, replacement: string): string {
  if (sideboard.split(words).length !== 2) throw new Error(`the sideboard does not say '${words}' once`);
  return `${sideboard.replace(words, () => replacement)}\n// file: shop.fettle\n${shop}`;
}
