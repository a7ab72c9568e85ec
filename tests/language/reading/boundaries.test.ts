import { describe, expect, test } from 'vitest';
import { codesIn } from '../../findings/trade/one-piece.ts';
import { chest } from '../chest.ts';

/**
 * What is judged by the words alone and has a limit: exactly at the limit nothing is said, one mark of the ruler (or one
 * letter, one term) beyond it just this is.
 */

const sized = (size: string, units = 'inches to 1/32') =>
  `piece "case" {\n  units ${units}\n  size ${size}\n  case { sides thick 19mm }\n}\n`;
const stacked = (cell: string) => chest(`stack {\n${cell}\ndrawer "low" rest\n}`);
const letters = (count: number) =>
  'long name '
    .repeat(21)
    .slice(0, count - 1)
    .concat('z');

interface Pair {
  readonly code: string;
  readonly what: string;
  readonly passes: string;
  readonly fails: string;
}

const pairs: readonly Pair[] = [
  {
    code: 'measured-far-from-planned',
    what: '1/4" larger than planned',
    passes: stacked('drawer "top" front 9 high, measured front 9-1/4 high'),
    fails: stacked('drawer "top" front 9 high, measured front 9-9/32 high'),
  },
  {
    code: 'measured-far-from-planned',
    what: '1/4" smaller than planned',
    passes: stacked('drawer "top" front 9 high, measured front 8-3/4 high'),
    fails: stacked('drawer "top" front 9 high, measured front 8-23/32 high'),
  },
  {
    code: 'off-the-ruler',
    what: 'a mark of 1/16"',
    passes: sized('30-1/16 wide, 36 high, 12 deep', 'inches to 1/16'),
    fails: sized('30-3/32 wide, 36 high, 12 deep', 'inches to 1/16'),
  },
  {
    code: 'off-the-ruler',
    what: 'a mark of half a millimetre',
    passes: sized('762.5 wide, 900 high, 300 deep', 'mm to 0.5'),
    fails: sized('762.6 wide, 900 high, 300 deep', 'mm to 0.5'),
  },
  {
    code: 'ruler-odd',
    what: 'the finest ruler in inches',
    passes: sized('30 wide, 36 high, 12 deep', 'inches to 1/128'),
    fails: sized('30 wide, 36 high, 12 deep', 'inches to 1/256'),
  },
  {
    code: 'ruler-odd',
    what: 'the coarsest ruler in millimetres',
    passes: sized('760 wide, 900 high, 300 deep', 'mm to 10'),
    fails: sized('759 wide, 902 high, 308 deep', 'mm to 11'),
  },
  {
    code: 'size-looks-like-other-unit',
    what: 'one number of 400 in inches',
    passes: sized('399-31/32 wide, 60 high, 60 deep'),
    fails: sized('400 wide, 60 high, 60 deep'),
  },
  {
    code: 'size-looks-like-other-unit',
    what: 'all numbers from 150 on in inches',
    passes: sized('150 wide, 150 high, 149-31/32 deep'),
    fails: sized('150 wide, 150 high, 150 deep'),
  },
  {
    code: 'size-looks-like-other-unit',
    what: 'all numbers below 100 in millimetres',
    passes: sized('99 wide, 99 high, 100 deep', 'mm'),
    fails: sized('99 wide, 99 high, 99.5 deep', 'mm to 0.5'),
  },
  {
    code: 'limit-without-effect',
    what: 'a size that stands at its least',
    passes: stacked('drawer "top" front 9 high, at least 9'),
    fails: stacked('drawer "top" front 9 high, at least 8-31/32'),
  },
  {
    code: 'limit-without-effect',
    what: 'a size that stands at its most',
    passes: stacked('drawer "top" front 9 high, at most 9'),
    fails: stacked('drawer "top" front 9 high, at most 9-1/32'),
  },
  {
    code: 'grading-without-effect',
    what: 'two spaces that a grading could make unlike',
    passes: chest('stack graded by 1 { drawer "a"   drawer "b"   drawer "c" front 6 high }'),
    fails: chest('stack graded by 1 { drawer "a"   drawer "b" front 6 high   drawer "c" front 6 high }'),
  },
  {
    code: 'units-mixed-in-sum',
    what: 'a bare number of 100 beside millimetres',
    passes: sized('99 + 10mm wide, 36 high, 12 deep'),
    fails: sized('100 + 10mm wide, 36 high, 12 deep'),
  },
  {
    code: 'name-hard-to-read',
    what: 'a name of 200 letters',
    passes: sized('30 wide, 36 high, 12 deep').replace('"case"', `"${letters(200)}"`),
    fails: sized('30 wide, 36 high, 12 deep').replace('"case"', `"${letters(201)}"`),
  },
  {
    code: 'text-too-large',
    what: 'braces forty deep, with those of the piece and the face',
    passes: chest(`${'row { '.repeat(38)}door${' }'.repeat(38)}`),
    fails: chest(`${'row { '.repeat(39)}door${' }'.repeat(39)}`),
  },
];

describe.each(pairs)('$code: $what', ({ code, passes, fails }) => {
  test('exactly there nothing is said', async () => {
    expect(await codesIn(passes)).not.toContain(code);
  });

  test('just beyond it is', async () => {
    expect((await codesIn(fails)).filter((each) => each === code)).toEqual([code]);
  });
});

test('the names of the pair are as long as it says', () => {
  expect([letters(200), letters(201)].map((name) => name.length)).toEqual([200, 201]);
});
