import { Length, type Part } from '@fettle/engine';
import { evaluateDocument } from '@fettle/language';
import { expect, test } from 'vitest';
import { boundsOf } from '../../../packages/engine/src/solids/index.ts';
import { openFixture } from '../../language/harness/workbench.ts';

/** Rows of holes for shelf pins, worked by hand. */

async function evaluated(text: string) {
  const workbench = await openFixture({ files: [{ name: 'piece.fettle', text }] });
  const [document] = workbench.documents;
  if (document === undefined) throw new Error('no file');
  const [piece] = evaluateDocument(workbench.services, document).pieces;
  if (piece === undefined) throw new Error('no piece');
  return piece.evaluation;
}

function metric(shelves: string): string {
  return `piece "unit" {
    units mm to 0.5
    size 600 wide, 756 high, 560 deep
    case { sides thick 18   bottom thick 18, between sides   top thick 18, between sides }
    face overlay full { open "pots" { shelves ${shelves} } }
  }`;
}

/** The middles of the holes in a part, from its front edge and from the upper face of the bottom, in millimetres. */
function middles(part: Part | undefined) {
  const holes = (part?.features ?? []).filter(({ kind }) => kind === 'pin-hole').map(({ solid }) => boundsOf(solid));
  const middle = ({ from, to }: { from: Length; to: Length }) => from.plus(to).dividedBy(2).in('mm').toNumber();
  const ups = [...new Set(holes.map(({ y }) => middle(y) - 18))].sort((a, b) => a - b);
  return { ups, deep: [...new Set(holes.map(({ z }) => middle(z)))].sort((a, b) => a - b), count: holes.length };
}

// Trade convention of the 32 mm system: 5 mm holes, 32 mm apart, first row 37 mm from the front edge.
test('a row of the 32 mm system begins at 37 mm and goes on by 32', async () => {
  const { parts, hardware, findings } = await evaluated(
    metric('1 adjustable { pins system rows, lowest 37 up, highest 170 up }'),
  );
  const side = parts.find(({ label }) => label.includes('left side'));
  const { ups, deep, count } = middles(side);
  expect(ups).toEqual([37, 69, 101, 133, 165]);
  // 560 deep: 486 from the front row to 37 mm from the back; fifteen whole pitches are 480.
  expect(deep).toEqual([37, 517]);
  expect(count).toBe(10);
  expect(side?.features.every(({ measures }) => measures.width?.length.equals(Length.millimetres(5)))).toBe(true);
  expect(hardware.filter(({ kind }) => kind === 'shelf-pin')).toHaveLength(4);
  expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
});

test('rows 37 mm from both edges of 560 mm are 486 mm apart: 15.19 pitches, and the mend makes them fifteen', async () => {
  const { findings } = await evaluated(metric('1 adjustable { pins system rows, 37 from back }'));
  const [off] = findings.filter(({ code }) => code === 'rows-off-pitch');
  expect(off?.facts).toMatchObject({ apart: Length.millimetres(486), pitches: '15.19' });
  expect(off?.mends[0]?.values['size']).toEqual(Length.millimetres(43));
});

test('behind an inset front the front row is measured from the back of the front', async () => {
  const { parts } = await evaluated(
    metric('1 adjustable { pins system rows }').replace(
      'face overlay full { open "pots"',
      'face inset, gap 2 { fronts thick 19   door "pots"',
    ),
  );
  expect(middles(parts.find(({ label }) => label.includes('left side'))).deep[0]).toBe(37 + 19);
});

test('shelves lie on the holes nearest to their even places, half a pin above the middle of the hole', async () => {
  // 720 high inside, one shelf of 18: evenly its underside would be 351 up. Holes at 100 + 32 k; the pin is 5 thick.
  const { parts } = await evaluated(metric('1 adjustable { pins system rows, lowest 100 up }'));
  const shelf = parts.find(({ role }) => role === 'shelf');
  expect(shelf?.box.y.start.length.minus(Length.millimetres(18)).in('mm').toNumber()).toBe(100 + 8 * 32 + 2.5);
});

test('a shelf in an opening of 18-3/4", 1/16" shy at each end, is 18-5/8" long', async () => {
  const { parts } = await evaluated(`piece "box" {
    size 20-1/4 wide, 30 high, 12 deep
    case { sides thick 3/4   bottom thick 3/4, between sides }
    face inset { open "books" { shelves 1 adjustable, shy 1/16 { pins lowest 4 up } } }
  }`);
  const shelf = parts.find(({ role }) => role === 'shelf');
  expect(shelf?.length.length).toEqual(Length.inches(149, 8));
});

test('cleats lie under both ends of their shelf, 1/2" behind its front, and carry it', async () => {
  const { parts, findings } = await evaluated(`piece "box" {
    size 25-1/2 wide, 30 high, 12 deep
    case { sides thick 3/4   bottom thick 3/4, between sides }
    face inset { open "books" { shelves 1 on cleats { shelf upper face 15 up   cleats thick 3/4, 1 high } } }
  }`);
  const shelf = parts.find(({ role }) => role === 'shelf');
  const cleats = parts.filter(({ role }) => role === 'cleat');
  expect(shelf?.box.y.end.length).toEqual(Length.inches(63, 4));
  expect(cleats.map(({ box }) => [box.x.start.length, box.x.end.length])).toEqual([
    [Length.inches(3, 4), Length.inches(3, 2)],
    [Length.inches(24), Length.inches(99, 4)],
  ]);
  for (const { box } of cleats) {
    expect(box.y.end.length).toEqual(shelf?.box.y.start.length);
    expect(box.y.size.length).toEqual(Length.inches(1));
    expect(box.z.start.length).toEqual(Length.inches(1, 2));
  }
  expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
});

test('each space between written heights holds what is as high as it is', async () => {
  const { findings } = await evaluated(`thing "jar" { 4 wide, 4 deep, 7 high   this way up }
  piece "box" {
    size 21-1/2 wide, 24-3/4 high, 12 deep
    case { sides thick 3/4   bottom thick 3/4, between sides }
    face inset { open "pantry" { shelves 2 fixed { shelf underside 7 up   shelf underside 14-3/4 up }   holds 46 "jar" } }
  }`);
  // Three spaces of 7, 7 and 8-1/2 inches: five jars side by side and three behind one another in each.
  const [told] = findings.filter(({ code }) => code === 'contents-do-not-fit');
  expect(told?.facts).toMatchObject({ fits: 45, rooms: 3, spaces: 'differ', height: Length.inches(17, 2) });
});
