import { defineFinding, type Measure } from '../finding.ts';

/** A cut that should stop within the wood comes out on the other side. */
export const jointBreaksThrough = defineFinding<{
  readonly part: string;
  readonly what: string;
  readonly depth: Measure;
  readonly thickness: Measure;
  readonly by: Measure;
}>({
  code: 'joint-breaks-through',
  severity: 'error',
  title: 'A joint that breaks through',
  headline: (facts, say) =>
    `the ${facts.what} is ${say.length(facts.depth)} deep in ${say.length(facts.thickness)} of the ${facts.part}: ` +
    (leavesNothing(facts.by) ? 'no wood is left' : `it breaks through by ${say.length(facts.by)}`),
  brief: (facts, say) => (leavesNothing(facts.by) ? 'leaves no wood' : `breaks through by ${say.length(facts.by)}`),
  related: {},
  mends: { shallower: (values, say) => `Make it ${say.length(values['size'] as Measure)} deep` },
  help: `
What is cut from one face must leave wood before the other: a mortise at least 1/8" (from memory), a dado half of the
thickness. A shorter tenon, a shorter screw or a shallower dado stays inside.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, in dado 7/8 deep
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, in dado 1/4 deep
  }
}
\`\`\`
`,
});

/** Just as deep as the wood is thick. */
function leavesNothing(by: Measure): boolean {
  return by.exactInches === '0';
}
