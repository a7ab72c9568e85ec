import { defineFinding, type Measure } from '../finding.ts';

/** A part too wide to cut across: no machine of the shop takes it. */
export const crosscutTooWide = defineFinding<{
  readonly part: string;
  readonly size: Measure;
  readonly machine: string;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'crosscut-too-wide',
  severity: 'warning',
  title: 'A part too wide to cut across',
  headline: (facts, say) =>
    `the ${facts.part} is ${say.length(facts.size)} wide, ${say.name(facts.machine)} crosscuts at most ` +
    `${say.length(facts.limit)} wide: ${say.length(facts.difference)} too wide`,
  brief: (facts, say) => `part ${say.length(facts.difference)} too wide to cut`,
  related: {
    machine: (values, say) => `${say.name(String(values['machine']))} is described here`,
    also: (values) => `the ${String(values['part'])} is too wide as well`,
  },
  mends: {},
  help: `
The shop file says how wide a panel its machines can cut across. This part is wider than any of them takes.

Cut it with a hand-held saw and a guide, or write down the machine that can do it.

\`\`\`fettle wrong
machine "sled" crosscuts at most 16 wide
piece "box" {
  size 40 wide, 20 high, 22 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
}
\`\`\`

\`\`\`fettle right
machine "sled" crosscuts at most 16 wide
piece "box" {
  size 40 wide, 20 high, 14 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
}
\`\`\`
`,
});
