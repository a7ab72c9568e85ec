import { type DrawerDesign, evaluatePiece, type PieceDesign, type SlideEntry } from '@fettle/engine';
import { describe, expect, it } from 'vitest';
import { caseWithFace, drawer, drawers, opening, partition, rest, row, sideMount, written } from '../design-builder.ts';
import { onlyFinding, wrongIn } from '../reading-layouts.ts';
import { drawerStack, gameDrawers, sideboard, sideMount12, sideMount14 } from '../sideboard-design.ts';
import { mended } from './applying-changes.ts';
import { mendTitles, relatedSentences, sentence } from './wording.ts';

/** One drawer in an opening 15 wide and 6 high; 16-1/2 deep behind the front. */
function oneDrawer(design: Partial<DrawerDesign>): PieceDesign {
  const all = drawers({ slides: sideMount14, ...design });
  const root = row(
    'row',
    rest,
    [drawer('d', opening('15'), { drawer: all }), drawer('o', rest, { what: 'false-front' })],
    [partition('p', '3/4')],
  );
  return caseWithFace('30', '6', root);
}

function findingIn(design: PieceDesign, code: string, slides: readonly SlideEntry[] = []) {
  return onlyFinding(evaluatePiece(design, { slides }), code);
}

function isMended(design: PieceDesign, code: string, slides: readonly SlideEntry[] = []) {
  const { mends } = findingIn(design, code, slides);
  expect(mends.length).toBeGreaterThan(0);
  for (const mend of mends) expect(wrongIn(evaluatePiece(mended(design, mend, slides), { slides }))).toEqual([]);
}

describe('the width of a box on side-mount slides', () => {
  const code = 'drawer-box-does-not-fit';
  // Source: one maker's installation page: 1/2 in (12.7 mm) at each side, box = opening less 1 in: 14 in an opening of 15.
  it.each(['14', '13-31/32'])('%s in an opening of 15 is no finding', (width) => {
    expect(wrongIn(evaluatePiece(oneDrawer({ boxWidth: written(width) })))).toEqual([]);
  });

  it('14-1/64 is 1/64 too wide', () => {
    const design = oneDrawer({ boxWidth: written('14-1/64') });
    const finding = findingIn(design, code);
    expect(sentence(finding)).toBe(
      'the box of "d" is 897/64" wide, in an opening of 15" "side mount 14" (1/2" at each side) leaves 14": 1/64" too wide',
    );
    expect(mendTitles(finding)).toEqual(['Make the box 14" wide']);
    expect(relatedSentences(finding)).toEqual(['"d" has an opening of 15"', '"side mount 14" is chosen here']);
    isMended(design, code);
  });

  // From memory: many makers' sheets allow the opening + 1/32 - 0, so a box may be up to 1/32 narrower.
  it('13-61/64 is narrower by 1/64 than the slides reach', () => {
    const design = oneDrawer({ boxWidth: written('13-61/64') });
    expect(sentence(findingIn(design, code))).toContain('at least 447/32": 1/64" too narrow');
    isMended(design, code);
  });

  it('without slides the opening is the limit, and what just fills it binds', () => {
    const { slides: _none, ...plain } = drawers({ boxWidth: written('14-31/32') });
    expect(wrongIn(evaluatePiece(oneDrawerOf(plain)))).toEqual([]);
    expect(sentence(findingIn(oneDrawerOf({ ...plain, boxWidth: written('15') }), 'drawer-without-play'))).toBe(
      '"d" has 0" free at its two sides together: with less than 1/32" it binds (common practice)',
    );
    const design = oneDrawerOf({ ...plain, boxWidth: written('15-1/64') });
    expect(sentence(findingIn(design, code))).toBe(
      'the box of "d" is 961/64" wide, its opening takes at most 15": 1/64" too wide',
    );
    isMended(design, code);
  });

  it('one width that is wrong for four drawers alike is one finding', () => {
    const design = sideboard(drawerStack(), gameDrawers({ boxWidth: written('17-1/2') }));
    expect(sentence(findingIn(design, code))).toContain('the box of "cards" is 35/2" wide');
    isMended(design, code);
  });
});

