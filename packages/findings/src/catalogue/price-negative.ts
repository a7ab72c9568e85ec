import { defineFinding } from '../finding.ts';

/** Stock or hardware of the shop that costs less than nothing. */
export const priceNegative = defineFinding<{
  readonly what: string;
  /** The amount as it is written. */
  readonly amount: string;
}>({
  code: 'price-negative',
  severity: 'error',
  title: 'A price below nothing',
  headline: (facts, say) =>
    `${say.name(facts.what)} costs ${facts.amount}, less than nothing: it would be left out of the cost of every piece`,
  brief: (facts) => `a price of ${facts.amount}`,
  related: {},
  mends: { write: (values) => `Write ${values['amount']}` },
  help: `
What sheets, boards and hardware cost is added up for the shopping list. A price is 0 or more, in the shop's own currency;
what is there already may cost 0.

\`\`\`fettle wrong
sheet "birch ply" actual 3/4, 96 long, 48 wide, costs -80 each
piece "box" {
  size 30 wide, 36 high, 12 deep
  case { sides "birch ply" }
}
\`\`\`

\`\`\`fettle right
sheet "birch ply" actual 3/4, 96 long, 48 wide, costs 80 each
piece "box" {
  size 30 wide, 36 high, 12 deep
  case { sides "birch ply" }
}
\`\`\`
`,
});
