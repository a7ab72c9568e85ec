import { defineFinding, type Measure } from '../finding.ts';

/** A length less than nothing where only nothing or more can be meant. */
export const sizeNegative = defineFinding<{
  /** In the maker's words: 'overhang', 'gap'. */
  readonly words: string;
  readonly size: Measure;
}>({
  code: 'size-negative',
  severity: 'error',
  title: 'A length that is less than nothing',
  headline: (facts, say) => `the ${facts.words} is ${say.length(facts.size)}: it cannot be less than nothing`,
  brief: (facts, say) => `${facts.words} ${say.length(facts.size)}`,
  related: {},
  mends: { positive: (values, say) => `Take the minus away: ${say.length(values['size'] as Measure)}` },
  help: `
An overhang, a set-back, a gap, a reveal and what is left free around a drawer are measured from one thing to another.
There is nothing that could be less than nothing: most often the minus is a slip, or a sum has come out below zero.

\`\`\`fettle wrong
piece "shelf" {
  size 24 wide, 20 high, 12 deep
  case {
    top thick 3/4, over sides { overhang -1/2 at front }
    sides thick 3/4
    bottom thick 3/4, between sides
  }
}
\`\`\`

\`\`\`fettle right
piece "shelf" {
  size 24 wide, 20 high, 12 deep
  case {
    top thick 3/4, over sides { overhang 1/2 at front }
    sides thick 3/4
    bottom thick 3/4, between sides
  }
}
\`\`\`
`,
});
