import { defineFinding } from '../finding.ts';

/** A difference that reads like a mixed number with spaces around its hyphen. */
export const looksLikeMixedNumber = defineFinding<{
  /** As written: `17 - 1/2`. */
  readonly words: string;
  /** The mixed number it may be meant for: `17-1/2`. */
  readonly mixed: string;
  /** What it is worked out as: `16-1/2`. */
  readonly result: string;
}>({
  code: 'looks-like-mixed-number',
  severity: 'warning',
  title: 'A difference that looks like a mixed number',
  headline: (facts) =>
    `'${facts.words}' is a difference and comes to ${facts.result}; the mixed number ${facts.mixed} has no spaces in it`,
  brief: (facts) => `${facts.words} comes to ${facts.result}`,
  related: {},
  mends: {
    mixed: (values) => `Write the mixed number ${values['mixed']}`,
    difference: (values) => `Write the difference ${values['difference']}`,
  },
  help: `
With a space on each side the hyphen is a minus: \`17 - 1/2\` is half an inch less than 17, \`17-1/2\` is half an inch
more. On paper the two look alike, so the language asks once. In parentheses a difference is taken as meant.

\`\`\`fettle wrong
piece "shelf unit" {
  size 17 - 1/2 wide, 30 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`

\`\`\`fettle right
piece "shelf unit" {
  size (17 - 1/2) wide, 30-1/2 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`
`,
});
