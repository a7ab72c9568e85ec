import { evaluatePiece, type PieceDesign } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import {
  caseWithFace,
  drawer,
  front,
  open,
  opening,
  partition,
  rest,
  row,
  sameAs,
  stack,
  webFrame,
  written,
} from '../design-builder.ts';
import { cellNamed, onlyFinding, wrongIn } from '../reading-layouts.ts';
import { drawerStack, sideboard } from '../sideboard-design.ts';
import { mended } from './applying-changes.ts';
import { mendTitles, relatedSentences, sentence } from './wording.ts';

// Expected numbers: the sideboard worked out by hand, common practice, no source. Exact inches in lowest terms.

const code = 'fronts-do-not-add-up';
const findingOf = (design: PieceDesign) => onlyFinding(evaluatePiece(design), code);

describe('a stack of written fronts', () => {
  it('that fills its face exactly is no finding', () => {
    expect(wrongIn(evaluatePiece(sideboard(drawerStack(front('10-5/32')))))).toEqual([]);
  });

  it('that is 1/64 too high is said with all its numbers', () => {
    const finding = findingOf(sideboard(drawerStack(front('10-11/64'))));
    expect(sentence(finding)).toBe('fronts and gaps need 1833/64", there is 229/8" of height: 1/64" too much');
  });

  it('that is 1/64 too low is said too', () => {
    const finding = findingOf(sideboard(drawerStack(front('10-9/64'))));
    expect(sentence(finding)).toBe('fronts and gaps need 1831/64", there is 229/8" of height: 1/64" left over');
    expect(finding.facts['tooMuch']).toBe(false);
  });

  it('too high by 27/32 is blamed on the front that can give most, the others are party to it', () => {
    const stackOfDrawers = drawerStack(front('11'));
    const design = sideboard(stackOfDrawers);
    const finding = findingOf(design);
    expect(finding.origin).toEqual(stackOfDrawers.cells[3]?.sizeOrigin);
    expect(relatedSentences(finding)).toEqual([
      'the height there is, 229/8", follows from here',
      '"blankets" takes 11"',
      '"maps" takes 7"',
      '"dice" takes 6"',
      '"cards" takes 5"',
      '5 gaps of 3/32" take 15/32"',
    ]);
    const height = design.size.height?.reason;
    expect(height?.kind === 'given' && finding.related[0]?.origin).toEqual(height?.kind === 'given' && height.origin);
    expect(mendTitles(finding)).toEqual([
      'Make "blankets" 325/32", 27/32" less',
      'Let "blankets" take the rest',
      'Share the 27/32" among 4 of them, 3/16" to 7/32" less each',
      'Make "maps" 197/32", 27/32" less',
      'Make "dice" 165/32", 27/32" less',
      'Make "cards" 133/32", 27/32" less',
    ]);
  });

  it.each(['10', '11', '10-11/64', '10-9/64', '12'])(
    'with the last front %s is mended by every mend offered',
    (size) => {
      const design = sideboard(drawerStack(front(size)));
      const { mends } = findingOf(design);
      expect(mends.length).toBeGreaterThanOrEqual(3);
      for (const mend of mends) expect(wrongIn(evaluatePiece(mended(design, mend)))).toEqual([]);
    },
  );

  it('mended as proposed first has the hand-worked height again', () => {
    const design = sideboard(drawerStack(front('11')));
    const [first] = findingOf(design).mends;
    if (first === undefined) throw new Error('no mend');
    const { front: blankets } = cellNamed(evaluatePiece(mended(design, first)), 'blankets');
    expect(blankets?.y.size.length.exactInches).toBe('325/32');
  });

  it('is still laid out as written, so that one sees where it overflows', () => {
    const evaluation = evaluatePiece(sideboard(drawerStack(front('11'))));
    expect(cellNamed(evaluation, 'blankets').front?.y.size.length.exactInches).toBe('11');
    expect(cellNamed(evaluation, 'left').leaves).toHaveLength(2);
  });
});

describe('other sums', () => {
  it('open spaces are spoken of as openings', () => {
    const root = row('row', rest, [open('a', opening('10')), open('b', opening('10'))], [partition('p', '3/4')]);
    const finding = findingOf(caseWithFace('20', '10', root));
    expect(sentence(finding)).toBe('openings and dividers need 83/4", there is 20" of width: 3/4" too much');
  });

  it('every term of a row of openings has its place, the partition too', () => {
    const root = row('row', rest, [open('a', opening('10')), open('b', opening('10'))], [partition('p', '3/4')]);
    expect(relatedSentences(findingOf(caseWithFace('20', '10', root)))).toEqual([
      'the width there is, 20", follows from here',
      '"a" takes 10"',
      '"b" takes 10"',
      'the partition seen here takes 3/4"',
    ]);
  });

  it('a measured opening is never asked to give', () => {
    const a = drawer('a', opening('10'), { measured: opening('10-1/4').figure });
    const root = row('row', rest, [a, drawer('b', opening('9-1/4'))], [partition('p', '3/4')]);
    const design = caseWithFace('20', '10', root);
    const finding = findingOf(design);
    expect(mendTitles(finding)).toEqual(['Make "b" 9", 1/4" less', 'Let "b" take the rest']);
    for (const mend of finding.mends) expect(wrongIn(evaluatePiece(mended(design, mend)))).toEqual([]);
  });

  it('a size that another copies counts twice', () => {
    const root = row('row', rest, [drawer('a', opening('10')), drawer('b', sameAs('a'))], [partition('p', '3/4')]);
    const design = caseWithFace('20', '10', root);
    const finding = findingOf(design);
    expect(mendTitles(finding)[0]).toBe('Make "a" 77/8", 3/8" less');
    for (const mend of finding.mends) expect(wrongIn(evaluatePiece(mended(design, mend)))).toEqual([]);
  });

  it('a front that must keep a limit is not made smaller than it', () => {
    const root = stack(
      'stack',
      rest,
      [drawer('a', front('12'), { atLeast: written('12') }), drawer('b', front('10'))],
      [webFrame('w', '3/4')],
    );
    const design = caseWithFace('20', '20', root);
    const finding = findingOf(design);
    expect(mendTitles(finding)[0]).toMatch(/^Make "b" /);
    expect(mendTitles(finding).some((title) => title.startsWith('Make "a"'))).toBe(false);
    for (const mend of finding.mends) expect(wrongIn(evaluatePiece(mended(design, mend)))).toEqual([]);
  });

  it('unnamed spaces are named by their place', () => {
    const { name: _a, ...a } = drawer('a', front('12'));
    const { name: _b, ...b } = drawer('b', front('10'));
    const finding = findingOf(caseWithFace('20', '20', stack('stack', rest, [a, b], [webFrame('w', '3/4')])));
    expect(mendTitles(finding)[0]).toMatch(/^Make the first drawer /);
  });

  it('one sum gives one finding, however deep what it holds', () => {
    const inner = stack('inner', opening('12'), [drawer('a', rest), drawer('b', rest)], [webFrame('w', '3/4')]);
    const root = row('row', rest, [inner, drawer('c', opening('12'))], [partition('p', '3/4')]);
    expect(evaluatePiece(caseWithFace('20', '10', root)).findings.map((finding) => finding.code)).toEqual([code]);
  });
});
