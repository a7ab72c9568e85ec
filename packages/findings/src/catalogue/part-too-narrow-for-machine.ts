import { defineFinding, type Measure } from '../finding.ts';

/** A strip narrower than the machines of the shop cut safely. */
export const partTooNarrowForMachine = defineFinding<{
  readonly part: string;
  readonly size: Measure;
  readonly machine: string;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'part-too-narrow-for-machine',
  severity: 'warning',
  title: 'A part too narrow for the machine',
  headline: (facts, say) =>
    `the ${facts.part} is ${say.length(facts.size)} wide, ${say.name(facts.machine)} cuts no strip under ` +
    `${say.length(facts.limit)}: ${say.length(facts.difference)} too narrow`,
  brief: (facts, say) => `part ${say.length(facts.difference)} too narrow to cut`,
  related: {
    machine: (values, say) => `${say.name(String(values['machine']))} is described here`,
    also: (values) => `the ${String(values['part'])} is too narrow as well`,
  },
  mends: {},
  help: `
Between fence and blade a narrow strip cannot be held. A part that is narrower than any machine of the shop cuts is in no
cutting plan: cut it from a wider piece some other way, or write down the machine that does it.

\`\`\`fettle wrong
sheet "ply" actual 3/4, 96 long, 48 wide
machine "saw" least width 13
piece "box" {
  size 30 wide, 36 high, 12 deep
  case { sides "ply"   bottom "ply", between sides }
}
\`\`\`

\`\`\`fettle right
sheet "ply" actual 3/4, 96 long, 48 wide
machine "saw" least width 1
piece "box" {
  size 30 wide, 36 high, 12 deep
  case { sides "ply"   bottom "ply", between sides }
}
\`\`\`
`,
});
