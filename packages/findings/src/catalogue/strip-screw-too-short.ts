import { defineFinding, type Measure } from '../finding.ts';

/** The screw that is named for a strip of wood hardly reaches what the strip is to be fastened to. */
export const stripScrewTooShort = defineFinding<{
  readonly strip: 'runner' | 'cleat';
  readonly screw: string;
  readonly length: Measure;
  readonly through: Measure;
  readonly needed: Measure;
  readonly by: Measure;
}>({
  code: 'strip-screw-too-short',
  severity: 'error',
  title: 'Screws that do not reach through a runner or a cleat',
  headline: ({ strip, screw, length, through, needed, by }, say) =>
    `${say.name(screw)} is ${say.length(length)} long and goes through ${say.length(through)} of ${strip} before it ` +
    `holds: it has to be ${say.length(needed)} long, ${say.length(by)} more`,
  brief: ({ strip, by }, say) => `${strip} screws ${say.length(by)} too short`,
  related: { screw: (values, say) => `${say.name(String(values['screw']))} is described here` },
  mends: {
    thinner: (values, say) => `Make it ${say.length(values['size'] as Measure)} thick, which these screws hold`,
  },
  help: `
A runner carries a drawer, and a cleat a shelf, by what its screws hold behind it. They go through the whole strip first:
at least 1/4" or 6 mm of them has to be in the wood beyond (common practice, no source), and more is better. Name a
longer screw, or make the strip thinner; that a screw is not so long that it comes out on the other side is looked at as well.

\`\`\`fettle wrong
screw "No. 6" 3/4 long, pilot 1/8, clearance 9/64
piece "box" {
  size 20 wide, 12 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset, gap 1/8 {
    open "books" { shelves 1 on cleats { cleats thick 3/4, 1 high, by screws "No. 6" } }
  }
}
\`\`\`

\`\`\`fettle right
screw "No. 6" 1-1/4 long, pilot 1/8, clearance 9/64
piece "box" {
  size 20 wide, 12 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset, gap 1/8 {
    open "books" { shelves 1 on cleats { cleats thick 3/4, 1 high, by screws "No. 6" } }
  }
}
\`\`\`
`,
});
