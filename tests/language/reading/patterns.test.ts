import { evaluateDocument } from '@fettle/language';
import { expect, test } from 'vitest';
import { check } from '../harness/check.ts';
import { openFixture } from '../harness/workbench.ts';

/** What is wrong in a pattern is wrong for each piece made from it: it is shown there, and points into the pattern. */

const text = `// A line above, so that no place is right by chance.
pattern "drawers" {
  takes "width"
  units inches
  size "width" wide, 24 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "a" front 11 high
    drawer "b" front 12 high
    fronts thick 3/4
  }
}

piece "first" from "drawers" with "width" 18
//<^^^^^^^^^^ error fronts-do-not-add-up: fronts and gaps need 23-3/8", there is 22-1/2" of height: 7/8" too much
piece "second" from "drawers" with "width" 20
//<^^^^^^^^^^^ error fronts-do-not-add-up: fronts and gaps need 23-3/8", there is 22-1/2" of height: 7/8" too much
`;

test('a sum that does not come out in a pattern is said at each piece', async () => {
  await check(text);
});

test('and leads to the words of the pattern', async () => {
  const workbench = await openFixture({ files: [{ name: 'cases.fettle', text }] });
  const document = workbench.document('cases.fettle');
  const [first] = evaluateDocument(workbench.services, document).findings;
  const words = first?.related.map(({ start, end }) => text.slice(start, end));
  expect(words).toContain('front 12 high');
  expect(words).toContain('front 11 high');
});
