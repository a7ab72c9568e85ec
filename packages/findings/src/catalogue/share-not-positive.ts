import { defineFinding } from '../finding.ts';

/** A share of nothing, or of less. */
export const shareNotPositive = defineFinding<{
  /** The weight as a fraction in lowest terms, such as `0` or `-1/2`. */
  readonly weight: string;
}>({
  code: 'share-not-positive',
  severity: 'error',
  title: 'A share has to be more than nothing',
  headline: (facts) => `a share of ${facts.weight} leaves nothing: a share has to be more than 0`,
  brief: (facts) => `a share of ${facts.weight}`,
  related: {},
  mends: { 'one-share': () => 'Give it one share' },
  help: `
What is left of a row or a stack is divided by shares: a space with two shares gets twice as much as one with one share.
A space with no share, or with less than none, has no size.

\`\`\`fettle wrong
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "linen" share 0
    drawer "blankets" rest
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "linen" share 1/2
    drawer "blankets" share 1
    fronts thick 3/4
  }
}
\`\`\`
`,
});
