import { dividerBody, edgedBody, framedPhrase, ofStock as fromStock, frontsBody } from './construction.ts';
import { catches, hinges, pulls, stop } from './hanging.ts';
import { dividerJoints, endJoints } from './joints.ts';
import { type Noun, noun, type StatementSpec, statement } from './phrase.ts';
import { shelves } from './shelves.ts';
import { vent } from './vents.ts';

/** The face: fronts and openings, in rows from left to right and in stacks from top to bottom. */

/** How much of its row or stack a space takes. In a row the number is a width, in a stack a height. */
const sizePhrases = {
  'front <length> high': 'Height of the front itself.',
  'front <length> wide': 'Width of the front itself.',
  'opening <length> high': 'Height of the opening in the case.',
  'opening <length> wide': 'Width of the opening in the case.',
  'share <number>': 'A share of what is left: share 2 gets twice what share 1 gets.',
  rest: 'Whatever is left.',
  'same as <cell>': 'As large as another.',
  'same front as <cell>': 'Its front is as large as the front of another.',
  'same opening as <cell>': 'Its opening is as large as the opening of another.',
  'at least <length>': 'Never smaller than this.',
  'at most <length>': 'Never larger than this.',
  'measured front <length> high': 'The real front, already cut; it replaces the planned one.',
  'measured front <length> wide': 'The real front, already cut; it replaces the planned one.',
  'measured opening <length> high': 'The real opening, measured; it replaces the planned one.',
  'measured opening <length> wide': 'The real opening, measured; it replaces the planned one.',
} as const;

/** How a front sits in or on the case. On one front it differs from what the face says. */
const fitPhrases = {
  inset: 'It lies inside the case, flush with its front.',
  'overlay full': 'It laps the whole edge of the case, less the reveal, and half of what it shares with a neighbour.',
  'overlay half': 'It laps half of each edge.',
  'overlay <length>': 'It laps the edges by this much.',
  'lipped <length>': 'A lip of this width around it lies on the edges of the case.',
} as const;
const frontPhrases = { ...sizePhrases, ...fitPhrases } as const;

const holds = statement('holds', 'What must fit in here.', {
  phrases: { '<count> <thing>': 'So many of that thing.', '<thing>': 'One of that thing.' },
});
const pair = statement('pair', 'Two doors that meet in the middle.', {
  phrases: { 'made as one': 'Glued up and edged as one panel, which is then cut through where they meet.' },
});
const single = statement('single', 'One door.');
const ownFront = statement('fronts', 'The stock of this front, where it differs from the others.', {
  phrases: { ...fromStock, ...framedPhrase },
  body: () => frontsBody,
});
const inside = statement('inside', 'What stands behind the door, from top to bottom: drawers, shelves, open spaces.', {
  phrases: {
    '<length> behind door': 'From the back of the closed door to the fronts in here: room for their pulls.',
    '<length> clear each side': 'Drawers in here stay away from both ends of the opening, past hinges and open doors.',
    '<length> clear at left': 'They stay away from its left end.',
    '<length> clear at right': 'They stay away from its right end.',
  },
  body: () => groupNoun('stack'),
});
const doorBody = noun('doors', 'A door or a pair of doors.', [
  pair,
  single,
  hinges,
  catches,
  stop,
  pulls,
  shelves,
  inside,
  holds,
  vent,
  ownFront,
]);
const openBody = noun('open', 'An open space.', [shelves, holds, vent]);

