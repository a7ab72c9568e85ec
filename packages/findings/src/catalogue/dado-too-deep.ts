import { defineFinding, type Measure } from '../finding.ts';

/** A dado, rabbet or groove takes more than half of the wood it is cut in. */
export const dadoTooDeep = defineFinding<{
  readonly part: string;
  readonly cut: 'dado' | 'rabbet' | 'groove';
  readonly across: 'thick' | 'wide';
  readonly depth: Measure;
  readonly thickness: Measure;
  readonly limit: Measure;
}>({
  code: 'dado-too-deep',
  severity: 'warning',
  title: 'A cut that takes more than half of the wood',
  headline: (facts, say) =>
    `the ${facts.cut} is ${say.length(facts.depth)} deep in the ${facts.part}, ${say.length(facts.thickness)} ${facts.across}: ` +
    `more than half of it, ${say.length(facts.limit)}`,
  brief: (facts, say) => `a ${facts.cut} deeper than ${say.length(facts.limit)}`,
  related: {},
  mends: { shallower: (values, say) => `Make it ${say.length(values['size'] as Measure)} deep` },
  help: `
A dado is about a third as deep as the wood is thick, and never deeper than half of it (from memory): what is left has to
carry. So it is with a rabbet, and with the groove for a panel in the edge of a stile or a rail.

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
