import { describe, expect, it } from 'vitest';
import { butt, caseWith, pieceIn } from '../language/doors/door-texts.ts';
import { checkFixes } from './applying-fixes.ts';

/**
 * What drawer boxes, shelves and frames leave of their own wood: a text that is right, one slip in it, and the whole
 * sentence that it gives, worked by hand. The opening of the drawer is 18-1/2" wide and 6-1/2" high, so its box, with 1/4"
 * free under it and 1/2" over it, is 5-3/4" high.
 */

const drawer = (inner: string, common = 'bottom thick 1/4') =>
  caseWith(
    `inset, gap 1/8 { drawer "spoons" { ${inner} }   fronts thick 3/4   drawers { sides thick 1/2   ${common}   corners dovetail } }`,
    'units inches to 1/32',
    '20 wide, 8 high, 16 deep',
  );
const open = (inner: string) => caseWith(`inset { open "books" { ${inner} } }`, 'units inches to 1/32');
const glazed = (rabbet: string) =>
  caseWith(
    `inset, gap 3/32 { door "press" hinged left { hinges "butt 2" }
       fronts thick 3/4, frame-and-panel { stiles 2 wide   top-rail 2 wide   bottom-rail 3 wide   glass thick 1/8, ${rabbet}, rabbet 3/8 deep, clearance 1/8, safety } }`,
    `units inches to 1/32\n${butt}`,
  );

describe.each([
  {
    slip: 'a runner higher than its box',
    right: drawer('runners 3/4 high, thick 1/4'),
    wrong: drawer('runners 6 high, thick 1/4'),
    // The groove is 1/32" higher than the runner and lies in the middle: 9/64" over 5-3/4" at each edge.
    told: 'runner-out-of-place: the grooves for the runners of "spoons" come out at the lower edge of the sides of its box, by 1/8" + 1/64"',
  },
  {
    slip: 'a runner at the upper edge of its box',
    right: drawer('runners 3/4 high, thick 1/4, 4-1/2 above lower edge of box'),
    wrong: drawer('runners 3/4 high, thick 1/4, 4-7/8 above lower edge of box'),
    // 5-3/4" less 4-7/8", 3/4" and half of the play of 1/32".
    told: 'runner-out-of-place: the grooves for the runners of "spoons" leave 3/32" + 1/64" of the sides of its box at the upper edge: less than 1/8" breaks out',
  },
  {
    slip: 'a runner at the lower edge of its box',
    right: drawer('runners 3/4 high, thick 1/4, 5/8 above lower edge of box'),
    wrong: drawer('runners 3/4 high, thick 1/4, 0 above lower edge of box'),
    // Half of the play. Its mend takes it over the groove for the bottom, which ends 1/2" up.
    told: 'runner-out-of-place: the grooves for the runners of "spoons" come out at the lower edge of the sides of its box, by 1/64"',
  },
  {
    slip: 'partitions that stand out of their drawer',
    right: drawer('compartments 3 across, thick 1/4, 5-1/4 high'),
    wrong: drawer('compartments 3 across, thick 1/4, 5-1/2 high'),
    told: 'partition-too-high: the partitions in "spoons" are 5-1/2" high, over the bottom of its box there is 5-1/4": 1/4" too high',
  },
  {
    slip: 'partitions in dadoes more than half through',
    right: drawer('compartments 3 across, thick 1/4, dadoes 1/4 deep'),
    wrong: drawer('compartments 3 across, thick 1/4, dadoes 3/8 deep'),
    told: 'dado-too-deep: the dado is 3/8" deep in the box front of "spoons", 1/2" thick: more than half of it, 1/4"',
  },
  {
    slip: 'a bottom at the lower edge',
    right: drawer('', 'bottom thick 1/4, 1/8 up'),
    wrong: drawer('', 'bottom thick 1/4, 1/16 up'),
    told: 'drawer-bottom-too-low: the groove for the bottom of "spoons" leaves 1/16" of its box under it: less than 1/8" breaks out',
  },
  {
    slip: 'pin holes that nearly run into each other',
    right: open('shelves 2 adjustable { pins holes 1/4 wide, 3/8 apart }'),
    wrong: open('shelves 2 adjustable { pins holes 1/4 wide, 5/16 apart }'),
    told: 'pin-holes-too-near: pin holes of "books" 5/16" apart leave 1/16" of wood between them: less than 1/8" breaks out',
  },
  {
    slip: 'cleats that reach down to the bottom',
    right: open('shelves 2 on cleats thick 3/4 { cleats thick 1/2, 9 high }'),
    wrong: open('shelves 2 on cleats thick 3/4 { cleats thick 1/2, 10 high }'),
    // 28-1/2" less two shelves in three spaces.
    told: 'cleats-too-high: cleats 10" high stand in the 9" under a shelf of "books": 1" too high',
  },
  {
    slip: 'a rabbet as wide as the stile',
    right: glazed('in rabbet 1 wide'),
    wrong: glazed('in rabbet 2 wide'),
    told: 'pane-does-not-fit: the rabbet for the pane of "press" leaves 0" of the narrowest member beside it: at least 1", half of it, is wanted',
  },
])('$slip', ({ right, wrong, told }) => {
  it('is told, and nothing else is', async () => {
    expect((await pieceIn(right)).told).toEqual([]);
    expect((await pieceIn(wrong)).told).toEqual([told]);
  });
  it('is cleared by its mend', async () => {
    const files = [{ name: 'piece.fettle', text: wrong }];
    expect((await checkFixes({ files }, told.slice(0, told.indexOf(':')))).length).toBe(1);
  });
});