function oneDrawerOf(all: DrawerDesign): PieceDesign {
  const root = row(
    'row',
    rest,
    [drawer('d', opening('15'), { drawer: all }), drawer('o', rest, { what: 'false-front' })],
    [partition('p', '3/4')],
  );
  return caseWithFace('30', '6', root);
}

describe('the height of a box', () => {
  const code = 'drawer-box-does-not-fit';
  // Opening 6 less 1/4 under and 1/4 over the box.
  it('of 5-1/2 in an opening of 6 is no finding', () => {
    expect(wrongIn(evaluatePiece(oneDrawer({ boxHeight: written('5-1/2') })))).toEqual([]);
  });

  it('of 5-33/64 is 1/64 too high', () => {
    const design = oneDrawer({ boxHeight: written('5-33/64') });
    expect(sentence(findingIn(design, code))).toBe(
      'the box of "d" is 353/64" high, its opening of 6" less the free height under and over the box takes 11/2": 1/64" too high',
    );
    isMended(design, code);
  });

  const tall = sideMount('tall', '14', { height: written('2') });
  const low = sideMount('low', '14', { height: written('1-1/2') });
  it('as high as its slides is no finding', () => {
    expect(wrongIn(evaluatePiece(oneDrawer({ slides: tall, boxHeight: written('2') })))).toEqual([]);
  });

  it('1/64 lower than its slides is mended by a higher box or by lower slides', () => {
    const design = oneDrawer({ slides: tall, boxHeight: written('1-63/64') });
    const finding = findingIn(design, code, [tall, low]);
    expect(sentence(finding)).toBe('the box of "d" is 127/64" high, "tall" needs sides of at least 2": 1/64" too low');
    expect(mendTitles(finding)).toEqual(['Make the box 2" high', 'Use "low"']);
    isMended(design, code, [tall, low]);
  });
});

describe('the length of a slide', () => {
  const code = 'slide-too-long';
  // The test case is 18 deep, its back 1/4 thick and 1/2 in, its fronts 3/4 thick: 16-1/2 behind the front.
  it('of exactly the depth there is is no finding', () => {
    expect(wrongIn(evaluatePiece(oneDrawer({ slides: sideMount('s', '16-1/2') })))).toEqual([]);
    expect(wrongIn(evaluatePiece(oneDrawer({ slides: sideMount('s', '16', { extraDepth: written('1/2') }) })))).toEqual(
      [],
    );
  });

  it('1/64 more is too long', () => {
    const finding = findingIn(oneDrawer({ slides: sideMount('s', '16-33/64') }), code);
    expect(sentence(finding)).toBe('"s" needs 1057/64" of depth, behind the front there is 33/2": 1/64" too long');
  });

  it('counts the free depth its maker asks for', () => {
    const slides = sideMount('s', '16', { extraDepth: written('33/64') });
    expect(sentence(findingIn(oneDrawer({ slides }), code))).toContain('1/64" too long');
  });

  it('is mended by the longest slides of the shop that fit, or by a deeper piece', () => {
    const long = sideMount('side mount 18', '18');
    const shop = [long, sideMount12, sideMount14, sideMount('side mount 16', '16')];
    const design = oneDrawer({ slides: long });
    expect(mendTitles(findingIn(design, code, shop))).toEqual([
      'Use "side mount 16", which needs 16"',
      'Use "side mount 14", which needs 14"',
      'Use "side mount 12", which needs 12"',
      'Make the piece 39/2" deep',
    ]);
    isMended(design, code, shop);
  });

  it('is said once for the four drawers of the sideboard, with each of them', () => {
    // 15-1/2 inside less fronts of 1/2: 15 behind the front.
    expect(wrongIn(evaluatePiece(sideboard(drawerStack(), gameDrawers({ slides: sideMount('s', '15') }))))).toEqual([]);
    const design = sideboard(drawerStack(), gameDrawers({ slides: sideMount('s', '15-1/64') }));
    const finding = findingIn(design, code);
    expect(finding.origin).toEqual(design.face?.drawers?.slidesOrigin);
    expect(relatedSentences(finding)).toEqual([
      'the depth there is, 15", follows from here',
      '"cards" runs on it',
      '"dice" runs on it',
      '"maps" runs on it',
      '"blankets" runs on it',
    ]);
    isMended(design, code, [sideMount12]);
  });
});
