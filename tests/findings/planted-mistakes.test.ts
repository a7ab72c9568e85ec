import type { PlacedFinding } from '@fettle/language';
import { expect, test } from 'vitest';
import { fileName } from '../language/harness/workbench.ts';
import { findingsIn } from './applying-fixes.ts';
import { mistakes, placeOfMistake, withMistake } from './mistakes.ts';

/** One slip in an example that was free of them: exactly its finding, at exactly its words, and nothing else. */

test('there are sixty at least', () => {
  expect(mistakes.length).toBeGreaterThanOrEqual(60);
});

test('the examples have none of them as they are', async () => {
  const [first] = mistakes;
  if (first === undefined) throw new Error('no mistakes');
  const found = await findingsIn(withMistake({ ...first, to: first.from }));
  expect(found.filter((each) => each.severity !== 'note').map((each) => each.sentence)).toEqual([]);
});

test.each(mistakes)('$into: $slip gives $code', async (mistake) => {
  const fixture = withMistake(mistake);
  const before = await findingsIn(withMistake({ ...mistake, to: mistake.from }));
  // What the notes of the example say may change with its sizes; that there are any does not.
  const known = new Set(before.filter((each) => each.severity === 'note').map(fileAndCode));
  const added = (await findingsIn(fixture)).filter((each) => each.severity !== 'note' || !known.has(fileAndCode(each)));
  const text = fixture.files[0]?.text ?? '';
  const place = placeOfMistake(mistake);
  expect(
    added.map(({ uri, start, end, code, sentence }) => ({
      file: fileName(uri),
      code,
      sentence,
      words: text.slice(start, end),
      start,
    })),
  ).toEqual([
    {
      file: fixture.files[0]?.name,
      code: mistake.code,
      sentence: expect.any(String) as string,
      words: text.slice(place.start, place.end),
      start: place.start,
    },
  ]);
});

function fileAndCode({ uri, code }: PlacedFinding): string {
  return `${fileName(uri)} ${code}`;
}
