import { readFileSync } from 'node:fs';
import { elevation, toSvg } from '@fettle/drawings';
import type { Evaluation } from '@fettle/engine';
import { createFettleServices, evaluateDocument } from '@fettle/language';
import { URI } from 'langium';
import { NodeFileSystem } from 'langium/node';
import { describe, expect, it } from 'vitest';

/**
 * The examples, from their text to their picture: free of errors, as large as worked out by hand (no published source),
 * and looking as approved. Of the forty cases of the wall one of each pattern is pictured.
 */

async function piecesOf(name: string): Promise<readonly Evaluation[]> {
  const { shared, Fettle } = createFettleServices(NodeFileSystem);
  const path = new URL(`../../examples/${name}.fettle`, import.meta.url);
  const document = shared.workspace.LangiumDocumentFactory.fromString(readFileSync(path, 'utf8'), URI.parse(path.href));
  shared.workspace.LangiumDocuments.addDocument(document);
  await shared.workspace.DocumentBuilder.build([document], { validation: false });
  const evaluated = evaluateDocument(Fettle, document);
  const wrong = evaluated.findings.filter(({ finding }) => finding.severity !== 'note');
  expect(wrong.map(({ finding }) => finding.code)).toEqual([]);
  return evaluated.pieces.map((piece) => piece.evaluation);
}

async function pieceOf(name: string): Promise<Evaluation> {
  const [piece, ...others] = await piecesOf(name);
  if (piece === undefined || others.length > 0) throw new Error(`${name} holds ${others.length + 1} pieces`);
  return piece;
}

/** Width × height of the fronts of a role, in inches. */
function fronts(evaluation: Evaluation, role: string): readonly string[] {
  return evaluation.parts
    .filter((part) => part.role === role)
    .map(({ box }) => `${box.x.size.length.exactInches} x ${box.y.size.length.exactInches}`);
}

async function looksAsApproved(evaluation: Evaluation, name: string): Promise<void> {
  const svg = toSvg(elevation(evaluation), { standalone: true });
  await expect(svg).toMatchFileSnapshot(`../approved/example-${name}.svg`);
}

describe('the examples', () => {
  it('vanity: fronts of 424 and 283.5 mm in a case of 1000', async () => {
    const vanity = await pieceOf('vanity');
    const millimetres = vanity.parts
      .filter((part) => part.role === 'door' || part.role === 'drawer-front')
      .map(({ box }) => [box.x.size, box.y.size].map(({ length }) => length.in('mm').toString()).join(' x '));
    // Across: 1000 less two reveals of 1.5 and two gaps of 3 leaves 991; less 424 leaves 567 for two leaves.
    // Upright: 560 less two reveals is 557; less a gap of 3 in two drawers of 277.
    expect(millimetres).toEqual(['424 x 277', '424 x 277', '567/2 x 557', '567/2 x 557']);
    await looksAsApproved(vanity, 'vanity');
  });

  it('linen press: doors and drawers of 32-5/16 between sides of frame and panel', async () => {
    const press = await pieceOf('linen-press');
    // Across: 36 less an overhang of 1 at each end is 34; less two sides of 3/4 32-1/2; less two gaps of 3/32 32-5/16, of
    // which the middle gap of the doors takes 3/32 more: 32-7/32 in two leaves of 16-7/64.
    expect(fronts(press, 'drawer-front')).toEqual(['517/16 x 7', '517/16 x 8']);
    expect(fronts(press, 'door').map((size) => size.split(' x ')[0])).toEqual(['1031/64', '1031/64']);
    await looksAsApproved(press, 'linen-press');
  });

  it('pantry: drawers of 26-3/16 behind a pair of doors', async () => {
    const pantry = await pieceOf('pantry');
    // 30 less two sides of 23/32: 28-9/16; less 1-1/16 clear and a gap of 1/8 at each end: 26-3/16.
    expect(fronts(pantry, 'drawer-front')).toEqual(['419/16 x 5', '419/16 x 7', '419/16 x 9']);
    // 30 less two reveals of 1/16 and a gap of 1/8, in two leaves: 14-7/8.
    expect(fronts(pantry, 'door').map((size) => size.split(' x ')[0])).toEqual(['119/8', '119/8']);
    await looksAsApproved(pantry, 'pantry');
  });

  it('blanket chest: a front under the lid', async () => {
    const chest = await pieceOf('blanket-chest');
    // 42 less two overhangs of 3/4; 20 less the lid 7/8 and the plinth 3.
    expect(fronts(chest, 'false-front')).toEqual(['81/2 x 129/8']);
    await looksAsApproved(chest, 'blanket-chest');
  });

  it('wall cupboard: doors of 16-9/16 x 19-17/32 on the frame', async () => {
    const cupboard = await pieceOf('wall-cupboard');
    // Across: 36 less stiles 3-1/2 is 32-1/2; with laps of 3/8 33-1/4, less a gap of 1/8 in two: 16-9/16.
    // Upright: 30 less rails 3-1/2 is 26-1/2; less the shelf 23/32 and the opening 7: 18-25/32; with laps 19-17/32.
    expect(fronts(cupboard, 'door')).toEqual(['265/16 x 625/32', '265/16 x 625/32']);
    await looksAsApproved(cupboard, 'wall-cupboard');
  });

  it('chest: seven drawers, from 5-1/8 high in steps of 5/8', async () => {
    // 51-3/4 less top 7/8, plinth 4, bottom 7/8 and stretchers 3/4: 45-1/4; less five dividers of 7/8 and twelve gaps of
    // 1/16: 40-1/8; less 5/8 x (1 + 2 + 3 + 4 + 5) = 9-3/8: 30-3/4 in six, 5-1/8.
    const chest = await pieceOf('chest');
    expect(fronts(chest, 'drawer-front')).toEqual([
      '237/16 x 41/8',
      '237/16 x 41/8',
      '245/8 x 23/4',
      '245/8 x 51/8',
      '245/8 x 7',
      '245/8 x 61/8',
      '245/8 x 33/4',
    ]);
    await looksAsApproved(chest, 'chest');
  });

  it('wall: forty cases from three patterns, three rows of 240', async () => {
    const wall = await piecesOf('wall');
    expect(wall).toHaveLength(40);
    for (const row of ['Base', 'Shelves', 'Cupboard']) {
      const cases = wall.filter(({ design }) => design.name.startsWith(row));
      const wide = cases.map(({ design }) => Number(design.size.width?.length.exactInches));
      expect(wide.reduce((sum, each) => sum + each, 0)).toBe(240);
      const [first] = cases;
      if (first === undefined) throw new Error(`no ${row}`);
      await looksAsApproved(first, `wall-case-${row.toLowerCase()}`);
    }
  });
});
