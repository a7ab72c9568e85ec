import { describe, expect, it } from 'vitest';
import { butt, caseWith, cup, knife, pieceIn } from './door-texts.ts';

/** Where hinges go and how deep they are let in, worked by hand. */

describe('a butt hinge 5/32" thick closed, in a gap of 3/32"', () => {
  const text = (hinges: string) =>
    caseWith(`inset, gap 3/32 { door "front" hinged left { hinges "butt 2"${hinges} }   fronts thick 3/4 }`, butt);

  it('is let in by half of what is left of it, 1/32", at either side', async () => {
    const { setOf, part, told } = await pieceIn(text(''));
    expect(told).toEqual([]);
    expect(setOf('hinge-left-1', 'depth of the gain in the door')).toBe('1/32');
    expect(setOf('hinge-left-1', 'depth of the gain in the case')).toBe('1/32');
    const inDoor = part('face/front/front').features.filter(({ kind }) => kind === 'gain');
    const inSide = part('case/side-left').features.filter(({ kind }) => kind === 'gain');
    expect(inDoor).toHaveLength(2);
    expect(inSide).toHaveLength(2);
    // The door begins 3/32" beside the side, which is 3/4" thick; it is 28-5/16" high and begins 3/32" above the bottom.
    expect(inDoor[0]?.solid).toMatchObject({
      kind: 'box',
      x: { from: { exactInches: '27/32' }, to: { exactInches: '7/8' } },
    });
    expect(inSide[0]?.solid).toMatchObject({
      kind: 'box',
      x: { from: { exactInches: '23/32' }, to: { exactInches: '3/4' } },
    });
    // From its own length above the lower end of the door: 3/4 + 3/32 + 2.
    expect(inDoor[0]?.solid).toMatchObject({ y: { from: { exactInches: '91/32' }, to: { exactInches: '155/32' } } });
    expect(inSide[0]?.solid).toMatchObject({ y: { from: { exactInches: '91/32' }, to: { exactInches: '155/32' } } });
    expect(inDoor[0]?.solid).toMatchObject({ z: { from: { exactInches: '0' }, to: { exactInches: '5/8' } } });
  });

  it('is let in more in the door where the case was cut too shallow', async () => {
    const { setOf } = await pieceIn(text(', measured case gain 1/64 deep'));
    expect(setOf('hinge-left-1', 'depth of the gain in the case')).toBe('1/64');
    expect(setOf('hinge-left-1', 'depth of the gain in the door')).toBe('3/64');
  });

  it('stands where it is said to, and as many as are said', async () => {
    const { hardware, setOf } = await pieceIn(text(', 3 to each door, 3 from ends'));
    expect(hardware.map(({ label }) => label)).toEqual([
      'lower hinge of the door "front"',
      'middle hinge of the door "front"',
      'upper hinge of the door "front"',
    ]);
    const middles = [1, 2, 3].map((at) =>
      setOf(`hinge-left-${at}`, 'from the lower end of the door to the middle of the hinge'),
    );
    // 3 + 1; half of 28-5/16; 28-5/16 - 4.
    expect(middles).toEqual(['4', '453/32', '389/16']);
    expect(setOf('hinge-left-1', 'from the lower edge of the opening to the middle of the hinge')).toBe('131/32');
  });

  it('holds with all its screws in door and side, from the bottom of each gain', async () => {
    const { hardware } = await pieceIn(text(''));
    const [lower] = hardware;
    expect(lower?.on).toEqual(['face/front/front', 'case/side-left']);
    expect(lower?.screws.map(({ towards, at }) => [towards, at.x.exactInches])).toEqual([
      ...Array.from({ length: 3 }, () => ['+x', '7/8']),
      ...Array.from({ length: 3 }, () => ['-x', '23/32']),
    ]);
  });
});

it('hinges of a pair are on its outer edges', async () => {
  const { hardware } = await pieceIn(
    caseWith('inset, gap 3/32 { doors "cups" { hinges "butt 2" }   fronts thick 3/4 }', butt),
  );
  expect(hardware.map(({ id, on }) => [id.split('/').slice(-2).join('/'), on.at(-1)])).toEqual([
    ['leaf-left/hinge-left-1', 'case/side-left'],
    ['leaf-left/hinge-left-2', 'case/side-left'],
    ['leaf-right/hinge-right-1', 'case/side-right'],
    ['leaf-right/hinge-right-2', 'case/side-right'],
  ]);
});

