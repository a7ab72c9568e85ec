import { defineFinding } from '../finding.ts';

export const braceNotOpened = defineFinding<{ readonly word: string }>({
  code: 'brace-not-opened',
  severity: 'error',
  title: 'A brace that is not opened',
  headline: (facts) => `what follows '${facts.word}' belongs inside it, and no '{' opens it`,
  brief: (facts) => `no '{' after '${facts.word}'`,
  related: {},
  mends: { open: () => `Open it with '{'` },
  help: `
What belongs inside a statement stands between '{' and '}'. Here the '{' is missing.

\`\`\`fettle wrong
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case
    sides thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case {
    sides thick 3/4
  }
}
\`\`\`
`,
});
