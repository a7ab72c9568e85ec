import { defineFinding, type Measure } from '../finding.ts';

/** A part too long to cut to length: no machine of the shop takes it. */
export const crosscutTooLong = defineFinding<{
  readonly part: string;
  readonly size: Measure;
  readonly machine: string;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'crosscut-too-long',
  severity: 'warning',
  title: 'A part too long to cut to length',
  headline: (facts, say) =>
    `the ${facts.part} is ${say.length(facts.size)} long, ${say.name(facts.machine)} crosscuts at most ` +
    `${say.length(facts.limit)}: ${say.length(facts.difference)} too long`,
  brief: (facts, say) => `part ${say.length(facts.difference)} too long to cut`,
  related: {
    machine: (values, say) => `${say.name(String(values['machine']))} is described here`,
    also: (values) => `the ${String(values['part'])} is too long as well`,
  },
  mends: {},
  help: `
The shop file says how long a part its machines can cut to length. This part is longer than any of them takes.

Cut it to length with a hand-held saw and a guide, or write down the machine that can do it.

\`\`\`fettle wrong
machine "sled" crosscuts at most 48
piece "box" {
  size 60 wide, 20 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
}
\`\`\`

\`\`\`fettle right
machine "sled" crosscuts at most 48
piece "box" {
  size 40 wide, 20 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
}
\`\`\`
`,
});
