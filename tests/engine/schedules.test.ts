import type { Evaluation } from '@fettle/engine';
import { doorSchedule, drawerSchedule, hardwareSchedule, Length } from '@fettle/engine';
import { evaluateDocument } from '@fettle/language';
import { beforeAll, describe, expect, test } from 'vitest';
import { openFixture } from '../language/harness/workbench.ts';
import { example } from '../language/sideboard.ts';

/** The lists of drawers, doors and hardware of the sideboard, whose numbers are worked by hand. */

let sideboard: Evaluation;
beforeAll(async () => {
  const workbench = await openFixture({ files: [example('sideboard.fettle'), example('shop.fettle')] });
  const [document] = workbench.documents;
  const piece = document && evaluateDocument(workbench.services, document).pieces[0];
  if (piece === undefined) throw new Error('the sideboard holds no piece');
  sideboard = piece.evaluation;
});

describe('drawers', () => {
  test('are listed from top to bottom with opening, front and box', () => {
    const drawers = drawerSchedule(sideboard);
    expect(drawers.map(({ name }) => name)).toEqual(['cards', 'dice', 'maps', 'blankets']);
    for (const { opening, front, box } of drawers) {
      expect(opening.width.length).toEqual(Length.inches(18));
      expect(front?.box.x.size.length).toEqual(Length.inches(285, 16));
      expect(box?.width.length).toEqual(Length.inches(17));
    }
    expect(drawers.map(({ front }) => front?.box.y.size.length)).toEqual([
      Length.inches(5),
      Length.inches(6),
      Length.inches(7),
      Length.inches(325, 32),
    ]);
  });

  test('with slides 1/2" above the lower edges of their fronts: 24-1/32", 17-15/16", 10-27/32", 19/32" above the bottom', () => {
    const lower = drawerSchedule(sideboard).map(({ slides }) =>
      slides.map(({ set }) => set.find(({ words }) => words.includes('bottom of the case'))?.figure.length),
    );
    const both = (length: Length) => [length, length];
    expect(lower).toEqual([
      both(Length.inches(769, 32)),
      both(Length.inches(287, 16)),
      both(Length.inches(347, 32)),
      both(Length.inches(19, 32)),
    ]);
  });
});

test('doors are listed leaf by leaf: size, the edge they hang on, and what they weigh', () => {
  const doors = doorSchedule(sideboard);
  expect(doors.map(({ name, hangs }) => [name, hangs])).toEqual([
    ['left', 'left'],
    ['left', 'right'],
    ['right', 'left'],
    ['right', 'right'],
  ]);
  for (const { leaf, kilograms } of doors) {
    expect(leaf.width.length).toEqual(Length.inches(591, 64));
    expect(leaf.height.length).toEqual(Length.inches(455, 16));
    // A veneered panel is taken for plywood, 400 to 600 kg/m³ (Wood Handbook, 2010, table 12-1): the middle of it.
    const cubicMetres = (591 / 64) * (455 / 16) * (1 / 2) * 0.0254 ** 3;
    expect(kilograms?.toNumber()).toBeCloseTo(cubicMetres * 500, 6);
  }
});

test('hardware is counted by its entry; what is set alike stands together', () => {
  const hardware = hardwareSchedule(sideboard);
  const slides = hardware.find(({ kind }) => kind === 'slide');
  expect(slides).toMatchObject({ entry: 'side mount 14', count: 8 });
  expect(slides?.settings.map(({ all }) => all.length)).toEqual([2, 2, 2, 2]);
  const pins = hardware.find(({ kind }) => kind === 'shelf-pin');
  // Two shelves of "left", four pins each. Those in front are set alike; behind the back the side goes on and the
  // partition does not, so that their back pins stand at other distances from the edges of their wood.
  expect(pins?.count).toBe(8);
  expect(pins?.settings.map(({ all }) => all.length)).toEqual([2, 1, 1, 2, 1, 1]);
  const ids = hardware.flatMap(({ settings }) => settings.flatMap(({ all }) => all.map(({ id }) => id)));
  expect(new Set(ids).size).toBe(sideboard.hardware.length);
});
