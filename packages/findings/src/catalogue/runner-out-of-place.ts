import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** A wooden runner whose groove comes out at an edge of the side of its box, or leaves hardly any wood there. */
export const runnerOutOfPlace = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly edge: 'upper' | 'lower';
  /** Left of the side beyond the groove; how far the groove comes out where it does. */
  readonly left: Measure;
  readonly limit: Measure;
  readonly beyond: 'yes' | 'no';
}>({
  code: 'runner-out-of-place',
  severity: 'error',
  title: 'A runner whose groove leaves the side of its box',
  headline: (facts, say) => {
    const who = subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say);
    const left = say.length(facts.left);
    return facts.beyond === 'yes'
      ? `the grooves for the runners of ${who} come out at the ${facts.edge} edge of the sides of its box, by ${left}`
      : `the grooves for the runners of ${who} leave ${left} of the sides of its box at the ${facts.edge} edge: less than ${say.length(facts.limit)} breaks out`;
  },
  brief: ({ edge }) => `groove at the ${edge} edge of the box`,
  related: { drawer: (values, say) => `${subject(values, say)} is the drawer` },
  mends: {
    lower: (values, say) => `Make the runners ${say.length(values['size'] as Measure)} high`,
    set: (values, say) => `Set the runners at ${say.length(values['size'] as Measure)}`,
  },
  help: `
A runner lies within the height of the box that rides on it: its groove needs wood over and under it, 1/8" or 3 mm at least
(from memory), and an opening beside it to be screwed into.

\`\`\`fettle wrong
piece "box" {
  size 20 wide, 8 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "spoons" { runners 7 high, thick 1/4 }
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners dovetail }
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 20 wide, 8 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "spoons" { runners 3/4 high, thick 1/4 }
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners dovetail }
  }
}
\`\`\`
`,
});
