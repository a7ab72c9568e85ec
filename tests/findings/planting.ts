import type { PlacedFinding } from '@fettle/language';
import { expect } from 'vitest';
import { fileName } from '../language/harness/workbench.ts';
import { findingsIn } from './applying-fixes.ts';
import { type Mistake, placeOfMistake, withMistake } from './mistakes.ts';

/** One slip in an example that was free of it: exactly its finding, at exactly its words, and nothing else. */
export async function checkPlanted(mistake: Mistake): Promise<void> {
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
}

function fileAndCode({ uri, code }: PlacedFinding): string {
  return `${fileName(uri)} ${code}`;
}
