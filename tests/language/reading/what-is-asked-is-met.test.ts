import type { Evaluation, LaidCell, Part } from '@fettle/engine';
import { evaluateDocument, type PlacedFinding } from '@fettle/language';
import { describe, expect, test } from 'vitest';
import { openFixture } from '../harness/workbench.ts';

/** What is asked of fronts, frames, backs and boxes is met, or is told; worked out by hand beside each number. */

interface Read {
  readonly evaluation: Evaluation;
  readonly findings: readonly PlacedFinding[];
}

const box = 'sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides';

async function read({ size = '40 wide, 24 high, 18 deep', carcase = box, face = '', shop = '' }): Promise<Read> {
  const text = `${shop}
piece "case" {
  size ${size}
  case { ${carcase} }
  ${face}
}`;
  const workbench = await openFixture({ files: [{ name: 'case.fettle', text }] });
  const { pieces, findings } = evaluateDocument(workbench.services, workbench.document('case.fettle'));
  const [piece] = pieces;
  if (piece === undefined) throw new Error('no piece is read');
  return { evaluation: piece.evaluation, findings };
}

const codes = ({ findings }: Read, ...only: string[]) =>
  findings.map(({ code }) => code).filter((code) => only.length === 0 || only.includes(code));

function cellCalled({ evaluation }: Read, name: string): LaidCell {
  const waiting: LaidCell[] = evaluation.layout.face === undefined ? [] : [evaluation.layout.face];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (next.cell.name === name) return next;
    waiting.push(...next.cells);
  }
  throw new Error(`no cell "${name}"`);
}

function part({ evaluation }: Read, find: (part: Part) => boolean): Part {
  const found = evaluation.parts.find(find);
  if (found === undefined) throw new Error(`none of ${evaluation.parts.map(({ id }) => id).join(', ')}`);
  return found;
}

const inches = (figure: { readonly length: { readonly exactInches: string } } | undefined) =>
  figure?.length.exactInches;
const high = (laid: LaidCell) => inches(laid.front?.y.size);

describe('a height asked of the fronts of a row', () => {
  const row = (cells: string) =>
    read({
      face: `face inset, gap 3/32 {
        row front 8 high { ${cells} }
        divider thick 3/4
        false-front "below" rest
        fronts thick 3/4
      }`,
    });

  // The opening is what an inset front needs: 8 and a gap of 3/32 above. The divider beside the open space is seen, so
  // that there is a gap under the front too: 8-3/16.
  test('is that of the fronts that are there, beside an open space', async () => {
    const piece = await row('drawer "a"\n partition thick 3/4\n open "b"');
    expect([high(cellCalled(piece, 'a')), inches(cellCalled(piece, 'b').opening.y.size)]).toEqual(['8', '131/16']);
    expect(codes(piece, 'front-size-not-met')).toEqual([]);
  });

  // The opening is made for two inset fronts, 8 and their gaps; the third laps the edge above, by 3/4 less a reveal, where
  // they stay a gap of 3/32 away: it cannot be 8 as well.
  test('is given to as many fronts as can have it, and told of the others', async () => {
    const piece = await row(
      'drawer "a"\n partition thick 3/4\n drawer "b" overlay full\n partition thick 3/4\n drawer "c"',
    );
    expect(['a', 'c'].map((name) => high(cellCalled(piece, name)))).toEqual(['8', '8']);
    expect(high(cellCalled(piece, 'b'))).not.toBe('8');
    const [found] = piece.findings.filter(({ code }) => code === 'front-size-not-met');
    expect(found?.sentence).toContain('"b"');
  });
});

describe('a divider of which nothing is said', () => {
  const mode = async (above: string, below: string) => {
    const { evaluation } = await read({
      face: `face inset { ${above}\n divider thick 3/4\n ${below}\n fronts thick 3/4 }`,
    });
    const root = evaluation.design.face?.root;
    return root?.kind === 'stack' ? root.dividers[0]?.mode : undefined;
  };

  test.each([
    ['drawer "a" front 6 high', 'drawer "b"', 'behind'],
    ['drawer "a" front 6 high', 'open "b"', 'shown'],
    ['open "a" opening 6 high', 'drawer "b"', 'shown'],
    ['row front 6 high { drawer "a"\n partition thick 3/4\n drawer "c" }', 'drawer "b"', 'behind'],
    ['row front 6 high { drawer "a"\n partition thick 3/4\n open "c" }', 'drawer "b"', 'shown'],
    ['drawer "a" front 6 high', 'stack { drawer "c" front 6 high\n open "b" }', 'behind'],
  ])('between %s and %s is %s', async (above, below, expected) => {
    expect(await mode(above, below)).toBe(expected);
  });
});

