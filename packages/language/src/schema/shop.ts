import { hinge, pull } from './hanging.ts';
import { dowel, screw, tenon } from './joints.ts';
import { noun, statement } from './phrase.ts';

/** What a shop file may hold: stock, hardware, cutters and machines, with the figures of the real thing. */

const stockPhrases = {
  'nominal <length>': 'The thickness the yard calls it by. Fits never use it.',
  'actual <length>': 'The thickness the caliper reads. Fits use this.',
  '<length> wide': 'Width of the sheet, or of the widest board.',
  '<length> long': 'Length of the sheet along its grain, or of the longest board.',
  'no grain': 'The stock may be turned freely: MDF, painted work.',
  'costs <number> each': 'Price of one sheet or board.',
  'costs <number> a board foot': 'Price of a board foot.',
} as const;

export const offcut = statement(
  'offcut',
  'What is left over from earlier work: it is used before anything is bought.',
  {
    phrases: {
      '<length> long': 'Length along its grain.',
      '<length> wide': 'Width across its grain.',
      '<length> thick': 'Thickness of a board, rough, where its stock comes in several.',
      '<count> of them': 'How many there are; one where nothing is said.',
    },
  },
);
const stockBody = noun('stock', 'What there is of it besides what can be bought.', [offcut]);
export const sheet = statement('sheet', 'Sheet stock: plywood, veneered panel, MDF.', {
  declares: 'stock',
  phrases: { ...stockPhrases, 'trim <length>': 'What is cut off each edge of a sheet before anything else.' },
  body: () => stockBody,
});
export const board = statement(
  'board',
  'Solid wood. A nominal thickness is in quarters of an inch, rough: nominal 4/4.',
  {
    declares: 'stock',
    phrases: { ...stockPhrases, 'any thickness': 'Planed to whatever thickness a part asks for.' },
    body: () => stockBody,
  },
);
export const veneer = statement('veneer', 'Veneer, by the name it is bought under.', {
  declares: 'stock',
  phrases: stockPhrases,
});
export const slideHole = statement(
  'hole',
  'A screw hole of the member that stays on the case, or of the one on the box.',
  {
    phrases: {
      '<length> from front': 'From the front end of the slide to its middle.',
      '<length> up': 'From the lower edge of the slide; the middle of its height where nothing is said.',
      'in box': 'It is a hole of the member that is screwed to the side of the box.',
    },
  },
);
export const slideScrews = statement('screws', 'What the slide is fastened with.', {
  phrases: {
    '<length> long': 'How far they reach into the wood behind the slide.',
    '<length> long in box': 'How far those of the box reach into its side, where they are others.',
    '<length> thick': 'Their diameter.',
    'costs <number> each': 'Price of one, where they do not come with the slide.',
  },
});
const slideBody = noun('slide', 'A pair of drawer slides.', [slideHole, slideScrews]);
export const slide = statement('slide', 'A pair of drawer slides, with the figures of its data sheet.', {
  declares: 'slide',
  body: () => slideBody,
  phrases: {
    'side mount': 'Mounted between the box side and the case side.',
    'under mount': 'Mounted under the box, screwed to the case beside it.',
    'centre mount': 'One under the middle of the box, screwed to the wood before and behind it.',
    '<length> long': 'Closed length; the box it carries is this deep.',
    'takes <length> each side': 'Space one slide takes beside the box.',
    '<length> high': 'Height of the slide itself.',
    '<length> free behind': 'Depth it needs behind the box, beyond its length.',
    'set back <length>': 'From the back of the front to its front end.',
    'takes <length> below': 'Free height it needs under the box.',
    'sides at most <length> thick': 'The thickest sides of a box that it goes under.',
    'lifts in <length>': 'How far the box is lifted to be hooked in.',
    'carries <number> lb': 'The load its maker rates the pair for.',
    'carries <number> kg': 'The load its maker rates the pair for.',
    'costs <number> each': 'Price of a pair.',
  },
});
export { hinge, pull };

export const cutter = statement('cutter', 'A saw blade, bit or stack that cuts grooves, dadoes and rabbets.', {
  declares: 'tool',
  phrases: {
    'cuts <length> wide': 'Width of its cut.',
    'cuts <length> to <length> wide': 'Widths it can be set to.',
    'at most <length> deep': 'Its deepest cut.',
    blade: 'A saw blade or a dado stack: it runs out at both ends of a cut.',
    bit: 'A router bit: a cut may stop within the wood.',
    chisel: 'A mortising chisel or a mortising bit: it makes mortises of this width.',
  },
});
export const machine = statement('machine', 'A machine, with what it can take.', {
  declares: 'tool',
  phrases: {
    'rips at most <length> wide': 'From the fence to the blade at its widest.',
    'crosscuts at most <length>': 'The longest part it can cut to length.',
    'crosscuts at most <length> wide': 'The widest panel it can cut across.',
    'planes at most <length> wide': 'The widest board it planes.',
    'least length <length>': 'Shorter pieces are cut from a long blank: they are not safe on it.',
    'rips at most <length> long': 'The longest cut it makes along a sheet.',
    'least width <length>': 'Narrower strips are cut some other way: they are not safe on it.',
    'kerf <length>': 'What its blade turns into dust.',
  },
});
export const flitch = statement('flitch', 'Leaves of veneer in the order they came off the log.', {
  declares: 'flitch',
  phrases: {
    '<count> leaves': { later: 'How many leaves it holds.' },
    '<length> wide': { later: 'Width of a leaf.' },
    '<length> long': { later: 'Length of a leaf.' },
  },
});
export const use = statement('use', 'Makes the names of another file, or of all files of a folder, known here.', {
  phrases: { '<path>': 'The file or folder, from this file: "shop.fettle", "shop/".' },
});
export const letValue = statement(
  'let',
  'Names a length or a number, to be used wherever one may stand: let "thin" be 3/32.',
  {
    declares: 'value',
    outlined: false,
    phrases: { 'be <length>': 'What it is.' },
  },
);

export const units = statement('units', 'The unit of bare numbers, and the finest mark of the ruler.', {
  phrases: {
    inches: 'Bare numbers are inches.',
    mm: 'Bare numbers are millimetres.',
    cm: 'Bare numbers are centimetres.',
    feet: 'Bare numbers are feet.',
    'to <number>': 'The finest mark of the ruler; sums never use it.',
  },
});

export const shopStatements = [
  sheet,
  board,
  veneer,
  slide,
  hinge,
  pull,
  cutter,
  machine,
  dowel,
  screw,
  tenon,
  flitch,
  letValue,
  use,
];
