import { describe, expect, it } from 'vitest';
import type { AxisCell } from '../../../packages/engine/src/layout/axis.ts';
import { type AxisToSolve, type SolvedAxes, solveAxes } from '../../../packages/engine/src/layout/resolve-same.ts';
import { bare, cell, figure, fixed, inset, request, rest, same, share, sizesOf } from './axis-examples.ts';

const front = inset(figure('3/32'));

function axis(id: string, total: string | { of: string }, cells: readonly AxisCell[]): AxisToSolve {
  const { boundaries, totalLabel } = request('1', cells);
  return {
    id,
    totalLabel,
    boundaries,
    cells,
    total:
      typeof total === 'string' ? { kind: 'given', figure: figure(total) } : { kind: 'opening-of', cell: total.of },
  };
}

function sizes(solved: SolvedAxes, id: string): unknown {
  const result = solved.results.get(id);
  if (result === undefined) return 'no total';
  return result.kind === 'solved' ? sizesOf(result.cells) : [result.failure.kind, sizesOf(result.known)];
}

const circlesOf = (solved: SolvedAxes) => solved.circles.map((circle) => circle.cells.map((one) => one.id));

describe('sizes copied across stacks', () => {
  it('are solved after what they copy, whichever is written first', () => {
    const left = axis('left', '30', [cell('a', same('x', 'front'), front), cell('b', rest, front)]);
    const right = axis('right', '20', [cell('x', share('1'), front), cell('y', share('3'), front)]);
    for (const axes of [
      [left, right],
      [right, left],
    ]) {
      const solved = solveAxes(axes);
      expect(solved.circles).toEqual([]);
      // 20 less 3/8" of gaps is 19-5/8"; a quarter of it is 4-29/32".
      expect(sizes(solved, 'right')).toEqual({ x: '157/32 in 163/32', y: '471/32 in 477/32' });
      expect(sizes(solved, 'left')).toEqual({ a: '157/32 in 163/32', b: '791/32 in 797/32' });
    }
  });

  it('a total may be the opening of another axis', () => {
    const solved = solveAxes([
      axis('inner', { of: 'stack' }, [cell('top', rest, bare), cell('low', share('2'), bare)]),
      axis('outer', '30', [cell('stack', share('2'), bare), cell('door', rest, bare)]),
    ]);
    expect([...solved.results.keys()]).toEqual(['outer', 'inner']);
    expect(sizes(solved, 'inner')).toEqual({ top: '20/3', low: '40/3' });
  });

  it('written and measured sizes are copied even from a stack that cannot be solved', () => {
    const solved = solveAxes([
      axis('copy', '30', [cell('a', same('x'), bare), cell('b', rest, bare), cell('c', same('y'), bare)]),
      axis('broken', '10', [
        cell('x', fixed('8', 'opening'), bare),
        cell('y', fixed('8', 'opening'), bare, { measured: figure('7') }),
        cell('z', fixed('1', 'opening'), bare),
      ]),
    ]);
    expect(sizes(solved, 'broken')).toEqual(['difference', { x: '8', y: '7', z: '1' }]);
    expect(sizes(solved, 'copy')).toEqual({ a: '8', b: '15', c: '7' });
  });

  it('two rows that copy written sizes of each other are no circle', () => {
    const solved = solveAxes([
      axis('one', '30', [cell('a', same('d'), bare), cell('b', fixed('6', 'opening'), bare), cell('r', rest, bare)]),
      axis('two', '40', [cell('c', same('b'), bare), cell('d', fixed('9', 'opening'), bare), cell('s', rest, bare)]),
    ]);
    expect(solved.circles).toEqual([]);
    expect(sizes(solved, 'one')).toEqual({ a: '9', b: '6', r: '15' });
    expect(sizes(solved, 'two')).toEqual({ c: '6', d: '9', s: '25' });
  });

  it('a copy of a copy that comes home is a copy at home', () => {
    const solved = solveAxes([
      axis('one', '30', [cell('a', same('b'), bare), cell('s', share('1'), bare)]),
      axis('two', '40', [cell('b', same('s'), bare), cell('t', rest, bare)]),
    ]);
    expect(solved.circles).toEqual([]);
    expect(sizes(solved, 'one')).toEqual({ a: '15', s: '15' });
    expect(sizes(solved, 'two')).toEqual({ b: '15', t: '25' });
  });

  it('a copy of another face is not passed over: the front goes by the gaps of the cell between', () => {
    const solved = solveAxes([
      axis('one', '30', [cell('a', same('b', 'front'), front), cell('r', rest, bare)]),
      axis('two', '40', [cell('b', same('s', 'opening'), inset(figure('1'))), cell('t', rest, bare)]),
      axis('three', '20', [cell('s', rest, front), cell('u', rest, front)]),
    ]);
    // Opening of s is 10", front of b 10" less two gaps of 1".
    expect(sizes(solved, 'one')).toEqual({ a: '8 in 131/16', r: '349/16' });
  });

  it('one cause is named once: what waits behind an unsolved stack is not laid out', () => {
    const solved = solveAxes([
      axis('one', '30', [cell('a', same('b'), bare), cell('r', rest, bare)]),
      axis('two', '40', [cell('b', rest, bare), cell('c', same('nobody'), bare)]),
    ]);
    const one = solved.results.get('one');
    const two = solved.results.get('two');
    expect(one?.kind === 'failed' && one.failure).toEqual({
      kind: 'unknown-same',
      cells: [{ id: 'a', why: 'not-laid-out' }],
    });
    expect(two?.kind === 'failed' && two.failure).toEqual({
      kind: 'unknown-same',
      cells: [{ id: 'c', why: 'no-such-cell' }],
    });
  });
});

