import { type DrawerDesign, given, Length, type PieceDesign } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import {
  caseWithFace,
  drawer,
  drawers,
  opening,
  panel,
  partition,
  place,
  rest,
  row,
  sideMount,
  written,
} from '../design-builder.ts';
import { evaluateSound, partWithId, sizeOf } from '../reading-layouts.ts';
import { sideboard } from '../sideboard-design.ts';

/** One drawer in an opening 15 wide and 6 high, beside an empty one. */
function oneDrawer(design: DrawerDesign, width = opening('15')): PieceDesign {
  const root = row(
    'row',
    rest,
    [drawer('d', width), drawer('other', rest, { what: 'false-front' })],
    [partition('p', '3/4')],
  );
  return caseWithFace('30', '6', root, { drawers: design });
}

const boxOf = (design: PieceDesign) => evaluateSound(design);

describe('the box on side-mount slides', () => {
  // Source: one maker's installation page for ball-bearing side-mount slides: 1/2 in (12.7 mm) at each side, so the box
  // is the opening less 1 in. An opening of 15 in takes a box of 14 in; 381 mm takes 355.6 mm.
  it('is 14 wide in an opening of 15', () => {
    const evaluation = boxOf(oneDrawer(drawers({ slides: sideMount('side mount 14', '14') })));
    expect(sizeOf(partWithId(evaluation, 'd/box-front'))).toBe('14 x 11/2 x 1/2');
  });

  it('is 355.6 mm wide in an opening of 381 mm', () => {
    const millimetres = { kind: 'fixed', basis: 'opening', figure: given(Length.millimetres(381), place()) } as const;
    const slides = sideMount('side mount 350', '14', {
      clearanceEachSide: given(Length.millimetres(127, 10), place()),
    });
    const evaluation = boxOf(oneDrawer(drawers({ slides }), millimetres));
    const width = partWithId(evaluation, 'd/box-front').length.length;
    expect(width.equals(Length.millimetres(3556, 10))).toBe(true);
  });

  it('is as deep as the slide is long and stands behind the front, in the middle of its opening', () => {
    const evaluation = boxOf(oneDrawer(drawers({ slides: sideMount('side mount 14', '14') })));
    const side = partWithId(evaluation, 'd/box-left');
    expect(side.length.length.exactInches).toBe('14');
    // The front is 3/4 thick; the opening begins 3/4 from the left end and the slide takes 1/2.
    expect(side.box.z.start.length.exactInches).toBe('3/4');
    expect(side.box.x.start.length.exactInches).toBe('5/4');
    expect(partWithId(evaluation, 'd/box-right').box.x.end.length.exactInches).toBe('61/4');
  });

  // 18 wide openings, 1/2 at each side (design worked out by hand).
  it('is 17 wide in the sideboard', () => {
    const evaluation = boxOf(sideboard());
    for (const id of ['cards', 'dice', 'maps', 'blankets']) {
      expect(partWithId(evaluation, `${id}/box-front`).length.length.exactInches).toBe('17');
    }
  });
});

