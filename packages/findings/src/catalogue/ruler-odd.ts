import { defineFinding } from '../finding.ts';

/** The finest mark of the ruler is said to be one that no ruler has. */
export const rulerOdd = defineFinding<{ readonly words: string; readonly unit: string; readonly usual: string }>({
  code: 'ruler-odd',
  severity: 'warning',
  title: 'A ruler that nobody has',
  headline: (facts) => `no ruler in ${facts.unit} has marks ${facts.words} apart; one with ${facts.usual} is usual`,
  brief: (facts) => `a ruler with marks ${facts.words} apart`,
  related: {},
  mends: { write: (values) => `Write ${values['ruler']}` },
  help: `
\`units inches to 1/32\` names the finest mark of the ruler that sizes are shown on. Inch rulers are divided into halves,
quarters and on to 1/64, or into tenths and hundredths; metric ones into whole, half and tenth parts. Sums do not depend
on the ruler: they stay exact.

\`\`\`fettle wrong
piece "shelf unit" {
  units inches to 1/30
  size 30 wide, 36 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`

\`\`\`fettle right
piece "shelf unit" {
  units inches to 1/32
  size 30 wide, 36 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`
`,
});
