import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const pullScrewTooLong = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly pull: string;
  readonly screw: Measure;
  readonly through: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'pull-screw-too-long',
  severity: 'error',
  title: 'Screws of a pull that are longer than its thread',
  headline: (facts, say) =>
    `the screws of ${say.name(facts.pull)} are ${say.length(facts.screw)} long and go through ${say.length(facts.through)} of ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)}: ` +
    `they fill the thread at ${say.length(facts.limit)}, ${say.length(facts.difference)} less`,
  brief: (facts, say) => `screws ${say.length(facts.difference)} too long`,
  related: {
    pull: (values, say) => `${say.name(String(values['pull']))} is described here`,
    also: (values, say) => `${subject(values, say)} has it as well`,
  },
  mends: {
    screws: (values, say) => `Take screws ${say.length(values['size'] as Measure)} long`,
  },
  help: `
A screw that reaches the bottom of its thread before its head is tight leaves the pull loose. What it goes through and the
thread together are the longest that holds.

\`\`\`fettle wrong
pull "knob" 1 wide, round, thread 3/8 deep
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { drawer "pens" { pulls "knob", screws 1-1/4 long }   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
pull "knob" 1 wide, round, thread 3/8 deep
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { drawer "pens" { pulls "knob", screws 1-1/8 long }   fronts thick 3/4 }
}
\`\`\`
`,
});
