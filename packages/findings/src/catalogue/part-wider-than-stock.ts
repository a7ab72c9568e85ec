import { defineFinding, type Measure } from '../finding.ts';

/** A part does not come out of one piece of its stock. */
export const partWiderThanStock = defineFinding<{
  readonly part: string;
  readonly stock: string;
  readonly size: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'part-wider-than-stock',
  severity: 'error',
  title: 'A part wider than its sheet',
  headline: (facts, say) =>
    `the ${facts.part} is ${say.length(facts.size)} wide, ${say.name(facts.stock)} is ${say.length(facts.limit)} wide: ` +
    `${say.length(facts.difference)} too wide`,
  brief: (facts, say) => `part ${say.length(facts.difference)} too wide`,
  related: {
    stock: (values, say) => `${say.name(String(values['stock']))} is described here`,
  },
  mends: { 'use-stock': (values, say) => `Use ${say.name(String(values['stock']))}` },
  help: `
A part of a sheet is cut from one sheet. Its width runs across the grain, and no sheet of this name is that wide.

Make the piece smaller, or name a stock that is wider. Solid wood is glued up to any width, so boards are not judged.

\`\`\`fettle wrong
sheet "shelf board" nominal 3/4, actual 3/4, 96 long, 24 wide
piece "box" {
  size 40 wide, 20 high, 26 deep
  case { sides thick 3/4   bottom "shelf board" }
}
\`\`\`

\`\`\`fettle right
sheet "shelf board" nominal 3/4, actual 3/4, 96 long, 24 wide
piece "box" {
  size 40 wide, 20 high, 22 deep
  case { sides thick 3/4   bottom "shelf board" }
}
\`\`\`
`,
});
