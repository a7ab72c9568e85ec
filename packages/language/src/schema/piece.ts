import { carcase } from './carcase.ts';
import { face } from './face.ts';
import { noun, statement } from './phrase.ts';
import { letValue, shopStatements, units } from './shop.ts';

/** A piece, where it stands, and what the top level of a file may hold. */

export const size = statement('size', 'The overall size of the piece.', {
  outlined: true,
  phrases: {
    '<length> wide': 'Overall width, overhang included.',
    '<length> high': 'Overall height, from the floor.',
    '<length> deep': 'Overall depth, overhang included.',
  },
});

const alcove = statement('alcove', 'The place where the piece stands.', {
  checked: false,
  phrases: {
    '<length> wide': { later: 'Between its walls.' },
    '<length> high': { later: 'Floor to ceiling.' },
    '<length> deep': { later: 'To its back wall.' },
  },
});
const windowSill = statement('window-sill', 'A sill near the piece.', {
  checked: false,
  phrases: { '<length> above floor': { later: 'Its height.' } },
});
const doorSwing = statement('hinge', 'Where the hinge line of that door is.', {
  checked: false,
  phrases: {
    '<length> right of alcove': { later: 'To the right of the alcove.' },
    '<length> left of alcove': { later: 'To the left of the alcove.' },
    '<length> forward': { later: 'In front of the alcove.' },
  },
});
const roomDoorSize = statement('', 'The door leaf.', {
  checked: false,
  phrases: {
    '<length> wide': { later: 'Width of the leaf.' },
    'swings toward piece': { later: 'It opens towards the piece.' },
  },
});
const roomDoor = statement('door', 'A door of the room that swings near the piece.', {
  declares: 'label',
  checked: false,
  body: () => noun('room door', 'A door of the room.', [doorSwing], roomDoorSize),
});
const wayInOpening = statement('opening', 'The narrowest opening on the way in.', {
  checked: false,
  phrases: { '<length> wide': { later: 'Its width.' }, '<length> high': { later: 'Its height.' } },
});
const ceiling = statement('ceiling', 'Height of the ceiling where the piece is stood up.', {
  checked: false,
  phrases: { '<length>': { later: 'Its height.' } },
});
const wayIn = statement('way-in', 'How the piece is carried in.', {
  checked: false,
  body: () => noun('way in', 'How the piece is carried in.', [wayInOpening, ceiling]),
});
export const site = statement('site', 'Where the piece stands and how it gets there.', {
  checked: false,
  outlined: true,
  body: () => noun('site', 'Where the piece stands.', [alcove, windowSill, roomDoor, wayIn]),
});

export const members = statement('', 'Fronts in the order in which they are cut from one blank.', {
  phrases: {
    '<cell>': 'One front, both leaves of a pair, or all fronts of a row or stack.',
    '<cell> to <cell>': 'These and all fronts between them.',
  },
});
const matched = statement('matched', 'How the leaves are matched.', {
  checked: false,
  phrases: {
    book: { later: 'Every second leaf is turned over.' },
    slip: { later: 'Leaves side by side, none turned.' },
    'centre balanced': { later: 'An even count of equal leaves, a joint on the centre line.' },
  },
});
export const sequence = statement('sequence', 'Fronts cut from one blank in their order, so that the grain runs on.', {
  declares: 'label',
  phrases: {
    'grain upright': 'It runs up and down, whichever way the fronts follow each other.',
    'grain across': 'It runs from left to right, whichever way the fronts follow each other.',
    'from flitch <flitch>': {
      later: 'The leaves of veneer it is laid from; fronts edged before veneer are then cut one by one.',
    },
  },
  body: () => noun('sequence', 'Fronts cut from one blank in their order.', [matched], members),
});

export const thingSize = statement('', 'How large it is, as it stands the way it is meant to.', {
  phrases: { '<length> wide': 'Width.', '<length> deep': 'Depth.', '<length> high': 'Height.' },
});
export const thisWayUp = statement('this', 'How it may be put in.', {
  phrases: { 'way up': 'It may be turned around, but not tipped over.' },
});
export const weighs = statement('weighs', 'How heavy it is: what slides and shelves that hold it are loaded with.', {
  phrases: { '<number> lb': 'In pounds.', '<number> kg': 'In kilograms.' },
});
export const thing = statement('thing', 'Something the piece must hold.', {
  declares: 'thing',
  body: () => noun('thing', 'Something the piece must hold.', [weighs, thisWayUp], thingSize),
});

const pieceStatements = [units, size, site, carcase, face, sequence, thing, letValue];
export const pieceNoun = noun('piece', 'One piece of furniture.', pieceStatements);
export const piece = statement('piece', 'One piece of furniture.', {
  declares: 'piece',
  phrases: {
    'from <pattern>': 'Made from a pattern; what the piece says itself comes before what the pattern says.',
    'with <parameter> <length>': 'A value the pattern takes.',
    '<parameter> <length>': 'Another value the pattern takes.',
  },
  body: () => pieceNoun,
});

export const takes = statement('takes', 'A value that each piece made from this pattern gives: takes "width" or 24.', {
  declares: 'value',
  outlined: false,
  phrases: { 'or <length>': 'Its value where a piece does not give one.' },
});
const patternNoun = noun('pattern', 'What several pieces have in common.', [takes, ...pieceStatements]);
export const pattern = statement('pattern', 'What several pieces have in common; each says only what differs.', {
  declares: 'pattern',
  body: () => patternNoun,
});

export const fileNoun = noun('file', 'A file of pieces, or of stock and hardware.', [
  ...shopStatements,
  units,
  piece,
  pattern,
  thing,
]);

/** What stands between braces that no statement here opens. */
export const unknownNoun = noun('unknown', 'Nothing is known here.', []);
