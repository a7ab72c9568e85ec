/**
 * What makers also call what the language has one word for. Several are given where the thing goes by another name in
 * another place. Common practice, no source.
 */
const sameInTrade: Readonly<Record<string, readonly string[]>> = {
  base: ['plinth'],
  box: ['case'],
  cabinet: ['case'],
  carcase: ['case'],
  carcass: ['case'],
  counter: ['top'],
  countertop: ['top'],
  cubby: ['open'],
  ends: ['sides'],
  floor: ['bottom'],
  front: ['face'],
  gables: ['sides'],
  glides: ['slides'],
  handle: ['pull', 'pulls'],
  handles: ['pulls', 'pull'],
  kick: ['toe-space'],
  kickboard: ['toe-space'],
  'kick-board': ['toe-space'],
  'kick-space': ['toe-space'],
  knob: ['pull', 'pulls'],
  knobs: ['pulls', 'pull'],
  latch: ['catch'],
  leg: ['feet'],
  legs: ['feet'],
  lumber: ['board'],
  niche: ['open'],
  opening: ['open'],
  pegs: ['pins'],
  plank: ['board'],
  planks: ['board'],
  ply: ['sheet'],
  plywood: ['sheet'],
  'shelf-pins': ['pins'],
  timber: ['board'],
  toekick: ['toe-space'],
  'toe-kick': ['toe-space'],
  uprights: ['partition', 'sides'],
  upright: ['partition', 'sides'],
  worktop: ['top'],
};

/** The language's own words for a word of the trade, the likeliest first. */
export function sameWords(word: string): readonly string[] {
  return Object.hasOwn(sameInTrade, word) ? (sameInTrade[word] ?? []) : [];
}

/** The same of what is said about a thing. */
const saidInTrade: Readonly<Record<string, readonly string[]>> = {
  flush: ['inset'],
  frame: ['web-frame', 'frame-and-panel'],
};

/** The language's own phrases for a word of the trade. */
export function samePhrases(word: string): readonly string[] {
  return Object.hasOwn(saidInTrade, word) ? (saidInTrade[word] ?? []) : [];
}
