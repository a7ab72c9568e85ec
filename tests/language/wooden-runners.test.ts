import { drawerSchedule } from '@fettle/engine';
import { evaluateDocument } from '@fettle/language';
import { describe, expect, it } from 'vitest';
import { hardwareToBuy } from '../../packages/engine/src/stock/buying/hardware-to-buy.ts';
import { readFixture } from './harness/fixture.ts';
import { openFixture } from './harness/workbench.ts';

/** Wooden runners as a maker says them. The opening is 18-1/2" wide and 10-1/2" high. */

const text = (runners: string) => `units inches to 1/32
board "maple" any thickness, 8 wide, 120 long
screw "No. 6" 3/4 long, pilot 1/8, clearance 9/64
piece "box" {
  size 20 wide, 12 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners dovetail   ${runners} }
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
    part: (id: string) => evaluation.parts.find((part) => part.id === id),
    told: evaluated?.findings.map(({ code, sentence }) => `${code}: ${sentence}`) ?? [],
  };
}

/** What is bought by a name of the shop; what holds the front to its box has none. */
function namedIn(evaluation: Parameters<typeof hardwareToBuy>[0]) {
  return hardwareToBuy(evaluation).filter(({ entry }) => entry !== undefined);
}

describe('wooden runners 3/4" high and 1/4" thick', () => {
  const said = 'runners 3/4 high, thick 1/4, of "maple", 4 above lower edge of box, by screws "No. 6"';

  it('lie on the sides of the case, behind the front of the box', async () => {
    const { part, told } = await pieceIn(text(said));
    const [left, right] = [part('face/tools/runner-left'), part('face/tools/runner-right')];
    expect(left?.box.x.start.length.exactInches).toBe('3/4');
    expect(right?.box.x.end.length.exactInches).toBe('77/4');
    // The box stands 3/4" up and 1/4" clear; 4" above that.
    expect(left?.box.y.start.length.exactInches).toBe('5');
    expect(left?.stock?.name).toBe('maple');
    // The front is 3/4" thick and that of the box 1/2".
    expect(left?.box.z.start.length.exactInches).toBe('5/4');
    expect(told).toEqual([]);
  });

  it('have grooves in the sides of the box as deep as they are thick, 1/32" wider, and open at the back', async () => {
    const { part } = await pieceIn(text(said));
    const side = part('face/tools/box-left');
    const groove = side?.features.find(({ id }) => id.endsWith('groove for runner'));
    expect(groove?.measures.depth?.length.exactInches).toBe('1/4');
    expect(groove?.measures.width?.length.exactInches).toBe('25/32');
    expect(groove?.solid.kind === 'box' && groove.solid.z.to).toEqual(side?.box.z.end.length);
    expect(groove?.entry).toBe('-x');
    // 18-1/2" less 1/32" free at each side: the runners take nothing of it.
    expect(part('face/tools/box-front')?.length.length.exactInches).toBe('295/16');
  });

  it('are screwed to what stands beside them, 1/2" deep', async () => {
    const { hardware } = await pieceIn(text(said));
    const runners = hardware.filter(({ kind }) => kind === 'runner');
    expect(runners.map(({ label }) => label)).toEqual(['left runner of "tools"', 'right runner of "tools"']);
    expect(runners[0]?.screws.map(({ length }) => length.exactInches)).toEqual(['1/2', '1/2', '1/2']);
  });

  it('lie in the middle of the box where nothing is said', async () => {
    const { part } = await pieceIn(text('runners 3/4 high, thick 1/4'));
    const [box, runner] = [part('face/tools/box-left')?.box.y, part('face/tools/runner-left')?.box.y];
    const middle = (span: typeof box) => span?.start.length.plus(span.end.length).exactInches;
    expect(middle(runner)).toBe(middle(box));
  });

  it('are told where their screws come out', async () => {
    const { told } = await pieceIn(text(said).replace('3/4 long', '1-1/4 long'));
    expect(told).toEqual([
      'screw-breaks-through: the front screw of the left runner of "tools" and 5 more, 1" long, go through the left ' +
        'side: behind it there is 3/4" of wood, 1/4" too long',
    ]);
  });

  it('and slides are too much for one drawer, but one drawer may differ from all others', async () => {
    const slide = 'slide "plain 14" side mount, 14 long, takes 1/2 each side\npiece';
    const both = text(`${said}   slides "plain 14"`).replace('piece', slide);
    expect((await pieceIn(both)).told).toEqual([
      "cannot-be-both: what a drawer runs on cannot be both 'slides' and 'runners'",
    ]);
    const own = text('slides "plain 14"').replace('piece', slide).replace('"tools"', `"tools" { ${said} }`);
    const { hardware, told } = await pieceIn(own);
    expect(hardware.map(({ kind }) => kind)).toEqual(['runner', 'runner']);
    expect(told).toEqual([]);
  });

  it('stand in the list of drawers; what is bought is their screws, and those of the front that the shop has', async () => {
    const evaluation = await pieceIn(text(said));
    expect(drawerSchedule(evaluation).map(({ slides }) => slides.map(({ label }) => label))).toEqual([
      ['left runner of "tools"', 'right runner of "tools"'],
    ]);
    expect(namedIn(evaluation).map(({ what, entry, quantity }) => [what, entry, quantity])).toEqual([
      ['screw', 'No. 6', 6],
      ['screw', 'No. 6', 4],
    ]);
    const glued = namedIn(await pieceIn(text('runners 3/4 high, thick 1/4')));
    expect(glued.map(({ usualFor, quantity }) => [usualFor, quantity])).toEqual([
      ['through the boxes into the drawer fronts', 4],
    ]);
  });
});

describe('cleats under a shelf', () => {
  const shelf = (screws: string) =>
    text('')
      .replace(
        'drawer "tools"',
        `open "books" { shelves 1 on cleats { cleats of "maple" thick 1/2, 1 high${screws} } }`,
      )
      .replace('fronts thick 3/4', '')
      .replace(/drawers \{.*\}/, '');

  it('are screwed through into the sides, 1/4" of 3/4" deep, three to each', async () => {
    const evaluation = await pieceIn(shelf(', by screws "No. 6"'));
    const cleats = evaluation.hardware.filter(({ kind }) => kind === 'cleat');
    expect(cleats.map(({ on }) => on)).toEqual([['face/books/shelf-1/cleat-left'], ['face/books/shelf-1/cleat-right']]);
    expect(cleats.map(({ screws }) => screws.map(({ length }) => length.exactInches))).toEqual([
      ['1/4', '1/4', '1/4'],
      ['1/4', '1/4', '1/4'],
    ]);
    expect(namedIn(evaluation).map(({ entry, quantity }) => [entry, quantity])).toEqual([['No. 6', 6]]);
    expect(evaluation.told).toEqual([]);
  });

  it('are told where their screws come through', async () => {
    const { told } = await pieceIn(shelf(', by screws "No. 6"').replace('3/4 long', '1-1/2 long'));
    expect(told).toEqual([expect.stringContaining('screw-breaks-through: the front screw of the left cleat')]);
  });

  it('are told where their screws end within them, and where too little of a screw is beyond', async () => {
    const thick = (thickness: string, screw: string) =>
      shelf(', by screws "No. 6"')
        .replace('"maple" thick 1/2', `"maple" thick ${thickness}`)
        .replace('3/4 long', `${screw} long`);
    const { told, hardware } = await pieceIn(thick('3/4', '3/4'));
    expect(told).toEqual([
      'strip-screw-too-short: "No. 6" is 3/4" long and goes through 3/4" of cleat before it holds: it has to be 1" long, 1/4" more',
    ]);
    expect(hardware.filter(({ kind }) => kind === 'cleat').flatMap(({ screws }) => screws)).toEqual([]);
    expect((await pieceIn(thick('3/4', '31/32'))).told).toEqual([expect.stringContaining('1" long, 1/32" more')]);
    expect((await pieceIn(thick('3/4', '1'))).told).toEqual([]);
  });

  it('have none where the text says none', async () => {
    const { hardware } = await pieceIn(shelf(''));
    expect(hardware.filter(({ kind }) => kind === 'cleat')).toEqual([]);
  });
});
