import { defineFinding } from '../finding.ts';

/** One mixed number in parentheses, as if something were taken away. */
export const looksLikeDifference = defineFinding<{
  /** Without the parentheses: `10-3/4`. */
  readonly mixed: string;
}>({
  code: 'looks-like-difference',
  severity: 'warning',
  title: 'A mixed number that looks like a difference',
  headline: (facts) =>
    `'(${facts.mixed})' is one mixed number, nothing is taken away in it; a minus has a space on each side`,
  brief: (facts) => `(${facts.mixed}): number or difference?`,
  related: {},
  mends: {
    mixed: (values) => `Write the mixed number ${values['mixed']}`,
    difference: (values) => `Write the difference ${values['difference']}`,
  },
  help: `
\`10-3/4\` is ten and three quarters, with parentheses around it or without. Whoever means ten less three quarters writes
the minus with a space on each side.

\`\`\`fettle wrong
piece "shelf unit" {
  size 2 * (10-3/4) wide, 30 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`

\`\`\`fettle right
piece "shelf unit" {
  size 2 * (10 - 3/4) wide, 30 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`
`,
});
