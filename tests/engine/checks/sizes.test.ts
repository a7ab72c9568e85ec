import { evaluatePiece, given, Length, type PieceDesign } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import {
  caseWithFace,
  door,
  drawer,
  drawers,
  front,
  inches,
  material,
  open,
  opening,
  partition,
  place,
  rest,
  row,
  sameAs,
  share,
  stack,
  webFrame,
  written,
} from '../design-builder.ts';
import { errorsIn, onlyFinding, wrongIn } from '../reading-layouts.ts';
import { mended } from './applying-changes.ts';
import { mendTitles, relatedSentences, sentence } from './wording.ts';

const code = 'sizes-not-positive';
const codes = (design: PieceDesign) => wrongIn(evaluatePiece(design)).map((finding) => finding.code);
const findingIn = (design: PieceDesign, which = code) => onlyFinding(evaluatePiece(design), which);

describe('a front that takes the rest', () => {
  // 20 high less three gaps of 3/32 leaves 19-23/32 for both fronts.
  const twoDrawers = (upper: string) =>
    caseWithFace(
      '20',
      '20',
      stack('stack', rest, [drawer('a', front(upper)), drawer('b', rest)], [webFrame('w', '3/4')]),
    );

  // 1/64 less half the divider 3/8, plus half a gap above and a gap below: -7/32.
  it('and gets 1/64 is left only its divider: the front has a size, its opening has none', () => {
    const finding = findingIn(twoDrawers('19-45/64'));
    expect(sentence(finding)).toBe('the opening of "b" comes out -7/32" high');
  });

  it('and gets nothing is said with what stands beside it', () => {
    const design = twoDrawers('20');
    const finding = findingIn(design);
    expect(sentence(finding)).toBe(
      'the front of "b" comes out -9/32" high: what stands beside it takes 649/32" of the 20" there is',
    );
    expect(relatedSentences(finding)).toEqual(['the height there is, 20", follows from here', '"a" takes 20"']);
    expect(mendTitles(finding)).toEqual(['Let both share the height equally']);
    for (const mend of finding.mends) expect(codes(mended(design, mend))).toEqual([]);
  });

  it('and gets something is no finding', () => {
    expect(codes(twoDrawers('15'))).toEqual([]);
  });
});

describe('openings, fronts and leaves across a row or stack', () => {
  // Two gaps of 3/32 take 3/16 of an opening, a third one 9/32 of a pair.
  it.each([
    ['front', '3/16', '13/64', 1],
    ['pair', '9/32', '19/64', 2],
  ] as const)('a %s in an opening of %s has nothing left, in one of %s it has', (_, none, some, leaves) => {
    const pieceOf = (width: string) =>
      caseWithFace(
        '20',
        '10',
        row('row', rest, [door('d', opening(width), { leaves }), open('o', rest)], [partition('p', '3/4')]),
      );
    expect(codes(pieceOf(none))).toEqual([code]);
    // So little is still told to be a slit.
    expect(codes(pieceOf(some)).filter((each) => each !== 'size-absurd')).toEqual([]);
  });

  it('a stack too narrow for fronts is one finding, not one for each drawer', () => {
    const inner = stack(
      'inner',
      opening('3/16'),
      [drawer('a', rest), drawer('b', rest), drawer('c', rest)],
      [webFrame('w1', '1/2'), webFrame('w2', '1/2')],
    );
    const design = caseWithFace('20', '10', row('row', rest, [inner, open('o', rest)], [partition('p', '3/4')]));
    expect(codes(design)).toEqual([code]);
  });

  it('shelves that fill the height leave no space between them', () => {
    const shelves = {
      origin: place(),
      count: 3,
      adjustable: true,
      material: material('3/4'),
      shyEachEnd: written('0'),
    };
    const filled = (height: string) => evaluatePiece(caseWithFace('20', height, open('o', rest, { shelves })));
    expect(errorsIn(filled('2-1/4')).map((finding) => finding.code)).toEqual(['shelves-fill-opening']);
    expect(errorsIn(filled('2-17/64'))).toEqual([]);
  });
});

