import { diagonalOf, evaluatePiece, Length, Rational, setupsOf } from '@fettle/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inches, place, written } from '../design-builder.ts';
import { sideboard } from '../sideboard-design.ts';

// Worked by hand from the sideboard; no published values.

const plain = sideboard();
const evaluation = evaluatePiece({
  ...plain,
  carcase: { ...plain.carcase, join: { kind: 'dado', origin: place(), depth: written('1/4') } },
});
const setups = setupsOf(evaluation);
const figures = (lengths: readonly Length[] = []) => lengths.map((each) => each.exactInches);
const exact = (...texts: string[]) => texts.map((text) => inches(text).exactInches);

describe('the web frames behind the drawer fronts', () => {
  // Each is centred on the gap between two fronts, and is let into both partitions.
  it('lie with their middles 10-19/64", 17-25/64" and 23-31/64" above the bottom', () => {
    expect(setups.fences.map(({ from, parts }) => ({ from, parts }))).toEqual([
      { from: 'upper face of the bottom', parts: ['left-partition', 'right-partition'] },
    ]);
    expect(figures(setups.fences[0]?.middles)).toEqual(exact('10-19/64', '17-25/64', '23-31/64'));
  });
  it('as a fence with strips: 10-19/64", then 7-3/32" and 6-3/32" more', () => {
    expect(figures(setups.fences[0]?.inserts)).toEqual(exact('10-19/64', '7-3/32', '6-3/32'));
  });
  it('from the lower end as it is cut: 1/4" more for the dado below, half of 3/4" less to the near side', () => {
    expect(setups.fences[0]?.fence).toEqual(inches('10-11/64'));
  });
});

describe('the settings of the machines', () => {
  it('name each setting once, with all its parts', () => {
    const keys = setups.machine.map(({ kind, width, depth, fence, from, stops }) =>
      JSON.stringify([kind, width, depth, fence, from, stops]),
    );
    expect(new Set(keys).size).toBe(keys.length);
  });
  it('cut the groove for the back in both sides at one setting, 1/2" from the back edge', () => {
    const groove = setups.machine.find(
      ({ parts }) => parts.includes('case/side-left') && parts.includes('case/side-right'),
    );
    const back = setups.machine.filter(({ kind, from }) => kind === 'groove' && from === 'back edge');
    expect(groove).toBeDefined();
    expect(back.map(({ width, depth, fence }) => figures([width, depth, fence]))).toContainEqual(
      exact('1/4', '1/4', '1/2'),
    );
  });
  it('leave out no dado, groove or rabbet', () => {
    const set = new Set(setups.machine.flatMap(({ kind, parts }) => parts.map((part) => `${kind} in ${part}`)));
    const cut = evaluation.parts.flatMap(({ id, features }) =>
      features.filter(({ kind }) => ['dado', 'groove', 'rabbet'].includes(kind)).map(({ kind }) => `${kind} in ${id}`),
    );
    expect(cut.filter((each) => !set.has(each))).toEqual([]);
    expect(cut.length).toBeGreaterThan(20);
  });
});

describe('a diagonal', () => {
  it('of the face, 57" by 28-5/8", is 63-25/32" to 1/32"', () => {
    const face = setups.diagonals.find(({ what }) => what === 'the face');
    expect(face?.mark).toEqual(inches('63-25/32'));
    // The root of 4068.390625 is 63.7839..., by long division.
    expect(face?.decimal).toBe('63.784');
  });
  it('is exact where it is whole: 3, 4, 5', () => {
    expect(diagonalOf(inches('3'), inches('4'), 'in', inches('1/32'))).toEqual({ mark: inches('5'), decimal: '5.000' });
  });
  it('is given for every web frame and every drawer box', () => {
    expect(setups.diagonals.filter(({ what }) => what.startsWith('the web frame'))).toHaveLength(3);
    expect(setups.diagonals.filter(({ what }) => what.startsWith('the drawer box'))).toHaveLength(4);
  });
  it('is never further from the root than half a mark', () => {
    const size = fc.integer({ min: 1, max: 4000 }).map((n) => Length.inches(n, 32));
    fc.assert(
      fc.property(size, size, (width, height) => {
        const step = Length.inches(1, 16);
        const { mark } = diagonalOf(width, height, 'in', step);
        const [w, h] = [width.ratioTo(step), height.ratioTo(step)];
        const square = w.times(w).plus(h.times(h));
        const twice = mark.ratioTo(step).times(2);
        const four = square.times(4);
        const [less, more] = [twice.minus(Rational.one), twice.plus(Rational.one)];
        expect(less.sign() < 0 || less.times(less).compare(four) <= 0).toBe(true);
        expect(more.times(more).compare(four)).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});
