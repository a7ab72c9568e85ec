import { defineFinding, type Measure } from '../finding.ts';

/** The stiles of a face frame leave some of the sides' front edges to be seen, and stand in the way of nothing. */
export const stileNarrowerThanSide = defineFinding<{
  readonly stile: Measure;
  readonly side: Measure;
  readonly difference: Measure;
}>({
  code: 'stile-narrower-than-side',
  severity: 'error',
  title: 'A stile narrower than the side behind it',
  headline: (facts, say) =>
    `the stiles are ${say.length(facts.stile)} wide, the sides behind them ${say.length(facts.side)} thick: the sides ` +
    `stand ${say.length(facts.difference)} into the opening`,
  brief: (facts, say) => `stiles ${say.length(facts.difference)} too narrow`,
  related: { sides: (values, say) => `the sides, ${say.length(values['side'] as Measure)} thick` },
  mends: { widen: (values, say) => `Make the stiles ${say.length(values['size'] as Measure)} wide` },
  help: `
A face frame covers the front edges of the case. A stile narrower than the side is thick leaves a strip of the side to
be seen inside the opening, and a drawer or a door made to the frame runs against it.

\`\`\`fettle wrong
piece "cupboard" {
  size 30 wide, 24 high, 12 deep
  case {
    sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides
    frame thick 3/4 {
      stiles 1/2 wide
      top-rail 1-1/2 wide
      bottom-rail 1-1/2 wide
    }
  }
  face inset { open "cups" }
}
\`\`\`

\`\`\`fettle right
piece "cupboard" {
  size 30 wide, 24 high, 12 deep
  case {
    sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides
    frame thick 3/4 {
      stiles 1-1/2 wide
      top-rail 1-1/2 wide
      bottom-rail 1-1/2 wide
    }
  }
  face inset { open "cups" }
}
\`\`\`
`,
});
