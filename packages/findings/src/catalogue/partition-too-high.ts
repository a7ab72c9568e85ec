import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const partitionTooHigh = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly height: Measure;
  readonly room: Measure;
  readonly difference: Measure;
}>({
  code: 'partition-too-high',
  severity: 'error',
  title: 'A partition that stands out of its drawer',
  headline: (facts, say) => {
    const who = subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say);
    return `the partitions in ${who} are ${say.length(facts.height)} high, over the bottom of its box there is ${say.length(facts.room)}: ${say.length(facts.difference)} too high`;
  },
  brief: ({ difference }, say) => `${say.length(difference)} too high`,
  related: { drawer: (values, say) => `${subject(values, say)} is the drawer` },
  mends: { height: (values, say) => `Make them ${say.length(values['size'] as Measure)} high` },
  help: `
Partitions of a drawer stand on its bottom. Where no height is said they end level with the sides of the box; higher ones
strike what is over the drawer, or lie in dadoes that end before them.

\`\`\`fettle wrong
piece "box" {
  size 20 wide, 8 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "spoons" { compartments 3 across, thick 1/4, 6 high }
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
    drawer "spoons" { compartments 3 across, thick 1/4, 3 high }
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners dovetail }
  }
}
\`\`\`
`,
});