describe('circles', () => {
  it('of cells are named once, in order, and so is everything that leads into them', () => {
    const solved = solveAxes([
      axis('one', '30', [
        cell('a', same('b'), bare),
        cell('lead', same('a'), bare),
        cell('known', fixed('3', 'opening'), bare),
      ]),
      axis('two', '30', [cell('b', same('c'), bare), cell('c', same('a'), bare), cell('self', same('self'), bare)]),
    ]);
    expect(circlesOf(solved)).toEqual([['a', 'b', 'c'], ['self']]);
    const one = solved.results.get('one');
    expect(one?.kind === 'failed' && one.failure).toEqual({
      kind: 'unknown-same',
      cells: [
        { id: 'a', why: 'circular' },
        { id: 'lead', why: 'circular' },
      ],
    });
    expect(one?.kind === 'failed' && sizesOf(one.known)).toEqual({ known: '3' });
  });

  it('of rows that wait for each other are named by the cells that make them wait; others go on', () => {
    const solved = solveAxes([
      axis('one', '30', [cell('a', same('d'), bare), cell('b', rest, bare)]),
      axis('two', '40', [cell('c', same('b'), bare), cell('d', rest, bare)]),
      axis('behind', '40', [cell('e', same('b'), bare), cell('f', rest, bare)]),
      axis('free', '40', [cell('g', rest, bare)]),
    ]);
    expect(circlesOf(solved)).toEqual([['a', 'c']]);
    expect(sizes(solved, 'free')).toEqual({ g: '40' });
    const behind = solved.results.get('behind');
    expect(behind?.kind === 'failed' && behind.failure).toMatchObject({ cells: [{ id: 'e', why: 'circular' }] });
  });

  it('through a total: a cell that copies what is inside its neighbour', () => {
    const solved = solveAxes([
      axis('outer', '30', [cell('a', same('b'), bare), cell('row', rest, bare)]),
      axis('inner', { of: 'row' }, [cell('b', rest, bare), cell('c', rest, bare)]),
    ]);
    expect(circlesOf(solved)).toEqual([['a', 'row']]);
    expect(sizes(solved, 'inner')).toBe('no total');
    expect(sizes(solved, 'outer')).toEqual(['unknown-same', {}]);
  });

  it('a measured cell breaks a circle', () => {
    const solved = solveAxes([
      axis('one', '30', [cell('a', same('b'), bare), cell('r', rest, bare)]),
      axis('two', '30', [cell('b', same('a'), bare, { measured: figure('4') }), cell('s', rest, bare)]),
    ]);
    expect(solved.circles).toEqual([]);
    expect(sizes(solved, 'one')).toEqual({ a: '4', r: '26' });
    expect(sizes(solved, 'two')).toEqual({ b: '4', s: '26' });
  });

  it('of a thousand rows do not overflow anything', () => {
    const axes = Array.from({ length: 1000 }, (_, at) =>
      axis(`row${at}`, '30', [cell(`a${at}`, same(`b${(at + 1) % 1000}`), bare), cell(`b${at}`, rest, bare)]),
    );
    expect(solveAxes(axes).circles.map((circle) => circle.cells.length)).toEqual([1000]);
    const chain = axes.map((one, at) => (at === 999 ? axis('row999', '20', [cell('b999', rest, bare)]) : one));
    const solved = solveAxes(chain);
    expect(solved.circles).toEqual([]);
    expect(sizes(solved, 'row0')).toEqual({ a0: '20', b0: '10' });
    expect(sizes(solved, 'row998')).toEqual({ a998: '20', b998: '10' });
  });
});
