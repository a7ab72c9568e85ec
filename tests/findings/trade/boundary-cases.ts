/** For each check a text that just passes and one that just fails, in the words of the language. */
export interface BoundaryCase {
  readonly code: string;
  readonly what: string;
  readonly passes: string;
  readonly fails: string;
  readonly severity: 'error' | 'warning' | 'note';
  /** The words under the squiggle. */
  readonly at: string;
  /** Part of the sentence: the number, the limit or the difference. */
  readonly says: string;
  readonly titles: readonly string[];
}

interface Words {
  readonly shop?: string;
  readonly units?: string;
  readonly size?: string;
  readonly box?: string;
  readonly face?: string;
}

function piece({
  shop = '',
  units = 'units inches to 1/64',
  size = '24 wide, 20 high, 12 deep',
  box = '',
  face,
}: Words): string {
  const body = box === '' ? 'sides thick 3/4   bottom thick 3/4, between sides' : box;
  const front = face === undefined ? '' : `\n  face inset, gap 1/8 { ${face} }`;
  return `${shop}\npiece "box" {\n  ${units}\n  size ${size}\n  case { ${body} }${front}\n}\n`;
}

/** The same text with other words in one place. */
function pair(make: (words: string) => string, passing: string, failing: string) {
  return { passes: make(passing), fails: make(failing) };
}

const inGroove = (back: string, shop = '') =>
  piece({ shop, box: `sides thick 3/4   bottom thick 3/4, between sides   back ${back}` });
// A door 18 wide and 30 high.
const door = (hinge: string, fronts = 'thick 3/4', shop = '') =>
  piece({
    shop: `hinge "butt" ${hinge}\n${shop}`,
    size: '19-3/4 wide, 31 high, 12 deep',
    face: `door "front" { hinges "butt" }   fronts ${fronts}`,
  });

export const boundaryCases: readonly BoundaryCase[] = [
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
    ...pair((deep) => piece({ size: `24 wide, 34 high, ${deep} deep` }), '1', '63/64'),
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
    titles: ['Use "other"'],
  },
  {
    code: 'hinge-door-thickness',
    what: 'not too thin',
    ...pair((least) => door(`doors ${least} to 1 thick`), '3/4', '49/64'),
    severity: 'error',
    at: '"butt"',
    says: '1/64" too thin',
    titles: [],
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
    // Source: AWS 2009, 10-4.4.14.10: red oak 3/4 at 50 psf, 46. A shelf is 1/8 shorter than its opening.
    code: 'shelf-too-long',
    what: 'solid wood of 3/4',
    ...pair(
      (wide) => piece({ size: `${wide} wide, 20 high, 12 deep`, face: 'open "books" { shelves 1 fixed thick 3/4 }' }),
      '47-5/8',
      '47-41/64',
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
      '38-5/8',
      '38-41/64',
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
