import { defineFinding } from '../finding.ts';

/** A used file from which no name is taken. */
export const fileNeverNeeded = defineFinding<{ readonly path: string }>({
  code: 'file-never-needed',
  severity: 'note',
  title: 'A used file that is not needed',
  headline: (facts, say) => `no name of ${say.name(facts.path)} is said in this file`,
  related: {},
  mends: { remove: (values, say) => `Stop using ${say.name(String(values['path']))}` },
  help: `
\`use\` makes the names of another file known. None of them is said here, and the file holds no machine or cutter whose
limits would count without being named.

\`\`\`fettle wrong
use "patterns.fettle"
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides thick 3/4 }
}
// file: patterns.fettle
pattern "wall case" { size 24 wide, 30 high, 12 deep   case { sides thick 3/4 } }
\`\`\`

\`\`\`fettle right
use "patterns.fettle"
piece "shelf unit" from "wall case"
// file: patterns.fettle
pattern "wall case" { size 24 wide, 30 high, 12 deep   case { sides thick 3/4 } }
\`\`\`
`,
});
