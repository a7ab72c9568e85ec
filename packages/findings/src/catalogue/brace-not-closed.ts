import { defineFinding } from '../finding.ts';

export const braceNotClosed = defineFinding<{ readonly word: string }>({
  code: 'brace-not-closed',
  severity: 'error',
  title: 'A brace that is not closed',
  headline: (facts) =>
    `the '{' after '${facts.word}' is never closed; by the way the lines are indented it ends before the next line at this depth`,
  related: {},
  mends: { close: () => `Close it with '}'` },
  help: `
Every '{' needs its '}'. The braces of this text do not balance, so the indentation of the lines was taken as a guide.

\`\`\`fettle wrong
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case {
    sides thick 3/4
  face inset {
    open rest
  }
}
\`\`\`

\`\`\`fettle right
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case {
    sides thick 3/4
  }
  face inset {
    open rest
  }
}
\`\`\`
`,
});
