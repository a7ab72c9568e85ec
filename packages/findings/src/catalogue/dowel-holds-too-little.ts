import { defineFinding, type Measure } from '../finding.ts';

/** Too little of a dowel is glued into one of the two parts. */
export const dowelHoldsTooLittle = defineFinding<{
  readonly part: string;
  readonly isEnd: boolean;
  readonly depth: Measure;
  readonly limit: Measure;
  readonly by: Measure;
}>({
  code: 'dowel-holds-too-little',
  severity: 'warning',
  title: 'A dowel that holds too little',
  headline: (facts, say) =>
    `the hole of the dowel is ${say.length(facts.depth)} deep in the ${facts.isEnd ? 'end' : 'face'} of the ${facts.part}, ` +
    `at least ${say.length(facts.limit)} holds: ${say.length(facts.by)} more, with a longer or a thinner dowel`,
  brief: (facts, say) => `${say.length(facts.by)} deeper holds`,
  related: {},
  mends: {},
  help: `
A dowel goes at least as deep into a face as it is thick, and half as much again into an end, where glue holds less (common
practice, no source). The face gets two thirds of its thickness; what is left of the dowel goes into the end.

\`\`\`fettle wrong
dowel "stub" 3/8 thick, 3/4 long
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, by dowels "stub"
  }
}
\`\`\`

\`\`\`fettle right
dowel "pin" 3/8 thick, 1-1/2 long
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, by dowels "pin"
  }
}
\`\`\`
`,
});