it('a knife hinge is let into the ends of the door and into top and bottom', async () => {
  const { part, setOf, hardware } = await pieceIn(
    caseWith('inset, gap 3/32 { door "front" hinged right { hinges "knife 2" }   fronts thick 3/4 }', knife),
  );
  expect(hardware.map(({ on }) => on)).toEqual([
    ['face/front/front', 'case/bottom'],
    ['face/front/front', 'case/top'],
  ]);
  expect(setOf('hinge-right-2', 'depth of the gain over the door')).toBe('1/32');
  // In the middle of the thickness: 3/8 - 3/16.
  expect(setOf('hinge-right-1', 'from the front of the door to the leaf')).toBe('3/16');
  const [inTop] = part('case/top').features;
  // The door ends 3/32" before the side: 20 - 3/4 - 3/32; the leaf is 2" long.
  expect(inTop?.solid).toMatchObject({
    x: { from: { exactInches: '549/32' }, to: { exactInches: '613/32' } },
    y: { from: { exactInches: '117/4' }, to: { exactInches: '937/32' } },
  });
});

describe('a cup hinge on an overlay door', () => {
  it('has its cup as far from the edge as the overlay asks, and its plate 37 mm behind the front', async () => {
    const text = `units mm to 0.5
${cup}
piece "case" {
  size 600 wide, 700 high, 300 deep
  case { sides thick 18   top thick 18, between sides   bottom thick 18, between sides }
  face overlay full, gap 3, reveal 2 { door "front" hinged left { hinges "cup" }   fronts thick 18 }
}`;
    const { part, setOf, hardware, told } = await pieceIn(text);
    expect(told).toEqual([]);
    const inMillimetres = (inches: string | undefined) => {
      const [top, bottom = '1'] = (inches ?? '').split('/');
      return (Number(top) / Number(bottom)) * 25.4;
    };
    // The side is 18 thick and shows 2: the door laps 16, of which the hinge makes 12.
    expect(inMillimetres(setOf('hinge-left-1', 'from the edge of the door to the cup'))).toBeCloseTo(4, 9);
    expect(inMillimetres(setOf('hinge-left-1', 'from the edge of the door to the middle of the cup'))).toBeCloseTo(
      21.5,
      9,
    );
    const [bore] = part('face/front/front').features;
    expect(bore?.kind).toBe('cup-hole');
    expect(hardware).toHaveLength(2);
    expect(hardware[0]?.screws.map(({ towards }) => towards)).toEqual(['-z', '-z', '-x', '-x']);
    expect(hardware[0]?.screws.map(({ at }) => Math.round(at.z.approximateInches * 254) / 10)).toEqual([
      18, 18, 55, 55,
    ]);
  });
});

it('an entry that does not say what kind of hinge it is places nothing', async () => {
  const { hardware } = await pieceIn(
    caseWith('inset, gap 3/32 { door "front" hinged left { hinges "bare" }   fronts thick 3/4 }', 'hinge "bare"'),
  );
  expect(hardware).toEqual([]);
});

describe('hinges named for one edge', () => {
  const other = butt.replace('"butt 2"', '"butt too"');
  const told = async (door: string) => {
    const piece = await pieceIn(caseWith(`inset, gap 3/32 { ${door}   fronts thick 3/4 }`, `${butt}\n${other}`));
    return piece.told;
  };

  it('hang a door that says nothing else on that edge', async () => {
    expect(await told('door "cups" { hinges "butt 2" at right }')).toEqual([]);
    expect(await told('door "cups" hinged right { hinges "butt 2" at right }')).toEqual([]);
  });

  it('are told where the door hangs on the other one', async () => {
    expect(await told('door "cups" hinged left { hinges "butt 2" at right }')).toEqual([
      'hinges-at-other-edge: "cups" hangs on its left edge, and its hinges "butt 2" are named at its right edge alone',
    ]);
    expect(await told('door "cups" hinged left { hinges "butt 2", "butt too" at right }')).toEqual([
      'hinges-at-other-edge: "cups" hangs on its left edge: "butt too" at its right edge are used for nothing',
    ]);
    expect(await told('door "cups" hinged left { hinges "butt 2" at left, "butt too" at right }')).toHaveLength(1);
  });

  it('leave the other door of a pair without any, which is told', async () => {
    expect(await told('doors "cups" { pair   hinges "butt 2" at left }')).toEqual([
      'hinges-at-other-edge: "butt 2" are named at the left edge alone: the right door of "cups" has no hinges',
    ]);
    expect(await told('doors "cups" { pair   hinges "butt 2" at left, "butt too" at right }')).toEqual([]);
    expect(await told('doors "cups" { pair   hinges "butt 2", "butt too" at right }')).toEqual([]);
  });
});
