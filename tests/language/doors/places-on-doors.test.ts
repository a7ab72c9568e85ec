import { bevelDegrees, boundsOf, doorSchedule, Length, setupsOf, volumeOf } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { hardwareToBuy } from '../../../packages/engine/src/stock/buying/hardware-to-buy.ts';
import { checkFix } from '../harness/check-fix.ts';
import { butt, caseWith, cup, pieceIn } from './door-texts.ts';

/** Where hinges lie on a door and in what is beside it, what is bored for them, and the bevel of a closing edge. */

const wood = `board "ash" any thickness, 8 wide, 120 long
sheet "ply 1/4" nominal 1/4, actual 1/4, 96 long, 48 wide
`;
const framed = (stiles: string, groove = '3/8') =>
  caseWith(
    `overlay full, gap 1/8, reveal 1/8 { door "front" hinged left { hinges "cup" }
    fronts "ash" thick 3/4, frame-and-panel { stiles ${stiles} wide   panel "ply 1/4", in groove ${groove} deep } }`,
    `${wood}${cup}`,
  );

describe('a cup in a framed door', () => {
  // The door laps 5/8" = 15.875 mm, of which the hinge makes 12: 3.875 mm before a cup of 35 mm, 38.875 mm in all.
  it('stays before the groove of the panel', async () => {
    expect((await pieceIn(framed('2'))).told).toEqual([]);
    const { told } = await pieceIn(framed('1-7/8'));
    expect(told).toEqual([
      'cup-beyond-stile: the cups of "front" reach 1-17/32" (exactly 38.875 mm) in from its edge, ' +
        'the groove in its stile begins at 1-1/2": 1/32" (exactly 0.775 mm) too far',
    ]);
  });

  it('may end behind a groove that it is not deep enough to reach', async () => {
    // 1-1/4" thick, the groove 1/2" to 3/4" from the back: a cup of 12 mm ends before it.
    const thick = (stiles: string) => framed(stiles).replace('thick 3/4, frame', 'thick 1-1/4, frame');
    expect((await pieceIn(thick('1-7/8'))).codes).toEqual([]);
    expect((await pieceIn(thick('1-1/2'))).told.join()).toMatch(/its stile ends at 1-1\/2": 1\/32".*too far/);
  });

  it('gets wider stiles from the light bulb', () =>
    checkFix(
      framed('1-7/8').replace('hinges "cup"', 'hinges <|>"cup"'),
      'Make the stiles 2-1/32" wide',
      framed('2-1/32"'),
    ));
});

describe('hinges whose place is not known', () => {
  const lapping = (fit: string, named: string) =>
    caseWith(
      `${fit} { door "front" hinged left { hinges "${named}" }   fronts thick 3/4 }`,
      `${butt.replace(', for inset doors', '')}\n${cup}`,
    );

  it.each([
    ['overlay full, gap 1/8, reveal 1/8', 'butt 2'],
    ['lipped 3/8, gap 1/8', 'butt 2'],
  ])('are told: %s', async (fit, named) => {
    const { codes, hardware } = await pieceIn(lapping(fit, named));
    expect(codes).toEqual(['hinges-not-placed']);
    expect(hardware).toEqual([]);
  });

  it('are exchanged for such as have one', () =>
    checkFix(
      lapping('overlay full, gap 1/8, reveal 1/8', 'butt 2').replace('hinges "butt', 'hinges <|>"butt'),
      'Use "cup"',
      lapping('overlay full, gap 1/8, reveal 1/8', 'cup'),
    ));
});

describe('what is bored for a cup hinge', () => {
  it('two holes beside the cup and two for the plate, each 32 mm apart at 37 mm', async () => {
    const { part } = await pieceIn(framed('2-1/4'));
    const holes = (id: string) =>
      part(id)
        .features.filter(({ kind }) => kind === 'screw-hole')
        .map(({ solid, entry }) => ({ bounds: boundsOf(solid), entry }));
    const inSide = holes('case/side-left');
    expect(inSide.map(({ entry }) => entry)).toEqual(['+x', '+x', '+x', '+x']);
    const [first, second] = inSide.map(({ bounds }) => bounds);
    expect(
      second?.y.from
        .minus(first?.y.from ?? Length.zero)
        .in('mm')
        .toString(),
    ).toBe('32');
    // The front of the case is 3/4" behind the front of the door; the middle of the plate 37 mm behind that.
    const middle = first?.z.from.plus(first.z.to).dividedBy(2);
    expect(middle?.equals(Length.inches(3, 4).plus(Length.millimetres(37)))).toBe(true);
    expect(holes('face/front/front/stile-left')).toHaveLength(4);
  });
});

