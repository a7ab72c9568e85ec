import type { Divider } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { caseWithFace, door, drawer, front, partition, rest, row, share, stack, webFrame } from '../design-builder.ts';
import { cellNamed, evaluateSound } from '../reading-layouts.ts';
import { exactly, heights, inset, stretch, widths } from './reading-faces.ts';

// Worked by hand before the code was written; no published source.

describe('1. covered dividers, with each face of theirs on the gap', () => {
  // A stack of three drawers in a face 20 wide and 24 high; gaps 1/8; two dividers of 3/4 behind the fronts.
  // Fronts: 24 less four gaps (1/2) leaves 23-1/2; less 5 and 6 leaves 12-1/2 for the third. Anchors change no front.
  const ids = ['first', 'second', 'third'];
  const fronts = ['5', '6', '12-1/2'].map(exactly);
  const drawers = () => [drawer('first', front('5')), drawer('second', front('6')), drawer('third', rest)];
  const stacked = (anchor: Divider['anchor']) =>
    evaluateSound(
      caseWithFace(
        '20',
        '24',
        stack('stack', rest, drawers(), [webFrame('d1', '3/4', { anchor }), webFrame('d2', '3/4', { anchor })]),
        { fit: inset('1/8') },
      ),
    );

  it.each([
    // first: 1/8 + 5 + 1/16 less half a divider 3/8 = 4-13/16
    // second: 1/16 + 6 + 1/16 less 3/8 twice        = 5-3/8
    // third: 1/16 + 12-1/2 + 1/8 less 3/8           = 12-5/16      together 22-1/2 and two dividers 1-1/2 = 24
    ['centre', ['4-13/16', '5-3/8', '12-5/16']],
    // Upper face on the gap: the whole divider lies below the middle of the gap.
    // first: 1/8 + 5 + 1/16 = 5-3/16; second: 6 + 1/8 - 3/4 = 5-3/8; third: 1/16 + 12-1/2 + 1/8 - 3/4 = 11-15/16
    ['start', ['5-3/16', '5-3/8', '11-15/16']],
    // Lower face on the gap: the whole divider lies above it.
    // first: 5-3/16 - 3/4 = 4-7/16; second: 5-3/8; third: 12-11/16
    ['end', ['4-7/16', '5-3/8', '12-11/16']],
  ] as const)('%s', (anchor, openings) => {
    expect(heights(stacked(anchor), ids)).toEqual({ fronts, openings: openings.map(exactly) });
  });

  it.each([
    // A row of two doors, 20 wide, the first front 8: 20 - 3/8 - 8 = 11-5/8.
    // Left face on the gap: 1/8 + 8 + 1/16 = 8-3/16; the other 20 - 8-3/16 - 3/4 = 11-1/16.
    ['start', ['8-3/16', '11-1/16']],
    // Right face on the gap: 8-3/16 - 3/4 = 7-7/16; the other 11-13/16.
    ['end', ['7-7/16', '11-13/16']],
  ] as const)('in a row, %s', (anchor, openings) => {
    const root = row(
      'row',
      rest,
      [door('left', front('8')), door('right', rest)],
      [partition('p', '3/4', { mode: 'behind', anchor })],
    );
    const evaluation = evaluateSound(caseWithFace('20', '24', root, { fit: inset('1/8') }));
    expect(widths(evaluation, ['left', 'right'])).toEqual({
      fronts: ['8', '11-5/8'].map(exactly),
      openings: openings.map(exactly),
    });
  });
});

describe('2. shown dividers', () => {
  // Three doors in a row 30 wide; two partitions of 3/4; gaps 3/32.
  // 30 less 1-1/2 leaves 28-1/2 of openings, 9-1/2 each; a front has a gap at each side: 9-1/2 - 3/16 = 9-5/16.
  it('stand between two gaps', () => {
    const root = row(
      'row',
      rest,
      ['a', 'b', 'c'].map((id) => door(id, share(1))),
      [partition('p1', '3/4'), partition('p2', '3/4')],
    );
    const evaluation = evaluateSound(caseWithFace('30', '20', root, { fit: inset('3/32') }));
    expect(widths(evaluation, ['a', 'b', 'c'])).toEqual({
      fronts: Array(3).fill(exactly('9-5/16')),
      openings: Array(3).fill(exactly('9-1/2')),
    });
    // The left side is 3/4: the partitions stand at 10-1/4 and, 9-1/2 + 3/4 further on, at 20-1/2.
    expect(cellNamed(evaluation, 'row').dividers.map(({ at }) => stretch(at.x))).toEqual([
      ['41/4', '11'],
      ['41/2', '85/4'],
    ]);
  });
});

describe('10. rows in stacks, with shares of fronts', () => {
  // 40 wide, 30 high, inset, gap 1/8. Two rows over each other, one share and two; a covered divider of 3/4 between.
  // Heights: 30 less three gaps (3/8) = 29-5/8; a third is 9-7/8, two thirds 19-3/4.
  // Upper row: a shown partition of 3/4 and four gaps: 40 - 3/4 - 1/2 = 38-3/4; a third 12-11/12, two thirds 25-5/6.
  // Lower row: three alike over covered partitions, four gaps: 39-1/2, a third each: 13-1/6.
  it('come out in thirds', () => {
    const upper = row('upper', share(1), [door('a', share(1)), door('b', share(2))], [partition('p1', '3/4')]);
    const lower = row(
      'lower',
      share(2),
      ['c', 'd', 'e'].map((id) => drawer(id, share(1))),
      [partition('p2', '3/4', { mode: 'behind' }), partition('p3', '3/4', { mode: 'behind' })],
    );
    const root = stack('stack', rest, [upper, lower], [webFrame('w', '3/4')]);
    const evaluation = evaluateSound(caseWithFace('40', '30', root, { fit: inset('1/8') }));
    expect(heights(evaluation, ['a', 'b', 'c']).fronts).toEqual(['9-7/8', '9-7/8', '19-3/4'].map(exactly));
    expect(widths(evaluation, ['a', 'b', 'c', 'd', 'e']).fronts).toEqual(['155/12', '155/6', '79/6', '79/6', '79/6']);
  });
});
