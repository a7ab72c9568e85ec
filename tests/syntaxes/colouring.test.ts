import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { colour, written } from './colouring.ts';

async function line(text: string): Promise<string> {
  return written((await colour(text))[0] ?? []);
}

describe('colouring', () => {
  test.each(['sideboard', 'shop'])('of %s.fettle is as approved', async (name) => {
    const text = readFileSync(new URL(`../../examples/${name}.fettle`, import.meta.url), 'utf8');
    const lines = (await colour(text)).map(written).join('\n');
    await expect(lines).toMatchFileSnapshot(`../approved/${name}.colours.txt`);
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

  test('nothing in the examples is left without a colour', async () => {
    for (const name of ['sideboard', 'shop']) {
      const text = readFileSync(new URL(`../../examples/${name}.fettle`, import.meta.url), 'utf8');
      const plain = (await colour(text)).flat().filter((word) => word.colour === 'plain');
      expect(plain).toEqual([]);
    }
  });
});
