import { type Evaluation, Length, ventSchedule } from '@fettle/engine';
import { evaluateDocument } from '@fettle/language';
import { expect, test } from 'vitest';
import { boundsOf } from '../../../packages/engine/src/solids/index.ts';
import { openFixture } from '../../language/harness/workbench.ts';

/** Openings for air through a drawer of a bread chest, worked by hand. */

async function chestWith(vent: string, drawers = ''): Promise<Evaluation> {
  const text = `board "maple" any thickness, 8 wide, 120 long
  piece "Bread chest" {
    size 24 wide, 20 high, 16 deep
    case { sides of "maple" thick 3/4   bottom of "maple" thick 3/4, between sides   back thick 1/4, applied }
    face inset, gap 1/8 {
      drawer "bread" rest { ${vent} }
      fronts thick 3/4
      drawers { sides thick 1/2   bottom thick 1/4   corners butt   clear 1/2 above ${drawers} }
    }
  }`;
  const workbench = await openFixture({ files: [{ name: 'chest.fettle', text }] });
  const [document] = workbench.documents;
  const piece = document && evaluateDocument(workbench.services, document).pieces[0];
  if (piece === undefined) throw new Error('no piece');
  return piece.evaluation;
}

const troubles = ({ findings }: Evaluation) =>
  findings.filter(({ severity }) => severity !== 'note').map(({ code }) => code);

test('each layer has its own size around one middle, and the hole in front is larger by the lining', async () => {
  const chest = await chestWith(
    'vent 8 wide, 2 high, 6 up { box larger by 1/8   back 9 wide, 3 high   lining of "maple" thick 1/4 }',
  );
  expect(troubles(chest)).toEqual([]);
  const layers = ventSchedule(chest);
  expect(layers.map(({ what, hole }) => [what, hole.width.length, hole.height.length])).toEqual([
    ['front', Length.inches(17, 2), Length.inches(5, 2)],
    ['front of the box', Length.inches(33, 4), Length.inches(9, 4)],
    ['back of the box', Length.inches(33, 4), Length.inches(9, 4)],
    ['back', Length.inches(9), Length.inches(3)],
  ]);
  expect(layers.map(({ freeSquareInches }) => freeSquareInches)).toEqual([16, 18.5625, 18.5625, 27]);
  // The case is 24 wide: every opening is centred on 12. The front begins 7/8 up, its vent 6 above that, 2 high.
  for (const part of chest.parts) {
    for (const { kind, solid } of part.features) {
      if (kind !== 'vent') continue;
      const { x, y } = boundsOf(solid);
      expect(x.from.plus(x.to)).toEqual(Length.inches(24));
      expect(y.from.plus(y.to).dividedBy(2)).toEqual(Length.inches(63, 8));
    }
  }
});

test('the lining is four strips that fill the hole up to the clear opening', async () => {
  const chest = await chestWith('vent 8 wide, 2 high, 6 up { box   back   lining of "maple" thick 1/4 }');
  const strips = chest.parts.filter(({ role }) => role === 'lining');
  expect(strips.map(({ box }) => [box.x.size.length, box.y.size.length, box.z.size.length])).toEqual([
    [Length.inches(17, 2), Length.inches(1, 4), Length.inches(3, 4)],
    [Length.inches(17, 2), Length.inches(1, 4), Length.inches(3, 4)],
    [Length.inches(1, 4), Length.inches(2), Length.inches(3, 4)],
    [Length.inches(1, 4), Length.inches(2), Length.inches(3, 4)],
  ]);
});

test('what one sees of it from the front is its clear opening', async () => {
  const chest = await chestWith('vent 8 wide, 2 high, 6 up { box   back   lining of "maple" thick 1/4 }');
  const [vent] = chest.hardware.filter(({ kind }) => kind === 'vent');
  expect(vent?.outline).toEqual({
    x: { from: Length.inches(8), to: Length.inches(16) },
    y: { from: Length.inches(55, 8), to: Length.inches(71, 8) },
    isRound: false,
  });
});

test('round corners of 1/2" take (4 - π) / 4 of a square inch', async () => {
  const chest = await chestWith('vent 8 wide, 2 high, 6 up, corners 1/2 { box   back }');
  for (const { freeSquareInches } of ventSchedule(chest)) {
    expect(freeSquareInches).toBeCloseTo(16 - (4 - Math.PI) / 4, 12);
  }
});

test('a vent that only the front has ends at the front of the box', async () => {
  const chest = await chestWith('vent 8 wide, 2 high, 6 up { }');
  expect(troubles(chest)).toEqual(['vent-blocked']);
});

test('a vent at the bottom of a drawer meets the groove for its bottom', async () => {
  const chest = await chestWith('vent 8 wide, 2 high, 1/2 up { box   back }');
  expect(troubles(chest)).toContain('features-meet');
});
