import { type CarcaseDesign, cutList, type Evaluation, type Part } from '@fettle/engine';
import { evaluateDocument } from '@fettle/language';
import { describe, expect, test } from 'vitest';
import { openFixture } from '../harness/workbench.ts';

/** What the words for frames, edges and bases come to in a design and in its parts. */

const stock = `
sheet "ply 3/4" nominal 3/4, actual 3/4, 96 long, 48 wide
sheet "ply 1/4" nominal 1/4, actual 1/4, 96 long, 48 wide
board "cherry" any thickness, 9 wide, 120 long
`;

async function evaluationOf(inCase: string, face = '', size = '33 wide, 42 high, 20 deep'): Promise<Evaluation> {
  const text = `${stock}
piece "case" {
  size ${size}
  case { ${inCase} }
  ${face}
}`;
  const workbench = await openFixture({ files: [{ name: 'case.fettle', text }] });
  const { pieces, findings } = evaluateDocument(workbench.services, workbench.document('case.fettle'));
  const [piece] = pieces;
  if (piece === undefined) throw new Error('no piece is read');
  expect(findings.filter((each) => each.severity === 'error').map((each) => each.sentence)).toEqual([]);
  return piece.evaluation;
}

function part({ parts }: Evaluation, id: string): Part {
  const found = parts.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no part ${id} among ${parts.map((each) => each.id).join(', ')}`);
  return found;
}
const sizes = ({ length, width, thickness }: Part) =>
  [length, width, thickness].map((figure) => figure.length.exactInches).join(' x ');
const carcaseOf = async (inCase: string): Promise<CarcaseDesign> => (await evaluationOf(inCase)).design.carcase;

const framed = `
  sides "cherry" thick 3/4, frame-and-panel {
    stiles 2-1/4 wide   top-rail 3 wide   bottom-rail 4 wide
    tenons 3/8 long, 1/32 short
    panel "cherry" thick 3/8, in groove 3/8 deep, float 1/16 each side
  }`;

describe('sides of frame and panel', () => {
  test('as they are written: 16-3/16" and 16-1/8"', async () => {
    const evaluation = await evaluationOf(framed);
    expect(sizes(part(evaluation, 'case/side-left/rail-top'))).toBe('259/16 x 3 x 3/4');
    expect(part(evaluation, 'case/side-left/panel').width.length.exactInches).toBe('129/8');
  });
  test('what is not said is assumed, each size with its reason', async () => {
    const { sides } = await carcaseOf('sides "cherry" thick 3/4, frame-and-panel');
    const { stiles, bottomRail, tenons, panel } = sides?.framed ?? {};
    const assumed = [stiles, bottomRail, tenons?.short, panel?.groove, panel?.thickness, panel?.shyEachEdge];
    expect(assumed.map((figure) => `${figure?.length.exactInches} ${figure?.reason.kind}`)).toEqual([
      '9/4 assumed',
      '3 assumed',
      '1/32 assumed',
      '3/8 assumed',
      '3/8 assumed',
      '1/16 assumed',
    ]);
  });
  test('a sheet has clearance in all, solid wood floats at each edge', async () => {
    const sheet = await carcaseOf('sides "cherry" thick 3/4 { panel "ply 1/4", clearance 1/16 }');
    expect(sheet.sides?.framed?.panel.shyEachEdge.length.exactInches).toBe('1/32');
    const solid = await carcaseOf('sides "cherry" thick 3/4 { panel "cherry" thick 1/2, float 1/16 each side }');
    expect(solid.sides?.framed?.panel.shyEachEdge.length.exactInches).toBe('1/16');
  });
});

describe('backs', () => {
  const box = 'sides "ply 3/4"   top "ply 3/4" between sides   bottom "ply 3/4" between sides';
  test('a sheet in grooves is short of them by 1/16" in all unless something is said', async () => {
    // 33" less two sides of 3/4" is 31-1/2"; two grooves of 1/4" make 32"; less 1/16".
    const evaluation = await evaluationOf(`${box}   back "ply 1/4" in groove 1/4 deep, 1/2 in from back edge`);
    expect(sizes(part(evaluation, 'case/back'))).toBe('655/16 x 511/16 x 1/4');
    const groove = part(evaluation, 'case/side-left').features.find(({ kind }) => kind === 'groove');
    expect(groove?.measures.depth?.length.exactInches).toBe('1/4');
  });
  test('as much as is said', async () => {
    const evaluation = await evaluationOf(`${box}   back "ply 1/4" in rabbet 3/8 deep, clearance 1/8`);
    expect(part(evaluation, 'case/back').width.length.exactInches).toBe('257/8');
  });
  test('of frame and panel lie in the rabbet with their stiles and rails', async () => {
    const evaluation = await evaluationOf(
      `${box}   back "cherry" thick 3/4, frame-and-panel, in rabbet 3/8 deep { panel "ply 1/4" }`,
    );
    expect(part(evaluation, 'case/back/stile-left').length.length.exactInches).toBe('659/16');
    const rabbeted = evaluation.joints
      .filter(({ kind }) => kind === 'rabbet')
      .map(({ held, holding }) => [held, holding]);
    expect(rabbeted).toContainEqual(['case/back/stile-left', 'case/side-left']);
  });
});

describe('edges', () => {
  test('the part keeps its size, strips lie along the edges that are said', async () => {
    const evaluation = await evaluationOf('sides "ply 3/4" { edging "cherry" thick 1/4, at front, at top, mitred }');
    const side = part(evaluation, 'case/side-left');
    expect(sizes(side)).toBe('42 x 20 x 3/4');
    expect(side.edging.map(({ at, thickness, solid }) => [at, thickness.length.exactInches, solid.kind])).toEqual([
      ['-z', '1/4', 'convex'],
      ['+y', '1/4', 'convex'],
    ]);
  });
  test('strips along its length run through, the others stand between them', async () => {
    const evaluation = await evaluationOf('sides "ply 3/4" { edging "cherry" thick 1/4, all round }');
    const { edging } = part(evaluation, 'case/side-right');
    expect(edging.map(({ at, length }) => [at, length.length.exactInches])).toEqual([
      ['-z', '42'],
      ['+z', '42'],
      ['+y', '39/2'],
      ['-y', '39/2'],
    ]);
  });
});

describe('what a case stands on', () => {
  const box = 'sides "ply 3/4"   top "ply 3/4" between sides   bottom "ply 3/4" between sides';
  test('a toe space: sides down to the floor, notched, a board behind the recess', async () => {
    const evaluation = await evaluationOf(`${box}   toe-space 4 high, 3 deep, of "ply 3/4"`);
    const side = part(evaluation, 'case/side-left');
    expect(sizes(side)).toBe('42 x 20 x 3/4');
    expect(side.features.filter(({ kind }) => kind === 'notch').map(({ solid }) => solid)).toMatchObject([
      { y: { to: { exactInches: '4' } }, z: { to: { exactInches: '3' } } },
    ]);
    expect(part(evaluation, 'case/bottom').box.y.start.length.exactInches).toBe('4');
    expect(part(evaluation, 'case/toe-board').box.z.start.length.exactInches).toBe('3');
  });
  test('feet that taper on their inner faces, and rails between them', async () => {
    const evaluation = await evaluationOf(
      `${box}   feet 6 high of "cherry" thick 1-3/4, taper to 1-1/8 { rails "cherry" thick 3/4, 2 wide, set in 1/4 }`,
    );
    const foot = part(evaluation, 'case/foot-front-left');
    expect(sizes(foot)).toBe('6 x 7/4 x 7/4');
    expect(
      foot.features
        .filter(({ kind }) => kind === 'taper')
        .map(({ entry, measures }) => [entry, measures.depth?.length.exactInches]),
    ).toEqual([
      ['+x', '5/8'],
      ['+z', '5/8'],
    ]);
    // 33" less two feet of 1-3/4", shoulder to shoulder.
    expect(part(evaluation, 'case/foot-rail-front').box.x.size.length.exactInches).toBe('59/2');
  });
  test('strips for the wall lie behind the back, at the top and at the foot', async () => {
    const evaluation = await evaluationOf(
      `${box}   back "ply 1/4" in groove 1/4 deep, 3/4 in from back edge   hung on wall   nailers 3 wide of "ply 3/4"`,
    );
    const [upper, lower] = [part(evaluation, 'case/nailer'), part(evaluation, 'case/nailer-2')];
    expect(upper.box.y.end.length.exactInches).toBe('165/4');
    expect(lower.box.y.start.length.exactInches).toBe('3/4');
    expect(upper.box.z.end.length.exactInches).toBe('20');
  });
});

test('a face frame that stands out beyond the case makes the case narrower', async () => {
  const box = 'sides "ply 3/4"   top "ply 3/4" between sides   bottom "ply 3/4" between sides';
  const evaluation = await evaluationOf(`${box}   frame "cherry" thick 3/4, proud 1/4 { stiles 2 wide }`);
  const { carcase } = evaluation.layout;
  expect(carcase?.body.x.size.length.exactInches).toBe('65/2');
  expect(carcase?.face.x.size.length.exactInches).toBe('29');
  expect(part(evaluation, 'case/frame-stile-left').box.x.start.length.exactInches).toBe('0');
});

describe('web frames', () => {
  const box = 'sides "ply 3/4"   top "ply 3/4" between sides   bottom "ply 3/4" between sides';
  test('with dust panels between their runners, and runners tenoned into their rails', async () => {
    const evaluation = await evaluationOf(
      box,
      `face inset {
    stack {
      dividers web-frame of "cherry" thick 3/4, rails 2-1/2 wide, shown { dust-panel "ply 1/4" in groove 3/8 deep, clearance 1/16 }
      drawer "a"
      drawer "b"
    }
    fronts "cherry" thick 3/4
  }`,
    );
    const dust = evaluation.parts.find(({ role }) => role === 'dust-panel');
    if (dust === undefined) throw new Error('no dust panel');
    // 31-1/2" less two runners of 2-1/2" is 26-1/2", two grooves of 3/8" less 1/16" make 11/16" more.
    expect(dust.blank.x.size.length.exactInches).toBe('435/16');
    // 20" deep less two rails of 2-1/2" is 15", and two tenons of 3/8" less 1/32".
    const runner = evaluation.parts.find(({ label }) => label.startsWith('left runner'));
    expect(runner?.length.length.exactInches).toBe('251/16');
  });
});

describe('the cut list', () => {
  const box = 'top "ply 3/4" between sides   bottom "ply 3/4" between sides';
  test('keeps a left side and a right one apart where they are mirror images', async () => {
    const grooved = await evaluationOf(
      `sides "ply 3/4"   ${box}   back "ply 1/4" in groove 1/4 deep, 1/2 in from back edge`,
    );
    const sidesOf = (evaluation: Evaluation) => cutList(evaluation.parts).filter(({ role }) => role === 'side');
    // A groove from end to end is the same for both: the one is the other upside down.
    expect(sidesOf(grooved).map(({ quantity }) => quantity)).toEqual([2]);
    const notched = await evaluationOf(`sides "ply 3/4"   ${box}   toe-space 4 high, 3 deep, of "ply 3/4"
      back "ply 1/4" in groove 1/4 deep, 1/2 in from back edge`);
    expect(sidesOf(notched).map(({ quantity }) => quantity)).toEqual([1, 1]);
  });
  test('tells what strips are put on, and what is sawn first', async () => {
    const evaluation = await evaluationOf(
      'sides "ply 3/4" { edging "cherry" thick 1/4, at front, at top }   top "cherry" thick 7/8 { slotted behind }',
    );
    const rows = cutList(evaluation.parts);
    const side = rows.find(({ role }) => role === 'side');
    // 42" less the top of 7/8" is 41-1/8", less a strip of 1/4" at its upper edge; 20" less one in front.
    expect([side?.core?.length.length.exactInches, side?.core?.width.length.exactInches]).toEqual(['327/8', '79/4']);
    expect(side?.rough?.length.length.exactInches).toBe('327/8');
    const top = rows.find(({ role }) => role === 'top');
    expect([top?.rough?.length.length.exactInches, top?.rough?.width.length.exactInches, top?.rough?.nominal]).toEqual([
      '34',
      '81/4',
      '5/4',
    ]);
  });
});
