import { defineFinding, type Measure } from '../finding.ts';

/** A dado or another joint runs out through the strip on an edge. */
export const jointThroughEdging = defineFinding<{
  readonly part: string;
  readonly what: string;
  readonly edging: Measure;
}>({
  code: 'joint-through-edging',
  severity: 'warning',
  title: 'A joint through edge banding',
  headline: (facts, say) =>
    `the ${facts.what} cuts through the edging of the ${facts.part}, ${say.length(facts.edging)} thick, and shows`,
  brief: () => 'a joint cuts through the edging',
  related: { other: () => 'The edging is asked for here' },
  mends: { stop: (values, say) => `Stop it ${say.length(values['size'] as Measure)} from the front` },
  help: `
A dado or lock joint does not run through edge banding in custom and premium work (Architectural Woodwork Standards,
1st ed., 2009, 10-4.4.4.5). Stopped behind the edging it does not show.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4 { edging thick 1/4, at front }
    bottom thick 3/4, between sides, in dado 1/4 deep
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4 { edging thick 1/4, at front }
    bottom thick 3/4, between sides, in dado 1/4 deep, stopped 3/8 from front
  }
}
\`\`\`
`,
});
