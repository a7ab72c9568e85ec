import { cutSequence, type Evaluation, type LaidPiece, laidOut, sparesOf } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { pieceOfText, planned } from './evaluating.ts';

/** Fronts that follow one another are cut from one blank, in their order, with a blade between each two. */

const chest = (sequence: string, fronts = '"oak ply" thick 3/4', more = '') => `units inches to 1/32
sheet "oak ply" actual 3/4, 96 long, 48 wide, costs 80 each
board "cherry" any thickness, 9 wide, 120 long, costs 9 a board foot
machine "saw" kerf 1/8
${more}
piece "chest" {
  size 37-1/2 wide, 26 high, 18 deep
  case { sides "oak ply" thick 3/4   bottom "oak ply" thick 3/4, between sides }
  face inset, gap 1/8 {
    row opening 6 high {
      drawer "a" opening 11-1/2 wide   divider "oak ply" thick 3/4
      drawer "b" opening 11-1/2 wide   divider "oak ply" thick 3/4
      drawer "c" opening 11-1/2 wide
    }
    drawer "d" opening 8 high
    drawer "e" rest
    fronts ${fronts}
  }
  ${sequence}
}`;

/** The drawer fronts of these names, as they lie. */
const frontsNamed = (names: string, laid: ReturnType<typeof laidOut>): readonly LaidPiece[] =>
  laid
    .flatMap(({ pieces }) => pieces)
    .filter((piece) => piece.piece.part.role === 'drawer-front' && names.includes(nameOf(piece)));

const nameOf = ({ piece }: LaidPiece) => /"(\w)"/.exec(piece.label)?.[1] ?? piece.label;

async function cut(text: string) {
  const evaluation = await pieceOfText(text);
  const plan = planned(evaluation);
  expect(plan.unplanned).toEqual([]);
  return { evaluation, plan, laid: laidOut(plan) };
}

const codesOf = ({ findings }: Evaluation) =>
  findings.filter(({ severity }) => severity !== 'note').map(({ code }) => code);

describe('a row of drawers whose grain runs on', () => {
  it('lies in one strip of a sheet, in order, a blade apart, its grain along the sheet', async () => {
    const { laid, evaluation } = await cut(chest('sequence "small" { "a" to "c" }'));
    expect(codesOf(evaluation)).not.toContain('said-twice');
    const fronts = frontsNamed('abc', laid);
    expect(fronts.map(nameOf)).toEqual(['a', 'b', 'c']);
    // An opening of 11-1/2 less two gaps of 1/8 is 11-1/4; with a blade of 1/8 the next begins 11-3/8 further.
    const [first] = fronts;
    expect(fronts.map(({ along }) => along.minus(first?.along ?? along).exactInches)).toEqual(['0', '91/8', '91/4']);
    expect(new Set(fronts.map(({ across }) => across.exactInches)).size).toBe(1);
    const runs = laid.flatMap((stock) => stock.runs);
    // 3 × 11-1/4 and two blades of 1/8.
    expect(runs.map(({ label, length }) => [label, length.exactInches])).toEqual([['sequence "small"', '34']]);
  });

  it('comes off as one, and only then is cut apart', async () => {
    const { plan } = await cut(chest('sequence "small" { "a" to "c" }'));
    const cuts = cutSequence(plan);
    const off = cuts.find((each) => each.cut.run !== undefined);
    expect(off?.cut.blanks).toHaveLength(3);
    const apart = cuts.filter(({ cut: each }) => each.setting.exactInches === '45/4');
    // What stays behind of the blank is the third one.
    expect(apart.map(({ cut: each }) => each.direction)).toEqual(['crosscut', 'crosscut']);
    expect(apart.every(({ number }) => number > (off?.number ?? Number.POSITIVE_INFINITY))).toBe(true);
  });

  it('of a board has what is planed off around it, and the blank ends on marks of the ruler', async () => {
    const { laid } = await cut(
      chest('sequence "small" { "a" to "c" }', '"oak ply" thick 3/4').replace(
        /drawer "(a|b|c)" opening 11-1\/2 wide/g,
        'drawer "$1" opening 11-1/2 wide { fronts "cherry" thick 3/4 }',
      ),
    );
    const [run] = laid.flatMap((stock) => stock.runs);
    // 34 and an inch on the length; the width and a quarter, up to the next 1/32 (both common practice, no source).
    expect(run?.length.exactInches).toBe('35');
    expect(Number.isInteger((run?.width.approximateInches ?? 0) * 32)).toBe(true);
    const board = laid.find(({ runs }) => runs.length > 0);
    const [first] = board?.pieces ?? [];
    expect(first?.along.minus(run?.along ?? first.along).exactInches).toBe('1/2');
    expect(first?.across.minus(run?.across ?? first.across).exactInches).toBe('1/8');
  });

  it('spoiled, one of them can only be made again with the others', async () => {
    const { laid } = await cut(chest('sequence "small" { "a" to "c" }'));
    const [run] = laid.flatMap((stock) => stock.runs);
    if (run === undefined) throw new Error('nothing is cut in order');
    const leaving = (length: LaidPiece['length']) =>
      sparesOf(laid.map((stock) => ({ ...stock, offcuts: [{ ...run, length }] })))
        .filter(({ piece }) => piece.part.run !== undefined)
        .map(({ spare }) => spare !== undefined);
    expect(leaving(run.length)).toEqual([true, true, true]);
    // Long enough for each of them, not for all.
    expect(leaving(run.length.times(2).dividedBy(3))).toEqual([false, false, false]);
  });
});

