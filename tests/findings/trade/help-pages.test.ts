import { catalogue } from '@fettle/findings';
import { describe, expect, test } from 'vitest';
import { read } from './one-piece.ts';
import { tradeCodes } from './trade-codes.ts';

/** What a help page calls wrong gives its finding and nothing else, what it calls right gives nothing at all. */

function blocks(code: string, tag: 'wrong' | 'right'): string[] {
  const help = catalogue.get(code)?.help ?? '';
  return [...help.matchAll(/^```fettle (wrong|right)\n([\s\S]*?)^```$/gm)]
    .filter((found) => found[1] === tag)
    .map((found) => found[2] ?? '');
}

describe.each(tradeCodes)('%s', (code) => {
  test('is shown wrong', async () => {
    const texts = blocks(code, 'wrong');
    expect(texts).not.toEqual([]);
    for (const text of texts) expect((await read(text)).findings.map((each) => each.code)).toEqual([code]);
  });

  test('is shown right', async () => {
    const texts = blocks(code, 'right');
    expect(texts).not.toEqual([]);
    for (const text of texts) expect((await read(text)).findings.map((each) => each.code)).toEqual([]);
  });
});
