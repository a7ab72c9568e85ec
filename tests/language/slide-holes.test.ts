import { setupsOf } from '@fettle/engine';
import { evaluateDocument } from '@fettle/language';
import { describe, expect, it } from 'vitest';
import { hardwareToBuy } from '../../packages/engine/src/stock/buying/hardware-to-buy.ts';
import { readFixture } from './harness/fixture.ts';
import { openFixture } from './harness/workbench.ts';
import { example } from './sideboard.ts';

/** The screws of both members of a slide, the holes for them, and how one sets a drill for rows of holes. */

const text = (slide: string) => `units inches to 1/32
slide "plain 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side {
  hole 7/8 from front   hole 12-1/2 from front   ${slide}
}
piece "box" {
  size 20 wide, 12 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners dovetail   slides "plain 14", 1 above lower edge of opening }
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
    holesIn: (id: string) =>
      evaluation.parts.find((part) => part.id === id)?.features.filter(({ kind }) => kind === 'screw-hole') ?? [],
    told: evaluated?.findings.map(({ code, sentence }) => `${code}: ${sentence}`) ?? [],
  };
}

const both = 'hole 1-1/2 from front, in box   hole 12 from front, in box   screws 1/2 long, 1/8 thick, 3/8 long in box';

describe('the holes of a slide', () => {
  it('are bored into the side of the case, half of its height up', async () => {
    const { holesIn } = await pieceIn(text('screws 1/2 long, 1/8 thick'));
    // Behind an inset front of 3/4"; the slide lies 1" over the bottom of 3/4", its line half of 1-3/4" higher.
    expect(
      holesIn('case/side-left').map(({ solid, entry, measures }) =>
        solid.kind === 'cylinder'
          ? [...solid.centre.map((each) => each.exactInches), entry, measures.depth?.length.exactInches]
          : [],
      ),
    ).toEqual([
      ['21/8', '13/8', '+x', '1/2'],
      ['21/8', '53/4', '+x', '1/2'],
    ]);
    expect(holesIn('face/tools/box-left')).toEqual([]);
  });

  it('are bored into the side of the box where the entry tells those of its member there', async () => {
    const { holesIn, hardware, told } = await pieceIn(text(both));
    const [left] = hardware;
    expect(left?.screws.map(({ words, towards, length }) => [words, towards, length.exactInches])).toEqual([
      ['front screw', '-x', '1/2'],
      ['rear screw', '-x', '1/2'],
      ['front screw in the box', '+x', '3/8'],
      ['rear screw in the box', '+x', '3/8'],
    ]);
    expect(holesIn('face/tools/box-left').map(({ entry }) => entry)).toEqual(['-x', '-x']);
    expect(holesIn('face/tools/box-right').map(({ entry }) => entry)).toEqual(['+x', '+x']);
    expect(holesIn('case/side-left')).toHaveLength(2);
    expect(told).toEqual([]);
  });

  it('are counted with their screws, by their lengths', async () => {
    const slides = hardwareToBuy(await pieceIn(text(both))).find(({ entry }) => entry === 'plain 14');
    expect(slides?.screws.map(({ count, length }) => [count, length.exactInches])).toEqual([
      [4, '1/2'],
      [4, '3/8'],
    ]);
  });

  it('are told where their screws come through the side of the box', async () => {
    const { told } = await pieceIn(text(both.replace(', 3/8 long in box', '')));
    expect(told).toEqual([
      'screw-breaks-through: the front screw in the box of the left slide of "tools" and 3 more, 1/2" long, go through ' +
        'the left box side of "tools": behind it there is 1/2" of wood, its tip would show',
    ]);
  });
});

describe('rows of holes', () => {
  const row = async (kind: string, source: string) =>
    setupsOf(await pieceIn(source)).rows.filter((each) => each.kind === kind);

  it('of a slide are one setting for both sides of the case, and one for both sides of the box', async () => {
    const rows = await row('screw-hole', text(both));
    expect(
      rows.map(({ line, from, middles, pitch, parts }) => [
        `${line.at.exactInches} ${line.from}`,
        `${middles.map((each) => each.exactInches).join(' ')} ${from}`,
        pitch?.exactInches,
        parts.length,
      ]),
    ).toEqual([
      // 1-3/4" and 7/8" up; 3/4" and 7/8", 3/4" and 12-1/2" behind the front of the case.
      ['21/8 lower end', '13/8 53/4 front edge', '93/8', 2],
      // The box stands 1" up and begins at the back of the front.
      ['13/8 lower edge', '3/2 12 front end', '21/2', 2],
    ]);
  });

  it('for pins tell the first hole, the pitch and how many there are', async () => {
    const sideboard = example('sideboard.fettle').text;
    const { services, documents } = await openFixture({
      files: [
        { name: 'sideboard.fettle', text: sideboard },
        { name: 'shop.fettle', text: example('shop.fettle').text },
      ],
    });
    const document = documents.find(({ uri }) => uri.path.endsWith('sideboard.fettle'));
    const evaluation = document && evaluateDocument(services, document).pieces[0]?.evaluation;
    if (evaluation === undefined) throw new Error('no sideboard');
    const left = evaluation.parts.find(({ id }) => id === 'case/side-left');
    const rows = setupsOf(evaluation).rows.filter(
      ({ kind, parts }) => kind === 'pin-hole' && parts.includes(left?.id ?? ''),
    );
    expect(
      rows.map(({ line, middles, pitch, from }) => [
        `${line.at.exactInches} ${line.from}`,
        middles.length,
        pitch?.exactInches,
        `${middles[0]?.exactInches} ${from}`,
      ]),
    ).toEqual([
      // 1-1/2" behind an inset front of 1/2"; the opening begins 3/4" up the side, the lowest pin 4-7/16" above that.
      ['2 front edge', 27, '3/4', '83/16 lower end'],
      ['9/4 back edge', 27, '3/4', '83/16 lower end'],
    ]);
  });
});
