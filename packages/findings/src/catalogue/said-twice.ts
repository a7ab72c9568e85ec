import { defineFinding } from '../finding.ts';

export const saidTwice = defineFinding<{ readonly words: string }>({
  code: 'said-twice',
  severity: 'warning',
  title: 'Something said twice',
  headline: (facts) => `'${facts.words}' is said already; only the first one counts`,
  brief: (facts) => `'${facts.words}' said twice`,
  related: { first: () => 'said first here' },
  mends: { remove: (values) => `Take out the second '${values['words']}'` },
  help: `
One fact is said once. Where it is said again, the first one counts.

\`\`\`fettle wrong
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  size 30 wide, 36 high, 14 deep
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
