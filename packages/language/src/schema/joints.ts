import { statement } from './phrase.ts';

/** How parts are joined: for the whole case, or in the statement of one part. */

const dado = {
  'stopped <length> from front': 'The dado begins so far behind the front edge; what goes in is notched there.',
  'tongue <length> thick': 'A centred tongue goes in, not the whole thickness.',
} as const;
const row = {
  'first <length> in': 'From the front edge, or the lower one, to the middle of the first fastener.',
  '<length> apart': 'From the middle of one fastener to the next.',
} as const;

/** Of a part whose ends meet the faces of others. */
export const endJoints = {
  'in dado': 'Its ends go into dadoes a third as deep as the wood that takes them.',
  'in dado <length> deep': 'Its ends go into dadoes of this depth: it is cut that much longer.',
  ...dado,
  'by dowels': 'A row of dowels at each end.',
  'by dowels <dowel>': 'A row of these dowels at each end.',
  'by screws': 'Screws through what its ends meet.',
  'by screws <screw>': 'These screws, through what its ends meet.',
  'by loose tenons': 'A row of loose tenons at each end.',
  'by loose tenons <tenon>': 'A row of these loose tenons at each end.',
  'by tenons': 'A tenon at each end, in a mortise.',
  'by tenons <length> long': 'A tenon of this length at each end, in a mortise.',
  'tenons <length> thick': 'Thickness of those tenons.',
  ...row,
} as const;

/** Of a strip from side to side that carries a hung piece. */
export const stripJoints = {
  'in dado': 'Its ends go into dadoes a third as deep as the wood that takes them.',
  'in dado <length> deep': 'Its ends go into dadoes of this depth: it is cut that much longer.',
  'by dowels': 'Dowels at each end.',
  'by dowels <dowel>': 'These dowels at each end.',
  'by screws': 'Screws through the sides into its ends.',
  'by screws <screw>': 'These screws, through the sides into its ends.',
  'by loose tenons': 'Loose tenons at each end.',
  'by loose tenons <tenon>': 'These loose tenons at each end.',
  'first <length> in': 'From its lower edge to the middle of the first fastener.',
  '<length> apart': 'From the middle of one fastener to the next.',
} as const;

/** Of a divider, whose front rail can slide in from the front. */
export const dividerJoints = {
  ...endJoints,
  dovetailed: 'Tails on the ends of its front rail slide into ways a third as deep as the wood that takes them.',
  'dovetailed <length> deep': 'Tails on the ends of its front rail slide into ways of this depth.',
} as const;

/** Of a frame or a base, whose members meet at corners. */
export const cornerJoints = {
  'mitred corners': 'The members meet in mitres.',
  'by dowels': 'Dowels at each corner.',
  'by dowels <dowel>': 'These dowels at each corner.',
  'by screws': 'Screws at each corner.',
  'by screws <screw>': 'These screws at each corner.',
  'by loose tenons': 'Loose tenons at each corner.',
  'by loose tenons <tenon>': 'These loose tenons at each corner.',
  'by tenons': 'A tenon at each end, in a mortise.',
  'by tenons <length> long': 'A tenon of this length at each end, in a mortise.',
  'tenons <length> thick': 'Thickness of those tenons.',
  ...row,
} as const;

export const join = statement('join', 'How the panels of the case are joined where one meets the face of another.', {
  outlined: true,
  phrases: {
    dado: 'In dadoes a third as deep as the wood that takes them.',
    'dado <length> deep': 'In dadoes of this depth: what goes in is cut that much longer.',
    ...dado,
    dowels: 'By rows of dowels.',
    'dowels <dowel>': 'By rows of these dowels.',
    screws: 'By screws through what an end meets.',
    'screws <screw>': 'By these screws, through what an end meets.',
    'loose tenons': 'By rows of loose tenons.',
    'loose tenons <tenon>': 'By rows of these loose tenons.',
    ...row,
  },
});

/** What a shop has to fasten with. */
export const dowel = statement('dowel', 'A dowel, by the name it is bought under.', {
  declares: 'dowel',
  phrases: {
    '<length> thick': 'Its diameter.',
    '<length> long': 'Its length.',
    'costs <number> each': 'Price of one.',
  },
});
export const screw = statement('screw', 'A wood screw, with the holes it wants.', {
  declares: 'screw',
  phrases: {
    '<length> long': 'Its length under the head, or of the whole screw where the head is sunk.',
    'pilot <length>': 'Diameter of the hole its thread bites in.',
    'clearance <length>': 'Diameter of the hole its shank passes through.',
    'costs <number> each': 'Price of one.',
  },
});
export const tenon = statement('tenon', 'A loose tenon, bought or made, that lies in a mortise in either part.', {
  declares: 'tenon',
  phrases: {
    '<length> thick': 'Its thickness.',
    '<length> wide': 'Its width.',
    '<length> long': 'Its length.',
    'costs <number> each': 'Price of one.',
  },
});
