import { cornerJoints, stripJoints } from './joints.ts';
import { noun, statement } from './phrase.ts';

/** How the parts of a case are built up: frames around panels, edges, bases, and what a hung piece hangs by. */

export const ofStock = {
  '<stock>': 'The stock it is made of, by its name in the shop file.',
  'of <stock>': 'The stock it is made of, by its name in the shop file.',
  'thick <length>': 'Its thickness. A nominal thickness of the stock stands for the actual one.',
} as const;

/** What tells a sheet that has to go in from solid wood that has to move. */
export const freedom = {
  'clearance <length>': 'A sheet: so much shorter in all than from groove to groove, so that it goes in.',
  'float <length> each side': 'Solid wood: so much room at each edge, so that it can move.',
} as const;

export const edging = statement(
  'edging',
  'Strips of solid wood on edges. The part keeps its size, its core is smaller.',
  {
    phrases: {
      ...ofStock,
      'at front': 'Along its front edge.',
      'at back': 'Along its back edge.',
      'at top': 'Along its upper edge.',
      'at bottom': 'Along its lower edge.',
      'at ends': 'Along its left and its right edge.',
      'all round': 'Along all of its edges.',
      mitred: 'Strips meet in mitres.',
      butted: 'Strips along its length run through. This is assumed where nothing is said.',
      'before veneer': 'Put on before the face is veneered, which hides it.',
      'after veneer': 'Put on after the face is veneered, which it protects. This is assumed where nothing is said.',
    },
  },
);
export const edgedBody = noun('edges', 'Its edges.', [edging]);

export const tenons = statement('tenons', 'The stub tenons of a frame.', {
  phrases: {
    '<length> long': 'Depth of what takes them.',
    '<length> short': 'What each tenon is left short of it, so that the shoulders close.',
  },
});
const framedMembers = [
  statement('stiles', 'The upright members of a frame.', { phrases: { '<length> wide': 'Width of each.' } }),
  statement('top-rail', 'The level member at the top of a frame.', { phrases: { '<length> wide': 'Its width.' } }),
  statement('bottom-rail', 'The level member at the foot of a frame.', { phrases: { '<length> wide': 'Its width.' } }),
] as const;
export const [framedStiles, framedTopRail, framedBottomRail] = framedMembers;
export const middleRails = statement('middle-rails', 'The level members between the top and the bottom rail.', {
  phrases: {
    '<length> wide': 'Width of each.',
    'at dividers': 'One behind each divider that meets this side.',
    '<count> evenly spaced': 'So many, with panels of one height between them.',
  },
});
export const framedPanel = statement('panel', 'What fills a frame of stiles and rails.', {
  phrases: {
    ...ofStock,
    ...freedom,
    'in groove <length> deep': 'It lies in grooves of this depth.',
    'glued in': 'It is glued into its grooves: for sheets only.',
  },
});
const framedStatements = [...framedMembers, middleRails, tenons, framedPanel];
export const sidesBody = noun('sides', 'The sides of the case.', [...framedStatements, edging]);
export const backBody = noun('back', 'The back of the case.', framedStatements);
export const glass = statement('glass', 'Panes in place of the panels of a door: to order, put in from behind.', {
  phrases: {
    'thick <length>': 'Thickness of the glass.',
    'in rabbet <length> wide': 'How far the frame laps what is seen of the pane.',
    'rabbet <length> deep': 'Depth of the rabbet, from the back of the door.',
    'clearance <length>': 'What a pane is smaller than from rabbet to rabbet, in all.',
    safety: 'Tempered or laminated.',
  },
});
export const frontsBody = noun('fronts', 'Fronts; a frame is for doors.', [...framedStatements, glass, edging]);
export const framedPhrase = { 'frame-and-panel': 'Stiles and rails around panels that lie in grooves.' } as const;

export const dustPanel = statement(
  'dust-panel',
  'A panel in the frame of a divider: it parts what lies above and below.',
  {
    phrases: { ...ofStock, ...freedom, 'in groove <length> deep': 'It lies in grooves of this depth.' },
  },
);
export const dividerBody = noun('divider', 'A divider.', [tenons, dustPanel, edging]);

export const toeSpace = statement('toe-space', 'A recess for toes in the sides, which stand on the floor.', {
  outlined: true,
  phrases: {
    ...ofStock,
    '<length> high': 'Height of the recess, up to the bottom of the case.',
    '<length> deep': 'From the front of the case to the board that closes the recess.',
  },
});
export const footRails = statement('rails', 'The rails between the feet, under the case.', {
  phrases: {
    ...ofStock,
    '<length> wide': 'Width of each rail.',
    'set in <length>': 'How far they stand in from the outer faces of the feet.',
  },
});
export const feet = statement('feet', 'Four square feet under the corners of the case.', {
  outlined: true,
  phrases: {
    ...ofStock,
    '<length> high': 'Height of the feet.',
    'taper to <length>': 'How thick they are at the floor: tapered on the two faces that look inwards.',
    ...cornerJoints,
  },
  body: () => noun('feet', 'The feet.', [footRails]),
});
export const hung = statement('hung', 'The piece hangs on a wall.', {
  outlined: true,
  phrases: {
    'on wall': 'It touches no floor.',
    '<length> above floor': 'From the floor to its lower edge.',
    'by screws <screw>': 'These screws go through its strips, or its back where there are none, into the wall.',
    'studs <length> apart': 'From the middle of one stud of the wall to the next.',
  },
});
export const nailers = statement('nailers', 'Strips from side to side behind the back, that carry a hung piece.', {
  outlined: true,
  phrases: {
    ...ofStock,
    '<length> wide': 'Width of each strip.',
    '<count> strips': 'How many, the topmost at the top.',
    ...stripJoints,
  },
});