const boxSides = statement('sides', 'The sides of the drawer box, and its front and back.', { phrases: fromStock });
const boxBottom = statement('bottom', 'The bottom of the drawer box.', {
  phrases: {
    ...fromStock,
    '<length> up': 'From the lower edge of the box up to the groove that it lies in.',
    'in grooves': 'In a groove all around. This is assumed where nothing is said.',
    'slid in': 'In grooves of the sides and the front, slid in under the back, which stands on it.',
    applied: 'On the lower edges of the sides, the front and the back.',
  },
});
const corners = statement('corners', 'The corner joint of the drawer box.', {
  phrases: {
    dovetail: 'Front and back run the full width of the box.',
    'box-joint': 'Front and back run the full width of the box.',
    rabbet: 'Front and back sit in rabbets of the sides.',
    'lock-rabbet': 'A tongue of front and back sits in a dado of the sides.',
    butt: 'Front and back stand between the sides.',
  },
});
const slides = statement('slides', 'The slides that carry the drawer.', {
  phrases: {
    '<slide>': 'By their name in the shop file.',
    '<length> above lower edge of front': 'Their lower edges, so far above that of each front.',
    '<length> above lower edge of opening': 'Their lower edges, so far above the foot of each opening.',
    '<length> above lower edge of box': 'Their lower edges, so far above that of each box.',
    'screw line <length> above lower edge of front': 'The line of their screws, so far above that of each front.',
    'screw line <length> above lower edge of opening': 'The line of their screws, so far above each opening.',
    'screw line <length> above lower edge of box': 'The line of their screws, so far above that of each box.',
    'screws <length> long': 'The screws they are fastened with, where they are not those of the shop file.',
  },
});
const runners = statement('runners', 'Wooden runners on the sides of the case, in grooves of the sides of the box.', {
  phrases: {
    centre: 'One under the middle of each box, on the wood before and behind it; front and back are notched over it.',
    '<length> wide': 'Its width, where there is one under the middle.',
    '<length> high': 'Their height.',
    'thick <length>': 'Their thickness; the grooves are as deep.',
    'of <stock>': 'The stock they are made of.',
    'by screws <screw>': 'Fastened with these screws, near either end and in the middle.',
    '<length> above lower edge of front': 'Their lower edges, so far above that of each front.',
    '<length> above lower edge of opening': 'Their lower edges, so far above the foot of each opening.',
    '<length> above lower edge of box': 'Their lower edges, so far above that of each box.',
  },
});
const packers = statement('packers', 'Pieces between the slides and what stands back behind them.', {
  phrases: {
    '<length>': 'Their thickness; that of the gap where nothing is said.',
    'of <stock>': 'The stock they are made of.',
  },
});
const compare = statement('compare', 'Other slides, to see what they would make of these drawers.', {
  phrases: { '<slide>': 'By their name in the shop file.' },
});
const boxSize = statement('box', 'The size of the drawer box, where it is not left to the slides and the opening.', {
  phrases: { '<length> wide': 'Width of the box.', '<length> high': 'Height of the box.' },
});
const clear = statement('clear', 'Free height around the drawer box.', {
  phrases: { '<length> below': 'Under the box.', '<length> above': 'Over the box.' },
});
const compartment = statement(
  'compartment',
  'One compartment, in their order; its size where they are not all alike.',
  {
    phrases: {
      '<length> wide': 'Clear width, from left to right.',
      '<length> deep': 'Clear depth, from front to back.',
    },
    body: () => noun('compartment', 'A compartment of a drawer.', [holds]),
  },
);
const compartments = statement('compartments', 'Partitions in the drawer box, in dadoes of its walls.', {
  phrases: {
    ...fromStock,
    '<count> across': 'So many side by side, alike where nothing else is said.',
    '<count> front to back': 'So many one behind the other, alike where nothing else is said.',
    'front to back': 'Those that are listed lie one behind the other, not side by side.',
    '<length> high': 'Height of the partitions; as high as the sides where nothing is said.',
    'dadoes <length> deep': 'How deep their ends lie in the walls of the box.',
  },
  body: () => noun('compartments', 'The compartments of a drawer.', [compartment]),
});
const drawerStatements = [
  boxSides,
  boxBottom,
  corners,
  slides,
  compare,
  packers,
  runners,
  compartments,
  boxSize,
  clear,
];
const drawerBody = noun('drawer', 'A drawer.', [...drawerStatements, pulls, holds, vent, ownFront]);
const drawersBody = noun('drawers', 'What all drawers have in common.', drawerStatements);

export const drawer = statement('drawer', 'A drawer with its front.', {
  declares: 'cell',
  phrases: frontPhrases,
  body: () => drawerBody,
});
export const doors = statement('doors', 'A pair of doors over one opening.', {
  declares: 'cell',
  phrases: frontPhrases,
  body: () => doorBody,
});
export const door = statement('door', 'One door over one opening.', {
  declares: 'cell',
  phrases: {
    ...frontPhrases,
    'hinged left': 'Its hinges are at its left edge, as seen from the front.',
    'hinged right': 'Its hinges are at its right edge, as seen from the front.',
  },
  body: () => doorBody,
});
export const falseFront = statement('false-front', 'A front with nothing behind it that moves.', {
  declares: 'cell',
  phrases: frontPhrases,
  body: () => noun('false-front', 'A false front.', [vent, ownFront]),
});
export const lid = statement('lid', 'A front that lifts, hinged along its upper edge.', {
  declares: 'cell',
  phrases: frontPhrases,
  body: () => doorBody,
});
export const open = statement('open', 'A space without a front.', {
  declares: 'cell',
  phrases: sizePhrases,
  body: () => openBody,
});

