import { cutListTable, hardwareTable, partDrawings, partSheets, setupsTable } from '@fettle/drawings';
import type { Evaluation } from '@fettle/engine';
import { beforeAll, describe, expect, it } from 'vitest';
import { piecesOfExample } from '../../engine/stock/buying/evaluating.ts';

/** What several sheets tell of one thing is the same on all of them. */

let sideboard: Evaluation;
beforeAll(async () => {
  const [piece] = await piecesOfExample('sideboard');
  if (piece === undefined) throw new Error('the sideboard is not there');
  sideboard = piece;
}, 120_000);

describe('the sideboard', () => {
  it('its front row of pins: 1-1/2" behind the fronts, which is 2" from the edge that the drill is set by', () => {
    const { columns, rows } = hardwareTable(sideboard);
    const pins = rows
      .filter(({ cells }) => cells[0] === 'shelf pin')
      .map(({ cells }) => cells[columns.indexOf('Setting out')]);
    expect(pins).toContainEqual(
      expect.stringContaining('from the back of the front: 1-1/2"; from the front edge of the wood: 2"'),
    );
    const table = setupsTable(sideboard);
    const row = table.rows.find(({ cells }) => cells[0] === 'row of pin holes' && cells[4] === 'front edge');
    expect(row?.cells[3]).toBe('2"');
    // The side reaches 3/4" behind the back, the partition does not.
    expect(pins.filter((words) => words?.includes('from the back edge of the wood: 2-1/4"')).length).toBeGreaterThan(0);
  });

  it('how its top is held is said of the top, and of the stretchers that its screws go through', () => {
    const words = partSheets(sideboard)
      .map((_, at) => partDrawings(sideboard, at + 1).description)
      .join(' ');
    expect(words).toContain('screwed on from below through D1, D2, with slots behind: free to move');
    expect(words).toMatch(/D1 front stretcher[^.]*holes for the screws of A/);
    expect(words).toMatch(/D2 rear stretcher[^.]*slots for the screws of A/);
    const list = cutListTable(sideboard);
    expect(list.rows.find(({ cells }) => cells[0] === 'A')?.cells.at(-1)).toContain('slots behind, free to move');
  });
});
