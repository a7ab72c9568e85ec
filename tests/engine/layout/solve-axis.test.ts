import { describe, expect, it } from 'vitest';
import { less, plus } from '../../../packages/engine/src/design/derive.ts';
import type { AxisFailure, AxisResult } from '../../../packages/engine/src/layout/axis.ts';
import { rigidTotal, solveAxis } from '../../../packages/engine/src/layout/solve-axis.ts';
import { Rational } from '../../../packages/engine/src/length/rational.ts';
import {
  bare,
  cell,
  expectTrueDerivation,
  figure,
  fixed,
  graded,
  inset,
  length,
  request,
  rest,
  same,
  share,
  sizesOf,
  solvedOf,
} from './axis-examples.ts';

/** All numbers here were worked by hand. */
const gap = figure('3/32');
const front = inset(gap);

function failureOf(result: AxisResult): AxisFailure {
  return result.kind === 'failed' ? result.failure : expect.fail('solved');
}

describe('the sideboard', () => {
  it('across: two doors share beside a stack 18" wide', () => {
    const row = request(
      '57',
      [
        cell('left', share('1'), front),
        cell('stack', fixed('18', 'opening'), bare),
        cell('right', same('left'), front),
      ],
      ['3/4', '3/4'],
    );
    expect(sizesOf(solvedOf(solveAxis(row)))).toEqual({
      left: '297/16 in 75/4',
      stack: '18',
      right: '297/16 in 75/4',
    });
  });

  it('down: four drawer fronts over covered web frames, the last takes the rest', () => {
    const over = [plus('divider', figure('3/4'), Rational.of(1, 2)), less('gap', gap, Rational.of(1, 2))];
    const against = [less('gap', gap)];
    const stack = request(
      '229/8',
      [
        cell('cards', fixed('5'), { hasFront: true, deltaStart: against, deltaEnd: over }),
        cell('dice', fixed('6'), { hasFront: true, deltaStart: over, deltaEnd: over }),
        cell('maps', fixed('7'), { hasFront: true, deltaStart: over, deltaEnd: over }),
        cell('blankets', rest, { hasFront: true, deltaStart: over, deltaEnd: against }),
      ],
      ['3/4', '3/4', '3/4'],
    );
    const result = solveAxis(stack);
    const cells = solvedOf(result);
    expect(cells.map((one) => one.front?.length.exactInches)).toEqual(['5', '6', '7', '325/32']);
    // 5" less 3/8" over the frame, plus 3/32" at the top and half of that below.
    expect(cells.map((one) => one.opening.length.exactInches)).toEqual(['305/64', '171/32', '203/32', '635/64']);
    expect(cells.map((one) => one.by)).toEqual(['fixed', 'fixed', 'fixed', 'share']);
    for (const one of cells) {
      expectTrueDerivation(one.opening);
      if (one.front !== undefined) expectTrueDerivation(one.front);
    }
  });
});

describe('what is shared', () => {
  it('is fronts when every cell that shares has one: equal fronts, unequal openings', () => {
    const wide = inset(figure('1/2'));
    const cells = solvedOf(solveAxis(request('30', [cell('a', rest, wide), cell('b', rest, front)])));
    // 30 less 1" and 3/16" of gaps, halved.
    expect(sizesOf(cells)).toEqual({ a: '461/32 in 493/32', b: '461/32 in 467/32' });
  });

  it('is openings when one of them has no front', () => {
    const cells = solvedOf(solveAxis(request('30', [cell('a', rest, front), cell('open', rest, bare)])));
    expect(sizesOf(cells)).toEqual({ a: '237/16 in 15', open: '15' });
  });

  it('a written size does not decide what is shared', () => {
    const cells = solvedOf(
      solveAxis(
        request('30', [cell('a', rest, front), cell('b', rest, front), cell('open', fixed('10', 'opening'), bare)]),
      ),
    );
    expect(sizesOf(cells)).toEqual({ a: '157/16 in 10', b: '157/16 in 10', open: '10' });
  });

  it('goes by weight; rest weighs one', () => {
    const cells = solvedOf(
      solveAxis(request('35', [cell('a', share('2'), bare), cell('b', rest, bare), cell('c', share('1/2'), bare)])),
    );
    expect(sizesOf(cells)).toEqual({ a: '20', b: '10', c: '5' });
  });

  it('grows by steps when graded', () => {
    const cells = solvedOf(
      solveAxis(
        request('27', [
          cell('a', graded('1', 0), bare),
          cell('b', graded('1', 1), bare),
          cell('c', graded('1', 2), bare),
        ]),
      ),
    );
    expect(sizesOf(cells)).toEqual({ a: '8', b: '9', c: '10' });
    const growing = solvedOf(
      solveAxis(request('27', [cell('a', graded('-1/2', 0), bare), cell('b', graded('-1/2', 3), bare)])),
    );
    expect(sizesOf(growing)).toEqual({ a: '57/4', b: '51/4' });
  });

  it('gives the share itself as a figure', () => {
    const result = solveAxis(request('35', [cell('a', share('2'), bare), cell('b', rest, bare)]));
    expect(result.kind === 'solved' && result.share?.figure.length.exactInches).toBe('35/3');
    expect(result.kind === 'solved' && result.share?.basis).toBe('opening');
  });
});

