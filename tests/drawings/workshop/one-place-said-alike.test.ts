import { cutListTable, doorTable, hardwareTable, partDrawings, partSheets, setupsTable } from '@fettle/drawings';
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

  it('each set-up says what it measures, which face lies up, and what no distance means', () => {
    const { columns, rows } = setupsTable(sideboard);
    expect(columns).toEqual(['Set-up', 'Width or diameter', 'Depth', 'Distance', 'From', 'Notes', 'Parts']);
    const of = (what: string) => rows.filter(({ cells }) => cells[0] === what);
    // The bottom lies in a rabbet at the lower end of each side: nothing stands between that end and the cut.
    const open = of('rabbet').find(({ cells }) => cells[3] === 'none')?.cells;
    expect(open?.[4]).toBe('lower end');
    expect(open?.[5]).toBe('runs out at the lower end; in the right face of B1; in the left face of B2');
    expect(of('fence to the middle')[0]?.cells[5]).toMatch(/in the right face of G1; in the left face of G2$/);
    for (const { cells } of [...of('dado'), ...of('row of pin holes')]) expect(cells[5]).toMatch(/in the \S+ face of /);
  });

  it('where a door hangs is told hinge by hinge, each a clause of its own', () => {
    const { columns, rows } = doorTable(sideboard);
    const settings = rows.map(({ cells }) => cells[columns.indexOf('Setting out')] ?? '');
    expect(settings.length).toBe(4);
    for (const words of settings) {
      const clauses = words.split('; ');
      expect(clauses.filter((clause) => /^(?:lower|upper) hinge: /.test(clause))).toHaveLength(2);
      expect(clauses[0]).toMatch(/^lower hinge: /);
      expect(words).not.toContain(' / ');
    }
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
