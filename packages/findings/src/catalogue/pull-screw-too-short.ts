import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const pullScrewTooShort = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly pull: string;
  readonly screw: Measure;
  readonly through: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'pull-screw-too-short',
  severity: 'error',
  title: 'Screws of a pull that do not reach its thread',
  headline: (facts, say) =>
    `the screws of ${say.name(facts.pull)} are ${say.length(facts.screw)} long and go through ${say.length(facts.through)} of ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)}: ` +
    `they want ${say.length(facts.limit)} to hold, ${say.length(facts.difference)} more`,
  brief: (facts, say) => `screws ${say.length(facts.difference)} too short`,
  related: {
    pull: (values, say) => `${say.name(String(values['pull']))} is described here`,
    also: (values, say) => `${subject(values, say)} has it as well`,
  },
  mends: {
    screws: (values, say) => `Take screws ${say.length(values['size'] as Measure)} long`,
  },
  help: `
The screws of a pull go through the front and, of a drawer, through the front of the box behind it. At least 1/4" or 6 mm of
them has to be in the thread (common practice, no source). Screws that come with a pull are made for one front alone: for
a drawer they are often too short.

\`\`\`fettle wrong
pull "knob" 1 wide, round, screws 7/8 long, thread 3/8 deep
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { drawer "pens" { pulls "knob" }   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
pull "knob" 1 wide, round, screws 1 long, thread 3/8 deep
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { drawer "pens" { pulls "knob" }   fronts thick 3/4 }
}
\`\`\`
`,
});