describe('measured openings', () => {
  it('replace what was asked, and the rest makes room', () => {
    const cells = solvedOf(
      solveAxis(request('30', [cell('a', fixed('10'), front, { measured: figure('161/16') }), cell('b', rest, front)])),
    );
    expect(sizesOf(cells)).toEqual({ a: '79/8 in 161/16', b: '79/4 in 319/16' });
    expect(cells[0]?.by).toBe('measured');
  });

  it('are stronger than limits, which then clash', () => {
    const result = solveAxis(
      request('30', [cell('a', rest, bare, { measured: figure('3'), atLeast: figure('4') }), cell('b', rest, bare)]),
    );
    expect(sizesOf(solvedOf(result))).toEqual({ a: '3', b: '27' });
    expect(result.clashes.map(({ id, what }) => [id, what])).toEqual([['a', 'size-under-least']]);
  });
});

describe('limits', () => {
  it('hold a front exactly, and the others share what remains', () => {
    const result = solveAxis(
      request('30', [
        cell('a', rest, bare, { atLeast: figure('14') }),
        cell('b', rest, bare, { atMost: figure('5') }),
        cell('c', rest, bare),
        cell('d', rest, bare),
      ]),
    );
    expect(sizesOf(solvedOf(result))).toEqual({ a: '14', b: '5', c: '11/2', d: '11/2' });
    expect(solvedOf(result).map((one) => one.by)).toEqual(['at-least', 'at-most', 'share', 'share']);
    expect(result.clashes).toEqual([]);
  });

  it('are of the front where there is one', () => {
    const cells = solvedOf(
      solveAxis(request('30', [cell('a', rest, front, { atMost: figure('4') }), cell('b', rest, front)])),
    );
    expect(sizesOf(cells)).toEqual({ a: '4 in 67/16', b: '205/8 in 413/16' });
  });

  it('just reached are not a hold', () => {
    const cells = solvedOf(
      solveAxis(
        request('30', [cell('a', rest, bare, { atMost: figure('15'), atLeast: figure('15') }), cell('b', rest, bare)]),
      ),
    );
    expect(cells.map((one) => one.by)).toEqual(['share', 'share']);
  });

  it('a copy follows its held original', () => {
    const cells = solvedOf(
      solveAxis(
        request('30', [
          cell('a', rest, bare, { atMost: figure('4') }),
          cell('b', rest, bare),
          cell('c', same('a'), bare),
        ]),
      ),
    );
    expect(sizesOf(cells)).toEqual({ a: '4', b: '22', c: '4' });
    expect(cells[2]?.by).toBe('same');
  });

  it('that fill the total exactly are a solution; one 64th beside it they are not', () => {
    const held = (total: string) =>
      solveAxis(
        request(total, [
          cell('a', rest, bare, { atMost: figure('4') }),
          cell('b', share('3'), bare, { atMost: figure('5') }),
        ]),
      );
    expect(sizesOf(solvedOf(held('9')))).toEqual({ a: '4', b: '5' });
    expect(failureOf(held('577/64')).kind).toBe('difference');
  });

  it('against a written size they clash, and the size is followed', () => {
    const result = solveAxis(
      request('30', [
        cell('a', fixed('5'), front, { atLeast: figure('6') }),
        cell('b', rest, front, { atLeast: figure('2') }),
      ]),
    );
    expect(solvedOf(result)[0]?.front?.length.exactInches).toBe('5');
    expect(
      result.clashes.map(({ id, what, between }) => [id, what, ...between.map((one) => one.length.exactInches)]),
    ).toEqual([['a', 'size-under-least', '5', '6']]);
  });

  it('that cross each other clash, and the least is followed', () => {
    const result = solveAxis(
      request('30', [cell('a', rest, bare, { atLeast: figure('6'), atMost: figure('5') }), cell('b', rest, bare)]),
    );
    expect(sizesOf(solvedOf(result))).toEqual({ a: '6', b: '24' });
    expect(result.clashes.map((clash) => clash.what)).toEqual(['least-over-most']);
  });

  it('that cross count as the least also where everything is held', () => {
    const cells = [
      cell('a', rest, bare, { atLeast: figure('6'), atMost: figure('5') }),
      cell('b', rest, bare, { atMost: figure('5') }),
    ];
    expect(sizesOf(solvedOf(solveAxis(request('11', cells))))).toEqual({ a: '6', b: '5' });
    expect(failureOf(solveAxis(request('12', cells)))).toMatchObject({ kind: 'difference', tooMuch: false });
  });

  it('above are told from limits below', () => {
    const result = solveAxis(
      request('30', [cell('a', fixed('5'), front, { atMost: figure('4') }), cell('b', rest, front)]),
    );
    expect(result.clashes.map(({ what, between }) => [what, ...between.map((one) => one.length.exactInches)])).toEqual([
      ['size-over-most', '5', '4'],
    ]);
  });
});

