import { describe, expect, it } from 'vitest';
import {
  caseWithFace,
  door,
  drawer,
  front,
  panel,
  partition,
  rest,
  row,
  share,
  stack,
  written,
} from '../design-builder.ts';
import { cellNamed, evaluateSound, partWithId, sizeOf } from '../reading-layouts.ts';
import { exactly, heights, inset, lipped, overlay, overlayBy, stretch, widths } from './reading-faces.ts';

// Worked by hand before the code was written; no published source. The case has edges of 3/4 all round and is 18 deep.

const covered = (id: string, thick = '3/4') => partition(id, thick, { mode: 'behind' });

describe('3. full overlay beside full overlay over a shared partition', () => {
  // A case 30 x 24: its face is 28-1/2 x 22-1/2. Gap 1/8, reveal 1/16, fronts 3/4.
  // Side by side the fronts cover 30 less two reveals = 29-7/8, less one gap = 29-3/4: 14-7/8 each.
  // Checked from within: opening (28-1/2 - 3/4) / 2 = 13-7/8; at the side a lap of 3/4 - 1/16 = 11/16; over the
  // partition (3/4 - 1/8) / 2 = 5/16; 13-7/8 + 11/16 + 5/16 = 14-7/8.
  // Height: 24 less two reveals = 23-7/8.
  const root = row('row', rest, [door('left', share(1)), door('right', share(1))], [covered('p')]);
  const evaluation = evaluateSound(caseWithFace('28-1/2', '22-1/2', root, { fit: overlay('full', '1/8') }));

  it('covers the case but for a reveal, and half the partition each', () => {
    expect(widths(evaluation, ['left', 'right'])).toEqual({
      fronts: [exactly('14-7/8'), exactly('14-7/8')],
      openings: [exactly('13-7/8'), exactly('13-7/8')],
    });
    expect(heights(evaluation, ['left', 'right']).fronts).toEqual([exactly('23-7/8'), exactly('23-7/8')]);
    expect(stretch(cellNamed(evaluation, 'left').front?.x)).toEqual(['1/16', exactly('14-15/16')]);
    expect(stretch(cellNamed(evaluation, 'right').front?.x)).toEqual([exactly('15-1/16'), exactly('29-15/16')]);
  });

  it('stands before the body, which is that much less deep', () => {
    // 18 over all, fronts 3/4: the body runs from 3/4 to 18, and is 17-1/4 deep.
    expect(stretch(evaluation.layout.carcase?.body.z)).toEqual(['3/4', '18']);
    expect(stretch(partWithId(evaluation, 'left/front').box.z)).toEqual(['0', '3/4']);
    expect(stretch(partWithId(evaluation, 'p').box.z)[0]).toBe('3/4');
  });

  it('takes what a written front leaves', () => {
    // A front of 10: opening 10 - 11/16 - 5/16 = 9; the other opening 28-1/2 - 3/4 - 9 = 18-3/4, its front 19-3/4.
    const other = row('row', rest, [door('left', front('10')), door('right', rest)], [covered('p')]);
    const written10 = evaluateSound(caseWithFace('28-1/2', '22-1/2', other, { fit: overlay('full', '1/8') }));
    expect(widths(written10, ['left', 'right'])).toEqual({
      fronts: ['10', exactly('19-3/4')],
      openings: ['9', exactly('18-3/4')],
    });
  });
});

describe('4. half overlay', () => {
  // The same case. Half of an edge of 3/4 is 3/8: the fronts cover 28-1/2 + 3/4 = 29-1/4, less a gap: 29-1/8, 14-9/16
  // each. From within: 13-7/8 + 3/8 + 5/16 = 14-9/16. Height: 22-1/2 + 3/4 = 23-1/4.
  it('laps half of each edge', () => {
    const root = row('row', rest, [door('left', share(1)), door('right', share(1))], [covered('p')]);
    const evaluation = evaluateSound(caseWithFace('28-1/2', '22-1/2', root, { fit: overlay('half', '1/8') }));
    expect(widths(evaluation, ['left', 'right']).fronts).toEqual([exactly('14-9/16'), exactly('14-9/16')]);
    expect(heights(evaluation, ['left']).fronts).toEqual([exactly('23-1/4')]);
  });
});

