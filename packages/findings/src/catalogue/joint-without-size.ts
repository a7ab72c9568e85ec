import { defineFinding, type Measure } from '../finding.ts';

/** A size of a joint is nothing or less. */
export const jointWithoutSize = defineFinding<{
  /** 'the depth of the dado' */
  readonly words: string;
  readonly size: Measure;
}>({
  code: 'joint-without-size',
  severity: 'error',
  title: 'A joint without a size',
  headline: (facts, say) => `${facts.words} is ${say.length(facts.size)}: it has to be more than nothing`,
  brief: (facts) => `${facts.words} is nothing or less`,
  related: {},
  mends: {},
  help: `
A dado without depth, a tenon without length or fasteners no distance apart are no joint. Where parts merely meet, leave
the words out; where the usual size will do, leave the size out.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, in dado 0 deep
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, in dado
  }
}
\`\`\`
`,
});
