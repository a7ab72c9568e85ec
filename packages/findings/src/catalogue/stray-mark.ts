import { defineFinding } from '../finding.ts';

export const strayMark = defineFinding<{ readonly mark: string }>({
  code: 'stray-mark',
  severity: 'error',
  title: 'A mark that belongs to nothing',
  headline: (facts) => `'${facts.mark}' belongs to nothing here`,
  brief: (facts) => `a stray '${facts.mark}'`,
  related: {},
  mends: { remove: (values) => `Take out '${values['mark']}'` },
  help: `
A brace, a sign of arithmetic or some other mark stands where nothing can use it. It was left out when the text was
read.

\`\`\`fettle wrong
piece "shelf unit" {
  size 30 wide; 36 high, 12 deep
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
