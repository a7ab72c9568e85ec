import { defineFinding } from '../finding.ts';

/** Stock declared beside the pieces of one file, of which none is made. */
export const stockNeverUsed = defineFinding<{ readonly name: string }>({
  code: 'stock-never-used',
  severity: 'note',
  title: 'Stock of which nothing is made',
  headline: (facts, say) => `nothing in this file is made of ${say.name(facts.name)}`,
  related: {},
  mends: { remove: (values, say) => `Take out ${say.name(String(values['name']))}` },
  help: `
Stock that is declared in the same file as the pieces is there for them. In a shop file it may wait for its piece.

\`\`\`fettle wrong
sheet "birch ply" nominal 3/4, actual 23/32, 96 long, 48 wide
sheet "oak ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides "birch ply" }
}
\`\`\`

\`\`\`fettle right
sheet "birch ply" nominal 3/4, actual 23/32, 96 long, 48 wide
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides "birch ply" }
}
\`\`\`
`,
});
