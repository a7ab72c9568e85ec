import { statement } from './phrase.ts';

/** How doors are hung and what fronts are opened by: the statements of a face, and the entries of a shop file. */

export const hinges = statement('hinges', 'The hinges of this door.', {
  phrases: {
    '<hinge>': 'By their name in the shop file.',
    '<hinge> at left': 'Those on the left edge of a door or a pair, where they are others.',
    '<hinge> at right': 'Those on the right edge of a door or a pair, where they are others.',
    '<count> to each door': 'How many; where nothing is said, as many as its height and weight ask for.',
    '<length> from ends': 'From each end of the door to the end of a butt hinge, or to the middle of a cup.',
    'case gain <length> deep': 'Depth of the gains in the case: those in the door make up the rest.',
    'measured case gain <length> deep': 'The real depth of the gains in the case: those in the door make up the rest.',
    'closing edge bevelled <length>': 'So much is planed off the closing edge at the back of the door.',
  },
});

const ends = {
  'at top': 'At its upper end, near the closing edge. This is assumed where nothing is said.',
  'at bottom': 'At its lower end, near the closing edge.',
} as const;
export const catches = statement('catch', 'What holds the door shut.', {
  phrases: {
    magnet: 'A magnet and a plate.',
    ball: 'A ball or a roller under a spring.',
    touch: 'It lets go when the door is pressed.',
    ...ends,
  },
});
export const stop = statement('stop', 'What the door comes to rest on.', { phrases: ends });

export const pulls = statement('pulls', 'What the front is opened by, and where it sits.', {
  phrases: {
    '<pull>': 'By its name in the shop file.',
    '<count> on each': 'So many on each front, level with each other.',
    centred: 'In the middle of the height of the front.',
    '<length> from closing edge': 'On a door: from the edge away from its hinges to the middle of the pull.',
    '<length> from ends': 'Two on a front: from each end to the middle of a pull.',
    '<length> below top': 'From the upper edge of the front to the middle of the pull.',
    '<length> above bottom': 'From the lower edge of the front to the middle of the pull.',
    '<length> above floor': 'On one line, whatever the fronts are: from the floor to the middle of the pull.',
    upright: 'Its longer side stands.',
    level: 'Its longer side lies.',
    'across both doors': 'Half of it in each leaf of a pair, where they meet.',
    'screws <length> long': 'The screws that go through the front, where they are not those of the shop file.',
  },
});

export const hinge = statement('hinge', 'A hinge, with the figures of its data sheet.', {
  declares: 'hinge',
  phrases: {
    butt: 'Two leaves on a pin, let into the edges of door and case.',
    knife: 'Two flat leaves, let into the ends of the door and what is over and under it.',
    concealed: 'A cup in the back of the door, a plate on the case.',
    '<length> long': 'Length of a leaf.',
    'leaf <length> wide': 'Width of one leaf, from the middle of the pin.',
    '<length> closed': 'Thickness of the hinge when closed.',
    'screws <length> long': 'The screws that hold it.',
    '<count> screws in each leaf': 'How many of them.',
    'cup <length> wide': 'Diameter of the cup.',
    'cup <length> deep': 'Depth of the cup, from the back of the door.',
    'cup <length> to <length> from edge': 'What wood there may be between the edge of the door and the cup.',
    'overlay <length> more than cup distance': 'How far the door laps: so much more than there is wood before the cup.',
    'gap and cup distance <length> together': 'For an inset door: what its gap leaves of this is wood before the cup.',
    'fixing-holes <length> apart': 'From one hole beside the cup to the other.',
    'fixing-holes <length> behind cup': 'From the middle of the cup to the line of these holes.',
    'plate <length> from front':
      'From the front of the case, or the back of an inset door, to the middle of the plate.',
    'doors <length> to <length> thick': 'The door thicknesses it is made for.',
    'doors at most <length> wide': 'The widest door it is made for.',
    'doors at most <length> high': 'The highest door a pair of it carries.',
    'opens <number> degrees': 'How far it lets a door open.',
    'stands <length> into opening': 'How far its arm or plate stands out from the wood beside the opening.',
    'open door <length> into opening': 'How far the open door stands in its own opening, where the data sheet tells.',
    'for inset doors': 'Made for doors that lie inside the case.',
    'for overlay doors': 'Made for doors that lie on the case.',
    'costs <number> each': 'Price of one.',
  },
});

export const pull = statement('pull', 'A pull or a knob.', {
  declares: 'pull',
  phrases: {
    '<length> wide': 'Its longer side.',
    '<length> high': 'Its shorter side.',
    round: 'A knob: as high as it is wide.',
    '<length> between screws': 'From screw to screw.',
    'stands out <length>': 'How far it stands before the front.',
    'screws <length> long': 'The screws that come with it.',
    'thread <length> deep': 'How far a screw goes into it.',
    'of <stock>': 'It is made in the shop, of this stock; where nothing is said it is bought.',
    'let in <length> deep': 'It lies in a recess of the front and is not screwed through it.',
    'costs <number> each': 'Price of one.',
  },
});
