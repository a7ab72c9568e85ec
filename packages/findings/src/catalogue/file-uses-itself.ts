import { defineFinding } from '../finding.ts';

/** A file that says it uses itself. */
export const fileUsesItself = defineFinding<{ readonly path: string }>({
  code: 'file-uses-itself',
  severity: 'warning',
  title: 'A file that uses itself',
  headline: (facts, say) => `${say.name(facts.path)} is this very file, whose names are known here anyway`,
  brief: () => 'a file uses itself',
  related: {},
  mends: { remove: (values, say) => `Take out the use of ${say.name(String(values['path']))}` },
  help: `
\`use\` makes the names of another file known. The names of this file are known without it, so another file was probably
meant.

\`\`\`fettle wrong
use "piece.fettle"
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`

\`\`\`fettle right
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`
`,
});
