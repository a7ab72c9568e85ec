import { defineFinding } from '../finding.ts';

/** A pattern in a file of pieces from which none of them is made. */
export const patternNeverUsed = defineFinding<{ readonly name: string }>({
  code: 'pattern-never-used',
  severity: 'note',
  title: 'A pattern from which nothing is made',
  headline: (facts, say) => `no piece of this file is made from the pattern ${say.name(facts.name)}`,
  related: {},
  mends: { remove: (values, say) => `Take out the pattern ${say.name(String(values['name']))}` },
  help: `
A pattern makes nothing by itself: a piece says that it is made from it, \`piece "A1" from "wall case"\`. A file that
holds only patterns is there for other files.

\`\`\`fettle wrong
pattern "wall case" { size 24 wide, 30 high, 12 deep   case { sides thick 3/4 } }
piece "A1" { size 24 wide, 30 high, 12 deep   case { sides thick 3/4 } }
\`\`\`

\`\`\`fettle right
pattern "wall case" { size 24 wide, 30 high, 12 deep   case { sides thick 3/4 } }
piece "A1" from "wall case"
\`\`\`
`,
});
