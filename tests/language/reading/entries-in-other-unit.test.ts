import { evaluateDocument } from '@fettle/language';
import { describe, expect, it } from 'vitest';
import { openFixture } from '../harness/workbench.ts';

/** Hardware of millimetres in a file that says nothing of its units. */

async function told(text: string) {
  const workbench = await openFixture({ files: [{ name: 'shop.fettle', text }] });
  const document = workbench.document('shop.fettle');
  const { findings } = evaluateDocument(workbench.services, document);
  return findings
    .filter(({ severity }) => severity !== 'note')
    .map(({ code, sentence, start, end }) => `${code} at '${text.slice(start, end)}': ${sentence}`);
}

describe('an entry whose numbers are no inches', () => {
  it('is told at the first of them that cannot be', async () => {
    expect(await told('hinge "butt 50" butt, 50 long, leaf 15 wide, 4 closed, screws 16 long')).toEqual([
      `size-looks-like-other-unit at 'leaf 15 wide': 'leaf 15 wide' is 15", for bare numbers are inches here; it looks like millimetres`,
    ]);
    expect(await told('board "oak" any thickness, 200 wide, 3000 long')).toHaveLength(1);
    expect(await told('screw "wall" 80 long, pilot 4, clearance 6')).toHaveLength(1);
  });

  it('is not told where the units are said, for the file or beside the number', async () => {
    expect(await told('units mm\nhinge "butt 50" butt, 50 long, leaf 15 wide, 4 closed, screws 16 long')).toEqual([]);
    expect(await told('hinge "butt 50" butt, 50mm long, leaf 15mm wide, 4mm closed, screws 16mm long')).toEqual([]);
  });

  it('is not told of what is made so: a continuous hinge 72" long, counts and prices', async () => {
    expect(
      await told('hinge "piano" butt, 72 long, leaf 5/8 wide, 3/32 closed, 30 screws in each leaf, costs 40 each'),
    ).toEqual([]);
  });
});