describe('hinges that lie beyond their door', () => {
  const hung = (from: string) =>
    caseWith(
      `inset, gap 3/32 { door "press" hinged left { hinges "butt 2", ${from} from ends }   fronts thick 3/4 }`,
      butt,
    );
  it('are told once, and have no place', async () => {
    for (const from of ['50', '-1']) {
      const { codes, hardware } = await pieceIn(hung(from));
      expect(codes).toEqual(['hinges-do-not-fit']);
      expect(hardware.filter(({ kind }) => kind === 'hinge')).toEqual([]);
    }
  });
});

describe('a vent in a door of frame and panel', () => {
  const vented = (vent: string) =>
    caseWith(
      `inset, gap 3/32 { door "press" hinged left { hinges "butt 2"   vent ${vent} }
         fronts thick 3/4, frame-and-panel { stiles 2 wide   top-rail 2 wide   bottom-rail 3 wide   panel thick 1/4, in groove 3/8 deep, clearance 1/16 } }`,
      butt,
    );
  it('goes through its panel, up from the lower edge of the door', async () => {
    const { part, told } = await pieceIn(vented('6 wide, 2 high, 8 up'));
    expect(told).toEqual([]);
    const [hole] = part('face/press/front/panel').features.filter(({ kind }) => kind === 'vent');
    // The door begins 3/4 + 3/32 above the floor.
    expect(hole?.solid).toMatchObject({ y: { from: { exactInches: '283/32' }, to: { exactInches: '347/32' } } });
  });
  it('is told where it would cut the frame', async () => {
    expect((await pieceIn(vented('6 wide, 2 high, 1 up'))).told).toEqual([
      expect.stringMatching(
        /^vent-leaves-no-wood: the vent goes .* beyond the lower edge of the panel of the door "press"/,
      ),
    ]);
  });
});

it('slides are not compared with themselves', async () => {
  const slide = (name: string) => `slide "${name}" side mount, 14 long, 1-3/4 high, takes 1/2 each side`;
  const text = (compared: string) =>
    `${slide('plain')}\n${slide('other')}\n${drawer('', `bottom thick 1/4   slides "plain"   compare "${compared}"`)}`;
  expect((await pieceIn(text('other'))).notes).toContain('slides-compared');
  expect((await pieceIn(text('plain'))).notes).not.toContain('slides-compared');
});
