import { defineFinding } from '../finding.ts';

export const sizeIncomplete = defineFinding<{ readonly missing: string }>({
  code: 'size-incomplete',
  severity: 'warning',
  title: 'A piece whose size is not complete',
  headline: (facts) => `the piece has no ${facts.missing} yet, so its parts cannot be worked out`,
  brief: (facts) => `no ${facts.missing} yet`,
  related: {},
  mends: {},
  help: `
Width, height and depth of a piece are said in one line: \`size 60 wide, 34 high, 17 deep\`.

\`\`\`fettle wrong
piece "shelf unit" {
  size 30 wide, 36 high
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