describe('5. overlay by an amount, on a face frame', () => {
  // 36 wide, 30 high, 13 deep; sides 3/4. Frame 3/4 thick: stiles 1-3/4, top rail 2, bottom rail 1-1/2.
  // Face inside the frame: 36 - 3-1/2 = 32-1/2 wide; 30 - 2 - 1-1/2 = 26-1/2 high.
  // Overlay 1/2, gap 1/8.
  const frame = { ...panel('3/4'), stiles: written('1-3/4'), topRail: written('2'), bottomRail: written('1-1/2') };
  const framed = (root: Parameters<typeof caseWithFace>[2]) => {
    const design = caseWithFace('34-1/2', '28-1/2', root, { fit: overlayBy('1/2', '1/8') });
    return evaluateSound({
      ...design,
      size: { ...design.size, depth: written('13') },
      carcase: { ...design.carcase, frame },
    });
  };

  it('a pair: 33-1/2 over both leaves, less a gap in two leaves of 16-11/16; 27-1/2 high', () => {
    const { leaves } = cellNamed(framed(door('pair', rest, { leaves: 2 })), 'pair');
    expect(leaves.map(({ x }) => x.size.length.exactInches)).toEqual([exactly('16-11/16'), exactly('16-11/16')]);
    expect(leaves[0]?.y.size.length.exactInches).toBe(exactly('27-1/2'));
  });

  it('two doors and a member of 1-3/4 shown between: openings 15-3/8, fronts 16-3/8, 3/4 of it to be seen', () => {
    const root = row('row', rest, [door('a', share(1)), door('b', share(1))], [partition('p', '1-3/4')]);
    const evaluation = framed(root);
    expect(widths(evaluation, ['a', 'b'])).toEqual({
      fronts: [exactly('16-3/8'), exactly('16-3/8')],
      openings: [exactly('15-3/8'), exactly('15-3/8')],
    });
    const between = [cellNamed(evaluation, 'a').front?.x.end, cellNamed(evaluation, 'b').front?.x.start];
    expect(between[1]?.length.minus(between[0]?.length ?? inches0).exactInches).toBe('3/4');
  });

  it('has a rail of the frame before a divider, and the divider behind it from side to side', () => {
    // The divider is 1-1/4: a rail 32-1/2 x 1-1/4 of the frame's 3/4; behind it 34-1/2 between the sides. The body is
    // 11-1/2 deep, the back stands in by 1/2 and is 1/4: 10-3/4.
    const root = stack(
      'stack',
      rest,
      [door('pair', rest, { leaves: 2 }), drawer('below', front('6'))],
      [partition('d', '1-1/4', { form: 'panel' })],
    );
    const evaluation = framed(root);
    expect(sizeOf(partWithId(evaluation, 'd/frame'))).toBe('65/2 x 5/4 x 3/4');
    expect(stretch(partWithId(evaluation, 'd/frame').box.z)).toEqual(['3/4', exactly('1-1/2')]);
    expect(sizeOf(partWithId(evaluation, 'd'))).toBe('69/2 x 43/4 x 5/4');
    expect(stretch(partWithId(evaluation, 'd').box.z)[0]).toBe(exactly('1-1/2'));
  });

  it('has stiles as high as the body and rails between them, before a body of 11-1/2', () => {
    // 13 less doors 3/4 and frame 3/4 = 11-1/2.
    const evaluation = framed(door('pair', rest, { leaves: 2 }));
    expect(sizeOf(partWithId(evaluation, 'case/frame-stile-left'))).toBe('30 x 7/4 x 3/4');
    expect(sizeOf(partWithId(evaluation, 'case/frame-stile-right'))).toBe('30 x 7/4 x 3/4');
    expect(sizeOf(partWithId(evaluation, 'case/frame-top-rail'))).toBe('65/2 x 2 x 3/4');
    expect(sizeOf(partWithId(evaluation, 'case/frame-bottom-rail'))).toBe('65/2 x 3/2 x 3/4');
    expect(stretch(evaluation.layout.carcase?.body.z)).toEqual([exactly('1-1/2'), '13']);
    expect(stretch(partWithId(evaluation, 'case/frame-top-rail').box.z)).toEqual(['3/4', exactly('1-1/2')]);
    // Sides stay as deep as the body, the bottom between them: 36 - 1-1/2.
    expect(sizeOf(partWithId(evaluation, 'case/side-left'))).toBe('30 x 23/2 x 3/4');
    expect(sizeOf(partWithId(evaluation, 'case/bottom'))).toBe('69/2 x 23/2 x 3/4');
  });
});

