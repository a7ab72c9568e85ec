import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const drawerBottomTooLow = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly left: Measure;
  readonly limit: Measure;
}>({
  code: 'drawer-bottom-too-low',
  severity: 'warning',
  title: 'A groove at the lower edge of a drawer box',
  headline: (facts, say) => {
    const who = subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say);
    return `the groove for the bottom of ${who} leaves ${say.length(facts.left)} of its box under it: less than ${say.length(facts.limit)} breaks out`;
  },
  brief: ({ left }, say) => `${say.length(left)} under the groove`,
  related: { drawer: (values, say) => `${subject(values, say)} is the drawer` },
  mends: { up: (values, say) => `Set the bottom ${say.length(values['size'] as Measure)} up` },
  help: `
What is left of the sides under the groove carries the bottom and all that lies on it: 1/4" or 6 mm is usual, less than 1/8"
or 3 mm breaks out (from memory). A bottom that is to lie lower is applied.

\`\`\`fettle wrong
piece "box" {
  size 20 wide, 8 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "spoons" { bottom thick 1/4, 1/16 up }
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
    drawer "spoons" { bottom thick 1/4, 1/4 up }
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners dovetail }
  }
}
\`\`\`
`,
});
