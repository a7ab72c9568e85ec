import { defineFinding, type Measure } from '../finding.ts';

/** A tenon is much thinner or thicker than a third of its stock. */
export const tenonOffAThird = defineFinding<{
  readonly part: string;
  readonly tenon: Measure;
  readonly thickness: Measure;
  readonly third: Measure;
}>({
  code: 'tenon-off-a-third',
  severity: 'warning',
  title: 'A tenon far from a third',
  headline: (facts, say) =>
    `the tenon of the ${facts.part} is ${say.length(facts.tenon)} thick: a third of ${say.length(facts.thickness)} is ` +
    say.length(facts.third),
  brief: (facts, say) => `a third is ${say.length(facts.third)}`,
  related: {},
  mends: { third: (values, say) => `Make it ${say.length(values['size'] as Measure)} thick` },
  help: `
A tenon is about a third as thick as its stock, rounded to a tool (from memory): thinner it breaks, thicker the walls of
the mortise do. Less than a quarter and more than half are told here.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, by tenons 3/8 long, tenons 1/8 thick
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, by tenons 3/8 long, tenons 1/4 thick
  }
}
\`\`\`
`,
});
