import { defineFinding } from '../finding.ts';

/** A cut ends inside the wood, and the shop has only blades for it. */
export const stoppedCutNeedsBit = defineFinding<{
  readonly part: string;
  readonly what: string;
  /** The blade that would cut it. */
  readonly cutter: string;
}>({
  code: 'stopped-cut-needs-bit',
  severity: 'warning',
  title: 'A stopped cut and no router bit',
  headline: (facts, say) =>
    `the ${facts.what} stops inside the ${facts.part}, and ${say.name(facts.cutter)} is a blade that runs out: a router ` +
    'bit is needed',
  brief: () => 'a stopped cut needs a router bit',
  related: { cutter: (values, say) => `${say.name(String(values['cutter']))} is described here` },
  mends: {},
  help: `
A saw blade or a dado stack leaves a curve at the end of a cut that stops, longer than the stop itself. A router bit
stops where one stops it; the corners are then squared with a chisel, or what goes in is rounded.

\`\`\`fettle wrong
cutter "dado stack" blade, cuts 1/4 to 7/8 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, in dado 1/4 deep, stopped 3/8 from front
  }
}
\`\`\`

\`\`\`fettle right
cutter "3/4 bit" bit, cuts 3/4 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, in dado 1/4 deep, stopped 3/8 from front
  }
}
\`\`\`
`,
});
