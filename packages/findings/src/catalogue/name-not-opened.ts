import { defineFinding } from '../finding.ts';

export const nameNotOpened = defineFinding<{ readonly name: string }>({
  code: 'name-not-opened',
  severity: 'error',
  title: 'A name without its opening mark',
  headline: (facts, say) => `the name ${say.name(facts.name)} has no opening quotation mark`,
  brief: () => 'a name without its opening mark',
  related: {},
  mends: { open: () => 'Open the name with "' },
  help: `
A name stands between two quotation marks on one line. Here only the second one is written; the words before it that
are no words of the language were taken for the name.

\`\`\`fettle wrong
use "shop.fettle"
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides of oak" thick 3/4 }
}
\`\`\`

\`\`\`fettle right
use "shop.fettle"
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides of "oak" thick 3/4 }
}
\`\`\`
`,
});