describe('a face frame', () => {
  const framed = (stiles: string) =>
    read({
      shop: 'slide "long" side mount, 14 long, takes 1/2 each side',
      carcase: `${box}\n frame thick 3/4 {\n stiles ${stiles} wide\n top-rail 1-1/2 wide\n bottom-rail 1-1/2 wide\n }`,
      face: `face inset, gap 3/32 { drawer "a"\n fronts thick 3/4
        drawers { sides thick 1/2   bottom thick 1/4   corners dovetail   slides "long" } }`,
    });

  // The sides are 3/4 thick and stand 1/4 into an opening between stiles of 1/2: 40 - 2 x 3/4 = 38-1/2 is left of the
  // 39 of the opening, and the slides take 1/2 at each side: the box is 37-1/2 wide.
  test('narrower than the sides is an error, and the box still goes between the sides', async () => {
    const piece = await framed('1/2');
    expect(codes(piece)).toContain('stile-narrower-than-side');
    expect(inches(part(piece, ({ id }) => id.endsWith('box-front')).length)).toBe('75/2');
    expect(inches(part(piece, ({ id }) => id.endsWith('box-left')).box.x.start)).toBe('5/4');
  });

  // The stile reaches 1-3/4 in, the side 3/4: 1 inch is to be packed.
  test('wider than the sides asks for packing under the slides', async () => {
    const [found] = (await framed('1-3/4')).findings.filter(({ code }) => code === 'slides-need-packing');
    expect(found?.sentence).toContain('need a packing piece 1" thick on each side');
  });

  test('as wide as the sides asks for none', async () => {
    const piece = await framed('3/4');
    expect(codes(piece, 'slides-need-packing', 'stile-narrower-than-side')).toEqual([]);
  });
});

describe('the overhang of the top in front', () => {
  const top = 'sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, over sides { overhang 1/2 at front }';
  const depths = async (carcase: string, face: string) => {
    const piece = await read({ carcase, face });
    const [over, side] = ['top', 'side'].map((wanted) => part(piece, ({ role }) => role === wanted).box.z);
    return [over?.start, over?.size, side?.start, side?.size].map(inches);
  };

  // 18 deep: the case alone takes 18 less 1/2.
  test('counts from the case where nothing stands before it', async () => {
    expect(await depths(top, 'face inset { door "a"\n fronts thick 3/4 }')).toEqual(['0', '18', '1/2', '35/2']);
  });

  // Fronts of 3/4 stand before the case: 1/2 and 3/4 are 1-1/4, and 16-3/4 is left of 18.
  test('counts from fronts that stand before it', async () => {
    const face = 'face overlay full { door "a"\n fronts thick 3/4 }';
    expect(await depths(top, face)).toEqual(['0', '18', '5/4', '67/4']);
  });

  // A frame of 7/8 and fronts of 3/4 on it: with 1/2 that is 2-1/8, and 15-7/8 is left of 18.
  test('counts from fronts on a frame', async () => {
    const face = 'face overlay full { door "a"\n fronts thick 3/4 }';
    expect(await depths(`${top}\n frame thick 7/8`, face)).toEqual(['0', '18', '17/8', '127/8']);
  });
});

describe('a web frame under a partition', () => {
  // Inside 40 - 1-1/2 = 38-1/2; the partition of 3/4 stands after an opening of 12, from 12-3/4 to 13-1/2: its middle
  // is at 13-1/8, and a runner of 2-1/2 begins 1-1/4 before that, at 11-7/8.
  test('has a runner in the middle', async () => {
    const piece = await read({
      face: `face inset, gap 3/32 {
        row front 8 high { drawer "a" opening 12 wide\n partition thick 3/4\n drawer "b" rest }
        divider web-frame thick 3/4, rails 2-1/2 wide
        drawer "c" rest
        fronts thick 3/4
      }`,
    });
    const runner = part(piece, ({ id }) => id.endsWith('/runner-middle'));
    expect([runner.box.x.start, runner.width].map(inches)).toEqual(['95/8', '5/2']);
    const beside = part(piece, ({ id }) => id.endsWith('/runner-start'));
    expect(inches(runner.length)).toBe(inches(beside.length));
  });
});

