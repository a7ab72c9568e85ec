import { defineFinding, type Measure } from '../finding.ts';

/** A part of a sheet that is longer than any cut along it can be. */
export const ripTooLong = defineFinding<{
  readonly part: string;
  readonly size: Measure;
  readonly machine: string;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'rip-too-long',
  severity: 'warning',
  title: 'A part too long to rip',
  headline: (facts, say) =>
    `the ${facts.part} is ${say.length(facts.size)} long, ${say.name(facts.machine)} rips at most ` +
    `${say.length(facts.limit)} long: ${say.length(facts.difference)} too long`,
  brief: (facts, say) => `part ${say.length(facts.difference)} too long to rip`,
  related: {
    machine: (values, say) => `${say.name(String(values['machine']))} is described here`,
    also: (values) => `the ${String(values['part'])} is too long as well`,
  },
  mends: {},
  help: `
A part of a sheet is cut along its whole length unless it is as wide as the sheet. Where no machine of the shop makes so
long a cut, no cutting plan holds it.

\`\`\`fettle wrong
sheet "ply" actual 3/4, 96 long, 48 wide
machine "track saw" rips at most 30 long
piece "box" {
  size 30 wide, 36 high, 12 deep
  case { sides "ply"   bottom "ply", between sides }
}
\`\`\`

\`\`\`fettle right
sheet "ply" actual 3/4, 96 long, 48 wide
machine "track saw" rips at most 98 long
piece "box" {
  size 30 wide, 36 high, 12 deep
  case { sides "ply"   bottom "ply", between sides }
}
\`\`\`
`,
});
