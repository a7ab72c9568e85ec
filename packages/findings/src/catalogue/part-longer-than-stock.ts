import { defineFinding, type Measure } from '../finding.ts';

/** A part does not come out of one piece of its stock. */
export const partLongerThanStock = defineFinding<{
  readonly part: string;
  readonly stock: string;
  readonly size: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'part-longer-than-stock',
  severity: 'error',
  title: 'A part longer than its stock',
  headline: (facts, say) =>
    `the ${facts.part} is ${say.length(facts.size)} long, ${say.name(facts.stock)} is ${say.length(facts.limit)} long: ` +
    `${say.length(facts.difference)} too long`,
  brief: (facts, say) => `part ${say.length(facts.difference)} too long`,
  related: {
    stock: (values, say) => `${say.name(String(values['stock']))} is described here`,
  },
  mends: { 'use-stock': (values, say) => `Use ${say.name(String(values['stock']))}` },
  help: `
A part is cut from one sheet or one board. Its length runs along the grain, and no stock of this name is that long.

Make the piece smaller, divide it into two cases, or name a stock that is longer. A stock without grain may be turned:
it is then measured both ways.

\`\`\`fettle wrong
sheet "ash panel" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 120 wide, 20 high, 12 deep
  case { sides thick 3/4   bottom "ash panel" }
}
\`\`\`

\`\`\`fettle right
sheet "ash panel" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 90 wide, 20 high, 12 deep
  case { sides thick 3/4   bottom "ash panel" }
}
\`\`\`
`,
});
