import { Rational, type SizeAsked } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import {
  caseWithFace,
  drawer,
  front,
  opening,
  partition,
  rest,
  row,
  sameAs,
  share,
  stack,
  webFrame,
  written,
} from '../design-builder.ts';
import { evaluateSound } from '../reading-layouts.ts';
import { exactly, heights, inset, widths } from './reading-faces.ts';

// Worked by hand before the code was written; no published source.

const frames = (count: number) => Array.from({ length: count }, (_, at) => webFrame(`w${at}`, '3/4'));
const byRatio = (ratio: Rational, step: number): SizeAsked => ({ kind: 'graded-by-ratio', ratio, step });

describe('8. graded by a difference', () => {
  // Four drawers, 24 high, gaps 1/16, covered dividers; each 1 higher than the one above.
  // 24 - 5/16 = 23-11/16 of fronts; less 0 + 1 + 2 + 3 = 6: 17-11/16, a quarter is 4-27/64.
  it('each front is larger by the difference', () => {
    const by = written('1');
    const cells = ['a', 'b', 'c', 'd'].map((id, step) => drawer(id, { kind: 'graded', by, step }));
    const evaluation = evaluateSound(
      caseWithFace('20', '24', stack('stack', rest, cells, frames(3)), { fit: inset('1/16') }),
    );
    expect(heights(evaluation, ['a', 'b', 'c', 'd']).fronts).toEqual(
      ['4-27/64', '5-27/64', '6-27/64', '7-27/64'].map(exactly),
    );
  });
});

describe('9. graded by a ratio', () => {
  // Three drawers, 31 high, gaps 1/8: 31 - 1/2 = 30-1/2 of fronts. Each 5/4 of the one above: 1 + 5/4 + 25/16 = 61/16
  // of the first; 30-1/2 / (61/16) = 8. So 8, 10 and 12-1/2.
  const fiveQuarters = Rational.of(5, 4);
  it('each front is so many times the one above', () => {
    const cells = ['a', 'b', 'c'].map((id, step) => drawer(id, byRatio(fiveQuarters, step)));
    const evaluation = evaluateSound(
      caseWithFace('20', '31', stack('stack', rest, cells, frames(2)), { fit: inset('1/8') }),
    );
    expect(heights(evaluation, ['a', 'b', 'c']).fronts).toEqual(['8', '10', exactly('12-1/2')]);
  });

  it('a row of two counts as one step', () => {
    // The same, the topmost a row of two: 20 wide, a partition of 3/4 shown and four gaps leave 18-3/4: 9-3/8 each.
    const top = row(
      'row',
      byRatio(fiveQuarters, 0),
      [drawer('a1', share(1)), drawer('a2', share(1))],
      [partition('p', '3/4')],
    );
    const root = stack(
      'stack',
      rest,
      [top, drawer('b', byRatio(fiveQuarters, 1)), drawer('c', byRatio(fiveQuarters, 2))],
      frames(2),
    );
    const evaluation = evaluateSound(caseWithFace('20', '31', root, { fit: inset('1/8') }));
    expect(heights(evaluation, ['a1', 'a2', 'b', 'c']).fronts).toEqual(['8', '8', '10', exactly('12-1/2')]);
    expect(widths(evaluation, ['a1', 'a2']).fronts).toEqual([exactly('9-3/8'), exactly('9-3/8')]);
  });
});

describe('11. held between limits', () => {
  // Three drawers, 30 high, gaps 1/8: 29-1/2 of fronts, 9-5/6 each if nothing held them.
  // The second is at most 6: 23-1/2 for the others, 11-3/4 each; but the third is at least 12: 11-1/2 for the first.
  it('the first takes what the limits leave', () => {
    const cells = [
      drawer('a', share(1)),
      drawer('b', share(1), { atMost: written('6') }),
      drawer('c', share(1), { atLeast: written('12') }),
    ];
    const evaluation = evaluateSound(
      caseWithFace('20', '30', stack('stack', rest, cells, frames(2)), { fit: inset('1/8') }),
    );
    expect(heights(evaluation, ['a', 'b', 'c']).fronts).toEqual([exactly('11-1/2'), '6', '12']);
  });
});

describe('12. the same as in another stack, and measured sizes', () => {
  // Two stacks beside each other in a face 40 x 20, a partition of 3/4 shown, gaps 1/8, covered dividers.
  // Left: "a" 5, "b" the rest: 20 - 3/8 - 5 = 14-5/8. Right: "c" as "b", "d" the rest: 5.
  const face = (a: Partial<Parameters<typeof drawer>[2]> = {}, left: Partial<ReturnType<typeof stack>> = {}) => {
    const leftStack = {
      ...stack('left', rest, [drawer('a', front('5'), { ...a }), drawer('b', rest)], frames(1)),
      ...left,
    };
    const right = stack('right', rest, [drawer('c', sameAs('b', 'front')), drawer('d', rest)], [webFrame('w', '3/4')]);
    const root = row('row', rest, [leftStack, right], [partition('p', '3/4')]);
    return evaluateSound(caseWithFace('40', '20', root, { fit: inset('1/8') }));
  };

  it('copies a front across stacks', () => {
    expect(heights(face(), ['a', 'b', 'c', 'd']).fronts).toEqual(['5', '14-5/8', '14-5/8', '5'].map(exactly));
  });

  it('a measured front replaces the planned one, and what follows from it follows', () => {
    // "a" is cut to 5-1/16: "b" and "c" are 14-9/16, "d" 5-1/16.
    const evaluation = face({ measuredFront: written('5-1/16') });
    expect(heights(evaluation, ['a', 'b', 'c', 'd']).fronts).toEqual(
      ['5-1/16', '14-9/16', '14-9/16', '5-1/16'].map(exactly),
    );
  });

  it('a measured opening replaces the planned one', () => {
    // The left stack was planned 18 wide and is 18-1/16: 40 - 3/4 - 18-1/16 = 21-3/16 for the right one.
    const evaluation = face({}, { along: opening('18'), measured: written('18-1/16') });
    expect(widths(evaluation, ['a', 'd'])).toEqual({
      fronts: [exactly('17-13/16'), exactly('20-15/16')],
      openings: [exactly('18-1/16'), exactly('21-3/16')],
    });
  });
});
