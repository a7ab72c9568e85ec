import { ofStock } from './construction.ts';
import { noun, statement } from './phrase.ts';

/** Openings for air, layer by layer. */

const layer = {
  'larger by <length>': 'So much larger than the opening in front, all round: its edge does not show.',
  '<length> wide': 'Width of the opening there, around the same middle.',
  '<length> high': 'Height of the opening there, around the same middle.',
} as const;
export const ventBox = statement('box', 'It goes through front and back of the drawer box too.', { phrases: layer });
export const ventBack = statement('back', 'It goes through the back of the case too.', { phrases: layer });
export const lining = statement(
  'lining',
  'Strips that line the opening in the front. The vent keeps its size inside them.',
  {
    phrases: ofStock,
  },
);
export const ledge = statement(
  'ledge',
  'A ledge around the opening, on the back of the front, that a screen lies in.',
  {
    phrases: { '<length> wide': 'Beyond the opening, all round.', '<length> deep': 'From the back of the front.' },
  },
);
export const vent = statement('vent', 'An opening for air, in the middle of the front from left to right.', {
  phrases: {
    '<length> wide': 'Its clear width.',
    '<length> high': 'Its clear height.',
    '<length> up': 'From the lower edge of the front, or of an open space, to the lower edge of the vent.',
    'corners <length>': 'The radius that the cutter leaves in its corners.',
    'square corners': 'Cut square by hand. This is assumed where nothing is said.',
  },
  body: () => noun('vent', 'An opening for air.', [ventBox, ventBack, lining, ledge]),
});
