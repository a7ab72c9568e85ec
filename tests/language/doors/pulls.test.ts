import { describe, expect, it } from 'vitest';
import { butt, caseWith, pieceIn } from './door-texts.ts';

/** Where pulls sit and how long their screws are, worked by hand. */

const knob = 'pull "knob" 1 wide, round, stands out 1, thread 3/8 deep';
const bar = 'pull "bar" 5 wide, 1/2 high, 4 between screws, stands out 1, thread 3/8 deep';
const dish = 'pull "dish" 3 wide, round, let in 3/8 deep';
const across = 'from the left edge of the front to the middle of the pull';
const up = 'from the lower edge of the front to the middle of the pull';
const wanted = 'length of the machine screw';
const box = 'drawers { sides thick 1/2   bottom thick 1/4   corners dovetail   clear 1/4 below, 1/4 above }';

describe('pulls of drawers', () => {
  const text = (pulls: string) =>
    caseWith(
      `inset, gap 3/32 { stack { drawer "one" front 6 high   drawer "two" front 8 high   open rest }   ${pulls}   fronts thick 3/4   ${box} }`,
      `${knob}\n${bar}`,
      '20 wide, 30 high, 18 deep',
    );

  it('are in the middle where nothing else is said, and their screws go through front and box', async () => {
    const { setOf, part } = await pieceIn(text('pulls "knob"'));
    // The front is 18-1/2 less two gaps of 3/32 wide: 18-5/16.
    expect(setOf('one/front/pull-1', across)).toBe('293/32');
    expect(setOf('one/front/pull-1', up)).toBe('3');
    // 3/4 + 1/2 + 3/8.
    expect(setOf('one/front/pull-1', wanted)).toBe('13/8');
    expect(part('face/stack/one/front').features.map(({ kind }) => kind)).toEqual(['screw-hole']);
    expect(part('face/stack/one/box-front').features.filter(({ kind }) => kind === 'screw-hole')).toHaveLength(1);
  });

  it('two on each are a quarter in from the ends, or as far as is said', async () => {
    const quarter = await pieceIn(text('pulls "knob", 2 on each'));
    expect([1, 2].map((at) => quarter.setOf(`one/front/pull-${at}`, across))).toEqual(['293/64', '879/64']);
    const said = await pieceIn(text('pulls "knob", 2 on each, 3 from ends'));
    expect([1, 2].map((at) => said.setOf(`one/front/pull-${at}`, across))).toEqual(['3', '245/16']);
  });

  it('have a hole for each screw, along the pull', async () => {
    const { part } = await pieceIn(text('pulls "bar", 2 below top'));
    const holes = part('face/stack/two/front').features;
    // 3/4 + 3/32 + 293/32 is 10: the middle of the case.
    expect(
      holes.map(({ solid }) => (solid.kind === 'cylinder' ? solid.centre.map((each) => each.exactInches) : [])),
    ).toEqual([
      ['8', expect.any(String)],
      ['12', expect.any(String)],
    ]);
  });
});

describe('pulls of doors', () => {
  const pair = (pulls: string) =>
    caseWith(
      `inset, gap 3/32 { doors "cups" { hinges "butt 2"   pulls ${pulls} }   fronts thick 3/4 }`,
      `${butt}\n${knob}\n${bar}\n${dish}`,
    );

  it('are at the closing edges, at one height on both leaves', async () => {
    const { setOf } = await pieceIn(pair('"knob", 2 from closing edge, 4 below top'));
    // Each leaf is (18-1/2 - 3 × 3/32) / 2 = 9-7/64 wide, and 28-5/16 high.
    expect(setOf('leaf-left/pull-1', across)).toBe('455/64');
    expect(setOf('leaf-right/pull-1', across)).toBe('2');
    expect(setOf('leaf-left/pull-1', up)).toBe('389/16');
    expect(setOf('leaf-right/pull-1', up)).toBe('389/16');
  });

  it('are on one line above the floor, whatever the fronts are', async () => {
    const { setOf } = await pieceIn(pair('"knob", 20 above floor'));
    // The doors begin 3/4 + 3/32 above the floor.
    expect(setOf('leaf-left/pull-1', up)).toBe('613/32');
  });

  it('let in across both doors lie half in each, in the middle of their gap', async () => {
    const { hardware, part } = await pieceIn(pair('"dish", centred, across both doors'));
    const pulls = hardware.filter(({ kind }) => kind === 'pull');
    expect(pulls.map(({ on }) => on)).toEqual([['face/cups/leaf-left', 'face/cups/leaf-right']]);
    const recess = (id: string) => part(id).features.find(({ id: each }) => each.includes('recess'))?.solid;
    const [left, right] = [recess('face/cups/leaf-left'), recess('face/cups/leaf-right')];
    expect(left).toEqual(right);
    // The middle of the case, and a radius of 1-1/2.
    expect(left).toMatchObject({ centre: [{ exactInches: '10' }, {}], radius: { exactInches: '3/2' } });
  });
});

describe('pulls that are made in the shop', () => {
  const wood = 'board "maple" any thickness, 8 wide, 120 long';
  const made = (size: string) =>
    `${wood}\npull "own" ${size} wide, 3/4 high, of "maple", stands out 3/4, thread 3/8 deep`;
  const text = (entry: string) =>
    caseWith(
      `inset, gap 3/32 { stack { drawer "one" front 6 high   drawer "two" front 8 high   open rest }   pulls "own"   fronts thick 3/4   ${box} }`,
      entry,
      '20 wide, 30 high, 18 deep',
    );

  it('stay on a long blank until they are done, told once for all of them', async () => {
    expect((await pieceIn(text(made('3')))).notes.filter((code) => code === 'small-pull-on-long-blank')).toHaveLength(
      1,
    );
  });

  it('are nothing to worry about where they are long or bought', async () => {
    expect((await pieceIn(text(made('12')))).notes).not.toContain('small-pull-on-long-blank');
    const bought = made('3').replace(', of "maple"', '').replace(wood, '');
    expect((await pieceIn(text(bought))).notes).not.toContain('small-pull-on-long-blank');
  });
});
