import { expect, test } from 'vitest';
import { findingsIn } from './applying-fixes.ts';
import { mistakes, withMistake } from './mistakes.ts';
import { checkPlanted } from './planting.ts';

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

test.each(mistakes)('$into: $slip gives $code', checkPlanted);

// Apart from the others: a case made deeper for these slides has its rear pins where their screws go.
test('a slide so long that its rear screw would stand behind the case is told once', () =>
  checkPlanted({
    slip: 'a slide that reaches out at the back',
    into: 'sideboard',
    from: 'slides "side mount 14"',
    to: 'slides «"side mount 20"»',
    code: 'slide-too-long',
  }));
