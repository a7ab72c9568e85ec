import { evaluateDocument } from '@fettle/language';
import { expect, test } from 'vitest';
import { openFixture } from '../language/harness/workbench.ts';

/** A stack inside a stack is as high as its own fronts: these are told, and each of them is offered for change. */

const piece = () => `
piece "chest" {
  size 20 wide, 31-1/2 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, over sides }
  face inset, gap 0 {
    stack {
      stack "upper" { drawer "a" front 8 high   drawer "b" front 10 high }
      drawer "c" front 14 high
    }
    fronts thick 3/4
  }
}
`;

test('the inner sizes are related', async () => {
  const workbench = await openFixture({ files: [{ name: 'chest.fettle', text: piece() }] });
  const { findings } = evaluateDocument(workbench.services, workbench.document('chest.fettle'));
  const sum = findings.find(({ code }) => code === 'fronts-do-not-add-up');
  const related = sum?.related.map(({ sentence }) => sentence);
  expect(related).toContain('"a" takes 8"');
  expect(related).toContain('"b" takes 10"');
});

test('the inner sizes are offered, and the one that is taken makes the sum come out', async () => {
  const planned = await openFixture({ files: [{ name: 'chest.fettle', text: piece() }] });
  const sums = evaluateDocument(planned.services, planned.document('chest.fettle')).findings;
  const titles = sums
    .filter(({ code }) => code === 'fronts-do-not-add-up')
    .flatMap(({ fixes }) => fixes.map(({ title }) => title));
  expect(titles).toContain('Make "a" 6", 2" less');
  expect(titles).toContain('Make "b" 8", 2" less');
  const mended = piece().replace('front 8 high', 'front 6 high');
  const workbench = await openFixture({ files: [{ name: 'chest.fettle', text: mended }] });
  const { findings } = evaluateDocument(workbench.services, workbench.document('chest.fettle'));
  expect(findings.filter(({ severity }) => severity === 'error').map(({ sentence }) => sentence)).toEqual([]);
});
