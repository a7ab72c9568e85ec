import type { DrawerDesign, Evaluation, FrontCell, LaidCell } from '@fettle/engine';
import { evaluateDocument } from '@fettle/language';
import { describe, expect, test } from 'vitest';
import { openFixture } from '../harness/workbench.ts';

/** What one drawer says beside what is said for all, and what stands in where nothing is said, in either system. */

async function evaluate(face: string, units = 'inches'): Promise<Evaluation> {
  const size = units === 'inches' ? 'size 30 wide, 24 high, 18 deep' : 'size 760 wide, 600 high, 450 deep';
  const thick = units === 'inches' ? '3/4' : '18';
  const text = `slide "long" side mount, 14 long, takes 1/2 each side
piece "case" {
  units ${units}
  ${size}
  case { sides thick ${thick}   bottom thick ${thick}, between sides   top thick ${thick}, between sides   stretchers thick ${thick} }
  ${face}
}`;
  const workbench = await openFixture({ files: [{ name: 'case.fettle', text }] });
  const [piece] = evaluateDocument(workbench.services, workbench.document('case.fettle')).pieces;
  if (piece === undefined) throw new Error('no piece is read');
  return piece.evaluation;
}

function drawerCalled({ layout, design }: Evaluation, name: string): DrawerDesign {
  const waiting: (LaidCell | undefined)[] = [layout.face];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (next.cell.name === name) {
      const found = (next.cell as FrontCell).drawer ?? design.face?.drawers;
      if (found !== undefined) return found;
    }
    waiting.push(...next.cells);
  }
  throw new Error(`no drawer "${name}"`);
}

const inches = (figure: { readonly length: { readonly exactInches: string } } | undefined) =>
  figure?.length.exactInches;
const millimetres = (figure: { readonly length: { in(unit: 'mm'): { toString(): string } } } | undefined) =>
  figure?.length.in('mm').toString();

describe('what one drawer says', () => {
  const face = `face inset {
    drawer "a" front 8 high
    divider thick 3/4
    drawer "b" rest { clear 2 above }
    fronts thick 3/4
    drawers { sides thick 5/8   bottom thick 1/4   corners dovetail   slides "long"   clear 3/8 below, 1 above   box 12 wide }
  }`;

  test('is put in place of that word only', async () => {
    const piece = await evaluate(face);
    const [a, b] = [drawerCalled(piece, 'a'), drawerCalled(piece, 'b')];
    expect([inches(a.clearAbove), inches(b.clearAbove)]).toEqual(['1', '2']);
    expect(b).toMatchObject({ corners: 'dovetail', slides: { name: 'long' } });
    expect([b.sides?.thickness, b.bottom?.thickness, b.clearBelow, b.boxWidth].map(inches)).toEqual([
      '5/8',
      '1/4',
      '3/8',
      '12',
    ]);
  });
});

describe('the groove for a drawer bottom', () => {
  const groove = async (sides: string, units = 'inches') =>
    drawerCalled(
      await evaluate(`face inset { drawer "a"   fronts thick 3/4"   drawers { sides thick ${sides} } }`, units),
      'a',
    ).bottomGroove;

  // Half of 1/2 is 1/4; half of 3/8 is 3/16, less than the usual 1/4; half of 10 mm is 5 mm, less than the usual 6 mm.
  test.each([
    ['5/8', '1/4'],
    ['1/2', '1/4'],
    ['3/8', '3/16'],
  ])('in sides %s thick is %s deep', async (sides, deep) => {
    expect(inches(await groove(sides))).toBe(deep);
  });

  test.each([
    ['12', '6'],
    ['10', '5'],
  ])('in sides %s mm thick is %s mm deep', async (sides, deep) => {
    expect(millimetres(await groove(sides, 'mm'))).toBe(deep);
  });

  test('says why it is shallower', async () => {
    expect(JSON.stringify((await groove('3/8')).reason)).toContain('never deeper than half of the side');
  });
});

describe('shelves', () => {
  // The opening is 30 - 2 x 3/4 = 28-1/2 wide; an adjustable shelf is 1/16 shy at each end, 28-3/8.
  test.each([
    ['2 fixed', '57/2'],
    ['2 adjustable', '227/8'],
  ])('%s', async (words, long) => {
    const piece = await evaluate(`face inset { open "books" { shelves ${words}, thick 3/4 } }`);
    expect(inches(piece.parts.find((part) => part.role === 'shelf')?.length)).toBe(long);
  });
});

describe('habits in millimetres', () => {
  test('are round figures of millimetres', async () => {
    const piece = await evaluate('face inset { drawer "a"   drawers { corners butt } }', 'mm');
    const a = drawerCalled(piece, 'a');
    expect([a.clearBelow, a.clearAbove, a.bottomGroove, a.bottomShy].map(millimetres)).toEqual(['6', '12', '6', '3/2']);
    expect(millimetres(piece.design.face?.fit.gap)).toBe('2');
    expect(millimetres(piece.design.carcase.stretchers?.width)).toBe('80');
    // The opening is 760 - 2 x 18 = 724 wide and the box runs with 1 at each side. Deep: 450 - 18 for the front - 12.
    const side = piece.parts.find((part) => part.role === 'drawer-side');
    expect([side?.length, side?.thickness].map(millimetres)).toEqual(['420', '12']);
    expect(millimetres(piece.parts.find((part) => part.role === 'drawer-front')?.thickness)).toBe('18');
    expect(millimetres(piece.parts.find((part) => part.role === 'drawer-end')?.length)).toBe('698');
  });

  test('a shelf is shy by 1.5 mm at each end and 3 mm clear of the door', async () => {
    const piece = await evaluate('face inset { door "a" { shelves 1 adjustable, thick 18 } }', 'mm');
    const shelf = piece.parts.find((part) => part.role === 'shelf');
    // 724 - 2 x 1.5, and 450 - 18 - 3.
    expect([shelf?.length, shelf?.width].map(millimetres)).toEqual(['721', '429']);
  });
});
