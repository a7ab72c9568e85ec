import { defineFinding } from '../finding.ts';

export const nameNotClosed = defineFinding<{ readonly name: string }>({
  code: 'name-not-closed',
  severity: 'error',
  title: 'A name without its closing mark',
  headline: (facts, say) => `the name ${say.name(facts.name)} has no closing quotation mark on its line`,
  brief: () => 'a name without its closing mark',
  related: {},
  mends: { close: () => 'Close the name with "' },
  help: `
A name stands between two quotation marks on one line. Without the second one it runs on to the end of the line, or to
the next brace.

\`\`\`fettle wrong
use "shop.fettle
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides "birch ply" }
}
\`\`\`

\`\`\`fettle right
use "shop.fettle"
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides "birch ply" }
}
\`\`\`
`,
});
