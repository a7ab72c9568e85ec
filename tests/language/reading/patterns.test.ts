import { evaluateDocument, whereverTheyHold } from '@fettle/language';
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

test('a note on a pattern is said once, at the first piece, and holds for each of them', async () => {
  const high = text
    .replace('24 high', '30 high')
    .replace(/front 1[12] high/g, 'rest')
    .replaceAll(/^\/\/<.*\n/gm, '')
    .concat('piece "third" from "drawers" with "width" 22\n');
  const workbench = await openFixture({ files: [{ name: 'cases.fettle', text: high }] });
  const document = workbench.document('cases.fettle');
  const { findings } = evaluateDocument(workbench.services, document);
  const tips = findings.filter(({ code }) => code === 'anchor-to-wall');
  expect(tips.map(({ start, end }) => high.slice(start, end))).toEqual(['piece "first"']);
  expect(tips[0]?.sentence).toMatch(/; the same holds for 2 more pieces of this pattern$/);
  const related = tips[0]?.related.map(({ start, end }) => high.slice(start, end));
  expect(related).toEqual(['30', 'piece "second"', 'piece "third"']);
  const everywhere = whereverTheyHold(findings).filter(({ code }) => code === 'anchor-to-wall');
  expect(everywhere.map(({ start, end }) => high.slice(start, end))).toEqual([
    'piece "first"',
    'piece "second"',
    'piece "third"',
  ]);
  const lenses = await workbench.services.lsp.CodeLensProvider?.provideCodeLens(document, {
    textDocument: { uri: document.uri.toString() },
  });
  expect(lenses?.map(({ command }) => / · (.*)$/.exec(command?.title ?? '')?.[1])).toEqual(
    Array.from({ length: 3 }, () => 'fits, 1 note'),
  );
});
