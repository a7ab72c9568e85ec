import { drawerSchedule, type LaidCell } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { pieceIn } from './door-texts.ts';

/** Drawers behind a door: where they stand, how large their boxes are, and what is in their way. */

const slide = `slide "14" side mount, 14 long, 1-3/4 high, takes 1/2 each side {
  hole 1 from front   hole 12 from front   screws 1/2 long, 1/8 thick
}`;
const butt = (more = 'opens 180 degrees') =>
  `hinge "butt 2" butt, 2 long, leaf 9/16 wide, 5/32 closed, for inset doors, ${more}`;
const knob = 'pull "knob" 1 wide, round, stands out 7/8, thread 3/8 deep';

interface Asked {
  readonly inside?: string;
  readonly door?: string;
  readonly hinge?: string;
  readonly drawers?: string;
  readonly face?: string;
  readonly within?: string;
}

/** 24 x 30 x 18, panels 3/4": an opening of 22-1/2 x 28-1/2, 18 deep. */
function cupboard({
  inside = 'inside',
  door = 'door "left" hinged left',
  hinge = butt(),
  drawers = 'slides "14"',
  face = 'inset, gap 1/8',
  within = 'drawer "tins" front 6 high   drawer "jars" rest',
}: Asked): string {
  return `${slide}
${hinge}
${knob}
piece "cupboard" {
  size 24 wide, 30 high, 18 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face ${face} {
    ${door} { hinges "butt 2"   ${inside} { ${within} } }
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   ${drawers.includes('clear') ? '' : 'clear 1/4 below'}   ${drawers} }
  }
}`;
}

const inches = (figure: { readonly length: { readonly exactInches: string } } | undefined) =>
  figure?.length.exactInches;

