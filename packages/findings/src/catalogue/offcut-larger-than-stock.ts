import { defineFinding, type Measure } from '../finding.ts';

/** An offcut that no sheet or board of its stock could leave. */
export const offcutLargerThanStock = defineFinding<{
  readonly what: string;
  readonly axis: 'long' | 'wide';
  readonly size: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'offcut-larger-than-stock',
  severity: 'warning',
  title: 'An offcut larger than what it was cut from',
  headline: (facts, say) =>
    `an offcut of ${say.name(facts.what)} is ${say.length(facts.size)} ${facts.axis}, ` +
    `${say.name(facts.what)} itself ${say.length(facts.limit)}: ${say.length(facts.difference)} too much`,
  brief: (facts, say) => `an offcut ${say.length(facts.difference)} too ${facts.axis}`,
  related: {},
  mends: { swap: () => 'Length and width the other way round' },
  help: `
An offcut lies in the stock as its stock does: its length runs along the grain. One that is longer or wider than what it
was cut from was measured across, or belongs to another stock.

\`\`\`fettle wrong
sheet "ply" actual 3/4, 96 long, 48 wide { offcut 20 long, 60 wide }
piece "box" {
  size 30 wide, 36 high, 12 deep
  case { sides "ply"   bottom "ply", between sides }
}
\`\`\`

\`\`\`fettle right
sheet "ply" actual 3/4, 96 long, 48 wide { offcut 60 long, 20 wide }
piece "box" {
  size 30 wide, 36 high, 12 deep
  case { sides "ply"   bottom "ply", between sides }
}
\`\`\`
`,
});
