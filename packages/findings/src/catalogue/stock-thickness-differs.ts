import { defineFinding, type Measure } from '../finding.ts';

/** A part asks for a thickness that its stock does not have. */
export const stockThicknessDiffers = defineFinding<{
  readonly stock: string;
  readonly form: 'sheet' | 'board';
  readonly asked: Measure;
  /** What the caliper reads, or what the yard calls it where nothing else is known. */
  readonly there: Measure;
  readonly difference: Measure;
}>({
  code: 'stock-thickness-differs',
  severity: 'error',
  title: 'A thickness that the stock does not have',
  headline: (facts, say) => {
    const asked = say.length(facts.asked);
    const there = say.length(facts.there);
    const by = say.length(facts.difference);
    return facts.form === 'sheet'
      ? `${asked} thick is asked for, ${say.name(facts.stock)} is ${there}: ${by} apart, and a sheet is used as it comes`
      : `${asked} thick is asked for, ${say.name(facts.stock)} is ${there} before it is planed: ${by} too little`;
  },
  brief: (facts, say) => `stock ${say.length(facts.difference)} ${facts.form === 'sheet' ? 'off' : 'too thin'}`,
  related: { stock: (values, say) => `${say.name(String(values['stock']))} is described here` },
  mends: { 'use-actual': (values, say) => `Make it ${say.length(values['size'] as Measure)} thick` },
  help: `
A sheet is as thick as it comes. A part of it can be neither thicker nor thinner, and every joint is cut to what the
caliper reads. A board can be planed thinner, never thicker.

Write the thickness the stock has, write none at all, or name another stock.

\`\`\`fettle wrong
sheet "ash panel" nominal 3/4, actual 23/32, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case { sides "ash panel" thick 5/8 }
}
\`\`\`

\`\`\`fettle right
sheet "ash panel" nominal 3/4, actual 23/32, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case { sides "ash panel" }
}
\`\`\`
`,
});
