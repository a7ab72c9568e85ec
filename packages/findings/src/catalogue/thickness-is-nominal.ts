import { defineFinding, type Measure } from '../finding.ts';

/** The nominal thickness is written and the actual one is used. */
export const thicknessIsNominal = defineFinding<{
  readonly stock: string;
  readonly nominal: Measure;
  readonly actual: Measure;
}>({
  code: 'thickness-is-nominal',
  severity: 'note',
  title: 'A nominal thickness stands for the actual one',
  headline: (facts, say) =>
    `${say.length(facts.nominal)} is what the yard calls ${say.name(facts.stock)}; it is ` +
    `${say.length(facts.actual)}, and fits use ${say.length(facts.actual)}`,
  related: { stock: (values, say) => `${say.name(String(values['stock']))} is described here` },
  mends: { 'use-actual': (values, say) => `Write ${say.length(values['size'] as Measure)}` },
  help: `
A sheet sold as 3/4" is often 23/32". Both figures stand in the shop file. Where a part asks for the nominal one, the
actual one is meant: sums, grooves and dadoes are worked out with it.

\`\`\`fettle wrong
sheet "birch ply" nominal 3/4, actual 23/32, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case { sides "birch ply" thick 3/4 }
}
\`\`\`

\`\`\`fettle right
sheet "birch ply" nominal 3/4, actual 23/32, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case { sides "birch ply" thick 23/32 }
}
\`\`\`
`,
});