describe('fronts behind a door', () => {
  it('stand behind an inset door by its thickness and an eighth, and their boxes begin behind them', async () => {
    const { told, part } = await pieceIn(cupboard({}));
    expect(told).toEqual([]);
    const front = part('face/left/inside/tins/front').box;
    // The door is flush: its back is 3/4 in, the fronts 1/8 behind that, 7/8.
    expect(inches(front.z.start)).toBe('7/8');
    // 22-1/2 less two gaps of 1/8: 22-1/4.
    expect(inches(front.x.size)).toBe('89/4');
    // 28-1/2 less three gaps of 1/8 is 28-1/8; less 6: 22-1/8.
    expect(inches(part('face/left/inside/jars/front').box.y.size)).toBe('177/8');
    // Behind a front of 3/4: 7/8 + 3/4 = 1-5/8.
    expect(inches(part('face/left/inside/tins/box-left').box.z.start)).toBe('13/8');
  });

  it('are flush with the case behind a door that lies on it', async () => {
    const cup =
      'hinge "butt 2" concealed, cup 35mm wide, cup 12mm deep, overlay 1/2 more than cup distance, plate 37mm from front, opens 165 degrees';
    const { told, part } = await pieceIn(cupboard({ hinge: cup, face: 'overlay full, gap 1/8, reveal 1/16' }));
    expect(told).toEqual([]);
    // The piece is 18 deep, the door 3/4 of that.
    expect(inches(part('face/left/front').box.z.start)).toBe('0');
    expect(inches(part('face/left/inside/tins/front').box.z.start)).toBe('3/4');
  });

  it('make boxes shallower that reach to the back', async () => {
    const { part } = await pieceIn(cupboard({ drawers: '', inside: 'inside, 1 behind door' }));
    // 18 less the door 3/4, 1 behind it, the front 3/4 is 15-1/2; less 1/2 free behind the box (assumed): 15.
    expect(inches(part('face/left/inside/tins/box-left').box.z.size)).toBe('15');
  });

  it('keep clear of the ends of the opening, while shelves and dividers reach from end to end', async () => {
    const { told, part, evaluation } = await pieceIn(
      cupboard({
        inside: 'inside, 1 clear at left',
        drawers: 'slides "14"   packers',
        within: 'open "top" rest { shelves 1 fixed }   divider panel thick 3/4, shown   drawer "tins" front 6 high',
      }),
    );
    expect(told).toEqual([]);
    const front = part('face/left/inside/tins/front').box;
    // 3/4 of the side, 1 clear, a gap of 1/8: 1-7/8. 22-1/2 less 1 and two gaps of 1/8: 21-1/4.
    expect(inches(front.x.start)).toBe('15/8');
    expect(inches(front.x.size)).toBe('85/4');
    expect(inches(part('face/left/inside/top/shelf-1').box.x.size)).toBe('45/2');
    const divider = evaluation.parts.find(({ role }) => role === 'divider-panel');
    expect(inches(divider?.box.x.size)).toBe('45/2');
    // From the back of the door and 1/8 to the back: 18 less 7/8.
    expect(inches(divider?.box.z.size)).toBe('137/8');
    // On slides of 1/2 each side: 22-1/2 less 1 less 1: 20-1/2 wide.
    expect(drawerSchedule(evaluation).map(({ box }) => inches(box?.width))).toEqual(['41/2']);
    // The slide at the left stands 1 away from the side: its packer is as thick.
    expect(evaluation.parts.filter(({ role }) => role === 'packer').map(({ box }) => inches(box.x.size))).toEqual([
      '1',
    ]);
  });

  it('are told of in the schedules, and a row of them shares what the clearance leaves', async () => {
    const { told, evaluation } = await pieceIn(
      cupboard({
        inside: 'inside, 1 clear each side',
        drawers: '',
        within: 'row { drawer "a"   partition thick 1/2, shown   drawer "b" }',
      }),
    );
    expect(told).toEqual([]);
    // 22-1/2 less 2 is 20-1/2, less 1/2 is 20: each opening 10, each front 9-3/4.
    const fronts = drawerSchedule(evaluation).map(({ name, front }) => [name, inches(front?.box.x.size)]);
    expect(fronts).toEqual([
      ['a', '39/4'],
      ['b', '39/4'],
    ]);
  });

  it('may stand behind a door behind a door', async () => {
    const { part, evaluation } = await pieceIn(
      cupboard({
        drawers: '',
        within: 'door "inner" hinged left { hinges "butt 2"   inside { drawer "tins" } }',
      }),
    );
    // 7/8 to the inner door, 3/4 of its own, 1/8 behind it: 1-3/4.
    expect(inches(part('face/left/inside/inner/inside/tins/front').box.z.start)).toBe('7/4');
    const count = (laid: LaidCell): number => 1 + laid.cells.reduce((sum, each) => sum + count(each), 0);
    expect(evaluation.layout.face && count(evaluation.layout.face)).toBe(5);
  });

  it('add up within their own opening', async () => {
    const { codes } = await pieceIn(cupboard({ within: 'drawer "tins" front 6 high   drawer "jars" front 6 high' }));
    expect(codes).toEqual(['fronts-do-not-add-up']);
  });
});

describe('a drawer behind an open door', () => {
  const told = async (asked: Asked) => (await pieceIn(cupboard(asked))).told;

  it('just passes it, or is hit by what is missing', async () => {
    // At a right angle a door of 3/4 with its gap of 1/8 stands 7/8 in. A clearance of 3/4 and the gap make 7/8.
    const hinge = butt('opens 90 degrees');
    expect(await told({ hinge, inside: 'inside, 3/4 clear at left', drawers: '' })).toEqual([]);
    expect(await told({ hinge, inside: 'inside, 5/8 clear at left', drawers: '' })).toEqual([
      'inside-drawer-meets-door: open at 90 degrees the door "left" stands 7/8" in its opening, and "tins" behind it keeps only 3/4" clear of that end: it hits the door by 1/8"',
    ]);
  });

  it('says what is assumed, and asks only at the edge that the door hangs on', async () => {
    const found = await told({ hinge: butt('doors at most 30 wide'), drawers: '' });
    expect(found).toEqual([expect.stringContaining('open at 90 degrees (assumed: its hinges do not tell)')]);
    expect(
      await told({ hinge: butt('opens 90 degrees'), drawers: '', inside: 'inside, 3/4 clear at right' }),
    ).toHaveLength(1);
  });

  it('closes over pulls that have room, and over no others', async () => {
    const within = 'drawer "tins" { pulls "knob" }';
    expect(await told({ within, inside: 'inside, 7/8 behind door' })).toEqual([]);
    expect(await told({ within, inside: 'inside, 3/4 behind door' })).toEqual([
      'inside-pull-meets-door: the pull "knob" on "tins" stands out 7/8", and the back of the closed door "left" is only 3/4" before that front: 1/8" too little',
    ]);
  });

  it('passes the arm of a hinge that is at another height', async () => {
    const cup = `hinge "butt 2" concealed, cup 1-3/8 wide, cup 1/2 deep, gap and cup distance 1/4 together, opens 180 degrees,
  stands 1 into opening, plate 1-1/2 from front, doors at most 30 wide`;
    // Cups 4 from the ends of a door of 28-1/4: 3-5/16 to 4-11/16 from below; the upper one 4 below the top.
    const inside = 'inside';
    const low = 'open rest   drawer "low" front 6 high';
    const middle = 'open opening 10 high   drawer "middle" front 6 high   open rest';
    expect(await told({ hinge: cup, inside, within: middle, drawers: '' })).toEqual([]);
    expect(await told({ hinge: cup, inside, within: low, drawers: '' })).toEqual([
      'inside-drawer-meets-hinge: the hinge "butt 2" stands 1" into the opening at the height of "low", which keeps only 1/8" clear of that end: 7/8" in its way',
    ]);
  });
});

