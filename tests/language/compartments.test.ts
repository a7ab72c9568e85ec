import { drawerSchedule } from '@fettle/engine';
import { evaluateDocument } from '@fettle/language';
import { describe, expect, it } from 'vitest';
import { checkFixes } from '../findings/applying-fixes.ts';
import { readFixture } from './harness/fixture.ts';
import { openFixture } from './harness/workbench.ts';

/**
 * Partitions in a drawer box. Its opening is 18-1/2" wide and 6-1/2" high, so the box is 18-7/16" wide, 5-3/4" high and
 * 14-3/4" deep; inside of walls of 1/2" there are 17-7/16" by 13-3/4", over a bottom that takes 1/2" of the height.
 */

const text = (compartments: string, more = '') => `units inches to 1/32
piece "box" {
  size 20 wide, 8 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "spoons" { ${compartments} ${more} }
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners dovetail }
  }
  thing "tin" { 5 wide, 4 deep, 2 high   this way up }
}
`;

async function pieceIn(source: string) {
  const { services, documents } = await openFixture(readFixture(source));
  const [document] = documents;
  const evaluated = document && evaluateDocument(services, document);
  const evaluation = evaluated?.pieces[0]?.evaluation;
  if (evaluation === undefined) throw new Error('the text holds no piece');
  return {
    ...evaluation,
    partitions: evaluation.parts.filter(({ role }) => role === 'drawer-partition'),
    told: evaluated?.findings.map(({ code, sentence }) => `${code}: ${sentence}`) ?? [],
  };
}

const said = 'holds 1 "tin"';

describe('three compartments across, with partitions of 1/4"', () => {
  it('are alike, and the partitions lie 1/8" deep in the front and the back of the box', async () => {
    const { partitions, told } = await pieceIn(text('compartments 3 across, thick 1/4', said));
    expect(partitions).toHaveLength(2);
    // 17-7/16" less two partitions in three: 271/48"; the box begins 25/32" from the left, its side is 1/2" thick.
    expect(partitions.map(({ box }) => box.x.start.length.exactInches)).toEqual(['665/96', '1231/96']);
    // 13-3/4" and 1/8" at each end; 5-3/4" less 1/4" and 1/4" of the bottom.
    expect(
      partitions.map(({ length, width, thickness }) =>
        [length, width, thickness].map((each) => each.length.exactInches),
      ),
    ).toEqual([
      ['14', '21/4', '1/4'],
      ['14', '21/4', '1/4'],
    ]);
    expect(told).toEqual([]);
  });

  it('have dadoes from the bottom up through the upper edges', async () => {
    const { parts } = await pieceIn(text('compartments 3 across, thick 1/4, dadoes 3/16 deep', said));
    for (const id of ['box-front', 'box-back']) {
      const part = parts.find((each) => each.id === `face/spoons/${id}`);
      const dadoes = part?.features.filter(({ kind }) => kind === 'dado') ?? [];
      expect(
        dadoes.map(({ measures, runs }) =>
          [measures.width, measures.depth].map((each) => each?.length.exactInches).concat(runs),
        ),
      ).toEqual([
        ['1/4', '3/16', 'y'],
        ['1/4', '3/16', 'y'],
      ]);
      for (const { solid } of dadoes) {
        expect(solid.kind === 'box' && solid.y.to).toEqual(part?.blank.y.end.length);
        expect(solid.kind === 'box' && solid.y.from.exactInches).toBe('3/2');
      }
    }
  });
});

describe('compartments of their own sizes', () => {
  it('share what is left', async () => {
    const { partitions } = await pieceIn(
      text('compartments thick 1/4, 2 high { compartment 8 wide   compartment   compartment 4 wide }', said),
    );
    // 25/32" and 1/2" and 8"; the last begins 4" and 1/2" before 19-7/32".
    expect(partitions.map(({ box }) => box.x.start.length.exactInches)).toEqual(['297/32', '463/32']);
    expect(partitions[0]?.box.y.size.length.exactInches).toBe('2');
  });

  it('lie one behind the other where they say so, with dadoes in the sides', async () => {
    const { partitions, parts, told } = await pieceIn(text('compartments 2 front to back, thick 1/4', said));
    // Behind the front of 3/4" and the wall of 1/2", half of 13-3/4" less 1/4".
    expect(partitions.map(({ box }) => box.z.start.length.exactInches)).toEqual(['8']);
    // 17-7/16" and 1/8" at each end.
    expect(partitions[0]?.length.length.exactInches).toBe('283/16');
    const left = parts.find(({ id }) => id === 'face/spoons/box-left');
    expect(left?.features.filter(({ kind }) => kind === 'dado')).toHaveLength(1);
    expect(told).toEqual([]);
  });

  it('have to come out', async () => {
    const listed = (last: string) =>
      text(`compartments thick 1/4 { compartment 8 wide   compartment 6 wide   compartment ${last} wide }`, said);
    const { told } = await pieceIn(listed('4'));
    expect(told).toEqual([
      'compartments-do-not-fit: 3 compartments and the partitions between them take 18-1/2" across, inside the box of ' +
        '"spoons" there is 17-7/16": 1-1/16" too much',
    ]);
    expect((await pieceIn(listed('2'))).told).toEqual([expect.stringContaining('15/16" left over')]);
    expect(await checkFixes(readFixture(listed('4')), 'compartments-do-not-fit')).toEqual(['last']);
    expect((await pieceIn(listed('2-15/16'))).told).toEqual([]);
  });

  it('are as many as are counted', async () => {
    const { told } = await pieceIn(text('compartments 3 across, thick 1/4 { compartment 8 wide   compartment }', said));
    expect(told).toEqual([
      "cannot-be-both: how many compartments this drawer has cannot be both 'the 2 that are listed' and '3'",
    ]);
  });
});

describe('what compartments hold', () => {
  it('is held against each of them, not against the whole box', async () => {
    // Whole, the box takes three tins across, three behind each other and two above; four compartments are 4-11/64"
    // wide, so each takes them turned; five are 3-23/80" wide, from 17-7/16" less four partitions.
    expect((await pieceIn(text('', 'holds 18 "tin"'))).told).toEqual([]);
    expect((await pieceIn(text('compartments 4 across, thick 1/4', 'holds 1 "tin"'))).told).toEqual([]);
    expect((await pieceIn(text('compartments 5 across, thick 1/4', 'holds 1 "tin"'))).told).toEqual([
      'contents-do-not-fit: "tin" is 1-23/32" (exactly 1-57/80") too wide for "spoons": 3-9/32" (exactly 3-23/80") wide, 13-3/4" deep, 5-3/4" high in each of 5 spaces',
    ]);
  });

  it('is told of the compartment that says so', async () => {
    const narrow = text(
      'compartments thick 1/4 { compartment { holds 1 "tin" }   compartment 3 wide { holds 1 "tin" } }',
    );
    const { told, ...evaluation } = await pieceIn(narrow);
    expect(told).toEqual([expect.stringContaining('for compartment 2 of "spoons": 3" wide')]);
    expect(drawerSchedule(evaluation)[0]?.holds).toEqual([
      { count: 1, thing: 'tin' },
      { count: 1, thing: 'tin' },
    ]);
  });
});
