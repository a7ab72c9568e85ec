import { evaluateDocument } from '@fettle/language';
import { describe, expect, it } from 'vitest';
import { hardwareToBuy } from '../../packages/engine/src/stock/buying/hardware-to-buy.ts';
import { readFixture } from './harness/fixture.ts';
import { openFixture } from './harness/workbench.ts';

/** What runs under the middle of a drawer. The opening is 18-1/2" wide and 10-1/2" high, over a bottom of 3/4". */

const text = (drawers: string, under = 'bottom thick 3/4, between sides') => `units inches to 1/32
board "maple" any thickness, 8 wide, 120 long
screw "No. 6" 1-1/4 long, pilot 1/8, clearance 9/64
slide "monorail 14" centre mount, 14 long, 5/8 high, costs 6 each {
  hole 1 from front   hole 13 from front   screws 1/2 long, 1/8 thick
}
piece "box" {
  size 20 wide, 12 high, 16 deep
  case { sides of "maple" thick 3/4   ${under}   top thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners dovetail   ${drawers} }
  }
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
    part: (id: string) => evaluation.parts.find((part) => part.id === `face/tools/${id}`),
    told: evaluated?.findings.map(({ code }) => code).filter((code) => code !== 'stock-never-used') ?? [],
  };
}

/** What is bought by a name of the shop; what holds the front to its box has none. */
function namedIn(evaluation: Parameters<typeof hardwareToBuy>[0]) {
  return hardwareToBuy(evaluation).filter(({ entry }) => entry !== undefined);
}

describe('a wooden runner 3/4" high and 1-1/2" wide under the middle', () => {
  const said = 'runners centre, 3/4 high, 1-1/2 wide, of "maple", by screws "No. 6"';

  it('lies on the bottom of the case, from the back of the front to the back', async () => {
    const { part, told } = await pieceIn(text(said));
    const runner = part('runner-centre');
    // Half of 18-1/2" and the side 3/4", less half of 1-1/2".
    expect(runner?.box.x.start.length.exactInches).toBe('37/4');
    expect(runner?.box.y.start.length.exactInches).toBe('3/4');
    expect(runner?.box.z.start.length.exactInches).toBe('3/4');
    expect([runner?.length, runner?.width, runner?.thickness].map((each) => each?.length.exactInches)).toEqual([
      '61/4',
      '3/2',
      '3/4',
    ]);
    expect(told).toEqual([]);
  });

  it('has the front and the back of the box notched over it, 1/32" wider and higher', async () => {
    const { part } = await pieceIn(text(said));
    for (const end of ['box-front', 'box-back']) {
      const notch = part(end)?.features.find(({ kind }) => kind === 'notch');
      expect(notch?.measures.width?.length.exactInches).toBe('49/32');
      // The box stands 1/4" clear: 3/4" and 1/32" less 1/4".
      expect(notch?.measures.depth?.length.exactInches).toBe('17/32');
    }
  });

  it('sets the bottom of the box up, and takes it from what the drawer holds', async () => {
    const { part } = await pieceIn(text(said));
    expect(part('box-bottom')?.box.y.start.length.exactInches).toBe('49/32');
    const low = await pieceIn(text('runners 3/4 high, thick 1/4'));
    expect(low.part('box-bottom')?.box.y.start.length.exactInches).toBe('5/4');
  });

  it('leaves the back whole where the bottom is slid in under it', async () => {
    const { part, told } = await pieceIn(
      text(said).replace('bottom thick 1/4   corners', 'bottom thick 1/4, slid in   corners'),
    );
    expect(part('box-back')?.features.filter(({ kind }) => kind === 'notch')).toEqual([]);
    expect(part('box-front')?.features.filter(({ kind }) => kind === 'notch')).toHaveLength(1);
    expect(told).toEqual([]);
  });

  it('is screwed down at its front and its back end, 1/2" deep', async () => {
    const evaluation = await pieceIn(text(said));
    const [runner] = evaluation.hardware.filter(({ kind }) => kind === 'runner');
    expect(runner?.screws.map(({ at, towards, length }) => [at.z.exactInches, towards, length.exactInches])).toEqual([
      ['9/4', '-y', '1/2'],
      ['29/2', '-y', '1/2'],
    ]);
    expect(namedIn(evaluation).map(({ entry, quantity }) => [entry, quantity])).toEqual([['No. 6', 2]]);
  });

  it('lies on the rails of a frame at its ends, and asks for wood under its screws', async () => {
    const over = (rails: string) =>
      text(said).replace(
        'drawer "tools"',
        `stack { drawer "tools" front 5 high   divider web-frame thick 3/4, rails ${rails} wide, behind fronts   open "below" }`,
      );
    expect((await pieceIn(over('2-1/2'))).told).toEqual([]);
    // The first screw is 1-1/2" behind the back of the front, 2-1/4" behind the front of the case.
    expect((await pieceIn(over('1'))).told).toEqual(['screw-in-air']);
  });
});

describe('slides under the middle', () => {
  const slides = 'slides "monorail 14"';

  it('leave the box as wide as its opening, but for the usual play', async () => {
    const { part } = await pieceIn(text(slides));
    expect(part('box-front')?.length.length.exactInches).toBe('295/16');
    expect(part('box-left')?.length.length.exactInches).toBe('14');
  });

  it('are one to a drawer, screwed down on what lies under the opening', async () => {
    const evaluation = await pieceIn(text(slides));
    const [slide, ...others] = evaluation.hardware;
    expect(others).toEqual([]);
    expect(slide?.label).toBe('slide under "tools"');
    expect(slide?.on).toEqual(['case/bottom']);
    // Behind an inset front of 3/4".
    expect(slide?.screws.map(({ at }) => [at.x.exactInches, at.y.exactInches, at.z.exactInches])).toEqual([
      ['10', '3/4', '7/4'],
      ['10', '3/4', '55/4'],
    ]);
    expect(namedIn(evaluation).map(({ entry, quantity, inPairs }) => [entry, quantity, inPairs])).toEqual([
      ['monorail 14', 1, false],
    ]);
    expect(evaluation.told).toEqual([]);
  });

  it('find no wood between the rails of a frame', async () => {
    const framed = text(slides)
      .replace(
        'drawer "tools"',
        'stack { drawer "tools" front 5 high   divider web-frame thick 3/4, rails 2-1/2 wide, behind fronts   open "below" }',
      )
      .replace('hole 13 from front', 'hole 7 from front');
    expect((await pieceIn(framed)).told).toEqual(['screw-in-air']);
    // The rear rail reaches from 13-1/2" to 16".
    const held = framed.replace('hole 7 from front', 'hole 13-3/4 from front');
    expect((await pieceIn(held)).told).toEqual([]);
  });
});