describe('which way the grain runs', () => {
  const grains = async (sequence: string) => {
    const { evaluation } = await cut(chest(sequence));
    return ['d', 'e'].map((name) => evaluation.parts.find(({ label }) => label === `drawer front "${name}"`)?.grain);
  };

  it('along the sequence, unless it is said', async () => {
    expect(await grains('')).toEqual(['x', 'x']);
    expect(await grains('sequence "large" { "d", "e" }')).toEqual(['y', 'y']);
    expect(await grains('sequence "large" grain across { "d", "e" }')).toEqual(['x', 'x']);
  });

  it('across it, the fronts lie side by side', async () => {
    const { laid } = await cut(chest('sequence "large" grain across { "d", "e" }'));
    const [d, e] = ['d', 'e'].map((name) =>
      laid.flatMap(({ pieces }) => pieces).find((piece) => nameOf(piece) === name),
    );
    expect(d?.along.exactInches).toBe(e?.along.exactInches);
    expect(e?.across.minus(d?.across.plus(d.width) ?? e.across).exactInches).toBe('1/8');
  });

  it('from the last to the first they lie the other way round', async () => {
    const { laid } = await cut(chest('sequence "small" { "c" to "a" }'));
    const fronts = frontsNamed('abc', laid);
    expect(fronts.map(nameOf)).toEqual(['c', 'b', 'a']);
  });
});

describe('what cannot be cut in order', () => {
  const codes = async (sequence: string, fronts?: string, more?: string) =>
    codesOf(await pieceOfText(chest(sequence, fronts, more))).filter((code) => code.includes('sequence'));

  it('is told: another line, another stock, a front twice, none at all, too much for a board', async () => {
    expect(await codes('sequence "all" { "a" to "e" }')).toEqual(['sequence-in-several-blanks']);
    expect(await codes('sequence "all" { "d", "e", "d" }')).toEqual(['cannot-follow-in-sequence']);
    expect(await codes('sequence "all" { "d" }')).toEqual(['sequence-without-order']);
    expect(await codes('sequence "all" { }')).toEqual(['sequence-without-order']);
    expect(await codes('sequence "all" { "d", "e" }', '"oak ply" thick 3/4')).toEqual([]);
    // Grain upright: 35-3/4 wide, and the boards are 9 wide.
    expect(await codes('sequence "all" { "d", "e" }', '"cherry" thick 3/4')).toEqual(['sequence-larger-than-stock']);
  });

  it('just fits, and just does not', async () => {
    // 11-1/4 thrice and two blades are 34.
    const sheet = (long: string) =>
      chest('sequence "small" { "a" to "c" }').replace('96 long, 48 wide', `${long} long, 96 wide`);
    expect(codesOf(await pieceOfText(sheet('36')))).not.toContain('sequence-larger-than-stock');
    const tooShort = await pieceOfText(
      sheet('33-31/32')
        .replaceAll('"oak ply" thick 3/4, between', '"cherry" thick 3/4, between')
        .replace('sides "oak ply"', 'sides "cherry"')
        .replace(/drawer "(d|e)" (opening 8 high|rest)/g, 'drawer "$1" $2 { fronts "cherry" thick 3/4 }'),
    );
    const [told] = tooShort.findings.filter(({ code }) => code === 'sequence-larger-than-stock');
    expect(told?.facts).toMatchObject({ axis: 'length', count: 3, form: 'sheet' });
    expect(told?.facts['difference']).toMatchObject({ exactInches: '1/32' });
  });

  it('beneath veneer that is laid on edged fronts one by one, order does not matter', async () => {
    const veneered = '"oak ply" thick 3/4 { edging "cherry" thick 1/8, all round, before veneer }';
    const { laid } = await cut(
      chest('sequence "all" from flitch "A" { "a" to "e" }', veneered, 'flitch "A" 24 leaves, 6 wide, 96 long'),
    );
    expect(laid.flatMap(({ runs }) => runs)).toEqual([]);
    const after = await cut(
      chest('sequence "all" from flitch "A" { "a" to "c" }', undefined, 'flitch "A" 24 leaves, 6 wide, 96 long'),
    );
    expect(after.laid.flatMap(({ runs }) => runs)).toHaveLength(1);
  });
});

describe('a pair of doors that is made as one', () => {
  it('is one panel as wide as both leaves and the gap between them, glued up where no board is that wide', async () => {
    const doors = (stock: string) => `units inches to 1/32
sheet "oak ply" actual 3/4, 96 long, 48 wide
board "ash" any thickness, 8 wide, 120 long
machine "saw" kerf 1/8
piece "box" {
  size 20 wide, 24 high, 12 deep
  case { sides "oak ply" thick 3/4   bottom "oak ply" thick 3/4, between sides   join dado 1/4 deep }
  face inset, gap 1/8 { doors "front" { pair made as one }   fronts ${stock} }
}`;
    const ofSheet = await cut(doors('"oak ply" thick 3/4'));
    const panels = ofSheet.laid.flatMap(({ pieces }) => pieces).filter(({ piece }) => piece.otherLeaf !== undefined);
    // The opening of 18-1/2 less a gap at either side.
    expect(panels.map(({ piece, width }) => [piece.label, width.exactInches])).toEqual([['pair "front"', '73/4']]);
    const ofBoards = await cut(doors('"ash" thick 3/4'));
    const staves = ofBoards.laid.flatMap(({ pieces }) => pieces).filter(({ piece }) => piece.otherLeaf !== undefined);
    expect(staves.map(({ stave }) => stave?.of)).toEqual([3, 3, 3]);
  });
});
