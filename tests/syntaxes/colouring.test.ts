import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { colour, written } from './colouring.ts';
import { wordsOfVocabulary } from './words-of-vocabulary.ts';

const examples = new URL('../../examples/', import.meta.url);
const exampleFiles = readdirSync(examples).filter((name) => name.endsWith('.fettle'));

async function line(text: string): Promise<string> {
  return written((await colour(text))[0] ?? []);
}

describe('colouring', () => {
  test.each(['sideboard.fettle', 'shop.fettle'])('of %s is as approved', async (name) => {
    const lines = (await colour(readFileSync(new URL(name, examples), 'utf8'))).map(written).join('\n');
    await expect(lines).toMatchFileSnapshot(`../approved/${name.replace('.fettle', '.colours.txt')}`);
  });

  test('an inch mark closes its number and opens no name', async () => {
    expect(await line('size 60" wide, 5\'-2-3/8" high, 17-1/2" deep')).toBe(
      'size:statement 60":length wide:measure , 5\'-2-3/8":length high:measure , 17-1/2":length deep:measure',
    );
  });

  test('millimetres, centimetres and typographic marks are lengths', async () => {
    expect(await line('gap 2mm, 4.5 cm, 19 mm, 5′, ½″, 3½”')).toBe(
      'gap:statement 2mm:length , 4.5 cm:length , 19 mm:length , 5′:length , ½″:length , 3½”:length',
    );
  });

  test('a hyphen inside a number belongs to it, with spaces around it is arithmetic', async () => {
    expect(await line('front 17-1/2')).toBe('front:statement 17-1/2:number');
    expect(await line('front 17 - 1/2')).toBe('front:statement 17:number -:operator 1/2:number');
  });

  test('a hyphen inside a word belongs to it', async () => {
    expect(await line('window-sill 36 above floor')).toBe('window-sill:statement 36:number above:relation floor:word');
  });

  test('words that name a statement elsewhere only say where, after a small word', async () => {
    expect(await line('bottom between sides')).toBe('bottom:statement between:relation sides:word');
  });

  test('a name that was never closed ends with its line', async () => {
    const lines = await colour('drawer "cards front 5 high\ndrawer "dice" rest');
    expect(lines.map(written)).toEqual([
      'drawer:statement "cards front 5 high:declaration',
      'drawer:statement "dice":declaration rest:measure',
    ]);
  });

  test('a block comment runs across lines', async () => {
    const lines = await colour('size 60 wide /* not\n yet */ 34 high');
    expect(lines.map(written)).toEqual([
      'size:statement 60:number wide:measure /*:comment not:comment',
      'yet:comment */:comment 34:number high:measure',
    ]);
  });

  test.each(exampleFiles)('nothing in %s is left without a colour', async (name) => {
    const words = (await colour(readFileSync(new URL(name, examples), 'utf8'))).flat();
    expect(words.filter((word) => word.colour === 'plain')).toEqual([]);
  });

  test('a word of the vocabulary that only begins statements is seen as one, wherever it stands', async () => {
    const { statements, small } = wordsOfVocabulary();
    const missed: string[] = [];
    for (const word of statements) {
      if (small.has(word)) continue;
      const [, , found] = (await colour(`size 1   ${word} 2`))[0] ?? [];
      if (found?.text !== word || found.colour !== 'statement') missed.push(word);
    }
    expect(missed).toEqual([]);
  });

  test('every statement of the vocabulary is seen as one at the beginning of a line', async () => {
    const missed: string[] = [];
    for (const word of wordsOfVocabulary().statements) {
      const [found] = (await colour(`  ${word} 2`))[0] ?? [];
      if (found?.text !== word || found.colour !== 'statement') missed.push(word);
    }
    expect(missed).toEqual([]);
  });

  test('what gives a thing its name is seen to do so', async () => {
    const missed: string[] = [];
    for (const word of wordsOfVocabulary().declaring) {
      const [, found] = (await colour(`  ${word} "thing"`))[0] ?? [];
      if (found?.colour !== 'declaration') missed.push(word);
    }
    expect(missed).toEqual([]);
  });
});
