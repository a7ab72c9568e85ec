import { defineFinding, type Measure } from '../finding.ts';

/** None of the tools of the shop makes this cut. */
export const noToolForJoint = defineFinding<{
  readonly part: string;
  readonly what: string;
  readonly width: Measure;
  readonly depth: Measure;
  readonly why: 'too-wide' | 'too-shallow' | 'too-thick';
  /** The tool that comes nearest, and its figure. */
  readonly cutter: string;
  readonly cuts: Measure;
}>({
  code: 'no-tool-for-joint',
  severity: 'warning',
  title: 'No tool of the shop makes this joint',
  headline: (facts, say) => {
    const what = `the ${facts.what} in the ${facts.part} is ${say.length(facts.width)} wide`;
    const tool = say.name(facts.cutter);
    switch (facts.why) {
      case 'too-wide':
        return `${what}, and no tool is that narrow: ${tool} cuts ${say.length(facts.cuts)}`;
      case 'too-shallow':
        return `${what} and ${say.length(facts.depth)} deep, and ${tool} goes only ${say.length(facts.cuts)} deep`;
      case 'too-thick':
        return `${what}, and no mortising tool is: the widest, ${tool}, makes ${say.length(facts.cuts)}`;
      default: {
        const unknown: never = facts.why;
        return String(unknown);
      }
    }
  },
  brief: (facts, say) => `no tool for a cut of ${say.length(facts.width)}`,
  related: { cutter: (values, say) => `${say.name(String(values['cutter']))} is described here` },
  mends: {},
  help: `
The shop file lists the cutters there are. A dado wider than any of them is cut in two passes; one that is narrower or
deeper cannot be cut. A mortise is as wide as its chisel or bit.

\`\`\`fettle wrong
cutter "3/4 bit" bit, cuts 3/4 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 1/2, between sides, in dado 1/4 deep
  }
}
\`\`\`

\`\`\`fettle right
cutter "1/2 bit" bit, cuts 1/2 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 1/2, between sides, in dado 1/4 deep
  }
}
\`\`\`
`,
});