describe('copies within a row', () => {
  it('of a front differ in opening by what stands beside them', () => {
    const cells = solvedOf(
      solveAxis(request('30', [cell('a', rest, front), cell('b', same('a', 'front'), inset(figure('1/4')))])),
    );
    // 30 less 3/16" and 1/2" of gaps, halved.
    expect(sizesOf(cells)).toEqual({ a: '469/32 in 475/32', b: '469/32 in 485/32' });
  });

  it('in a long chain, in any order', () => {
    const links = Array.from({ length: 3000 }, (_, at) =>
      cell(`c${at}`, at === 2999 ? rest : same(`c${at + 1}`), bare),
    );
    const cells = solvedOf(solveAxis(request('1500', links)));
    expect(new Set(cells.map((one) => one.opening.length.exactInches))).toEqual(new Set(['1/2']));
  });

  it('of a name that is not there, in a circle, or of a front that is not there', () => {
    const result = solveAxis(
      request('30', [
        cell('a', same('nobody'), bare),
        cell('b', same('c'), bare),
        cell('c', same('b'), bare),
        cell('d', same('open', 'front'), front),
        cell('open', fixed('3', 'opening'), bare),
        cell('e', same('e'), bare),
      ]),
    );
    expect(failureOf(result)).toEqual({
      kind: 'unknown-same',
      cells: [
        { id: 'a', why: 'no-such-cell' },
        { id: 'b', why: 'circular' },
        { id: 'c', why: 'circular' },
        { id: 'd', why: 'no-front' },
        { id: 'e', why: 'circular' },
      ],
    });
    expect(result.kind === 'failed' && sizesOf(result.known)).toEqual({ open: '3' });
  });
});