describe('what a box is made of', () => {
  const slides = sideMount('side mount 14', '14');
  const made = (design: Partial<DrawerDesign>) => {
    const evaluation = boxOf(oneDrawer(drawers({ slides, ...design })));
    const size = (id: string) => sizeOf(partWithId(evaluation, `d/${id}`));
    return { side: size('box-left'), end: size('box-front'), back: size('box-back'), bottom: size('box-bottom') };
  };
  // Box 14 wide, 14 deep, 5-1/2 high, of 1/2 inch; groove 1/4, bottom 1/16 short: 13 + 1/2 − 1/16.
  const bottom = '215/16 x 215/16 x 1/4';

  it.each(['dovetail', 'box-joint'] as const)(
    'with %s corners ends run the full width and sides the full depth',
    (corners) => {
      expect(made({ corners })).toEqual({
        side: '14 x 11/2 x 1/2',
        end: '14 x 11/2 x 1/2',
        back: '14 x 11/2 x 1/2',
        bottom,
      });
    },
  );

  it('with rabbets the ends reach half the thickness into either side', () => {
    expect(made({ corners: 'rabbet' })).toEqual({
      side: '14 x 11/2 x 1/2',
      end: '27/2 x 11/2 x 1/2',
      back: '27/2 x 11/2 x 1/2',
      bottom,
    });
  });

  it('butted the ends stand between the sides', () => {
    expect(made({ corners: 'butt' })).toEqual({
      side: '14 x 11/2 x 1/2',
      end: '13 x 11/2 x 1/2',
      back: '13 x 11/2 x 1/2',
      bottom,
    });
  });

  it('takes width and height as written when they fit', () => {
    const { side, end } = made({ boxWidth: written('14'), boxHeight: written('4') });
    expect({ side, end }).toEqual({ side: '14 x 4 x 1/2', end: '14 x 4 x 1/2' });
  });

  it('puts the bottom into its grooves, half of what it is short at each side', () => {
    const evaluation = boxOf(oneDrawer(drawers({ slides })));
    const part = partWithId(evaluation, 'd/box-bottom');
    // The left side ends at 5/4 + 1/2; the groove reaches 1/4 into it.
    expect(part.box.x.start.length.exactInches).toBe('49/32');
    expect(part.grain).toBe('x');
  });

  it('without slides runs in the opening with a little play, and says that this is assumed', () => {
    const { slides: _none, ...plain } = drawers({ slides });
    const evaluation = boxOf(oneDrawer(plain));
    const width = partWithId(evaluation, 'd/box-front').length;
    // Common practice, no source: 1/32 at each side, 1/2 behind.
    expect(width.length.exactInches).toBe('239/16');
    expect(partWithId(evaluation, 'd/box-left').length.length.exactInches).toBe('16');
  });

  it('is absent while nothing is said of drawers', () => {
    const { drawers: _none, ...face } = sideboard().face ?? { drawers: undefined };
    const evaluation = boxOf({ ...sideboard(), face: face as PieceDesign['face'] & object });
    expect(evaluation.parts.some((part) => part.role === 'drawer-side')).toBe(false);
    expect(evaluation.parts.filter((part) => part.role === 'drawer-front')).toHaveLength(4);
  });

  it('takes its own drawer statement before that of the face', () => {
    const own = drawers({ slides, sides: panel('5/8') });
    const root = row(
      'row',
      rest,
      [drawer('d', opening('15'), { drawer: own }), drawer('e', rest)],
      [partition('p', '3/4')],
    );
    const evaluation = boxOf(caseWithFace('30', '6', root, { drawers: drawers({ slides }) }));
    expect(partWithId(evaluation, 'd/box-left').thickness.length.exactInches).toBe('5/8');
    expect(partWithId(evaluation, 'e/box-left').thickness.length.exactInches).toBe('1/2');
  });
});

describe('the bottom of a box 14 wide, 5-1/2 high and 14 deep, its sides 1/2 thick', () => {
  const held = (bottomHeld: NonNullable<DrawerDesign['bottomHeld']>) => {
    const design = drawers({
      slides: sideMount('side mount 14', '14'),
      sides: panel('1/2'),
      bottom: panel('1/4'),
      corners: 'dovetail',
      bottomHeld,
    });
    const evaluation = boxOf(oneDrawer(design, opening('15')));
    const height = (id: string) => partWithId(evaluation, id).box.y.size.length.exactInches;
    const grooved = evaluation.parts.filter(
      ({ cell, features }) => cell === 'd' && features.some(({ kind }) => kind === 'groove'),
    );
    const bottom = partWithId(evaluation, 'd/box-bottom');
    return {
      bottom: [bottom.box.x.size, bottom.box.z.size].map(({ length }) => length.exactInches),
      heights: [height('d/box-left'), height('d/box-front'), height('d/box-back')],
      grooved: grooved.map(({ id }) => id),
      meeting: evaluation.findings.filter(({ severity }) => severity !== 'note').map(({ code }) => code),
    };
  };

  it('lies in grooves 1/4 deep all around, 1/16 short of them', () => {
    expect(held('grooves')).toEqual({
      bottom: ['215/16', '215/16'],
      heights: ['11/2', '11/2', '11/2'],
      grooved: ['d/box-left', 'd/box-right', 'd/box-front', 'd/box-back'],
      meeting: [],
    });
  });

  // From the groove of the front (1/2 less 1/4, and 1/32 short of it) to the back of the box: 14 - 1/4 - 1/32.
  // The back stands on the bottom, 1/4 and 1/4 up.
  it('slid in reaches under the back, which stands on it', () => {
    expect(held('slid-in')).toEqual({
      bottom: ['215/16', '439/32'],
      heights: ['11/2', '11/2', '5'],
      grooved: ['d/box-left', 'd/box-right', 'd/box-front'],
      meeting: [],
    });
  });

  it('applied covers the whole box, and takes its thickness from the sides', () => {
    expect(held('applied')).toEqual({
      bottom: ['14', '14'],
      heights: ['21/4', '21/4', '21/4'],
      grooved: [],
      meeting: [],
    });
  });
});
