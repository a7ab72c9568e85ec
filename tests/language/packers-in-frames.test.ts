import { evaluateDocument } from '@fettle/language';
import { describe, expect, it } from 'vitest';
import { hardwareToBuy } from '../../packages/engine/src/stock/buying/hardware-to-buy.ts';
import { checkFixes, findingsIn } from '../findings/applying-fixes.ts';
import { drawerChest } from '../findings/drawer-mistakes.ts';
import { readFixture } from './harness/fixture.ts';
import { openFixture } from './harness/workbench.ts';

/** Slides on sides of frame and panel: a packer lies between stiles and rails, and a solid panel stays free. */

const framed = (rails: string, panel: string, slides: string) =>
  drawerChest
    .replace(
      'sides "panel"\n',
      `sides "maple" thick 3/4, frame-and-panel { stiles 2-1/2 wide   ${rails}   ${panel} }\n`,
    )
    .replace('slides "plain 14", 1 above lower edge of front', slides);

async function pieceIn(text: string) {
  const { services, documents } = await openFixture(readFixture(text));
  const [document] = documents;
  const evaluation = document && evaluateDocument(services, document).pieces[0]?.evaluation;
  if (evaluation === undefined) throw new Error('the text holds no piece');
  return evaluation;
}

describe('a packer beside a rail', () => {
  const thin = 'panel "thin" in groove 3/8 deep';
  const packed = 'slides "plain 14", 1 above lower edge of front, screws 3/16 long   packers of "maple"';
  const packerOf = async (rails: string) => {
    const { parts } = await pieceIn(framed(rails, thin, packed));
    const packer = parts.find(({ id }) => id.endsWith('lower/packer-left'));
    return [packer?.box.y.start, packer?.box.y.size].map((figure) => figure?.length.exactInches);
  };

  it('is as high as the slide where there is none', async () => {
    // The front of "lower" stands 3/4" and a gap of 1/8" up, the slide 1" above its lower edge.
    expect(await packerOf('top-rail 2 wide   bottom-rail 1-1/2 wide')).toEqual(['15/8', '7/4']);
  });

  it('stands on the rail where that reaches up behind the slide', async () => {
    // 1-7/8" and 1-3/4" are 3-5/8"; the rail takes 2-1/4" of that.
    expect(await packerOf('top-rail 2 wide   bottom-rail 2-1/4 wide')).toEqual(['9/4', '11/8']);
  });

  it('ends under a rail that reaches down behind it', async () => {
    // 20" less rails of 2", 1" and 12" leaves 5" in two: the middle rail begins 3-1/2" up.
    expect(await packerOf('top-rail 2 wide   bottom-rail 1 wide   middle-rails 12 wide, 1 evenly spaced')).toEqual([
      '15/8',
      '13/8',
    ]);
  });
});

describe('what packers are fastened with', () => {
  const packed = 'slides "plain 14", 1 above lower edge of front   packers of "maple"';
  const rails = 'top-rail 2 wide   bottom-rail 1-1/2 wide';
  const bought = async (panel: string) => {
    const evaluation = await pieceIn(framed(rails, panel, packed));
    return {
      packers: evaluation.parts.filter(({ role }) => role === 'packer').length,
      screws: hardwareToBuy(evaluation).flatMap(({ usualFor, quantity }) =>
        usualFor?.includes('packers') ? [quantity] : [],
      ),
    };
  };

  it('is counted, two screws to each, where it lies on plywood', async () => {
    const { packers, screws } = await bought('panel "thin" in groove 3/8 deep');
    expect(packers).toBeGreaterThan(0);
    expect(screws).toEqual([2 * packers]);
  });

  it('is nothing that would pin a solid panel', async () => {
    const { packers, screws } = await bought('panel "maple" thick 1/4, in groove 3/8 deep, float 1/16 each side');
    expect(packers).toBeGreaterThan(0);
    expect(screws).toEqual([]);
  });
});

describe('screws as long as the text says, not the shop', () => {
  it('are the ones that are driven and bought', async () => {
    const { hardware } = await pieceIn(
      drawerChest.replace('1 above lower edge of front', '1 above lower edge of front, screws 5/8 long'),
    );
    const slides = hardware.filter(({ kind }) => kind === 'slide');
    expect(new Set(slides.flatMap(({ screws }) => screws.map(({ length }) => length.exactInches)))).toEqual(
      new Set(['5/8']),
    );
  });
});

describe('a solid panel behind a packer', () => {
  const solid = 'panel "maple" thick 1/4, in groove 3/8 deep, float 1/16 each side';
  const rails = 'top-rail 2 wide   bottom-rail 3 wide';
  const told = async (text: string) =>
    (await findingsIn(readFixture(text))).filter(({ severity }) => severity !== 'note').map(({ code }) => code);
  const slides = (screws: string) => `slides "plain 14", 3 above lower edge of front${screws}   packers of "maple"`;

  it('stays free of screws that end in the packer, 1/4" thick', async () => {
    expect(await told(framed(rails, solid, slides(', screws 1/4 long')))).toEqual([]);
    expect(await told(framed(rails, solid, slides(', screws 9/32 long')))).toEqual(['screw-pins-panel']);
  });

  it('of plywood may be held', async () => {
    expect(await told(framed(rails, 'panel "thin" in groove 3/8 deep', slides(', screws 3/8 long')))).toEqual([]);
  });

  it('is clear of slides that are set before the rail', async () => {
    const high = 'top-rail 6-1/2 wide   bottom-rail 4-1/2 wide';
    const text = framed(high, solid, slides(', screws 3/8 long').replace('3 above', '5 above'));
    expect(await told(text)).toContain('screw-pins-panel');
    expect(await checkFixes(readFixture(text), 'screw-pins-panel')).toContain('onto-rail');
  });
});