describe('a bevelled closing edge', () => {
  const thick = caseWith(
    'inset, gap 1/8 { door "front" hinged left { hinges "butt 2", closing edge bevelled 3/32 }   fronts thick 2 }',
    butt.replace('for inset doors', 'doors 1 to 2 thick'),
    '11-3/4 wide, 30 high, 12 deep',
  );

  it('is taken off the door at the back of the edge away from its hinges', async () => {
    const { part } = await pieceIn(thick);
    const door = part('face/front/front');
    const [bevel, ...others] = door.features.filter(({ kind }) => kind === 'bevel');
    expect([others.length, bevel?.entry, bevel?.stage]).toEqual([0, '+x', 'when hanging']);
    if (bevel === undefined) return;
    // Half of 3/32" x 2" over the height of the door.
    const height = door.box.y.size.length.in('in');
    const { flat } = volumeOf(bevel.solid);
    const half = height.times(3).dividedBy(32);
    expect([flat.least.equals(half), flat.most.equals(half)]).toEqual([true, true]);
    const { x, z } = boundsOf(bevel.solid);
    expect(x.to.equals(door.box.x.end.length)).toBe(true);
    expect([x.to.minus(x.from), z.to.minus(z.from)].map((length) => length.exactInches)).toEqual(['3/32', '2']);
  });

  it('is a set-up of its own, with its angle', async () => {
    const { evaluation } = await pieceIn(thick);
    const { bevels } = setupsOf(evaluation);
    // The angle whose tangent is 3/64: 2.7°.
    expect(bevels.map(({ off, over, degrees }) => [off.exactInches, over.exactInches, degrees])).toEqual([
      ['3/32', '2', '2.7'],
    ]);
    expect(bevelDegrees(Length.inches(1), Length.inches(1))).toBe('45.0');
  });

  it('of a pair is where its leaves meet', async () => {
    const { evaluation } = await pieceIn(
      caseWith(
        'inset, gap 1/8 { doors "front" { hinges "butt 2", closing edge bevelled 1/32 }   fronts thick 1 }',
        butt,
      ),
    );
    expect(
      evaluation.parts.flatMap(({ id, features }) =>
        features.filter(({ kind }) => kind === 'bevel').map(({ entry }) => [id, entry]),
      ),
    ).toEqual([
      ['face/front/leaf-left', '+x'],
      ['face/front/leaf-right', '-x'],
    ]);
  });
});

describe('a single door whose hinges are named for one edge', () => {
  const door = (words: string) =>
    caseWith(
      `overlay full, gap 1/8, reveal 1/8 { ${words}   fronts thick 3/4 }`,
      `${cup}, costs 5 each\n${cup.replace('"cup"', '"other"')}`,
    );

  it('hangs on that edge', async () => {
    for (const side of ['left', 'right'] as const) {
      for (const words of [
        `door "front" { hinges "cup" at ${side} }`,
        `doors "front" { single   hinges "cup" at ${side} }`,
      ]) {
        const { codes, notes, hardware, evaluation } = await pieceIn(door(words));
        expect(codes).toEqual([]);
        expect(notes).not.toContain('hinge-side-not-said');
        expect(doorSchedule(evaluation).map(({ hangs }) => hangs)).toEqual([side]);
        expect(hardware.filter(({ kind }) => kind === 'hinge')).toHaveLength(2);
        expect(
          hardwareToBuy(evaluation)
            .filter(({ what }) => what === 'hinge')
            .map(({ quantity, price }) => [quantity, `${price?.amount}`]),
        ).toEqual([[2, '5']]);
      }
    }
  });

  it('is asked where it hangs if they are named for both', async () => {
    const { notes } = await pieceIn(door('door "front" { hinges "cup" at left, "other" at right }'));
    expect(notes).toContain('hinge-side-not-said');
  });

  it('gets the words that a single one of doors knows', () =>
    checkFix(
      door('doors <|>"front" { single   hinges "cup" }'),
      'Hang it on its left edge',
      door('doors "front" { single   hinges "cup" at left }'),
    ));
});

describe('a screw that runs into a joint', () => {
  it('is told of a mark of the ruler that is never too little', async () => {
    // 1/8" thick, its middle 0.02" over the bottom: 0.0425" to go. A mark of 1/32" is 0.03125", so two of them.
    const { told } = await pieceIn(`units inches to 1/32
slide "plain 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side {
  hole 1-1/2 from front, 0.02 up   hole 12 from front, 0.02 up
  screws 5/8 long, 1/8 thick
}
piece "box" {
  size 20 wide, 12 high, 16 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, in dado 1/4 deep
    top thick 3/4, between sides
    back thick 1/4, in groove 1/4 deep, 1/2 in from back edge
  }
  face inset, gap 1/8 {
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "plain 14", 0 above lower edge of opening }
  }
}`);
    expect(told).toEqual([expect.stringMatching(/^screw-meets-joint: .*: 1\/16" would clear it$/)]);
  });
});
