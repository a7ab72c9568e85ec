import { partDrawings, partSheets, toSvg } from '@fettle/drawings';
import { evaluateDocument } from '@fettle/language';
import { expect, it } from 'vitest';
import { readFixture } from '../../language/harness/fixture.ts';
import { openFixture } from '../../language/harness/workbench.ts';

/** What the sheet of a front says of its vent: which cutter leaves the corners that are asked for. */

async function ventWords(vent: string): Promise<readonly string[]> {
  const { services, documents } = await openFixture(
    readFixture(`units inches to 1/32
piece "box" {
  size 18 wide, 20 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   back thick 1/4, applied }
  face inset, gap 1/8 {
    door "onions" rest, hinged left { vent 6 wide, 2 high, 4 up${vent} }
    fronts thick 3/4
  }
}
`),
  );
  const [document] = documents;
  const evaluation = document && evaluateDocument(services, document).pieces[0]?.evaluation;
  if (evaluation === undefined) throw new Error('the text holds no piece');
  const sheets = partSheets(evaluation).map((_, at) => toSvg(partDrawings(evaluation, at + 1)));
  const lines = sheets.flatMap((svg) =>
    [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, words]) => words ?? ''),
  );
  return lines.filter((line) => line.startsWith('vent '));
}

it('round corners ask for a cutter of at most twice their radius', async () => {
  expect(await ventWords(', corners 1/4')).toEqual([
    'vent 6" × 2", through, corners of radius 1/4" by a cutter of at most 1/2"',
  ]);
});

it('square corners are cut by hand after the cutter', async () => {
  const byHand = ['vent 6" × 2", through, corners cut square by hand after the cutter'];
  expect(await ventWords('')).toEqual(byHand);
  expect(await ventWords(', square corners')).toEqual(byHand);
});
