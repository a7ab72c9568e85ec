import { defineFinding, type Measure } from '../finding.ts';

/** A dado takes more than half of the wood it is cut in. */
export const dadoTooDeep = defineFinding<{
  readonly part: string;
  readonly depth: Measure;
  readonly thickness: Measure;
  readonly limit: Measure;
}>({
  code: 'dado-too-deep',
  severity: 'warning',
  title: 'A dado that is too deep',
  headline: (facts, say) =>
    `the dado is ${say.length(facts.depth)} deep in the ${facts.part}, ${say.length(facts.thickness)} thick: more than ` +
    `half of it, ${say.length(facts.limit)}`,
  brief: (facts, say) => `a dado deeper than ${say.length(facts.limit)}`,
  related: {},
  mends: { shallower: (values, say) => `Make it ${say.length(values['size'] as Measure)} deep` },
  help: `
A dado is about a third as deep as the wood is thick, and never deeper than half of it (from memory): what is left has to
carry.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, in dado 1/2 deep
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, in dado 3/8 deep
  }
}
\`\`\`
`,
});
