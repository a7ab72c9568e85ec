import { defineFinding } from '../finding.ts';

/** One space says twice, in different words, how much of its row or stack it takes. */
export const sizeSaidInTwoWays = defineFinding<{
  /** What counts for nothing. */
  readonly words: string;
  /** What is followed. */
  readonly followed: string;
  readonly axis: 'width' | 'height';
}>({
  code: 'size-said-in-two-ways',
  severity: 'warning',
  title: 'A size said in two ways',
  headline: (facts) =>
    `the ${facts.axis} is said by '${facts.followed}' already, so '${facts.words}' counts for nothing`,
  brief: () => 'a size said in two ways',
  related: { followed: () => 'this is followed' },
  mends: {
    remove: (values) => `Take out '${values['words']}'`,
    'remove-other': (values) => `Take out '${values['words']}'`,
  },
  help: `
Along its row or stack a space takes a size, a share, the rest, or as much as another: one of them. Front and opening
follow from each other, so only one of the two is said.

\`\`\`fettle wrong
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    drawer "linen" front 9 high, share 2
    drawer "blankets" rest
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    drawer "linen" front 9 high
    drawer "blankets" rest
    fronts thick 3/4
  }
}
\`\`\`
`,
});
