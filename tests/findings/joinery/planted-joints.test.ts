import { describe, expect, test } from 'vitest';
import { read } from '../trade/one-piece.ts';
import { plantedJoints } from './planted-joints.ts';

/** One slip in how a piece is joined: exactly its finding, at exactly its words; and every mend clears it. */

test('there are twenty at least', () => {
  expect(plantedJoints.length).toBeGreaterThanOrEqual(20);
});

const told = (text: string) =>
  read(text).then(({ findings, taking }) => ({
    findings: findings.filter(({ severity, code }) => severity !== 'note' && code !== 'not-checked-yet'),
    taking,
  }));

describe.each(plantedJoints)('$slip', ({ text, code }) => {
  const plain = text.replace(/[«»]/g, '');
  const start = text.indexOf('«');
  const words = /«([\s\S]*)»/.exec(text)?.[1];

  test(`gives ${code} at its words`, async () => {
    const { findings } = await told(plain);
    expect(findings.map((each) => [each.code, plain.slice(each.start, each.end), each.start, each.sentence])).toEqual([
      [code, words, start, expect.stringMatching(/\d|takes|meets|is a blade|is asked/)],
    ]);
  });

  test('is cleared by each of its mends', async () => {
    const { findings, taking } = await told(plain);
    for (const fix of findings.flatMap(({ fixes }) => fixes)) {
      const after = await told(taking(fix));
      expect(
        after.findings.map((each) => each.sentence),
        fix.title,
      ).toEqual([]);
    }
  });
});