const covered = {
  shown: 'Seen between the fronts.',
  'behind fronts': 'Covered: only one gap shows between the fronts before it.',
  'centred on gap': 'Its middle lies on the middle of the gap. This is assumed where nothing is said.',
  'upper face on gap': 'Its upper face lies on the middle of the gap.',
  'lower face on gap': 'Its lower face lies on the middle of the gap.',
  'left face on gap': 'Its left face lies on the middle of the gap.',
  'right face on gap': 'Its right face lies on the middle of the gap.',
} as const;
export const partition = statement('partition', 'An upright panel between two spaces of a row.', {
  outlined: true,
  phrases: { ...fromStock, ...covered, ...endJoints },
  body: () => edgedBody,
});
export const divider = statement('divider', 'A level panel or frame between two spaces of a stack.', {
  outlined: true,
  phrases: {
    ...fromStock,
    ...covered,
    'web-frame': 'A frame of rails and runners.',
    panel: 'A full panel.',
    'rails <length> wide': 'Width of the rails of a frame.',
    ...dividerJoints,
  },
  body: () => dividerBody,
});
export const dividers = statement('dividers', 'What lies between the spaces of this row or stack, all alike.', {
  outlined: true,
  phrases: {
    ...fromStock,
    ...covered,
    'web-frame': 'Frames of rails and runners.',
    panel: 'Full panels.',
    'rails <length> wide': 'Width of the rails of a frame.',
    ...dividerJoints,
  },
  body: () => dividerBody,
});

const groupPhrases = {
  ...sizePhrases,
  'graded by <length>': 'Each front is larger than the one before it by this much.',
  'graded by ratio <number>': 'Each front is so many times as large as the one before it.',
} as const;
export const row = statement('row', 'Spaces side by side, from left to right.', {
  declares: 'cell',
  outlined: true,
  phrases: groupPhrases,
  body: () => groupNoun('row'),
});
export const stack = statement('stack', 'Spaces one above the other, from top to bottom.', {
  declares: 'cell',
  outlined: true,
  phrases: groupPhrases,
  body: () => groupNoun('stack'),
});

export const cellStatements: readonly StatementSpec[] = [drawer, doors, door, lid, falseFront, open, row, stack];

// Made on first use: a row may hold a stack that holds a row.
const groups = new Map<string, Noun>();
function groupNoun(id: 'row' | 'stack'): Noun {
  let made = groups.get(id);
  if (made === undefined) {
    made = noun(id, id === 'row' ? 'From left to right.' : 'From top to bottom.', [
      ...cellStatements,
      partition,
      divider,
      dividers,
    ]);
    groups.set(id, made);
  }
  return made;
}

export const fronts = statement('fronts', 'The stock of all fronts.', {
  outlined: true,
  phrases: { ...fromStock, ...framedPhrase },
  body: () => frontsBody,
});
export const drawers = statement('drawers', 'What all drawers have in common.', {
  outlined: true,
  body: () => drawersBody,
});
export const faceNoun = noun('face', 'The face of the piece.', [
  ...cellStatements,
  fronts,
  drawers,
  pulls,
  partition,
  divider,
  dividers,
]);
export const face = statement('face', 'Fronts and openings of the piece.', {
  outlined: true,
  phrases: {
    ...fitPhrases,
    'gap <length>': 'The gap around inset fronts and between neighbours.',
    'reveal <length>': 'What an overlay front leaves to be seen of an edge it laps fully.',
  },
  body: () => faceNoun,
});

export const drawerSpecs = {
  boxSides,
  boxBottom,
  corners,
  slides,
  compare,
  packers,
  runners,
  compartments,
  boxSize,
  clear,
};
export const compartmentSpec = compartment;
export const frontSpecs = { shelves, inside, holds, hinges, pair, single, ownFront };
