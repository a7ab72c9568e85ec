import { setupsTable } from '@fettle/drawings';
import { spacersOf } from '@fettle/engine';
import { evaluateDocument } from '@fettle/language';
import { describe, expect, it } from 'vitest';
import { sideboardText } from './drawer-texts.ts';
import { readFixture } from './harness/fixture.ts';
import { openFixture } from './harness/workbench.ts';

async function evaluated(source: string) {
  const { services, documents } = await openFixture(readFixture(source));
  const [document] = documents;
  const piece = document && evaluateDocument(services, document).pieces[0];
  if (piece === undefined) throw new Error('the text holds no piece');
  return piece.evaluation;
}

describe('spacers for the slides of the sideboard, 1/2" above the lower edges of its fronts', () => {
  it('are one board cut down from 24-1/32" to 19/32", both sides at each', async () => {
    const plan = spacersOf(await evaluated(sideboardText()));
    expect(plan?.settings.map(({ height, slides }) => [height.length.exactInches, slides])).toEqual([
      ['769/32', ['left slide of "cards"', 'right slide of "cards"']],
      ['287/16', ['left slide of "dice"', 'right slide of "dice"']],
      ['347/32', ['left slide of "maps"', 'right slide of "maps"']],
      ['19/32', ['left slide of "blankets"', 'right slide of "blankets"']],
    ]);
    expect(plan?.settings.map(({ parts }) => parts)).toEqual(Array(4).fill(['face/row|1', 'face/row|2']));
  });

  // 10-27/32 less 19/32; 17-15/16 less 10-27/32; 24-1/32 less 17-15/16.
  it('or blocks that are piled: 19/32", 10-1/4", 7-3/32", 6-3/32"', async () => {
    const plan = spacersOf(await evaluated(sideboardText()));
    expect(plan?.blocks.map(({ height }) => height.length.exactInches)).toEqual(['19/32', '41/4', '227/32', '195/32']);
  });

  it('stand among the set-ups, the board before the blocks', async () => {
    const table = setupsTable(await evaluated(sideboardText()));
    const rows = table.rows.map(({ cells }) => cells).filter(([what]) => /spacer|blocks/.test(what ?? ''));
    const distance = table.columns.indexOf('Distance');
    expect(rows.map((cells) => [cells[0], cells[distance]])).toEqual([
      ['spacer board under slides', '24-1/32"'],
      ['spacer board, cut down', '17-15/16"'],
      ['spacer board, cut down', '10-27/32"'],
      ['spacer board, cut down', '19/32"'],
      ['or blocks under slides, piled', ''],
    ]);
    expect(rows.at(-1)?.[table.columns.indexOf('Notes')]).toBe(
      'block 19/32"; block 10-1/4"; block 7-3/32"; block 6-3/32"',
    );
  });

  it('are none where nothing runs on slides', async () => {
    expect(spacersOf(await evaluated(sideboardText('')))).toBeUndefined();
  });
});
