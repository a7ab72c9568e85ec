import type { Evaluation } from '@fettle/engine';
import { evaluateDocument } from '@fettle/language';
import { describe, expect, test } from 'vitest';
import { check } from '../harness/check.ts';
import { checkFix } from '../harness/check-fix.ts';
import { openFixture } from '../harness/workbench.ts';

/** What a hung piece hangs by: strips joined to its sides, a case that holds together, screws for the wall, its weight. */

const shop = `sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
screw "No. 8" 2 long, pilot 1/8, clearance 3/16
screw "No. 10" 3 long, pilot 1/8, clearance 3/16
`;

function caseOf(inCase: string): string {
  return `${shop}
piece "box" {
  size 36 wide, 30 high, 12 deep
  case {
    sides "ply"   top "ply" between sides   bottom "ply" between sides
    back thick 1/4 in groove 1/4 deep, 3/4 in from back edge
    join dado
    ${inCase}
  }
}`;
}

async function evaluated(text: string): Promise<{ evaluation: Evaluation; told: Record<string, string> }> {
  const workbench = await openFixture({ files: [{ name: 'case.fettle', text }] });
  const { pieces, findings } = evaluateDocument(workbench.services, workbench.document('case.fettle'));
  const [piece] = pieces;
  if (piece === undefined) throw new Error('no piece is read');
  return {
    evaluation: piece.evaluation,
    told: Object.fromEntries(findings.map(({ code, sentence }) => [code, sentence])),
  };
}

const holesIn = ({ parts }: Evaluation, id: string) =>
  (parts.find((part) => part.id === id)?.features ?? []).filter(({ joint }) => joint?.startsWith('case/nailer'));

describe('strips for the wall', () => {
  test('by screws: two through either side, a quarter of the strip from its edges', async () => {
    const { evaluation } = await evaluated(caseOf('hung on wall   nailers 3 wide of "ply", by screws "No. 8"'));
    const holes = holesIn(evaluation, 'case/side-left').filter(({ joint }) => joint === 'case/nailer>case/side-left');
    // Its lower edge is 30" - 3/4" - 3" = 26-1/4" up: the screws stand 27" and 28-1/2" up, 3/8" from the back edge.
    expect(
      holes.map(({ kind, solid, through }) => [
        kind,
        through,
        solid.kind === 'cylinder' ? solid.centre.map((length) => length.exactInches) : [],
      ]),
    ).toEqual([
      ['screw-hole', true, ['27', '93/8']],
      ['screw-hole', true, ['57/2', '93/8']],
    ]);
  });

  test('in dado they are cut longer by both dadoes', async () => {
    const { evaluation, told } = await evaluated(caseOf('hung on wall   nailers 3 wide of "ply", in dado 1/4 deep'));
    const strip = evaluation.parts.find(({ id }) => id === 'case/nailer');
    // Between sides 36" - 2 x 3/4" = 34-1/2", and 1/4" at each end.
    expect(strip?.length.length.exactInches).toBe('35');
    expect(Object.keys(told)).toEqual(['hangs-on-wall']);
  });

  test('by dowels has holes in strips and sides alike', async () => {
    const { evaluation } = await evaluated(caseOf('hung on wall   nailers 3 wide of "ply", by dowels'));
    expect(holesIn(evaluation, 'case/nailer').map(({ kind }) => kind)).toEqual(Array(4).fill('dowel-hole'));
    expect(holesIn(evaluation, 'case/side-right').map(({ kind }) => kind)).toEqual(Array(4).fill('dowel-hole'));
  });

  test('that nothing joins get their screws from the light bulb', () =>
    checkFix(
      caseOf('hung on wall   <|>nailers 3 wide of "ply"'),
      'Screw through the sides into the nailers',
      caseOf('hung on wall   nailers 3 wide of "ply", by screws'),
    ));
});

