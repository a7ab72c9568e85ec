import { edging, ofStock } from './construction.ts';
import { noun, statement } from './phrase.ts';

/** Shelves: what carries them, and where they lie. */

const height = {
  'underside <length> up': 'From the lower edge of the opening to its underside.',
  'upper face <length> up': 'From the lower edge of the opening to its upper face.',
} as const;
export const shelf = statement('shelf', 'Where one shelf lies; without it shelves are spread evenly.', {
  phrases: height,
});

export const pins = statement(
  'pins',
  'Rows of holes at both ends of adjustable shelves, one in front and one behind. Shelves lie on the nearest holes.',
  {
    phrases: {
      'system rows':
        'By the 32 mm system: holes of 5 mm, 32 mm apart, 37 mm from the front, the back row whole pitches behind.',
      'holes <length> wide': 'Their diameter, which is that of the pins.',
      '<length> deep': 'How deep they are bored.',
      'costs <number> each': 'Price of one pin.',
      '<length> apart': 'From the middle of one hole to the next above it.',
      '<length> from front': 'From the front edge, or from the back of an inset front, to the middle of the front row.',
      '<length> from back': 'From the front of the back to the middle of the back row.',
      'lowest <length> up': 'From the lower edge of the opening to the middle of the lowest hole.',
      'highest <length> up': 'From the lower edge of the opening to the middle of the highest hole that may be.',
    },
  },
);

export const cleats = statement('cleats', 'Strips under both ends of shelves on cleats.', {
  phrases: {
    ...ofStock,
    '<length> high': 'Their height.',
    'set back <length>': 'How far they begin behind the front of the shelf.',
    'by screws <screw>': 'Fastened with these screws, near either end and in the middle.',
  },
});

export const shelves = statement('shelves', 'Shelves inside this opening.', {
  phrases: {
    '<count> adjustable': 'So many, on pins.',
    '<count> fixed': 'So many, fixed.',
    '<count> on cleats': 'So many, on strips at their ends.',
    'of <stock>': 'The stock they are made of.',
    'thick <length>': 'Their thickness.',
    'shy <length>': 'What they are left short at each end.',
  },
  body: () => noun('shelves', 'Shelves.', [shelf, pins, cleats, edging]),
});