describe('a sum that does not come out', () => {
  const stack = (last: string, more = {}) =>
    solveAxis(
      request(
        '229/8',
        [
          cell('cards', fixed('5'), inset(gap)),
          cell('dice', fixed('6'), inset(gap)),
          cell('maps', fixed('7'), inset(gap), more),
          cell('blankets', fixed(last), inset(gap)),
        ],
        [],
      ),
    );

  it('comes out when it is exact', () => {
    // Eight gaps of 3/32" make 3/4"; 28-5/8" less that less 18".
    expect(stack('79/8').kind).toBe('solved');
  });

  it('one 64th too much: by how much, and what each front would have to be', () => {
    const failure = failureOf(stack('633/64'));
    if (failure.kind !== 'difference') return expect.fail(failure.kind);
    expect(failure.tooMuch).toBe(true);
    expect(failure.difference.exactInches).toBe('1/64');
    expect(failure.needed.length.exactInches).toBe('1833/64');
    expectTrueDerivation(failure.needed);
    expect(failure.blame.map(({ id, mended }) => [id, mended?.exactInches])).toEqual([
      ['blankets', '79/8'],
      ['maps', '447/64'],
      ['dice', '383/64'],
      ['cards', '319/64'],
    ]);
  });

  it('one 64th too little', () => {
    const failure = failureOf(stack('631/64'));
    if (failure.kind !== 'difference') return expect.fail(failure.kind);
    expect([failure.tooMuch, failure.difference.exactInches]).toEqual([false, '1/64']);
    expect(failure.blame[0]).toMatchObject({ id: 'blankets' });
    expect(failure.blame[0]?.mended?.exactInches).toBe('79/8');
    expect(failure.blame[0]?.slack).toBeUndefined();
  });

  it('a size that cannot give that much is no mend, and comes last', () => {
    const failure = failureOf(stack('127/8', { atLeast: figure('6') }));
    if (failure.kind !== 'difference') return expect.fail(failure.kind);
    expect(failure.difference.exactInches).toBe('6');
    expect(failure.blame.map(({ id, slack, mended }) => [id, slack?.exactInches, mended?.exactInches])).toEqual([
      ['blankets', '127/8', '79/8'],
      ['dice', '6', undefined],
      ['cards', '5', undefined],
      ['maps', '1', undefined],
    ]);
  });

  it('a copied size counts as often as it is copied', () => {
    const failure = failureOf(
      solveAxis(request('20', [cell('a', fixed('7'), bare), cell('b', same('a'), bare), cell('c', fixed('8'), bare)])),
    );
    if (failure.kind !== 'difference') return expect.fail(failure.kind);
    expect(failure.blame.map(({ id, mended }) => [id, mended?.exactInches])).toEqual([
      ['c', '6'],
      ['a', '6'],
    ]);
  });

  it('names the limits when only they stand in the way', () => {
    const failure = failureOf(
      solveAxis(
        request('20', [
          cell('a', rest, bare, { atLeast: figure('12') }),
          cell('b', rest, bare, { atLeast: figure('9') }),
        ]),
      ),
    );
    if (failure.kind !== 'difference') return expect.fail(failure.kind);
    expect(failure.blame.map(({ id, by, mended }) => [id, by, mended?.exactInches])).toEqual([
      ['a', 'at-least', '11'],
      ['b', 'at-least', '8'],
    ]);
  });

  it('every size named as a mend really mends it', () => {
    const cells = [
      cell('a', fixed('7'), front),
      cell('b', same('a'), front),
      cell('c', rest, front, { atMost: figure('3') }),
      cell('d', fixed('4', 'opening'), bare),
    ];
    let mends = 0;
    for (const total of ['10', '18', '22', '40']) {
      const failure = failureOf(solveAxis(request(total, cells)));
      if (failure.kind === 'nothing-left') continue;
      if (failure.kind !== 'difference') return expect.fail(failure.kind);
      for (const { id, by, basis, mended } of failure.blame) {
        if (mended === undefined) continue;
        const changed = cells.map((one) => {
          if (one.id !== id) return one;
          if (by === 'at-most') return { ...one, atMost: figure(mended.exactInches) };
          return { ...one, asked: fixed(mended.exactInches, basis) };
        });
        mends += 1;
        expect(solveAxis(request(total, changed)).kind, `${total}: ${id} ${mended.exactInches}`).toBe('solved');
      }
    }
    expect(mends).toBeGreaterThanOrEqual(6);
  });

  it('a front that laps over its opening cannot give more than its opening has', () => {
    const lapping = {
      hasFront: true,
      deltaStart: [plus('lap', figure('1/2'))],
      deltaEnd: [plus('lap', figure('1/2'))],
    };
    const failure = failureOf(
      solveAxis(request('10', [cell('a', fixed('3'), lapping), cell('b', fixed('21/2', 'opening'), bare)])),
    );
    if (failure.kind !== 'difference') return expect.fail(failure.kind);
    // 5/2" too much: a front of 1/2" would leave its opening -1/2".
    expect(failure.blame.map(({ id, slack, mended }) => [id, slack?.exactInches, mended?.exactInches])).toEqual([
      ['b', '21/2', '8'],
      ['a', '2', undefined],
    ]);
  });

  it('what is left over is not given to a size that may not be larger', () => {
    const failure = failureOf(
      solveAxis(
        request('10', [
          cell('a', fixed('4', 'opening'), bare, { atMost: figure('5') }),
          cell('b', fixed('3', 'opening'), bare, { atMost: figure('6') }),
        ]),
      ),
    );
    if (failure.kind !== 'difference') return expect.fail(failure.kind);
    expect(failure.blame.map(({ id, slack, mended }) => [id, slack?.exactInches, mended?.exactInches])).toEqual([
      ['b', '3', '6'],
      ['a', '1', undefined],
    ]);
  });

  it('a size that can mend it alone comes before one with more slack that cannot', () => {
    const failure = failureOf(
      solveAxis(
        request('13/2', [
          cell('a', fixed('3/2', 'opening'), bare),
          cell('b', same('a'), bare),
          cell('c', same('a'), bare),
          cell('d', fixed('2', 'opening'), bare),
          cell('e', fixed('3', 'opening'), bare, { measured: figure('3') }),
        ]),
      ),
    );
    if (failure.kind !== 'difference') return expect.fail(failure.kind);
    expect(failure.difference.exactInches).toBe('3');
    expect(failure.blame.map(({ id, mended }) => [id, mended?.exactInches])).toEqual([
      ['a', '1/2'],
      ['d', undefined],
      ['e', undefined],
    ]);
  });

  it('measured sizes are facts: named, never mended', () => {
    const failure = failureOf(
      solveAxis(
        request('20', [cell('a', rest, bare, { measured: figure('7') }), cell('b', fixed('14', 'opening'), bare)]),
      ),
    );
    if (failure.kind !== 'difference') return expect.fail(failure.kind);
    expect(failure.blame.map(({ id, by, mended }) => [id, by, mended?.exactInches])).toEqual([
      ['b', 'fixed', '13'],
      ['a', 'measured', undefined],
    ]);
  });
});

