import { setupsTable } from '@fettle/drawings';
import { describe, expect, it } from 'vitest';
import { pieceIn } from './doors/door-texts.ts';

/** A cut that ends inside its part is set up with a stop: the sheet says how far from which end. */

async function dadoes(join: string) {
  const { evaluation } = await pieceIn(`
cutter "router bit" cuts 3/4 wide, at most 1 deep, bit
piece "case" {
  size 20 wide, 30 high, 12 deep
  case {
    sides thick 3/4   bottom thick 3/4, between sides
    join ${join}
  }
}`);
  const { columns, rows } = setupsTable(evaluation);
  return rows
    .filter(({ cells }) => cells[0] === 'dado' || cells[0] === 'rabbet')
    .map(({ cells }) => cells[columns.indexOf('Notes')]);
}

describe('a stopped cut', () => {
  it('stops so far from the front edge', async () => {
    expect(await dadoes('dado 1/4 deep, stopped 3/8 from front')).toEqual([
      expect.stringContaining('stops 3/8" from the front edge; in the'),
    ]);
  });

  it('is not spoken of where it runs through', async () => {
    const notes = await dadoes('dado 1/4 deep');
    expect(notes).toHaveLength(1);
    expect(notes.join()).not.toContain('stops');
  });
});
