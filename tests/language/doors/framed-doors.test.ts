import { cutListTable } from '@fettle/drawings';
import { doorSchedule } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { weightOfParts } from '../../../packages/engine/src/hardware/weight-of-parts.ts';
import { checkFixes } from '../../findings/applying-fixes.ts';
import { butt, caseWith, knife, pieceIn } from './door-texts.ts';

/** Doors that are frames around panels or panes, worked by hand. */

const shop = `${butt}
board "cherry" any thickness, 9 wide, 120 long
pull "knob" 1 wide, round, thread 3/8 deep`;
const text = (fills: string, more = '', members = '') =>
  caseWith(
    `inset, gap 3/32 {
    door "press" hinged left { hinges "butt 2"${more}   pulls "knob" }
    fronts "cherry" thick 3/4, frame-and-panel { stiles 2-1/4 wide   top-rail 2-1/4 wide   bottom-rail 3 wide   ${members}   ${fills} }
  }`,
    shop,
  );
const frame = 'face/press/front';

describe('a door 18-5/16" wide and 28-5/16" high of frame and panel', () => {
  const panelled = text(
    'tenons 3/8 long, 1/32 short   panel "cherry" thick 3/8, in groove 3/8 deep, float 1/16 each side',
  );

  it('has stiles of its whole height, rails between them and a panel that floats', async () => {
    const { part, told } = await pieceIn(panelled);
    expect(told).toEqual([]);
    expect(part(`${frame}/stile-left`).length.length.exactInches).toBe('453/16');
    // 18-5/16 - 4-1/2 and two tenons of 11/32.
    expect(part(`${frame}/rail-top`).length.length.exactInches).toBe('29/2');
    // 13-13/16 and 5/16 in each groove; 28-5/16 - 5-1/4 and as much.
    expect(part(`${frame}/panel`).width.length.exactInches).toBe('231/16');
    expect(part(`${frame}/panel`).length.length.exactInches).toBe('379/16');
    expect(part(`${frame}/panel`).cell).toBe('face/press');
  });

  it('hangs on its stile, and its knob is on the other one', async () => {
    const { hardware } = await pieceIn(panelled);
    expect(hardware.filter(({ kind }) => kind === 'hinge').map(({ on }) => on[0])).toEqual([
      `${frame}/stile-left`,
      `${frame}/stile-left`,
    ]);
    expect(hardware.filter(({ kind }) => kind === 'pull').map(({ on }) => on)).toEqual([[`${frame}/stile-right`]]);
  });

  it('has its knob in the middle of the stile', async () => {
    const { setOf } = await pieceIn(panelled);
    // 18-5/16 - 1-1/8.
    expect(setOf('pull-1', 'from the left edge of the front to the middle of the pull')).toBe('275/16');
  });

  it('is told where a gain is cut over a tenon', async () => {
    // Mortises 2-1/8" deep in stiles of 2-1/4" leave 1/8"; half of a hinge 1/2" thick less the gap is 13/64".
    const deep = text(
      'tenons 2-1/8 long, 1/32 short   panel "cherry" thick 3/8, in groove 3/8 deep, float 1/16 each side',
      ', 1/2 from ends',
    ).replace('5/32 closed, screws 5/8 long, 3 screws in each leaf', '1/2 closed');
    const { codes } = await pieceIn(deep);
    expect(codes).toEqual(['features-meet']);
  });
});

describe('the same door with glass', () => {
  const glazed = text(
    'tenons 3/8 long, 1/32 short   glass thick 1/8, in rabbet 3/8 wide, rabbet 3/8 deep, clearance 1/8, safety',
  );

  it('has a pane to order, smaller than from rabbet to rabbet', async () => {
    const { part, told } = await pieceIn(glazed);
    expect(told).toEqual([]);
    const pane = part(`${frame}/pane`);
    expect(pane.label).toBe('glass pane of the door "press", to order');
    // 13-13/16 + 3/4 - 1/8 and 23-1/16 + 3/4 - 1/8.
    expect(pane.width.length.exactInches).toBe('231/16');
    expect(pane.length.length.exactInches).toBe('379/16');
  });

  it('has rabbets all round, into which the pane goes from behind', async () => {
    const { part } = await pieceIn(glazed);
    const rabbets = ['stile-left', 'stile-right', 'rail-top', 'rail-bottom'].map((member) =>
      part(`${frame}/${member}`).features.filter(({ kind }) => kind === 'rabbet'),
    );
    expect(rabbets.map((each) => each.map(({ measures }) => measures.depth?.length.exactInches))).toEqual([
      ['3/8'],
      ['3/8'],
      ['3/8'],
      ['3/8'],
    ]);
    expect(part(`${frame}/stile-left`).features.filter(({ kind }) => kind === 'groove')).toEqual([]);
  });
});

