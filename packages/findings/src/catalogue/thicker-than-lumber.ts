import { defineFinding, type Measure } from '../finding.ts';

/** A solid part thicker than the thickest lumber when it is surfaced. */
export const thickerThanLumber = defineFinding<{
  readonly part: string;
  readonly stock: string;
  readonly size: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'thicker-than-lumber',
  severity: 'warning',
  title: 'A part thicker than any lumber',
  headline: (facts, say) =>
    `the ${facts.part} is ${say.length(facts.size)} thick, the thickest lumber is ${say.length(facts.limit)} when it is ` +
    `surfaced: ${say.length(facts.difference)} too thick`,
  brief: (facts, say) => `part ${say.length(facts.difference)} too thick for any lumber`,
  related: {
    stock: (values, say) => `${say.name(String(values['stock']))} is described here`,
    also: (values) => `the ${String(values['part'])} is too thick as well`,
  },
  mends: {},
  help: `
Lumber is sawn to a few thicknesses. Rough 4 inches, the thickest that yards keep, leave 3-3/4 inches when both faces of a
hardwood are surfaced, 3-1/2 of a softwood. A thicker part is glued up from thinner boards, which no plan can do by
itself.

\`\`\`fettle wrong
board "ash" any thickness, 8 wide, 96 long
piece "bench" {
  size 30 wide, 36 high, 12 deep
  case { sides "ash" thick 3-7/8   bottom thick 3/4, between sides }
}
\`\`\`

\`\`\`fettle right
board "ash" any thickness, 8 wide, 96 long
piece "bench" {
  size 30 wide, 36 high, 12 deep
  case { sides "ash" thick 3-3/4   bottom thick 3/4, between sides }
}
\`\`\`
`,
});
