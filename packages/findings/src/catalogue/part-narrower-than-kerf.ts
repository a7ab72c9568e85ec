import { defineFinding, type Measure } from '../finding.ts';

/** A part that is no wider than what the blade takes. */
export const partNarrowerThanKerf = defineFinding<{
  readonly part: string;
  readonly size: Measure;
  readonly machine: string;
  readonly kerf: Measure;
}>({
  code: 'part-narrower-than-kerf',
  severity: 'warning',
  title: 'A part no wider than the kerf',
  headline: (facts, say) =>
    `the ${facts.part} is ${say.length(facts.size)} wide, the kerf of ${say.name(facts.machine)} ` +
    `${say.length(facts.kerf)}: the blade takes as much as it leaves`,
  brief: () => 'part no wider than the kerf',
  related: {
    machine: (values, say) => `${say.name(String(values['machine']))} is described here`,
    also: (values) => `the ${String(values['part'])} is no wider either`,
  },
  mends: {},
  help: `
Of a part that is no wider than the kerf more wood becomes dust than remains, and it cannot be held while it is cut. Make
it wider, or cut it from something thin that lies flat.

\`\`\`fettle wrong
sheet "ply" actual 3/4, 96 long, 48 wide
machine "saw" kerf 1/8
piece "box" {
  size 30 wide, 36 high, 12 deep
  case {
    top "ply", over sides
    sides "ply"
    bottom "ply", between sides
    stretchers 1/8 wide of "ply", under top
  }
}
\`\`\`

\`\`\`fettle right
sheet "ply" actual 3/4, 96 long, 48 wide
machine "saw" kerf 1/8
piece "box" {
  size 30 wide, 36 high, 12 deep
  case {
    top "ply", over sides
    sides "ply"
    bottom "ply", between sides
    stretchers 3 wide of "ply", under top
  }
}
\`\`\`
`,
});