describe('a back', () => {
  const sheet = 'sheet "ply" nominal 1/4, actual 1/4, 96 long, 48 wide';
  const back = (size: string) => read({ shop: sheet, size, carcase: `${box}\n back "ply"` });

  // Applied, the back is as large as the body. Upright it may be 48 wide and 96 high; turned 96 wide and 48 high.
  test.each([
    ['40 wide, 90 high, 12 deep', 'y', []],
    ['90 wide, 40 high, 12 deep', 'x', []],
    ['90 wide, 60 high, 12 deep', 'y', ['part-wider-than-stock']],
  ])('of a piece %s has its grain along %s', async (size, grain, expected) => {
    const piece = await back(size);
    expect(part(piece, ({ role }) => role === 'back').grain).toBe(grain);
    expect(codes(piece, 'part-wider-than-stock', 'part-longer-than-stock')).toEqual(expected);
  });

  // Half of the sides' 3/4 is 3/8.
  test.each([
    ['3/8', []],
    ['1/2', ['warning']],
    ['3/4', ['error']],
  ])('in a rabbet %s deep', async (deep, expected) => {
    const { findings } = await read({ carcase: `${box}\n back thick 1/4 in rabbet ${deep} deep` });
    const found = findings.filter(({ code }) => code === 'groove-too-deep');
    expect(found.map(({ severity }) => severity)).toEqual(expected);
    for (const { sentence } of found) expect(sentence).toContain('rabbet');
  });
});

describe('lengths that cannot be', () => {
  test.each([
    ['case { top thick 3/4, over sides { overhang -1 at ends } }', 'overhang at the ends is -1"'],
    ['case { sides thick 3/4\n plinth 4 high, set back -2, thick 3/4 }', 'set-back of the plinth is -2"'],
    ['face overlay full, reveal -1/8 { door "a"\n fronts thick 3/4 }', 'reveal is -1/8"'],
    ['face inset, gap -1/16 { door "a"\n fronts thick 3/4 }', 'gap is -1/16"'],
    ['face inset { drawer "a" { clear -1 above }\n fronts thick 3/4 }', 'free height over the box is -1"'],
  ])('%s', async (words, says) => {
    const isCase = words.startsWith('case');
    const piece = await read(isCase ? { carcase: words.slice('case {'.length, -1) } : { face: words });
    const found = piece.findings.filter(({ code }) => code === 'size-negative');
    expect(found.map(({ severity }) => severity)).toEqual(['error']);
    expect(found[0]?.sentence.replace('−', '-')).toContain(says);
    expect(found[0]?.fixes).toHaveLength(1);
  });

  // Shown between two fronts, each has half of 3/4, 3/8; the edges of the case have 3/4.
  test.each([
    ['5/16', []],
    ['3/8', ['reveal-leaves-no-lap']],
  ])('a reveal of %s at a divider that is shown', async (reveal, expected) => {
    const piece = await read({
      face: `face overlay full, gap 1/8, reveal ${reveal} {
        drawer "a" opening 8 high\n divider thick 3/4, shown\n drawer "b"\n fronts thick 3/4 }`,
    });
    expect(codes(piece, 'reveal-leaves-no-lap')).toEqual(expected);
  });

  // 18 deep: half is 9.
  test.each([
    ['9', []],
    ['9-1/16', ['stretchers-too-wide']],
  ])('stretchers %s wide', async (wide, expected) => {
    const carcase = `sides thick 3/4   bottom thick 3/4, between sides   stretchers thick 3/4, ${wide} wide`;
    expect(codes(await read({ carcase }), 'stretchers-too-wide')).toEqual(expected);
  });

  // 1/4 up and a bottom of 1/2: the box has to be 3/4 high.
  test.each([
    ['3/4', []],
    ['5/8', ['drawer-bottom-too-thick']],
  ])('a box %s high over a bottom of 1/2', async (boxHigh, expected) => {
    const face = `face inset { drawer "a"\n fronts thick 3/4\n drawers { sides thick 1/2   bottom thick 1/2   box ${boxHigh} high } }`;
    expect(codes(await read({ face }), 'drawer-bottom-too-thick')).toEqual(expected);
  });

  test('openings that are slits are told once', async () => {
    const slit = (name: string, size: string) => `open "${name}" opening ${size} high\n divider thick 3/4\n`;
    const face = (size: string) => `face inset { ${slit('a', size)} ${slit('b', size)} open "c" rest }`;
    expect(codes(await read({ face: face('1/4') }), 'size-absurd')).toEqual([]);
    expect(codes(await read({ face: face('3/16') }), 'size-absurd')).toEqual(['size-absurd']);
  });
});
