import { describe, expect, test } from 'vitest';
import { frontAndShelfCases } from './front-and-shelf-cases.ts';
import { read } from './one-piece.ts';
import { stockAndMachineCases } from './stock-and-machine-cases.ts';
import { tradeCodes } from './trade-codes.ts';

/** Every check just passes and just fails, and every way out that it offers clears it and breaks nothing else. */

const boundaryCases = [...stockAndMachineCases, ...frontAndShelfCases];
const notAboutThis = new Set(['not-checked-yet', 'off-the-ruler', 'stock-never-used', 'stock-without-size']);

async function found(text: string, code: string) {
  const { findings, taking } = await read(text);
  return { findings: findings.filter((each) => each.code === code || !notAboutThis.has(each.code)), taking };
}

test('every check has its case', () => {
  expect([...new Set(boundaryCases.map(({ code }) => code))].sort()).toEqual([...tradeCodes]);
});

describe.each(boundaryCases)('$code: $what', ({ code, passes, fails, severity, at, says, titles }) => {
  test('just passes', async () => {
    const { findings } = await found(passes, code);
    expect(findings.map((each) => `${each.code}: ${each.sentence}`)).toEqual([]);
  });

  test('just fails, at its words and with nothing else', async () => {
    const { findings } = await found(fails, code);
    expect(findings.map((each) => `${each.severity} ${each.code}`)).toEqual([`${severity} ${code}`]);
    const [only] = findings;
    expect(only?.sentence).toContain(says);
    expect(fails.slice(only?.start, only?.end)).toBe(at);
    expect(only?.fixes.map(({ title }) => title)).toEqual(titles);
  });

  test('is cleared by each way out', async () => {
    const { findings, taking } = await found(fails, code);
    for (const fix of findings[0]?.fixes ?? []) {
      const mended = await found(taking(fix), code);
      expect(mended.findings.map((each) => `${each.code}: ${each.sentence}`)).toEqual([]);
    }
  });
});
