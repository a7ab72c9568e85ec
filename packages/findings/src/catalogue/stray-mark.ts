import { defineFinding } from '../finding.ts';

/** `count` marks that stand one behind the other, of which `mark` is the first few; they are one slip. */
export const strayMark = defineFinding<{ readonly mark: string; readonly count: number }>({
  code: 'stray-mark',
  severity: 'error',
  title: 'A mark that belongs to nothing',
  headline: (facts) =>
    facts.count === 1
      ? `'${facts.mark}' belongs to nothing here`
      : `these ${facts.count} marks belong to nothing here: '${facts.mark}'`,
  brief: (facts) => (facts.count === 1 ? `a stray '${facts.mark}'` : `${facts.count} stray marks`),
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