describe('screws for the wall', () => {
  const set = ({ hardware }: Evaluation) =>
    hardware
      .filter(({ kind }) => kind === 'anchor')
      .map(({ label, entry, set }) => [label, entry, ...set.map(({ figure }) => figure.length.exactInches)]);

  test('as many in each strip as it surely meets studs, at their height above the floor, and how long', async () => {
    const { evaluation } = await evaluated(
      caseOf('hung on wall, 54 above floor, by screws "No. 10"   nailers 3 wide of "ply", by screws'),
    );
    // 34-1/2" of strip meet two studs 16" apart; 54" + 26-1/4" + 1-1/2"; 1/4" + 3/4" + 1/2" + 1-1/2" = 3".
    expect(set(evaluation)).toEqual([
      ['wall screw 1 of the upper nailer', 'No. 10', '327/4', '3'],
      ['wall screw 2 of the upper nailer', 'No. 10', '327/4', '3'],
      ['wall screw 1 of the lower nailer', 'No. 10', '225/4', '3'],
      ['wall screw 2 of the lower nailer', 'No. 10', '225/4', '3'],
    ]);
  });

  test('more where studs are closer, never fewer than two', async () => {
    const count = async (apart: string) =>
      set(
        (await evaluated(caseOf(`hung on wall, studs ${apart} apart   nailers 3 wide of "ply", by screws`))).evaluation,
      ).length / 2;
    expect([await count('10'), await count('24')]).toEqual([3, 2]);
  });

  test('a face is not needed for them, and a thick back takes them where there are no strips', async () => {
    const { evaluation } = await evaluated(
      caseOf('hung on wall').replace(
        'back thick 1/4 in groove 1/4 deep, 3/4 in',
        'back "ply" in groove 1/4 deep, 1/4 in',
      ),
    );
    expect(set(evaluation).map(([label]) => label)).toEqual([
      'wall screw 1 of the upper part of the back',
      'wall screw 2 of the upper part of the back',
      'wall screw 1 of the lower part of the back',
      'wall screw 2 of the lower part of the back',
    ]);
  });

  test('a named one that is too short is told by how much', async () => {
    const { told } = await evaluated(caseOf('hung on wall, by screws "No. 8"   nailers 3 wide of "ply", by screws'));
    expect(Object.keys(told).sort()).toEqual(['hangs-on-wall', 'wall-screw-too-short']);
    expect(told['wall-screw-too-short']).toBe(
      '"No. 8" is 2" long and passes 1-1/2" before it holds: it should be 3" long, 1" more',
    );
  });
});

describe('a case that hangs', () => {
  const strips = 'nailers 3 wide of "ply", by screws';
  test('by a back that lies on it wants screws, and gets them', async () => {
    const applied = (said: string) =>
      caseOf('hung on wall').replace('back thick 1/4 in groove 1/4 deep, 3/4 in from back edge', `back "ply" ${said}`);
    expect(Object.keys((await evaluated(applied('applied'))).told).sort()).toEqual([
      'hangs-on-wall',
      'hung-case-not-joined',
    ]);
    const { evaluation, told } = await evaluated(applied('applied by screws'));
    expect(Object.keys(told)).toEqual(['hangs-on-wall']);
    const holes = (evaluation.parts.find(({ id }) => id === 'case/back')?.features ?? []).length;
    // In each upright edge at 1-1/2", 5-1/2", … 25-1/2": seven; in each level one 34-1/2" long: eight.
    expect(holes).toBe(30);
  });

  test('screws of a back in a groove come to nothing, and are said to', () =>
    check(`
      // notes not shown
      sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
      piece "box" {
        size 24 wide, 20 high, 12 deep
        case {
          sides "ply"
          back "ply" in groove 1/4 deep, 1/4 in from back edge, by screws
      //                                                        ^^^^^^^^^ warning detail-without-joint: an applied back
        }
      }`));

  test('needs none where it stands on the floor', async () => {
    const { told } = await evaluated(caseOf(strips).replace('join dado', ''));
    expect(told).toEqual({});
  });

  test('weighs what its wood and what it holds weigh, and is told what it may be filled with', async () => {
    const { evaluation, told } = await evaluated(caseOf(`hung on wall   ${strips}`));
    const bottom = evaluation.parts.find(({ role }) => role === 'bottom');
    // Its dadoes are 1/4" deep: 35" long between 34-1/2", 12" deep, 2-7/8 square feet between the sides: 143-3/4 lb.
    expect(bottom?.box.x.size.length.exactInches).toBe('69/2');
    expect(told['hangs-on-wall']).toMatch(
      /^(\d+) lb hang on the wall, without a part of unknown weight; with 50 lb a square foot on every level it would be (\d+) lb: put its 4 screws into studs or masonry/,
    );
    const [, itself, full] = /^(\d+) lb.* be (\d+) lb/.exec(told['hangs-on-wall'] ?? '') ?? [];
    expect(Math.abs(Number(full) - Number(itself) - 143.75)).toBeLessThan(1);
  });
});
