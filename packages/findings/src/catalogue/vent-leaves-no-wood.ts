import { defineFinding, type Measure } from '../finding.ts';

/** A vent comes too near to an edge of what it is cut through, or beyond it. */
export const ventLeavesNoWood = defineFinding<{
  readonly part: string;
  readonly edge: 'left' | 'right' | 'upper' | 'lower';
  readonly left: Measure;
  readonly limit: Measure;
  readonly beyond: 'no' | 'yes';
}>({
  code: 'vent-leaves-no-wood',
  severity: 'warning',
  title: 'A vent too near an edge',
  headline: (facts, say) =>
    facts.beyond === 'yes'
      ? `the vent goes ${say.length(facts.left)} beyond the ${facts.edge} edge of the ${facts.part}`
      : `the vent leaves ${say.length(facts.left)} at the ${facts.edge} edge of the ${facts.part}: less than ` +
        `${say.length(facts.limit)} breaks`,
  brief: (facts, say) =>
    facts.beyond === 'yes' ? `${say.length(facts.left)} beyond the edge` : `${say.length(facts.left)} at the edge`,
  related: {},
  mends: {
    move: (values, say) => `Begin it ${say.length(values['size'] as Measure)} up`,
    smaller: (values, say) => `Make it ${say.length(values['size'] as Measure)} there`,
  },
  help: `
What is left between an opening and the edge of its front, its box or the back has to hold, and to take a hinge or a
groove: at least 3/4" or 20 mm (common practice, no source).

\`\`\`fettle wrong
piece "box" {
  size 18 wide, 20 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   back thick 1/4, applied }
  face inset, gap 1/8 {
    door "onions" rest, hinged left { vent 6 wide, 2 high, 1/2 up }
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 18 wide, 20 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   back thick 1/4, applied }
  face inset, gap 1/8 {
    door "onions" rest, hinged left { vent 6 wide, 2 high, 2 up }
    fronts thick 3/4
  }
}
\`\`\`
`,
});
