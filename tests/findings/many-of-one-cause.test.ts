import { evaluateDocument } from '@fettle/language';
import { describe, expect, it } from 'vitest';
import { checkFix } from '../language/harness/check-fix.ts';
import { openFixture } from '../language/harness/workbench.ts';

/** One slip that is made many times over is told once, and no text gives more findings than anyone reads. */

async function findingsOf(text: string) {
  const workbench = await openFixture({ files: [{ name: 'many.fettle', text }] });
  return evaluateDocument(workbench.services, workbench.document('many.fettle')).findings;
}
const inAll = (codes: readonly { readonly code: string }[], code: string) =>
  codes.filter((each) => each.code === code).length;

describe('a run of one slip', () => {
  it('of 250,000 opening braces is one stray mark, beside the cap that cuts the text', async () => {
    const findings = await findingsOf('{'.repeat(250_000));
    expect(inAll(findings, 'stray-mark')).toBe(1);
    expect(findings.length).toBeLessThanOrEqual(3);
    expect(findings.find(({ code }) => code === 'stray-mark')?.sentence).toBe(
      "these 200000 marks belong to nothing here: '{{{{{{{{{{{{…'",
    );
  });

  it('of rows inside rows says once how many stand too deep', async () => {
    const findings = await findingsOf(`piece "nest" { face inset { ${'row { '.repeat(1000)}`);
    expect(inAll(findings, 'text-too-large')).toBe(1);
    expect(findings.find(({ code }) => code === 'text-too-large')?.sentence).toMatch(/and so it is with 9\d\d braces/);
    expect(findings.length).toBeLessThan(10);
  });

  it('goes with one fix', () => checkFix('units inches\n;;<|> ; ;\n', "Take out ';; ; ;'", 'units inches\n'));

  it('ends where words stand', async () => {
    expect(inAll(await findingsOf('units ; inches ; to 1/32'), 'stray-mark')).toBe(2);
  });
});

describe('a text with more findings than anyone reads', () => {
  it('shows the gravest, and last how many more there are', async () => {
    const words = Array.from({ length: 700 }, (_each, at) => `board "b${at}" blue${at}`).join('\n');
    const findings = await findingsOf(words);
    expect(findings).toHaveLength(501);
    expect(findings.slice(0, 500).every(({ severity }) => severity === 'error')).toBe(true);
    expect(findings.at(-1)?.sentence).toMatch(/^only 500 findings of this text are shown; there are \d+ more$/);
  });
});
