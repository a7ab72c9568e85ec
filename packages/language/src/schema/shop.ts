import { noun, statement } from './phrase.ts';

/** What a shop file may hold: stock and hardware, with the figures of the real thing. */

const stockPhrases = {
  'nominal <length>': 'The thickness the yard calls it by. Fits never use it.',
  'actual <length>': 'The thickness the caliper reads. Fits use this.',
  '<length> wide': 'Width of the sheet, or of the widest board.',
  '<length> long': 'Length of the sheet along its grain, or of the longest board.',
  'no grain': 'The stock may be turned freely: MDF, painted work.',
} as const;

export const sheet = statement('sheet', 'Sheet stock: plywood, veneered panel, MDF.', {
  declares: 'stock',
  phrases: stockPhrases,
});
export const board = statement('board', 'Solid wood, planed to the thickness that is said.', {
  declares: 'stock',
  phrases: { ...stockPhrases, 'any thickness': 'Planed to whatever thickness a part asks for.' },
});
export const slide = statement('slide', 'A pair of drawer slides, with the figures of its data sheet.', {
  declares: 'slide',
  phrases: {
    'side mount': 'Mounted between the box side and the case side.',
    '<length> long': 'Closed length; the box it carries is this deep.',
    'takes <length> each side': 'Space one slide takes beside the box.',
    '<length> high': 'Height of the slide itself.',
    '<length> free behind': 'Depth it needs behind the box, beyond its length.',
  },
});
export const hinge = statement('hinge', 'A hinge, by the name it is bought under.', {
  declares: 'hinge',
  phrases: {
    '<length> long': { later: 'Length of the leaf.' },
    '<length> closed': { later: 'Thickness of the hinge when closed.' },
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
export const use = statement('use', 'Makes the names of another file known here.', {
  phrases: { '<path>': 'The file, from this one: "shop.fettle".' },
});
export const letValue = statement(
  'let',
  'Names a length, to be used wherever a length may stand: let "thin" be 3/32.',
  {
    declares: 'value',
    outlined: false,
    phrases: { 'be <length>': 'What it is.' },
  },
);

export const shopUnits = statement(
  'units',
  'The unit of bare numbers in this file, and the finest mark of the ruler.',
  {
    phrases: {
      inches: 'Bare numbers are inches.',
      mm: 'Bare numbers are millimetres.',
      cm: 'Bare numbers are centimetres.',
      feet: 'Bare numbers are feet.',
      'to <number>': 'The finest mark of the ruler; sums never use it.',
    },
  },
);

export const shopStatements = [sheet, board, slide, hinge, flitch, letValue, use];

export const emptyBody = noun('nothing', 'Nothing belongs in here.', []);