describe('a case eaten up by its own parts', () => {
  const sized = (change: Partial<PieceDesign['size']>): PieceDesign => {
    const design = caseWithFace('20', '10', drawer('d', rest));
    return { ...design, size: { ...design.size, ...change } };
  };

  it('of 1-1/2 wide has no face between two sides of 3/4', () => {
    const finding = findingIn(sized({ width: written('1-1/2') }));
    expect(sentence(finding)).toBe('the face comes out 0" wide: what stands beside it takes 3/2" of the 3/2" there is');
  });

  it('of 1-33/64 wide has a face, and its front has no room', () => {
    expect(sentence(findingIn(sized({ width: written('1-33/64') })))).toBe('the front of "d" comes out -11/64" wide');
  });

  it('without depth behind its back has no inside', () => {
    const { back, ...carcase } = caseWithFace('20', '10', drawer('d', rest)).carcase;
    if (back === undefined) throw new Error('the test case has a back');
    const shallow = {
      ...sized({ depth: written('2') }),
      carcase: { ...carcase, back: { ...back, inset: written('1-3/4') } },
    };
    expect(sentence(findingIn(shallow))).toMatch(/^the inside comes out 0" deep/);
  });

  it.each(['0', '-3'])('a piece %s high is none', (height) => {
    expect(sentence(findingIn(sized({ height: written(height) })))).toBe(`the piece comes out ${height}" high`);
  });
});

describe('parts with nothing left', () => {
  it('a box for which its opening leaves no height is one finding', () => {
    const boxed = (height: string) => caseWithFace('20', height, drawer('d', rest), { drawers: drawers() });
    expect(sentence(findingIn(boxed('1/2')))).toBe('the left box side of "d" comes out 0" wide');
    // A box of 1/2 has room for a bottom of 1/4 that lies 1/4 up.
    expect(errorsIn(evaluatePiece(boxed('1')))).toEqual([]);
  });

  it('is no part, and the other parts are still there', () => {
    const { parts } = evaluatePiece(caseWithFace('20', '1/2', drawer('d', rest), { drawers: drawers() }));
    expect(parts.some((part) => part.role === 'drawer-side')).toBe(false);
    expect(parts.filter((part) => part.role === 'side')).toHaveLength(2);
  });
});

describe('limits, shares and copies', () => {
  const two = (
    a: Parameters<typeof drawer>[1],
    more: Parameters<typeof drawer>[2] = {},
    b: Parameters<typeof drawer>[1] = rest,
  ) => caseWithFace('40', '10', row('row', rest, [drawer('a', a, more), drawer('b', b)], [partition('p', '3/4')]));

  it('a size under its least is mended on either side', () => {
    const design = two(front('5'), { atLeast: written('5-1/64') });
    const finding = findingIn(design, 'limits-disagree');
    expect(sentence(finding)).toBe('"a" is 5" wide, it has to be at least 321/64": 1/64" too little');
    expect(finding.mends).toHaveLength(2);
    for (const mend of finding.mends) expect(codes(mended(design, mend))).toEqual([]);
    expect(codes(two(front('5'), { atLeast: written('5') }))).toEqual([]);
  });

  it('a size over its most is said, one at its most is not', () => {
    expect(codes(two(front('5-1/64'), { atMost: written('5') }))).toEqual(['limits-disagree']);
    expect(codes(two(front('5'), { atMost: written('5') }))).toEqual([]);
  });

  it('a least over a most is said', () => {
    const design = two(rest, { atLeast: written('6'), atMost: written('5') });
    const finding = findingIn(design, 'limits-disagree');
    expect(sentence(finding)).toBe('"a" has to be at least 6" and at most 5" wide: 1" apart');
    for (const mend of finding.mends) expect(codes(mended(design, mend))).toEqual([]);
  });

  it('a share of nothing is given one share', () => {
    const design = two(share(0));
    const finding = findingIn(design, 'share-not-positive');
    expect(sentence(finding)).toBe('a share of 0 leaves nothing: a share has to be more than 0');
    for (const mend of finding.mends) expect(codes(mended(design, mend))).toEqual([]);
  });

  it('a circle of copies is one finding with all who are in it', () => {
    const design = two(sameAs('b'), {}, sameAs('a'));
    const finding = findingIn(design, 'same-leads-nowhere');
    expect(sentence(finding)).toBe('same as "b" comes back to where it started: none of these sizes is ever set');
    expect(relatedSentences(finding)).toEqual(['"b" is part of the circle']);
    for (const mend of finding.mends) expect(codes(mended(design, mend))).toEqual([]);
  });

  it('a copy of a name that is not there is said', () => {
    const design = two(sameAs('nobody'));
    expect(sentence(findingIn(design, 'same-leads-nowhere'))).toBe(
      'there is no space called "nobody" whose size could be copied',
    );
  });
});

describe('a piece that makes no sense', () => {
  it('is answered all the same', () => {
    const huge = given(Length.inches(10n ** 60n, 7n), place());
    const design = caseWithFace('20', '10', row('row', rest, [], []));
    expect(wrongIn(evaluatePiece(design))).toEqual([]);
    expect(evaluatePiece({ ...design, size: { ...design.size, width: huge } }).parts.length).toBeGreaterThan(0);
    const negative = caseWithFace('20', '10', drawer('d', rest), {
      fit: { kind: 'inset', gap: given(inches('-3'), place()) },
    });
    expect(evaluatePiece(negative).layout.face).toBeDefined();
    const fewDividers = row('row', rest, [drawer('a', rest), drawer('b', rest), drawer('c', rest)], []);
    expect(wrongIn(evaluatePiece(caseWithFace('20', '10', fewDividers)))).toEqual([]);
  });
});
