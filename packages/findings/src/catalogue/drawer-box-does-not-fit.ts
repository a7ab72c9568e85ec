import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** How a drawer box and its surroundings disagree. */
export type BoxClash =
  | 'wider-than-slides-leave'
  | 'narrower-than-slides-reach'
  | 'wider-than-opening'
  | 'higher-than-opening'
  | 'lower-than-slides';

/** A drawer box is too wide, too narrow, too high or too low for its opening and its slides. */
export const drawerBoxDoesNotFit = defineFinding<{
  readonly clash: BoxClash;
  /** The drawer's name; a box whose size is set for several drawers is named after the first that it does not fit. */
  readonly name?: string;
  /** What the drawer is called where it has no name. */
  readonly words: string;
  /** The size of the box along the axis of the clash. */
  readonly box: Measure;
  /** The largest size that works; for a box that is too narrow or too low the smallest. */
  readonly limit: Measure;
  readonly difference: Measure;
  /** The opening along the same axis. */
  readonly opening: Measure;
  /** The slides' name, where there are slides. */
  readonly slides?: string;
  /** What each slide takes at its side, or its own height: the figure that makes the limit. */
  readonly slideTakes?: Measure;
}>({
  code: 'drawer-box-does-not-fit',
  severity: 'error',
  title: 'A drawer box does not fit its opening or its slides',
  headline: (facts, say) => {
    const box = `the box of ${facts.name === undefined ? facts.words : say.name(facts.name)} is ${say.length(facts.box)}`;
    const slides = facts.slides === undefined ? 'the slides' : say.name(facts.slides);
    const takes = facts.slideTakes === undefined ? '' : ` (${say.length(facts.slideTakes)} at each side)`;
    const by = say.length(facts.difference);
    switch (facts.clash) {
      case 'wider-than-slides-leave':
        return (
          `${box} wide, in an opening of ${say.length(facts.opening)} ${slides}${takes} leaves ` +
          `${say.length(facts.limit)}: ${by} too wide`
        );
      case 'narrower-than-slides-reach':
        return (
          `${box} wide, in an opening of ${say.length(facts.opening)} ${slides}${takes} reaches ` +
          `a box of at least ${say.length(facts.limit)}: ${by} too narrow`
        );
      case 'wider-than-opening':
        return `${box} wide, its opening takes at most ${say.length(facts.limit)}: ${by} too wide`;
      case 'higher-than-opening':
        return (
          `${box} high, its opening of ${say.length(facts.opening)} less the free height under and over the box ` +
          `takes ${say.length(facts.limit)}: ${by} too high`
        );
      case 'lower-than-slides':
        return `${box} high, ${slides} needs sides of at least ${say.length(facts.limit)}: ${by} too low`;
      default: {
        const unknown: never = facts.clash;
        return String(unknown);
      }
    }
  },
  brief: (facts, say) => {
    const how = {
      'wider-than-slides-leave': 'wide',
      'narrower-than-slides-reach': 'narrow',
      'wider-than-opening': 'wide',
      'higher-than-opening': 'high',
      'lower-than-slides': 'low',
    }[facts.clash];
    return `box ${say.length(facts.difference)} too ${how}`;
  },
  related: {
    slides: (values, say) => `${say.name(String(values['slides']))} is chosen here`,
    opening: (values, say) => `${subject(values, say)} has an opening of ${say.length(values['opening'] as Measure)}`,
  },
  mends: {
    'box-width': (values, say) => `Make the box ${say.length(values['size'] as Measure)} wide`,
    'box-height': (values, say) => `Make the box ${say.length(values['size'] as Measure)} high`,
    'use-slides': (values, say) => `Use ${say.name(String(values['slides']))}`,
  },
  help: `
A drawer box has to be smaller than its opening by what runs beside, under and over it.

Side-mount slides stand between the box and the case, one at each side. A box that is wider than the opening less both
slides binds or does not go in; one that is narrower by more than about 1/32" pulls the slides apart, unless they are
packed out. Write no box width at all and it is computed: the opening less the slides.

A box also has to pass under what is above its opening, and its sides have to be at least as high as the slide that is
screwed to them.

\`\`\`fettle wrong
use "shop.fettle"
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "linen" front 9 high
    drawer "blankets" rest
    fronts thick 3/4
    drawers { sides "oak" thick 1/2   bottom "thin ply"   corners dovetail   slides "side mount 12"   box 18 wide }
  }
}
\`\`\`

\`\`\`fettle right
use "shop.fettle"
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "linen" front 9 high
    drawer "blankets" rest
    fronts thick 3/4
    drawers { sides "oak" thick 1/2   bottom "thin ply"   corners dovetail   slides "side mount 12" }
  }
}
\`\`\`
`,
});
