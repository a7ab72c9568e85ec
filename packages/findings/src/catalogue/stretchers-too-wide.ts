import { defineFinding, type Measure } from '../finding.ts';

/** The front and the rear stretcher run into each other. */
export const stretchersTooWide = defineFinding<{
  readonly width: Measure;
  /** Half the depth of the body. */
  readonly limit: Measure;
  readonly depth: Measure;
  readonly difference: Measure;
}>({
  code: 'stretchers-too-wide',
  severity: 'error',
  title: 'Stretchers that run into each other',
  headline: (facts, say) =>
    `two stretchers ${say.length(facts.width)} wide do not lie in a body ${say.length(facts.depth)} deep: each has ` +
    `${say.length(facts.limit)}, ${say.length(facts.difference)} less`,
  brief: (facts, say) => `stretchers ${say.length(facts.difference)} too wide`,
  related: {},
  mends: { narrower: (values, say) => `Make them ${say.length(values['size'] as Measure)} wide` },
  help: `
Two stretchers lie flat under the top, one along the front and one along the back. Neither can be wider than half of
what the body is deep. A case closed by one wide panel has a top between its sides instead.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 20 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   stretchers thick 3/4, 7 wide }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 20 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   stretchers thick 3/4, 4 wide }
}
\`\`\`
`,
});