describe('a pane', () => {
  const glazed = text('glass thick 1/8, in rabbet 3/8 wide, rabbet 3/8 deep, clearance 1/8, safety');

  it('is of glass, which has no grain', async () => {
    const { part, evaluation } = await pieceIn(glazed);
    expect(part(`${frame}/pane`).grain).toBe('none');
    const row = cutListTable(evaluation).rows.find(({ parts }) => parts.includes(`${frame}/pane`));
    expect(row?.cells.slice(6)).toEqual(['glass', '', '', '', '']);
  });

  it('weighs 2500 kg to the cubic metre, and its door what both weigh', async () => {
    const { part, evaluation } = await pieceIn(glazed);
    // 231/16 × 379/16 × 1/8 = 42.75 cubic inches are 0.0007005 m³.
    expect(weightOfParts([part(`${frame}/pane`)])?.toNumber()).toBeCloseTo(1.751, 3);
    const members = evaluation.parts.filter((each) => each.frame === frame);
    expect(doorSchedule(evaluation)[0]?.kilograms?.toNumber()).toBe(weightOfParts(members)?.toNumber());
    expect(weightOfParts(members)?.toNumber()).toBeGreaterThan(3);
  });
});

describe('a pull on a framed door', () => {
  const pulls = (how: string, entries = '') =>
    text('panel thick 1/4, in groove 3/8 deep, clearance 1/16')
      .replace('pulls "knob"', `pulls ${how}`)
      .replace('pull "knob"', `${entries}\npull "knob"`);
  const bar = 'pull "bar" 4 wide, 1/2 high, 3 between screws, thread 1/4 deep, screws 1 long';

  it('that sits on the panel is told, once, and may be put in the middle of the stile', async () => {
    const beside = pulls('"bar", upright, 4 from closing edge', bar);
    const { told } = await pieceIn(beside);
    expect(told).toEqual([
      'pull-off-stile: "bar" sits on the panel of "press", 1/4" thick: a pull is fastened to the frame',
    ]);
    expect(await checkFixes({ files: [{ name: 'piece.fettle', text: beside }] }, 'pull-off-stile')).toEqual(['stile']);
  });

  it('has holes in what each of its screws goes through', async () => {
    // A stile ends 2-1/4" from the edge: of screws at 3/4" and 3-3/4" one is in the panel.
    const { told, hardware } = await pieceIn(pulls('"bar", level, 2-1/4 from closing edge', bar));
    expect(told).toEqual([expect.stringContaining('partly on the frame and partly on the panel of "press"')]);
    expect(hardware.find(({ kind }) => kind === 'pull')?.on).toEqual([`${frame}/stile-right`, `${frame}/panel`]);
  });

  it('reaches beyond its front before it is asked what it sits on', async () => {
    expect((await pieceIn(pulls('"bar", level', bar))).codes).toEqual(['pull-off-front']);
  });

  it('let in across both leaves of a pair is let into both stiles, and set out from the left door', async () => {
    const dish = 'pull "dish" 3 wide, 1-1/2 high, let in 3/8 deep';
    const { hardware, part, setOf } = await pieceIn(
      pulls('"dish", across both doors', dish).replace('door "press" hinged left', 'doors "press"'),
    );
    const stiles = ['face/press/leaf-left/stile-right', 'face/press/leaf-right/stile-left'];
    expect(hardware.find(({ kind }) => kind === 'pull')?.on).toEqual(stiles);
    expect(stiles.map((id) => part(id).features.filter(({ kind }) => kind === 'recess').length)).toEqual([1, 1]);
    // Leaves of 9-7/64" and a gap of 3/32".
    expect(setOf('pull-1', 'from the left edge of the left door to the middle of the pull')).toBe('293/32');
  });
});

it('knife hinges lie on the edges of tenons that are flush with the ends of their stiles', async () => {
  const knives = text('tenons 1 long, 1/32 short   panel thick 1/4, in groove 3/8 deep, clearance 1/16')
    .replace(butt, `${butt}\n${knife}`)
    .replace('hinges "butt 2"', 'hinges "knife 2"');
  // That their screws end in the tenons is told of the screws, and of nothing else.
  expect(new Set((await pieceIn(knives)).codes)).toEqual(new Set(['screw-meets-joint']));
});

it('drawers of the same fronts stay plain', async () => {
  const { part } = await pieceIn(
    caseWith(
      'inset, gap 3/32 { stack { drawer "pens" front 5 high   door "press" rest } fronts "cherry" thick 3/4, frame-and-panel { panel "cherry" thick 3/8 } }',
      shop,
    ),
  );
  expect(part('face/stack/pens/front').role).toBe('drawer-front');
  expect(part('face/stack/press/front/panel').role).toBe('panel');
});

it('a framed pair is in the list of doors, leaf by leaf, with its hinges and its pulls', async () => {
  const face =
    'inset, gap 1/8 { doors "cups" { pair   hinges "butt 2"   pulls "knob" }   fronts thick 3/4, frame-and-panel { stiles 2 wide } }';
  const knob = 'pull "knob" 1 wide, round, stands out 1, thread 3/8 deep';
  const { evaluation } = await pieceIn(caseWith(face, `${butt}\n${knob}`));
  // 18-1/2 less three gaps of 1/8 is 18-1/8: leaves of 9-1/16; 28-1/2 less two: 28-1/4.
  expect(
    doorSchedule(evaluation).map(({ leaf, hangs, hinges, pulls }) => [
      leaf.label,
      [leaf.width, leaf.height, leaf.thickness].map(({ length }) => length.exactInches),
      hangs,
      hinges.length,
      pulls.length,
    ]),
  ).toEqual([
    ['left door "cups"', ['145/16', '113/4', '3/4'], 'left', 2, 1],
    ['right door "cups"', ['145/16', '113/4', '3/4'], 'right', 2, 1],
  ]);
});