describe('hinges whose entries say too little for drawers behind their door', () => {
  const cup = (more = '') =>
    `hinge "butt 2" concealed, cup 35mm wide, cup 12mm deep, gap and cup distance 1/4 together, plate 37mm from front${more}`;
  const inside = 'inside, 7/8 clear at left';
  const notes = async (asked: Asked) =>
    (await pieceIn(cupboard(asked))).notes.filter((code) => code === 'hinge-reach-assumed').length;

  it('are told, and what was taken instead', async () => {
    expect(await notes({ hinge: cup(), inside })).toBe(1);
    expect(await notes({ hinge: cup(', opens 110 degrees'), inside })).toBe(1);
    expect(await notes({ hinge: cup(', stands 3/4 into opening'), inside })).toBe(1);
    expect(await notes({ hinge: cup(', opens 110 degrees, stands 3/4 into opening'), inside })).toBe(0);
  });

  it('are not told of where nothing comes out behind the door', async () => {
    expect(await notes({ hinge: cup(), within: 'open "jars"' })).toBe(0);
  });

  it('have one finding for an angle that makes a door strike', async () => {
    const { codes, notes: found } = await pieceIn(cupboard({ hinge: cup(', stands 3/4 into opening') }));
    expect(codes).toContain('inside-drawer-meets-door');
    expect(found).not.toContain('hinge-reach-assumed');
  });
});

describe('drawers that just touch', () => {
  const told = async (asked: Asked) => (await pieceIn(cupboard(asked))).told;
  const cup =
    'hinge "butt 2" concealed, cup 35mm wide, cup 12mm deep, gap and cup distance 1/4 together, plate 37mm from front, opens 165 degrees, open door 3/4 into opening, stands 1/2 into opening';
  const beside = (size: string) => ({
    hinge: cup,
    inside: `inside, ${size} clear at left`,
    within: 'drawer "tins"',
    drawers: '',
  });

  it('bind beside the open door', async () => {
    // Beyond the gap of 1/8: 5/8 make 3/4, as far as the door stands in.
    expect(await told(beside('5/8'))).toEqual([
      'drawer-without-play: "tins" has 0" free beside the open door or its hinge: with less than 1/32" it binds (common practice)',
    ]);
    expect(await told(beside('21/32'))).toEqual([]);
  });

  it('bind over the box, and under one that hangs on slides', async () => {
    const clear = (words: string) => ({ within: 'drawer "tins"', drawers: `slides "14"   clear ${words}` });
    const box = (words: string) => told({ ...clear(words) });
    expect(await box('1/4 below, 0 above')).toEqual([
      'drawer-without-play: "tins" has 0" free over its box: with less than 1/32" it binds (common practice)',
    ]);
    expect(await box('0 below, 1/4 above')).toEqual([
      'drawer-without-play: "tins" has 0" free under its box, which hangs on its slides or runners: with less than 1/32" it binds (common practice)',
    ]);
    expect(await box('1/32 below, 1/32 above')).toEqual([]);
  });
});