describe('6. overlay over inset in one stack', () => {
  // Case 30 x 24, face 28-1/2 x 22-1/2; a shown divider of 3/4; gap 1/8, reveal 1/16.
  // The drawer above is full overlay and 6 high. Beside an inset door it laps the divider as it laps the case: 11/16
  // above and below. Its opening: 6 - 1-3/8 = 4-5/8. The door's: 22-1/2 - 3/4 - 4-5/8 = 17-1/8; it stays a gap away
  // all round: 16-7/8 high, 28-1/4 wide. The drawer front is 29-7/8 wide.
  const root = stack(
    'stack',
    rest,
    [drawer('above', front('6'), { fit: overlay('full', '1/8') }), door('below', rest)],
    [partition('d', '3/4', { form: 'panel' })],
  );
  const evaluation = evaluateSound(caseWithFace('28-1/2', '22-1/2', root, { fit: inset('1/8') }));

  it('laps as at an edge of the case, and the inset one stays a gap away', () => {
    expect(heights(evaluation, ['above', 'below'])).toEqual({
      fronts: ['6', exactly('16-7/8')],
      openings: [exactly('4-5/8'), exactly('17-1/8')],
    });
    expect(widths(evaluation, ['above', 'below']).fronts).toEqual([exactly('29-7/8'), exactly('28-1/4')]);
    // Bottom 3/4 and opening 17-1/8: the divider lies from 17-7/8 to 18-5/8; a reveal of it is seen, then a gap.
    expect(stretch(cellNamed(evaluation, 'above').front?.y)[0]).toBe(exactly('17-15/16'));
    expect(stretch(cellNamed(evaluation, 'below').front?.y)[1]).toBe(exactly('17-3/4'));
  });

  it('does the same over a divider that is said to be covered, which comes forward to carry the overlay front', () => {
    const covering = { ...root, dividers: [covered('d')] };
    const other = evaluateSound(caseWithFace('28-1/2', '22-1/2', covering, { fit: inset('1/8') }));
    expect(heights(other, ['above', 'below'])).toEqual(heights(evaluation, ['above', 'below']));
    expect(stretch(partWithId(other, 'd').box.z)[0]).toBe(stretch(other.layout.carcase?.body.z)[0]);
  });

  it('puts the inset one behind the other', () => {
    expect(stretch(partWithId(evaluation, 'above/front').box.z)).toEqual(['0', '3/4']);
    expect(stretch(partWithId(evaluation, 'below/front').box.z)).toEqual(['3/4', exactly('1-1/2')]);
  });
});

describe('7. lipped drawers', () => {
  // A face 20 x 12; lip 3/8; the body of a front clears its opening by 1/16 all round; a divider of 1 shown.
  // The upper front is 5 high over all: opening 5 - 3/4 = 4-1/4. The lower opening: 12 - 1 - 4-1/4 = 6-3/4, front
  // 7-1/2. Widths 20-3/4. Between the lips 1 - 3/4 = 1/4 of the divider is seen.
  // Bodies: 20 - 1/8 = 19-7/8 wide; 4-1/4 - 1/8 = 4-1/8 and 6-5/8 high.
  const root = stack(
    'stack',
    rest,
    [drawer('upper', front('5')), drawer('lower', rest)],
    [partition('d', '1', { form: 'panel' })],
  );
  const evaluation = evaluateSound(caseWithFace('20', '12', root, { fit: lipped('3/8', '1/16') }));

  it('is as large as its opening and a lip at each side', () => {
    expect(heights(evaluation, ['upper', 'lower'])).toEqual({
      fronts: ['5', exactly('7-1/2')],
      openings: [exactly('4-1/4'), exactly('6-3/4')],
    });
    expect(widths(evaluation, ['upper', 'lower']).fronts).toEqual([exactly('20-3/4'), exactly('20-3/4')]);
    const [upper, lower] = [cellNamed(evaluation, 'upper'), cellNamed(evaluation, 'lower')];
    expect(upper.front?.y.start.length.minus(lower.front?.y.end.length ?? inches0).exactInches).toBe('1/4');
  });

  it('has a body that clears the opening', () => {
    const bodies = ['upper', 'lower'].map((id) => cellNamed(evaluation, id).bodies?.[0]);
    expect(bodies.map((body) => body?.x.size.length.exactInches)).toEqual([exactly('19-7/8'), exactly('19-7/8')]);
    expect(bodies.map((body) => body?.y.size.length.exactInches)).toEqual([exactly('4-1/8'), exactly('6-5/8')]);
  });

  it('stands half its thickness before the case', () => {
    // Fronts 3/4: the lip is 3/8, the body of the case begins 3/8 behind the foremost point.
    expect(stretch(evaluation.layout.carcase?.body.z)).toEqual(['3/8', '18']);
    expect(stretch(partWithId(evaluation, 'upper/front').box.z)).toEqual(['0', '3/4']);
  });
});

const inches0 = written('0').length;
