import type { FixtureFile } from '../language/harness/fixture.ts';
import { example } from '../language/sideboard.ts';

/** Mistakes planted into the examples, one at a time, and the one finding that each of them gives. */
export interface Mistake {
  readonly slip: string;
  /** The example without `.fettle`. */
  readonly into: string;
  /** Words that stand in it once. */
  readonly from: string;
  /** What stands there instead; what is underlined for it lies between « and ». */
  readonly to: string;
  readonly code: string;
  /** What is underlined where it lies elsewhere: words that stand once in the changed text. */
  readonly at?: string;
}

const names = [
  'sideboard',
  'chest',
  'linen-press',
  'vanity',
  'wall-cupboard',
  'wall',
  'pantry',
  'blanket-chest',
  'shop',
  'metric-shop',
];

/** All examples side by side, the changed one first. */
export function withMistake({ into, from, to }: Mistake): { readonly files: readonly FixtureFile[] } {
  const { name, text } = example(`${into}.fettle`);
  if (text.split(from).length !== 2) throw new Error(`${name} does not say '${from}' once`);
  const changed = text.replace(from, () => to.replace(/[«»]/g, ''));
  return {
    files: [{ name, text: changed }, ...names.filter((each) => each !== into).map((each) => example(`${each}.fettle`))],
  };
}

/** Where the finding belongs in the changed text. */
export function placeOfMistake({ into, from, to, at }: Mistake): { readonly start: number; readonly end: number } {
  const { text } = example(`${into}.fettle`);
  if (at === undefined) {
    const before = text.indexOf(from) + to.indexOf('«');
    const words = /«([\s\S]*)»/.exec(to)?.[1];
    if (words === undefined) throw new Error(`nothing is marked in '${to}'`);
    return { start: before, end: before + words.length };
  }
  const changed = text.replace(from, () => to);
  if (changed.split(at).length !== 2) throw new Error(`'${at}' does not stand once in the changed text`);
  return { start: changed.indexOf(at), end: changed.indexOf(at) + at.length };
}

