import { evaluateDocument } from '@fettle/language';
import { describe, expect, it } from 'vitest';
import { sideboardText } from './drawer-texts.ts';
import { readFixture } from './harness/fixture.ts';
import { openFixture } from './harness/workbench.ts';

/** Slides as a maker says them, down to where they are screwed. */

async function pieceIn(source: string) {
  const { services, documents } = await openFixture(readFixture(source));
  const [document] = documents;
  if (document === undefined) throw new Error('the text holds no file');
  const evaluated = evaluateDocument(services, document);
  const [piece] = evaluated.pieces;
  if (piece === undefined) throw new Error('the text holds no piece');
  const { hardware, joints, parts } = piece.evaluation;
  return {
    hardware,
    joints,
    parts,
    part: (id: string) => parts.find((part) => part.id === id),
    all: evaluated.findings.map(({ code, sentence }) => `${code}: ${sentence}`),
    told: evaluated.findings.flatMap(({ code, severity, sentence }) =>
      severity === 'note' ? [] : [`${code}: ${sentence}`],
    ),
  };
}

describe('slides 1/2" above the lower edges of the fronts of the sideboard', () => {
  it('lie 19/32", 10-27/32", 17-15/16" and 24-1/32" above the bottom', async () => {
    const { hardware } = await pieceIn(sideboardText());
    const heights = hardware
      .filter(({ id }) => id.endsWith('slide-left'))
      .map(({ cell, set }) => [
        cell?.split('/').at(-1),
        set.find(({ words }) => words === 'lower edge above the bottom of the case')?.figure.length.exactInches,
      ]);
    expect(heights).toEqual([
      ['cards', '769/32'],
      ['dice', '287/16'],
      ['maps', '347/32'],
      ['blankets', '19/32'],
    ]);
  });

  it('carry boxes 17" wide, with a front and a back of 17" and a bottom of 16-7/16"', async () => {
    const { part } = await pieceIn(sideboardText());
    expect(part('face/row/stack/cards/box-front')?.length.length.exactInches).toBe('17');
    expect(part('face/row/stack/cards/box-back')?.length.length.exactInches).toBe('17');
    expect(part('face/row/stack/cards/box-bottom')?.box.x.size.length.exactInches).toBe('263/16');
  });

  it('hold in the partitions with all their screws', async () => {
    const { hardware, told } = await pieceIn(sideboardText());
    const left = hardware.find(({ id }) => id.endsWith('cards/slide-left'));
    expect(left?.on).toEqual(['face/row|1']);
    expect(left?.screws.map(({ words }) => words)).toEqual(['front screw', 'middle screw', 'rear screw']);
    expect(told).toEqual([]);
  });
});

describe('the bottom of a box', () => {
  it.each([
    ['bottom thick 1/4', '263/16', 'groove'],
    ['bottom thick 1/4, in grooves', '263/16', 'groove'],
    ['bottom thick 1/4, slid in', '263/16', 'groove'],
    ['bottom thick 1/4, applied', '17', 'butt'],
  ])('said as %s is %s wide, in a %s', async (said, width, kind) => {
    const source = sideboardText().replace('bottom thick 1/4   corners', `${said}   corners`);
    const { part, joints, told } = await pieceIn(source);
    expect(part('face/row/stack/dice/box-bottom')?.box.x.size.length.exactInches).toBe(width);
    expect(joints.find(({ held }) => held === 'face/row/stack/dice/box-bottom')?.kind).toBe(kind);
    expect(told).toEqual([]);
  });
});

describe('slides compared', () => {
  // 18" less twice 1/2" is 17", less twice 3/16" is 17-5/8". The opening of "cards" is 4-49/64" high: the front of 5" less
  // the 21/64" that it laps below, and the gap of 3/32" above. Less 1/4" or 9/16" below it, and 1/2" above.
  it('say what the others would make of the first drawer, and what they cost and carry', async () => {
    const hidden =
      'slide "hidden 14" under mount, 14 long, takes 3/16 each side, takes 9/16 below, carries 90 lb, costs 42 each\n';
    const source = sideboardText('slides "side mount 14"   compare "hidden 14"').replace(
      'slide "side mount 12"',
      () => `${hidden}slide "side mount 12"`,
    );
    const { all, part } = await pieceIn(source);
    const box = part('face/row/stack/cards/box-left')?.box.y.size.length;
    expect(box?.exactInches).toBe('257/64');
    expect(all.filter((told) => told.startsWith('slides-compared'))).toEqual([
      'slides-compared: on "hidden 14" instead of "side mount 14" the box of "cards" is 17-5/8" wide rather than 17", ' +
        '3-11/16" + 1/64" high rather than 4" + 1/64" and 14" deep as well, costs 42 rather than not told, carries 90 lb rather ' +
        'than not told',
    ]);
  });
});
