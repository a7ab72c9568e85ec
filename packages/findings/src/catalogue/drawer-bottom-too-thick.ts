import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** A drawer box that is too low for the bottom in its groove. */
export const drawerBottomTooThick = defineFinding<{
  readonly name?: string;
  /** Where it has no name. */
  readonly words: string;
  readonly height: Measure;
  readonly up: Measure;
  readonly thickness: Measure;
  readonly needed: Measure;
  readonly difference: Measure;
}>({
  code: 'drawer-bottom-too-thick',
  severity: 'error',
  title: 'A drawer box lower than its bottom',
  headline: (facts, say) =>
    `the box of ${subject(facts, say)} is ${say.length(facts.height)} high; its bottom, ${say.length(facts.thickness)} ` +
    `thick and ${say.length(facts.up)} up, needs ${say.length(facts.needed)}: ${say.length(facts.difference)} more`,
  brief: (facts, say) => `a box ${say.length(facts.difference)} too low`,
  related: { drawer: (values, say) => `${subject(values, say)} stands here` },
  mends: {
    higher: (values, say) =>
      `Make the box ${say.length(values['size'] as Measure)} high, the least that holds its bottom`,
  },
  help: `
The bottom of a drawer lies in a groove a little up from the lower edge of the box (1/4" where nothing is said, common
practice, no source). The box has to be at least as high as that and the bottom together, and of course higher to hold
anything.

\`\`\`fettle wrong
piece "chest" {
  size 24 wide, 20 high, 18 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset, gap 3/32 {
    drawer "a"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   box 3/8 high }
  }
}
\`\`\`

\`\`\`fettle right
piece "chest" {
  size 24 wide, 20 high, 18 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset, gap 3/32 {
    drawer "a"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   box 4 high }
  }
}
\`\`\`
`,
});
