import { type BoundaryCase, pair, piece } from './boundary-case.ts';

/** Thicknesses, sizes, grooves, stock and machines. */

const inGroove = (back: string, shop = '') =>
  piece({ shop, box: `sides thick 3/4   bottom thick 3/4, between sides   back ${back}` });
export const stockAndMachineCases: readonly BoundaryCase[] = [
  {
    code: 'stock-thickness-differs',
    what: 'a sheet is as thick as it comes',
    ...pair(
      (thick) =>
        piece({ shop: 'sheet "ply" nominal 3/4, actual 23/32, 96 long, 48 wide', box: `sides "ply" thick ${thick}` }),
      '23/32',
      '47/64',
    ),
    severity: 'error',
    at: '47/64',
    says: '1/64" apart',
    titles: ['Make it 23/32" thick'],
  },
  {
    code: 'stock-thickness-differs',
    what: 'a board can be planed thinner, never thicker',
    ...pair(
      (thick) => piece({ shop: 'board "ash" nominal 4/4, actual 13/16', box: `sides "ash" thick ${thick}` }),
      '3/4',
      '53/64',
    ),
    severity: 'error',
    at: '53/64',
    says: '1/64" too little',
    titles: ['Make it 13/16" thick'],
  },
  {
    // Source: NHLA practice, 4/4 rough is 13/16 when both faces are surfaced.
    code: 'stock-thickness-differs',
    what: 'a rough board gives no more than it is',
    ...pair((thick) => piece({ shop: 'board "ash" nominal 4/4', box: `sides "ash" thick ${thick}` }), '1', '1-1/64'),
    severity: 'error',
    at: '1-1/64',
    says: '1/64" too little',
    titles: ['Make it 13/16" thick'],
  },
  {
    code: 'thickness-is-nominal',
    what: 'the nominal thickness is not the actual one',
    ...pair(
      (actual) =>
        piece({ shop: `sheet "ply" nominal 3/4, actual ${actual}, 96 long, 48 wide`, box: 'sides "ply" thick 3/4' }),
      '3/4',
      '47/64',
    ),
    severity: 'note',
    at: '3/4',
    says: 'fits use 47/64"',
    titles: ['Write 47/64"'],
  },
  {
    code: 'thickness-absurd',
    what: 'at most 4 inches',
    ...pair((thick) => piece({ box: `sides thick ${thick}` }), '4', '4-1/64'),
    severity: 'warning',
    at: '4-1/64',
    says: 'at most about 4" thick',
    titles: ['Write 4.015625mm'],
  },
  {
    code: 'thickness-absurd',
    what: 'at least 1/64 inch',
    ...pair((thick) => piece({ box: `sides thick ${thick}` }), '1/64', '1/65'),
    severity: 'warning',
    at: '1/65',
    says: 'at least about 1/64" thick',
    titles: [],
  },
  {
    code: 'thickness-absurd',
    what: 'at least 0.4 mm',
    ...pair(
      (thick) => piece({ units: 'units mm', size: '600 wide, 500 high, 300 deep', box: `sides thick ${thick}` }),
      '0.4',
      '0.39',
    ),
    severity: 'warning',
    at: '0.39',
    says: '0.4',
    titles: ['Write 39/100"'],
  },
  {
    code: 'size-absurd',
    what: 'at most 20 feet',
    ...pair((wide) => piece({ size: `${wide} wide, 34 high, 20 deep` }), `20'`, '240-1/64"'),
    severity: 'warning',
    at: '240-1/64"',
    says: 'at most about 240" wide',
    titles: [],
  },
  {
    code: 'size-absurd',
    what: 'at least one inch',
    ...pair((deep) => piece({ size: `24 wide, 4 high, ${deep} deep` }), '1', '63/64'),
    severity: 'warning',
    at: '63/64',
    says: 'at least about 1" deep',
    titles: [],
  },
  {
    // From memory, textbooks: never over half of the thickness.
    code: 'groove-too-deep',
    what: 'half of the thickness',
    ...pair((deep) => inGroove(`thick 1/4 in groove ${deep} deep, 1/2 in from back edge`), '3/8', '25/64'),
    severity: 'warning',
    at: '25/64',
    says: '1/64" too deep',
    titles: ['Make it 1/4" deep'],
  },
  {
    code: 'groove-too-deep',
    what: 'all of the thickness is an error',
    ...pair((deep) => inGroove(`thick 1/4 in groove ${deep} deep, 1/2 in from back edge`), '3/8', '3/4'),
    severity: 'error',
    at: '3/4',
    says: 'goes right through the sides, 3/4" thick',
    titles: ['Make it 1/4" deep'],
  },
  {
    code: 'groove-breaks-out',
    what: 'an eighth behind the groove',
    ...pair((left) => inGroove(`thick 1/4 in groove 1/4 deep, ${left} in from back edge`), '1/8', '7/64'),
    severity: 'warning',
    at: '7/64',
    says: '7/64" of wood is left',
    titles: ['Set the back 1/2" in from the back edge', 'Set the back 1/8" in from the back edge'],
  },
  {
    code: 'groove-breaks-out',
    what: 'a groove needs wood behind it',
    ...pair((inset) => inGroove(`thick 1/4 in groove 1/4 deep${inset}`), ', 1/2 in from back edge', ''),
    severity: 'warning',
    at: 'back',
    says: '0" of wood is left',
    titles: ['Set the back 1/2" in from the back edge', 'Set the back 1/8" in from the back edge'],
  },
  {
    code: 'no-cutter-for-groove',
    what: 'up to 1/64 wider than the panel',
    ...pair(
      (cuts) => inGroove('thick 1/4 in groove 1/4 deep, 1/2 in from back edge', `cutter "bit" cuts ${cuts} wide`),
      '17/64',
      '35/128',
    ),
    severity: 'warning',
    at: 'back',
    says: 'no cutter is that narrow',
    titles: [],
  },
  {
    code: 'no-cutter-for-groove',
    what: 'a narrower one takes two passes',
    ...pair(
      (cuts) => inGroove('thick 1/4 in groove 1/4 deep, 1/2 in from back edge', `cutter "bit" cuts ${cuts} wide`),
      '1/4',
      '15/64',
    ),
    severity: 'note',
    at: 'back',
    says: 'a second pass',
    titles: [],
  },
  {
    code: 'no-cutter-for-groove',
    what: 'as deep as the groove',
    ...pair(
      (deep) =>
        inGroove(
          'thick 1/4 in groove 1/4 deep, 1/2 in from back edge',
          `cutter "stack" cuts 1/8 to 3/4 wide, at most ${deep} deep`,
        ),
      '1/4',
      '15/64',
    ),
    severity: 'warning',
    at: 'back',
    says: '"stack" goes 15/64" deep',
    titles: [],
  },
  {
    // Source: PS 1-19: 1/4 may be up to 1/4 + 1/32.
    code: 'sheet-may-not-enter-groove',
    what: 'the thickest sheet of its category',
    ...pair(
      (cuts) =>
        inGroove(
          '"ply" in groove 1/4 deep, 1/2 in from back edge',
          `sheet "ply" nominal 1/4, actual 1/4, 60 long, 60 wide\ncutter "stack" cuts 1/8 to ${cuts} wide`,
        ),
      '9/32',
      '35/128',
    ),
    severity: 'note',
    at: 'back "ply"',
    says: 'up to 9/32" thick',
    titles: [],
  },
  {
    code: 'part-longer-than-stock',
    what: 'as long as the sheet',
    ...pair(
      (long) =>
        piece({
          shop: `sheet "short" nominal 3/4, actual 3/4, ${long} long, 48 wide\nsheet "long" nominal 3/4, actual 3/4, 96 long, 48 wide`,
          box: 'sides "long"   bottom "short", between sides',
        }),
      '22-1/2',
      '22-31/64',
    ),
    severity: 'error',
    at: 'bottom "short"',
    says: '1/64" too long',
    titles: ['Use "long"'],
  },
  {
    code: 'part-longer-than-stock',
    what: 'a board has a length too',
    ...pair(
      (long) => piece({ shop: `board "ash" any thickness, ${long} long`, box: 'sides "ash" thick 3/4' }),
      '20',
      '19-63/64',
    ),
    severity: 'error',
    at: 'sides "ash"',
    says: '1/64" too long',
    titles: [],
  },
  {
    code: 'part-longer-than-stock',
    what: 'without grain it may be turned',
    ...pair(
      (grain) =>
        piece({
          shop: `sheet "mdf" nominal 3/4, actual 3/4, 18 long, 30 wide${grain}`,
          box: 'sides "mdf"',
        }),
      ', no grain',
      '',
    ),
    severity: 'error',
    at: 'sides "mdf"',
    says: '2" too long',
    titles: [],
  },
  {
    code: 'part-wider-than-stock',
    what: 'as wide as the sheet',
    ...pair(
      (wide) =>
        piece({
          shop: `sheet "narrow" nominal 3/4, actual 3/4, 96 long, ${wide} wide\nsheet "wide" nominal 3/4, actual 3/4, 96 long, 48 wide`,
          box: 'sides "narrow"   bottom "wide", between sides',
        }),
      '12',
      '11-63/64',
    ),
    severity: 'error',
    at: 'sides "narrow"',
    says: '1/64" too wide',
    titles: ['Use "wide"'],
  },
  {
    code: 'rip-too-wide',
    what: 'as wide as the fence goes',
    ...pair(
      (rips) =>
        piece({
          shop: `sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide\nmachine "saw" rips at most ${rips} wide`,
          box: 'sides "ply"',
        }),
      '12',
      '11-63/64',
    ),
    severity: 'warning',
    at: 'sides "ply"',
    says: '1/64" too wide',
    titles: [],
  },
  {
    code: 'rip-too-wide',
    what: 'from the far side of the blade',
    ...pair(
      (wide) =>
        piece({
          shop: `sheet "ply" nominal 3/4, actual 3/4, 96 long, ${wide} wide\nmachine "saw" rips at most 10 wide`,
          box: 'sides "ply"',
        }),
      '22',
      '22-1/64',
    ),
    severity: 'warning',
    at: 'sides "ply"',
    says: 'leaves 10-1/64" of its sheet',
    titles: [],
  },
  {
    code: 'rip-too-long',
    what: 'as long as the guide',
    ...pair(
      (rips) =>
        piece({
          shop: `sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide\nmachine "track saw" rips at most ${rips} long`,
          box: 'sides "ply"',
        }),
      '20',
      '19-63/64',
    ),
    severity: 'warning',
    at: 'sides "ply"',
    says: '1/64" too long',
    titles: [],
  },
  {
    code: 'part-too-narrow-for-machine',
    what: 'as wide as it must be',
    ...pair((least) => piece({ shop: `machine "saw" least width ${least}` }), '12', '12-1/64'),
    severity: 'warning',
    at: 'sides',
    says: '1/64" too narrow',
    titles: [],
  },
  {
    code: 'part-narrower-than-kerf',
    what: 'wider than the kerf',
    ...pair(
      (kerf) =>
        piece({
          shop: `sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide\nmachine "saw" kerf ${kerf}`,
          box: 'sides "ply"   top "ply", between sides   stretchers 3/8 wide of "ply", under top',
        }),
      '23/64',
      '3/8',
    ),
    severity: 'warning',
    at: 'stretchers',
    says: 'the blade takes as much as it leaves',
    titles: [],
  },
  {
    // Source: hardwood grading minimums (NHLA practice), as in the table of lumber.
    code: 'thicker-than-lumber',
    what: 'what is left of 16/4',
    ...pair(
      (thick) => piece({ shop: 'board "ash" any thickness, 14 wide, 96 long', box: `sides "ash" thick ${thick}` }),
      '3-3/4',
      '3-49/64',
    ),
    severity: 'warning',
    at: 'sides "ash"',
    says: '1/64" too thick',
    titles: [],
  },
  {
    code: 'crosscut-too-long',
    what: 'as long as it takes',
    ...pair((most) => piece({ shop: `machine "sled" crosscuts at most ${most}` }), '22-1/2', '22-31/64'),
    severity: 'warning',
    at: 'bottom',
    says: '1/64" too long',
    titles: [],
  },
  {
    code: 'crosscut-too-wide',
    what: 'as wide as it takes',
    ...pair((most) => piece({ shop: `machine "sled" crosscuts at most ${most} wide` }), '12', '11-63/64'),
    severity: 'warning',
    at: 'sides',
    says: '1/64" too wide',
    titles: [],
  },
  {
    code: 'part-too-short-for-machine',
    what: 'as long as it must be',
    ...pair((least) => piece({ shop: `machine "planer" least length ${least}` }), '20', '20-1/64'),
    severity: 'warning',
    at: 'sides',
    says: 'no piece under 20-1/64": cut it last, from a blank at least that long',
    titles: [],
  },
];
