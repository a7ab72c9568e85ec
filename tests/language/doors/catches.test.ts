import { expect, it } from 'vitest';
import { butt, caseWith, pieceIn } from './door-texts.ts';

/** What holds doors shut, and what they come to rest on. */

it('a catch is at the top and a stop at the bottom, behind the closing edge of each leaf', async () => {
  const { hardware, told, setOf } = await pieceIn(
    caseWith(
      'inset, gap 3/32 { doors "cups" { hinges "butt 2"   catch magnet   stop at bottom }   fronts thick 3/4 }',
      butt,
    ),
  );
  expect(told).toEqual([]);
  const shut = hardware.filter(({ kind }) => kind === 'catch' || kind === 'stop');
  expect(shut.map(({ label, on }) => [label, on])).toEqual([
    ['magnet catch at the top of the left door "cups"', ['case/top']],
    ['stop at the bottom of the left door "cups"', ['case/bottom']],
    ['magnet catch at the top of the right door "cups"', ['case/top']],
    ['stop at the bottom of the right door "cups"', ['case/bottom']],
  ]);
  expect(setOf('leaf-left/catch-top', 'from the front of the case to the back of the door')).toBe('3/4');
  expect(setOf('leaf-left/catch-top', 'from the closing edge of the door to its middle')).toBe('3/2');
});

it('a stop stands beside the catch that is at the same end', async () => {
  const { setOf } = await pieceIn(
    caseWith(
      'inset, gap 3/32 { door "cups" hinged left { hinges "butt 2"   catch magnet, at top   stop at top   stop at bottom }   fronts thick 3/4 }',
      butt,
    ),
  );
  const across = 'from the closing edge of the door to its middle';
  expect(['catch-top', 'stop-top'].map((id) => setOf(`front/${id}`, across))).toEqual(['3/2', '3']);
});

it('behind an overlay door they begin at the front of the case', async () => {
  const { setOf } = await pieceIn(
    caseWith(
      'overlay full, gap 1/8, reveal 1/8 { door "cups" hinged left { catch ball, at top }   fronts thick 3/4 }',
      '',
    ),
  );
  expect(setOf('front/catch-top', 'from the front of the case to the back of the door')).toBe('0');
});

it('a covered divider holds them too, where nothing stands between two openings there is nothing', async () => {
  const stack = (divider: string) =>
    caseWith(
      `inset, gap 3/32 { stack { doors "linen" rest { catch magnet, at bottom }   ${divider}   drawer "sheets" front 7 high }   fronts thick 3/4 }`,
      '',
    );
  const held = await pieceIn(stack('divider panel thick 3/4, behind fronts'));
  expect(held.hardware.filter(({ kind }) => kind === 'catch').map(({ on }) => on)).toEqual([
    ['face/stack|1'],
    ['face/stack|1'],
  ]);
  expect((await pieceIn(stack(''))).codes).toContain('nothing-to-catch-on');
});
