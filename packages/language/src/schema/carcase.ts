import {
  backBody,
  edgedBody,
  edging,
  feet,
  framedPhrase,
  freedom,
  hung,
  nailers,
  ofStock,
  sidesBody,
  toeSpace,
} from './construction.ts';
import { cornerJoints, endJoints, join } from './joints.ts';
import { noun, statement } from './phrase.ts';

/** The case: the box that holds everything. */

export const overhang = statement('overhang', 'How far the top stands out beyond the case.', {
  phrases: {
    '<length> at front': 'Beyond the front of the case, or of its frame and fronts where they stand before it.',
    '<length> at ends': 'Beyond each end.',
    '<length> at back': 'Beyond the back.',
  },
});
export const slotted = statement('slotted', 'Screw holes as slots, so that a solid top can move.', {
  phrases: {
    behind: 'Fixed along the front, free to move towards the back.',
    'in front': 'Fixed along the back, free to move towards the front.',
  },
});
export const glued = statement('glued', 'The top is glued to what carries it.', {
  phrases: { down: 'All round: for sheets only.' },
});
const topBody = noun('top', 'The top.', [overhang, slotted, glued, edging]);

export const top = statement('top', 'The top of the piece.', {
  outlined: true,
  phrases: {
    ...ofStock,
    'over sides': 'It lies on the sides and may stand out beyond them.',
    'between sides': 'Its ends meet the inner faces of the sides.',
    ...endJoints,
  },
  body: () => topBody,
});
export const lidHinges = statement('hinges', 'The hinges along the back edge of the lid.', {
  phrases: { '<hinge>': 'By their name in the shop file.', '<count> of them': 'How many.' },
});
export const supportHole = statement('hole', 'A screw hole of the support, as its data sheet tells it.', {
  phrases: {
    '<length> forward':
      'From the line on which the lid turns towards the front: in the lid, and in the side of the case where it is also said how far down.',
    '<length> down':
      'From the underside of the closed lid: in the back, and in the side of the case where it is also said how far forward.',
  },
});
export const supportScrews = statement('screws', 'What the support is fastened with.', {
  phrases: {
    '<length> long': 'How far they reach into the wood behind the support.',
    '<length> thick': 'Their diameter.',
  },
});
const supportBody = noun('support', 'What holds the lid.', [supportHole, supportScrews]);
export const support = statement('support', 'What holds the lid when it is open and keeps it from falling.', {
  phrases: {
    torsion: 'It holds the lid wherever that is let go.',
    stay: 'It holds the lid open.',
    '<count> of them': 'How many.',
    'carries <number> inch-pounds': 'The moment that each is rated for.',
    'carries <number> newton-metres': 'The moment that each is rated for.',
    '<length> from sides': 'From the inner face of each side to the middle of the support beside it.',
    'costs <number> each': 'Price of one.',
  },
  body: () => supportBody,
});
export const lid = statement('lid', 'The lid of a chest, hinged along its back edge.', {
  outlined: true,
  phrases: {
    ...ofStock,
    'opens <number> degrees': 'How far it is to open; a right angle where nothing is said.',
    '<length> from wall':
      'From the rearmost point of the piece to the wall behind it; against it where nothing is said.',
  },
  body: () => lidBody,
});
const lidBody = noun('lid', 'The lid of a chest.', [overhang, edging, lidHinges, support]);

export const plinth = statement('plinth', 'The base the case stands on.', {
  outlined: true,
  phrases: {
    ...ofStock,
    '<length> high': 'Height of the plinth.',
    'set back <length>': 'How far its front stands behind the front of the case.',
    ...cornerJoints,
  },
});
export const sides = statement('sides', 'The two sides of the case.', {
  outlined: true,
  phrases: { ...ofStock, ...framedPhrase },
  body: () => sidesBody,
});
export const bottom = statement('bottom', 'The bottom of the case.', {
  outlined: true,
  phrases: {
    ...ofStock,
    'between sides': 'Its ends meet the inner faces of the sides.',
    'under sides': 'The sides stand on it.',
    ...endJoints,
  },
  body: () => edgedBody,
});
export const stretchers = statement('stretchers', 'Two rails, front and back, laid flat under the top.', {
  outlined: true,
  phrases: {
    ...ofStock,
    '<length> wide': 'Width of each rail.',
    'under top': 'They lie directly under the top.',
    ...endJoints,
  },
});
export const back = statement('back', 'The back of the case.', {
  outlined: true,
  phrases: {
    ...ofStock,
    ...framedPhrase,
    ...freedom,
    'in groove <length> deep': 'It sits in a groove of this depth.',
    'in rabbet <length> deep': 'It sits in a rabbet of this depth at the back edge.',
    applied: 'It lies on the back edges of the case.',
    'by screws': 'Screws through an applied back into the edges of the case.',
    'by screws <screw>': 'These screws, through an applied back into the edges of the case.',
    'first <length> in': 'From the lower or the left end of such an edge to the middle of the first screw.',
    '<length> apart': 'From the middle of one screw to the next.',
    '<length> in from back edge': 'From the back edge of the case to the back face of the panel.',
  },
  body: () => backBody,
});
const frameStatements = [
  statement('stiles', 'The upright members at both ends of the frame.', {
    phrases: { '<length> wide': 'Width of each.' },
  }),
  statement('top-rail', 'The level member at the top of the frame.', { phrases: { '<length> wide': 'Its width.' } }),
  statement('bottom-rail', 'The level member at the bottom of the frame.', {
    phrases: { '<length> wide': 'Its width.' },
  }),
] as const;
const frameBody = noun('frame', 'The face frame.', frameStatements);
export const [frameStiles, frameTopRail, frameBottomRail] = frameStatements;
export const frame = statement('frame', 'A face frame on the front edges of the case. Fronts are laid out in it.', {
  outlined: true,
  phrases: {
    ...ofStock,
    flush: 'Its ends are flush with the sides. This is assumed where nothing is said.',
    'proud <length>': 'It stands out so far beyond the case at each end.',
    ...cornerJoints,
  },
  body: () => frameBody,
});

export const carcaseNoun = noun('case', 'The carcase: what holds everything.', [
  top,
  lid,
  plinth,
  sides,
  bottom,
  stretchers,
  back,
  frame,
  toeSpace,
  feet,
  hung,
  nailers,
  join,
]);
export const carcase = statement('case', 'The carcase: top, sides, bottom, back and what they stand on.', {
  outlined: true,
  body: () => carcaseNoun,
});
