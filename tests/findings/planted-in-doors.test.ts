import { describe, expect, it, test } from 'vitest';
import { butt, caseWith, pieceIn } from '../language/doors/door-texts.ts';
import { doorMistakes } from './door-mistakes.ts';
import { checkPlanted } from './planting.ts';

/** Mistakes with doors: each gives its finding at its words, and nothing else. */

test.each(doorMistakes)('$into: $slip gives $code', checkPlanted);

/** What the examples have no door for: a text that is right, and the one slip in it. */
const knob = 'pull "knob" 1 wide, round, stands out 3/8, thread 3/8 deep';
const dish = 'pull "dish" 3 wide, 1-1/2 high, let in 1/2 deep';
const shop = `${butt}\n${knob}\n${dish}`;
const sideBySide = `inset, gap 3/32 {
    row {
      door "pans" hinged right { hinges "butt 2"   pulls "knob" }
      partition thick 1-1/2, shown
      door "pots" hinged left { hinges "butt 2"   pulls "knob" }
    }
    fronts thick 3/4
  }`;
const single = (fronts: string, more = '', gap = '3/32') =>
  `inset, gap ${gap} { door "front" hinged left { hinges "butt 2"${more} }   fronts thick ${fronts} }`;

describe.each([
  {
    slip: 'two doors that meet when both stand open',
    right: caseWith(sideBySide, shop, '40 wide, 30 high, 12 deep'),
    wrong: caseWith(sideBySide, shop.replace('stands out 3/8', 'stands out 1'), '40 wide, 30 high, 12 deep'),
    code: 'open-doors-meet',
  },
  {
    slip: 'a thick door without a bevel',
    right: caseWith(single('2', ', closing edge bevelled 3/32', '1/8'), shop, '11-3/4 wide, 30 high, 12 deep'),
    wrong: caseWith(single('2', '', '1/8'), shop, '11-3/4 wide, 30 high, 12 deep'),
    code: 'closing-edge-needs-bevel',
  },
  {
    slip: 'screws that end in the edging',
    right: caseWith(single('3/4 { edging thick 1/8, all round }'), shop),
    wrong: caseWith(single('3/4 { edging thick 1/2, all round }'), shop),
    code: 'hinge-screws-in-edging',
  },
  {
    slip: 'a recess nearly as deep as the front is thick',
    right: caseWith('inset, gap 3/32 { drawer "pens" { pulls "dish" }   fronts thick 3/4 }', shop),
    wrong: caseWith('inset, gap 3/32 { drawer "pens" { pulls "dish" }   fronts thick 9/16 }', shop),
    code: 'pull-recess-too-deep',
  },
  {
    slip: 'a door hung where two doors meet',
    right: caseWith(sideBySide, shop, '40 wide, 30 high, 12 deep'),
    wrong: caseWith(
      sideBySide
        .replace('      partition thick 1-1/2, shown\n', '')
        .replace('"pots" hinged left', '"pots" hinged right'),
      shop,
      '40 wide, 30 high, 12 deep',
    ),
    code: 'door-hinged-on-nothing',
  },
])('$slip', ({ right, wrong, code }) => {
  it('is nothing where it is right', async () => {
    expect((await pieceIn(right)).told).toEqual([]);
  });

  it(`gives ${code} and nothing else`, async () => {
    expect((await pieceIn(wrong)).codes).toEqual([code]);
  });
});