describe('nothing left', () => {
  it('is said of the front that would take the rest, with what everything else takes', () => {
    const failure = failureOf(
      solveAxis(request('20', [cell('a', fixed('19'), front), cell('b', rest, front)], ['3/4'])),
    );
    if (failure.kind !== 'nothing-left') return expect.fail(failure.kind);
    expect(failure.squeezed.map((one) => [one.id, one.front?.length.exactInches])).toEqual([['b', '-1/8']]);
    expect(failure.taken.length.exactInches).toBe('161/8');
    expect(failure.available.length.minus(failure.taken.length).exactInches).toBe('-1/8');
    expectTrueDerivation(failure.taken);
    expect(failure.blame.map((one) => one.id)).toEqual(['a']);
  });

  it('begins at exactly zero', () => {
    const left = (size: string) =>
      solveAxis(request('20', [cell('a', fixed(size, 'opening'), bare), cell('b', rest, bare)]));
    expect(failureOf(left('20')).kind).toBe('nothing-left');
    expect(sizesOf(solvedOf(left('1279/64')))).toEqual({ a: '1279/64', b: '1/64' });
  });

  it('an opening with room that leaves no front is nothing left too', () => {
    const failure = failureOf(
      solveAxis(request('20', [cell('a', fixed('159/8', 'opening'), bare), cell('b', rest, front)])),
    );
    if (failure.kind !== 'nothing-left') return expect.fail(failure.kind);
    expect(failure.squeezed[0]?.opening.length.exactInches).toBe('1/8');
    expect(failure.squeezed[0]?.front?.length.exactInches).toBe('-1/16');
  });

  it('written sizes that are nothing are a failure of their own', () => {
    const failure = failureOf(
      solveAxis(request('20', [cell('a', fixed('-1'), bare), cell('b', fixed('0'), front), cell('c', rest, bare)])),
    );
    if (failure.kind !== 'not-positive') return expect.fail(failure.kind);
    expect(failure.cells.map((one) => one.id)).toEqual(['a', 'b']);
  });

  it('shares of nothing are a failure of their own', () => {
    expect(
      failureOf(
        solveAxis(request('20', [cell('a', share('0'), bare), cell('b', share('-1'), bare), cell('c', rest, bare)])),
      ),
    ).toEqual({
      kind: 'share-not-positive',
      ids: ['a', 'b'],
    });
  });

  it('an axis without cells is empty', () => {
    expect(solveAxis(request('20', []))).toEqual({ kind: 'solved', cells: [], clashes: [] });
  });
});

describe('the pass up', () => {
  it('adds openings and boundaries when every size is known', () => {
    const { cells, boundaries } = request(
      '1',
      [cell('a', fixed('5'), front), cell('b', same('a'), front), cell('c', rest, bare, { measured: figure('4') })],
      ['3/4', '1/2'],
    );
    const total = rigidTotal({ cells, boundaries });
    expect(total?.length.exactInches).toBe('125/8');
    if (total !== undefined) expectTrueDerivation(total);
    // What it needs is what fills it.
    expect(solveAxis(request(total?.length.exactInches ?? '0', cells, ['3/4', '1/2'])).kind).toBe('solved');
  });

  it('knows nothing when one cell shares', () => {
    expect(rigidTotal(request('1', [cell('a', fixed('5'), front), cell('b', rest, front)]))).toBeUndefined();
    expect(rigidTotal(request('1', []))).toBeUndefined();
  });
});

describe('huge numbers', () => {
  it('stay exact', () => {
    const tiny = `1/${10n ** 40n}`;
    const cells = solvedOf(solveAxis(request('30', [cell('a', fixed(tiny), bare), cell('b', rest, bare)])));
    expect(cells[1]?.opening.length.plus(length(tiny)).exactInches).toBe('30');
  });
});
