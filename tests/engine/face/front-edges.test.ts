import type { Divider } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { caseWithFace, drawer, front, opening, partition, rest, row, stack, webFrame } from '../design-builder.ts';
import { cellNamed, evaluateSound } from '../reading-layouts.ts';

/** A stack of two drawers, the upper front 5 high, over one divider of 3/4; the face is 20 x 20, gaps 3/32. */
function twoDrawers(divider: Divider) {
  const root = stack('stack', rest, [drawer('upper', front('5')), drawer('lower', rest)], [divider]);
  const evaluation = evaluateSound(caseWithFace('20', '20', root));
  const laid = cellNamed(evaluation, 'stack');
  const at = laid.dividers[0]?.at.y;
  const upper = cellNamed(evaluation, 'upper').front?.y;
  const lower = cellNamed(evaluation, 'lower').front?.y;
  if (upper === undefined || lower === undefined) throw new Error('a front is missing');
  const gapTop = upper.start.length;
  const gapBottom = lower.end.length;
  return {
    upper: upper.size.length.exactInches,
    lower: lower.size.length.exactInches,
    gap: gapTop.minus(gapBottom).exactInches,
    gapMiddle: gapTop.plus(gapBottom).dividedBy(2),
    divider: at,
  };
}

// 20 high, all gaps 3/32: two fronts with a gap above, between and below.
const LOWER_BEHIND = '471/32';

describe('a covered divider and the gap over it', () => {
  it.each(['centre', 'start', 'end'] as const)('with anchor %s leaves one gap and the same fronts', (anchor) => {
    const { upper, lower, gap } = twoDrawers(webFrame('divider', '3/4', { anchor }));
    expect({ upper, lower, gap }).toEqual({ upper: '5', lower: LOWER_BEHIND, gap: '3/32' });
  });

  it('anchored at its centre has its middle on the middle of the gap', () => {
    const { divider, gapMiddle } = twoDrawers(webFrame('divider', '3/4', { anchor: 'centre' }));
    const middle = divider?.start.length.plus(divider.end.length).dividedBy(2);
    expect(middle?.exactInches).toBe(gapMiddle.exactInches);
  });

  it('anchored at its start has its upper face on the middle of the gap', () => {
    const { divider, gapMiddle } = twoDrawers(webFrame('divider', '3/4', { anchor: 'start' }));
    expect(divider?.end.length.exactInches).toBe(gapMiddle.exactInches);
  });

  it('anchored at its end has its lower face on the middle of the gap', () => {
    const { divider, gapMiddle } = twoDrawers(webFrame('divider', '3/4', { anchor: 'end' }));
    expect(divider?.start.length.exactInches).toBe(gapMiddle.exactInches);
  });

  it('in a row anchored at its start has its left face on the middle of the gap', () => {
    const root = row(
      'row',
      rest,
      [drawer('one', front('5')), drawer('two', rest)],
      [partition('divider', '3/4', { mode: 'behind', anchor: 'start' })],
    );
    const evaluation = evaluateSound(caseWithFace('20', '20', root));
    const end = cellNamed(evaluation, 'one').front?.x.end.length;
    const start = cellNamed(evaluation, 'two').front?.x.start.length;
    if (end === undefined || start === undefined) throw new Error('a front is missing');
    expect(start.minus(end).exactInches).toBe('3/32');
    const divider = cellNamed(evaluation, 'row').dividers[0];
    expect(divider?.at.x.start.length.exactInches).toBe(start.plus(end).dividedBy(2).exactInches);
  });
});

describe('other boundaries', () => {
  it('a shown divider stands between two gaps', () => {
    const { upper, lower, gap, divider } = twoDrawers(partition('divider', '3/4'));
    // 20 less 5, four gaps of 3/32 and the divider.
    expect({ upper, lower, gap }).toEqual({ upper: '5', lower: '111/8', gap: '15/16' });
    expect(divider?.size.length.exactInches).toBe('3/4');
  });

  it('nothing between two spaces leaves one gap between their fronts and no divider', () => {
    const { upper, lower, gap, divider } = twoDrawers(webFrame('divider', '3/4', { form: 'none' }));
    expect({ upper, lower, gap }).toEqual({ upper: '5', lower: LOWER_BEHIND, gap: '3/32' });
    expect(divider).toBeUndefined();
  });

  it('a front alone in the face stays one gap away all round', () => {
    const evaluation = evaluateSound(caseWithFace('20', '10', drawer('only', rest)));
    const laid = cellNamed(evaluation, 'only').front;
    expect([laid?.x.size.length.exactInches, laid?.y.size.length.exactInches]).toEqual(['317/16', '157/16']);
  });
});

describe('sizes that come from within or from elsewhere', () => {
  it('a stack whose row is all written takes the width of that row', () => {
    const inner = row(
      'inner',
      rest,
      [drawer('a', opening('6')), drawer('b', opening('7'))],
      [partition('post', '3/4')],
    );
    const root = row(
      'row',
      rest,
      [stack('stack', rest, [inner, drawer('c', rest)], [webFrame('w', '3/4')]), drawer('d', rest)],
      [partition('p', '3/4')],
    );
    const evaluation = evaluateSound(caseWithFace('40', '30', root));
    expect(cellNamed(evaluation, 'stack').opening.x.size.length.exactInches).toBe('55/4');
    expect(cellNamed(evaluation, 'd').opening.x.size.length.exactInches).toBe('51/2');
  });

  it('a measured opening replaces the planned one', () => {
    const measured = drawer('a', opening('6'), { measured: opening('6-1/16').figure });
    const root = row('row', rest, [measured, drawer('b', rest)], [partition('p', '3/4')]);
    const evaluation = evaluateSound(caseWithFace('20', '10', root));
    expect(cellNamed(evaluation, 'a').opening.x.size.length.exactInches).toBe('97/16');
    expect(cellNamed(evaluation, 'b').opening.x.size.length.exactInches).toBe('211/16');
  });

  it('a size is copied from a cell of another stack', () => {
    const left = stack('left', rest, [drawer('a', front('5')), drawer('b', rest)], [webFrame('w1', '3/4')]);
    const right = stack(
      'right',
      rest,
      [
        drawer('c', { kind: 'same', basis: 'front', as: 'b', origin: { unit: 'piece', start: 1, end: 2 } }),
        drawer('d', rest),
      ],
      [webFrame('w2', '3/4')],
    );
    const root = row('row', rest, [left, right], [partition('p', '3/4')]);
    const evaluation = evaluateSound(caseWithFace('40', '20', root));
    const height = (id: string) => cellNamed(evaluation, id).front?.y.size.length.exactInches;
    expect([height('a'), height('b'), height('c'), height('d')]).toEqual(['5', LOWER_BEHIND, LOWER_BEHIND, '5']);
  });
});
