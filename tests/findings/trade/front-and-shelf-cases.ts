import { type BoundaryCase, pair, piece } from './boundary-case.ts';

/** Doors, hinges, drawers, gaps, shelves, and the piece on its feet. */

// A door 18 wide and 30 high.
const door = (hinge: string, fronts = 'thick 3/4', shop = '') =>
  piece({
    shop: `hinge "butt" ${hinge}\n${shop}`,
    size: '19-3/4 wide, 31 high, 12 deep',
    face: `door "front" { hinges "butt" }   fronts ${fronts}`,
  });

export const frontAndShelfCases: readonly BoundaryCase[] = [
  {
    code: 'door-wider-than-high',
    what: 'as wide as high',
    ...pair(
      // The face is 18-1/2 wide, or 1/64 more; and 18-1/2 high.
      (wide) => piece({ size: `${wide} wide, 19-1/4 high, 12 deep`, face: 'door "front"   fronts thick 3/4' }),
      '20',
      '20-1/64',
    ),
    severity: 'warning',
    at: 'door "front"',
    says: '1/64" wider than high',
    titles: ['Make it a pair of doors'],
  },
  {
    code: 'door-too-wide',
    what: 'at most 24 inches',
    ...pair(
      (wide) => piece({ size: `${wide} wide, 40 high, 12 deep`, face: 'door "front"   fronts thick 3/4' }),
      '25-3/4',
      '25-49/64',
    ),
    severity: 'warning',
    at: 'door "front"',
    says: '1/64" too wide',
    titles: ['Make it a pair of doors'],
  },
  {
    code: 'drawer-too-wide-for-its-depth',
    what: 'twice as wide as deep',
    ...pair(
      // The box is as wide as the opening less two slides of 1/2.
      (wide) =>
        piece({
          shop: 'slide "short" side mount, 8 long\nslide "long" side mount, 10 long',
          size: `${wide} wide, 10 high, 12 deep`,
          face: 'drawer "d"   fronts thick 3/4   drawers { sides thick 1/2   bottom thick 1/4   slides "short" }',
        }),
      '18-1/2',
      '18-33/64',
    ),
    severity: 'warning',
    at: 'drawer "d"',
    says: '1/64" too wide',
    titles: ['Use "long", a deeper box'],
  },
  {
    code: 'drawers-without-slides',
    what: 'slides that would fit',
    ...pair(
      // 12 deep less a front of 3/4.
      (long) =>
        piece({
          shop: `slide "s" side mount, ${long} long`,
          size: '20 wide, 10 high, 12 deep',
          face: 'drawer "d"   fronts thick 3/4   drawers { sides thick 1/2   bottom thick 1/4 }',
        }),
      '11-17/64',
      '11-1/4',
    ),
    severity: 'note',
    at: 'drawers',
    says: '"s", 11-1/4" long, would fit',
    titles: ['Put it on "s"'],
  },
  {
    code: 'front-too-low',
    what: 'at least 2 inches',
    ...pair(
      (high) => piece({ face: `drawer "top" front ${high} high   drawer "low" rest   fronts thick 3/4` }),
      '2',
      '1-63/64',
    ),
    severity: 'warning',
    at: 'front 1-63/64 high',
    says: '1/64" too low',
    titles: ['Make the front 2" high'],
  },
  {
    code: 'gap-unusual',
    what: 'at least 1/32 inch',
    ...pair(
      (gap) =>
        piece({ face: 'door "front"   fronts thick 3/4', size: '20 wide, 24 high, 12 deep' }).replace(
          'gap 1/8',
          `gap ${gap}`,
        ),
      '1/32',
      '1/64',
    ),
    severity: 'warning',
    at: '1/64',
    says: '1/64" under 1/32"',
    titles: ['Make the gap 3/32"'],
  },
  {
    code: 'gap-unusual',
    what: 'at most 3/16 inch',
    ...pair(
      (gap) =>
        piece({ face: 'door "front"   fronts thick 3/4', size: '20 wide, 24 high, 12 deep' }).replace(
          'gap 1/8',
          `gap ${gap}`,
        ),
      '3/16',
      '13/64',
    ),
    severity: 'warning',
    at: '13/64',
    says: '1/64" over 3/16"',
    titles: ['Make the gap 3/32"'],
  },
  {
    code: 'hinge-door-thickness',
    what: 'not too thick',
    ...pair(
      (most) => door(`doors 1/2 to ${most} thick`, 'thick 3/4', 'hinge "other" doors 1/2 to 1 thick'),
      '3/4',
      '47/64',
    ),
    severity: 'error',
    at: '"butt"',
    says: '1/64" too thick',
    titles: ['Use "other"', 'Make it 47/64" thick'],
  },
  {
    code: 'hinge-door-thickness',
    what: 'not too thin',
    ...pair((least) => door(`doors ${least} to 1 thick`), '3/4', '49/64'),
    severity: 'error',
    at: '"butt"',
    says: '1/64" too thin',
    titles: ['Make it 49/64" thick'],
  },
  {
    code: 'hinge-door-too-wide',
    what: 'as wide as it carries',
    ...pair((most) => door(`doors at most ${most} wide`), '18', '17-63/64'),
    severity: 'warning',
    at: '"butt"',
    says: '1/64" too wide',
    titles: ['Make it a pair of doors'],
  },
  {
    code: 'hinge-door-too-high',
    what: 'as high as a pair carries',
    ...pair(
      (most) => door(`doors at most ${most} high`, 'thick 3/4', 'hinge "strong" doors at most 40 high'),
      '30',
      '29-63/64',
    ),
    severity: 'warning',
    at: '"butt"',
    says: '1/64" too high for two hinges',
    titles: ['Use "strong"'],
  },
  {
    code: 'hinge-wrong-fit',
    what: 'made for this kind of door',
    ...pair((fit) => door(`for ${fit} doors`, 'thick 3/4', 'hinge "other" for inset doors'), 'inset', 'overlay'),
    severity: 'error',
    at: '"butt"',
    says: '"butt" is made for overlay doors',
    titles: ['Use "other"'],
  },
  {
    // Source: AWS 2009, 10-4.4.14.10: red oak 3/4 at 50 psf, 46. A fixed shelf is as long as its opening, and the sides take 3/4 each.
    code: 'shelf-too-long',
    what: 'solid wood of 3/4',
    ...pair(
      (wide) => piece({ size: `${wide} wide, 20 high, 12 deep`, face: 'open "books" { shelves 1 fixed thick 3/4 }' }),
      '47-1/2',
      '47-33/64',
    ),
    severity: 'warning',
    at: 'shelves',
    says: 'they may be 46": 1/64" too long; a screening, no rating',
    titles: ['Make them 7/8" thick'],
  },
  {
    // The same: Douglas-fir plywood 3/4 at 50 psf, 37.
    code: 'shelf-too-long',
    what: 'plywood of 3/4',
    ...pair(
      (wide) =>
        piece({
          shop: 'sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide',
          size: `${wide} wide, 20 high, 12 deep`,
          face: 'open "books" { shelves 1 fixed of "ply" }',
        }),
      '38-1/2',
      '38-33/64',
    ),
    severity: 'warning',
    at: 'shelves',
    says: 'screened as plywood',
    titles: [],
  },
  {
    code: 'shelves-fill-opening',
    what: 'an inch between them',
    ...pair(
      // Four spaces of 1 and three shelves of 3/4 make 6-1/4, and the bottom 3/4.
      (high) => piece({ size: `20 wide, ${high} high, 12 deep`, face: 'open "paper" { shelves 3 fixed }' }),
      '7',
      '6-63/64',
    ),
    severity: 'warning',
    at: '3',
    says: 'less than 1" holds nothing',
    titles: ['Make it 2 shelves, 1-37/64" clear'],
  },
  {
    code: 'shelves-fill-opening',
    what: 'nothing between them is an error',
    ...pair(
      (high) => piece({ size: `20 wide, ${high} high, 12 deep`, face: 'open "paper" { shelves 3 fixed }' }),
      '7',
      '3',
    ),
    severity: 'error',
    at: '3',
    says: 'leave nothing between them',
    titles: [],
  },
  {
    // Source: ANSI/KCMA A161.1: at least 2 deep.
    code: 'toe-space-small',
    what: 'two inches deep',
    ...pair((deep) => piece({ box: `sides thick 3/4   plinth 4 high, set back ${deep}, thick 3/4` }), '2', '1-63/64'),
    severity: 'note',
    at: '1-63/64',
    says: '1/64" less',
    titles: ['Set the plinth back 2"'],
  },
  {
    // The same: at least 3 high.
    code: 'toe-space-small',
    what: 'three inches high',
    ...pair((high) => piece({ box: `sides thick 3/4   plinth ${high} high, set back 2, thick 3/4` }), '3', '2-63/64'),
    severity: 'note',
    at: '2-63/64',
    says: '1/64" less',
    titles: [],
  },
  {
    code: 'toe-space-small',
    what: 'a shadow line is none',
    ...pair((deep) => piece({ box: `sides thick 3/4   plinth 4 high, set back ${deep}, thick 3/4` }), '63/64', '1'),
    severity: 'note',
    at: '1',
    says: '1" less',
    titles: ['Set the plinth back 2"'],
  },
  {
    // Source: scope of ASTM F2057-23: from 27 high on.
    code: 'anchor-to-wall',
    what: 'from 27 inches on',
    ...pair(
      (high) => piece({ size: `20 wide, ${high} high, 12 deep`, face: 'drawer "a"   drawer "b"   fronts thick 3/4' }),
      '26-63/64',
      '27',
    ),
    severity: 'note',
    at: '27',
    says: 'anchor it to the wall',
    titles: [],
  },
];
