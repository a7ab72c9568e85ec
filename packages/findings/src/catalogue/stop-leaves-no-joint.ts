import { defineFinding, type Measure } from '../finding.ts';

/** A stopped dado begins behind what should go into it. */
export const stopLeavesNoJoint = defineFinding<{
  readonly part: string;
  readonly stop: Measure;
  readonly depth: Measure;
}>({
  code: 'stop-leaves-no-joint',
  severity: 'error',
  title: 'A stop that leaves no joint',
  headline: (facts, say) =>
    `the dado stops ${say.length(facts.stop)} from the front, and the ${facts.part} ends ${say.length(facts.depth)} from ` +
    'it: nothing is left of the joint',
  brief: () => 'nothing is left of the joint',
  related: {},
  mends: {},
  help: `
A stop is a little of the front, usually 3/8" to 3/4", so that the dado does not show. Where it is as long as the part is
deep, no dado is left.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, in dado 1/4 deep, stopped 14 from front
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, in dado 1/4 deep, stopped 1/2 from front
  }
}
\`\`\`
`,
});