export const mistakes: readonly Mistake[] = [
  // Sums and sizes
  {
    slip: 'a front too high',
    into: 'sideboard',
    from: '"blankets" rest',
    to: '"blankets" «front 10-11/32 high»',
    code: 'fronts-do-not-add-up',
  },
  {
    slip: 'fronts that leave a rest',
    into: 'sideboard',
    from: '"blankets" rest',
    to: '"blankets" «front 10 high»',
    code: 'fronts-do-not-add-up',
  },
  {
    slip: 'a front higher than the face',
    into: 'sideboard',
    from: 'front 7 high',
    to: 'front 70 high',
    code: 'sizes-not-positive',
    at: 'rest',
  },
  {
    slip: 'a stack wider than the piece',
    into: 'sideboard',
    from: 'stack opening 18 wide',
    to: 'stack opening 80 wide',
    code: 'sizes-not-positive',
    at: 'share 1',
  },
  { slip: 'a minus before a price', into: 'shop', from: 'costs 118', to: 'costs «-118»', code: 'price-negative' },
  { slip: 'a share of nothing', into: 'sideboard', from: 'share 1', to: '«share 0»', code: 'share-not-positive' },
  {
    slip: 'copies in a circle',
    into: 'sideboard',
    from: 'share 1',
    to: 'same as «"right"»',
    code: 'same-leads-nowhere',
  },
  {
    slip: 'a size under its limit',
    into: 'sideboard',
    from: 'front 5 high',
    to: '«front 5 high», at least 6',
    code: 'limits-disagree',
  },
  {
    slip: 'a limit that changes nothing',
    into: 'sideboard',
    from: 'front 5 high',
    to: 'front 5 high, «at least 4»',
    code: 'limit-without-effect',
  },
  {
    slip: 'front and opening said',
    into: 'sideboard',
    from: 'front 5 high',
    to: 'front 5 high, «opening 5-3/32 high»',
    code: 'size-said-in-two-ways',
  },
  {
    slip: 'a size and the rest',
    into: 'sideboard',
    from: '"blankets" rest',
    to: '"blankets" «rest», share 2',
    code: 'size-said-in-two-ways',
  },
  {
    slip: 'a size said twice',
    into: 'sideboard',
    from: 'front 6 high',
    to: 'front 6 high, «front 6 high»',
    code: 'said-twice',
  },
  {
    slip: 'a width in a stack',
    into: 'sideboard',
    from: 'front 6 high',
    to: 'front 6 high, «front 17 wide»',
    code: 'size-across',
  },
  {
    slip: 'a height in a row',
    into: 'sideboard',
    from: 'same opening as "left"',
    to: 'same opening as "left", «opening 28 high»',
    code: 'size-across',
  },
  { slip: 'a size of what', into: 'sideboard', from: 'front 6 high', to: '«6 high»', code: 'size-of-what' },
  {
    slip: 'only fixed sizes in a graded stack',
    into: 'chest',
    from: 'drawer "shirts"',
    to: 'stack «graded by 1» { open "shirts" opening 1 high   drawer "ties" rest }',
    code: 'grading-without-effect',
  },
  {
    slip: 'an empty row',
    into: 'wall-cupboard',
    from: 'open "bowls" opening 7 high',
    to: 'open "bowls" opening 7 high   «row» opening 2 high { }',
    code: 'empty-group',
  },
  {
    slip: 'an empty face',
    into: 'wall',
    from: 'face { open "shelves" { shelves 2 adjustable { pins 3/8 deep } } }',
    to: '«face» { }',
    code: 'empty-group',
  },
  {
    slip: 'a divider above the first drawer',
    into: 'sideboard',
    from: 'drawer "cards" ',
    to: '«divider» panel of "poplar" thick 3/4   drawer "cards" ',
    code: 'divider-out-of-place',
  },
  {
    slip: 'a measured opening far off',
    into: 'wall-cupboard',
    from: 'opening 7 high',
    to: 'opening 7 high, «measured opening 8 high»',
    code: 'measured-far-from-planned',
  },
  // Units and numbers
  {
    slip: 'a mixed number with spaces',
    into: 'sideboard',
    from: '3-1/2 wide',
    to: '«3 - 1/2» wide',
    code: 'looks-like-mixed-number',
  },
  {
    slip: 'a mixed number in parentheses',
    into: 'chest',
    from: '51-3/4 high',
    to: '«(51-3/4)» high',
    code: 'looks-like-difference',
  },
  {
    slip: 'units of a sum mixed up',
    into: 'wall-cupboard',
    from: '13 deep',
    to: '«330» - 18mm deep',
    code: 'units-mixed-in-sum',
  },
  {
    slip: 'an inch fraction in a metric sum',
    into: 'vanity',
    from: 'box 220 high',
    to: 'box 220 + «3/4» - 3/4" high',
    code: 'units-mixed-in-sum',
  },
  {
    slip: 'millimetres in an inch piece',
    into: 'wall-cupboard',
    from: 'size 36 wide, 30 high, 13 deep',
    to: 'size «900 wide», 760 high, 330 deep',
    code: 'size-looks-like-other-unit',
  },
  {
    slip: 'inches in a metric piece',
    into: 'vanity',
    from: 'size 1000 wide, 560 high, 500 deep',
    to: 'size «40 wide», 22 high, 20 deep',
    code: 'size-looks-like-other-unit',
  },
  { slip: 'a unit as a word', into: 'chest', from: '34 wide', to: '«34 inches» wide', code: 'unit-apart' },
  {
    slip: 'a ruler of thirtieths',
    into: 'chest',
    from: 'units inches to 1/32',
    to: 'units inches to «1/30»',
    code: 'ruler-odd',
  },
  {
    slip: 'a ruler upside down',
    into: 'sideboard',
    from: 'units inches to 1/32',
    to: 'units inches to «32»',
    code: 'ruler-odd',
  },
  {
    slip: 'a size between two marks',
    into: 'chest',
    from: '51-3/4 high',
    to: '«51-49/64» high',
    code: 'off-the-ruler',
  },
  {
    slip: 'a count that is not whole',
    into: 'sideboard',
    from: 'shelves 2 adjustable',
    to: 'shelves «2-1/2» adjustable',
    code: 'value-not-understood',
  },
  {
    slip: 'a length for a count',
    into: 'vanity',
    from: 'shelves 1 adjustable',
    to: 'shelves «300mm» adjustable',
    code: 'value-not-understood',
  },
  { slip: 'a division by zero', into: 'sideboard', from: '17 deep', to: '«17/0» deep', code: 'value-not-understood' },
  { slip: 'an area', into: 'chest', from: '19 deep', to: '«19" * 1"» deep', code: 'value-not-understood' },
  // Words
  { slip: 'a misspelt word', into: 'sideboard', from: 'plinth', to: '«plinht»', code: 'unknown-word' },
  { slip: 'a word that means nothing', into: 'chest', from: '19 deep', to: '19 deep, «waxed»', code: 'unknown-word' },
  {
    slip: 'what is said of the top inside its braces',
    into: 'sideboard',
    from: 'thick 7/8, over sides {',
    to: 'thick 7/8 { «over sides»',
    code: 'said-inside-braces',
  },
  {
    slip: 'a statement of the case in the piece',
    into: 'vanity',
    from: '  face overlay full',
    to: '  «frame» "oak-faced 19"\n  face overlay full',
    code: 'word-belongs-elsewhere',
  },
  {
    slip: 'a statement of the case in a stack',
    into: 'wall-cupboard',
    from: 'open "bowls" opening 7 high',
    to: 'open "bowls" opening 7 high\n      «frame» "maple" thick 3/4',
    code: 'word-belongs-elsewhere',
  },
  {
    slip: 'words of a divider on a back',
    into: 'sideboard',
    from: '1/2 in from back edge',
    to: '1/2 in from back edge, «shown»',
    code: 'word-belongs-elsewhere',
  },
  {
    slip: 'over and between',
    into: 'chest',
    from: 'over sides',
    to: 'over sides, «between sides»',
    code: 'cannot-be-both',
  },
  {
    slip: 'two joints at one corner',
    into: 'sideboard',
    from: 'corners dovetail',
    to: 'corners dovetail, «rabbet»',
    code: 'cannot-be-both',
  },
  {
    slip: 'two sizes of one piece',
    into: 'vanity',
    from: '500 deep',
    to: '500 deep\n  «size» 900 wide, 560 high, 500 deep',
    code: 'said-twice',
  },
  { slip: 'a semicolon', into: 'sideboard', from: '60 wide, 34 high', to: '60 wide«;» 34 high', code: 'stray-mark' },
  {
    slip: 'a brace too many',
    into: 'chest',
    from: 'rails 2-1/4 wide, shown',
    to: 'rails 2-1/4 wide, shown «}»',
    code: 'stray-mark',
  },
  {
    slip: 'a brace that is not opened',
    into: 'vanity',
    from: 'face overlay full, gap 3, reveal 1.5 {',
    to: '«face» overlay full, gap 3, reveal 1.5',
    code: 'brace-not-opened',
  },
  {
    slip: 'a brace that is not closed',
    into: 'wall-cupboard',
    from: 'frame "maple" thick 3/4 { stiles 1-3/4 wide   top-rail 2 wide   bottom-rail 1-1/2 wide }',
    to: '«frame» "maple" thick 3/4 { stiles 1-3/4 wide   top-rail 2 wide   bottom-rail 1-1/2 wide',
    code: 'brace-not-closed',
  },
  {
    slip: 'a thickness forgotten',
    into: 'chest',
    from: 'bottom "cherry" thick 7/8',
    to: '«bottom "cherry"»',
    code: 'thickness-not-known',
  },
  {
    slip: 'a depth forgotten',
    into: 'sideboard',
    from: 'size 60 wide, 34 high, 17 deep',
    to: '«size» 60 wide, 34 high',
    code: 'size-incomplete',
  },
  {
    slip: 'a piece with a size alone',
    into: 'wall',
    from: '// Along the floor, from left to right',
    to: '«piece "Spare"» { size 12 wide, 12 high, 12 deep }',
    code: 'nothing-to-make',
  },
  {
    slip: 'drawers where a drawer stands',
    into: 'chest',
    from: 'drawer "shirts"',
    to: '«drawers» "shirts"',
    code: 'word-belongs-elsewhere',
  },
  // Names
  {
    slip: 'a misspelt stock',
    into: 'sideboard',
    from: 'fronts "ash panel 1/2"',
    to: 'fronts «"ash panl 1/2"»',
    code: 'unknown-name',
  },
  {
    slip: 'a slide nobody has',
    into: 'vanity',
    from: 'slides "side mount 450"',
    to: 'slides «"side mount 500 heavy duty soft"»',
    code: 'unknown-name',
  },
  {
    slip: 'a front that is not there',
    into: 'sideboard',
    from: 'same opening as "left"',
    to: 'same opening as «"lift"»',
    code: 'unknown-name',
  },
  {
    slip: 'a misspelt file',
    into: 'chest',
    from: 'use "shop.fettle"',
    to: 'use «"shoop.fettle"»',
    code: 'file-not-found',
  },
  {
    slip: 'a file that uses itself',
    into: 'chest',
    from: 'use "shop.fettle"',
    to: 'use "shop.fettle"\nuse «"chest.fettle"»',
    code: 'file-uses-itself',
  },
  {
    slip: 'a file for nothing',
    into: 'chest',
    from: 'use "shop.fettle"',
    to: 'use "shop.fettle"\nuse «"metric-shop.fettle"»',
    code: 'file-never-needed',
  },
  { slip: 'a drawer called twice', into: 'chest', from: '"linen"', to: '«"vests"»', code: 'name-declared-twice' },
  {
    slip: 'a stock declared twice',
    into: 'shop',
    from: 'flitch "ash A"',
    to: 'board «"cherry"» any thickness, 9 wide, 120 long\nflitch "ash A"',
    code: 'name-declared-twice',
  },
  {
    slip: 'a stock without a name',
    into: 'metric-shop',
    from: 'slide "side mount 400"',
    to: '«slide»',
    code: 'name-missing',
  },
  { slip: 'a name left empty', into: 'chest', from: 'drawer "shirts"', to: 'drawer «""»', code: 'name-empty' },
  {
    slip: 'a name with a hidden mark',
    into: 'chest',
    from: 'drawer "shirts"',
    to: 'drawer «"shi\u202Erts"»',
    code: 'name-hard-to-read',
  },
  {
    slip: 'a name not closed',
    into: 'sideboard',
    from: 'drawer "dice"',
    to: 'drawer «"dice»',
    code: 'name-not-closed',
  },
  {
    slip: 'a value nobody uses',
    into: 'vanity',
    from: '  case {',
    to: '  «let "thin"» be 3\n  case {',
    code: 'value-never-used',
  },
  {
    slip: 'a parameter nobody uses',
    into: 'wall',
    from: '  takes "height" or 30',
    to: '  takes "height" or 30\n  «takes "depth"» or 14',
    code: 'value-never-used',
  },
  {
    slip: 'stock nobody uses',
    into: 'vanity',
    from: 'use "metric-shop.fettle"',
    to: 'use "metric-shop.fettle"\n«sheet "elm 19"» nominal 19mm, actual 19mm, 2500mm long, 1250mm wide',
    code: 'stock-never-used',
  },
  {
    slip: 'a pattern nobody uses',
    into: 'sideboard',
    from: 'use "shop.fettle"',
    to: 'use "shop.fettle"\n«pattern "box"» { size 12 wide, 12 high, 12 deep }',
    code: 'pattern-never-used',
  },
  {
    slip: 'a value that is not given',
    into: 'wall',
    from: 'piece "Base 1" from "drawer base" with "width" 18',
    to: '«piece "Base 1"» from "drawer base"',
    code: 'value-not-given',
  },
  {
    slip: 'values in a circle',
    into: 'chest',
    from: '  case {',
    to: '  «let "a"» be "b" + 1\n  let "b" be "a" - 1\n  case {',
    code: 'value-circle',
  },
  {
    slip: 'a piece with an empty name',
    into: 'vanity',
    from: 'piece "Bathroom vanity"',
    to: 'piece «""»',
    code: 'name-empty',
  },
  // Drawers
  {
    slip: 'a box too high for its opening',
    into: 'vanity',
    from: 'box 220 high',
    to: 'box «320» high',
    code: 'drawer-box-does-not-fit',
  },
  {
    slip: 'a box too low for its slides',
    into: 'vanity',
    from: 'box 220 high',
    to: 'box «40» high',
    code: 'drawer-box-does-not-fit',
  },
  {
    slip: 'a box too wide for its slides',
    into: 'sideboard',
    from: 'corners dovetail',
    to: 'corners dovetail   box «17-1/2» wide',
    code: 'drawer-box-does-not-fit',
  },
  {
    slip: 'a slide too long',
    into: 'sideboard',
    from: 'slides "side mount 14"',
    to: 'slides «"side mount 16"»',
    code: 'slide-too-long',
  },
  {
    slip: 'a minus before the gap',
    into: 'sideboard',
    from: 'face inset, gap 3/32',
    to: 'face inset, gap «-3/32»',
    code: 'size-negative',
  },
];
