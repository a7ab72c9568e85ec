import { defineFinding, type Measure } from '../finding.ts';

/** Runners so thick that their grooves leave too little of the sides of the box. */
export const runnerGrooveTooDeep = defineFinding<{
  /** How thick the runners are, and how deep the grooves that ride on them. */
  readonly depth: Measure;
  readonly thickness: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'runner-groove-too-deep',
  severity: 'warning',
  title: 'Runners thicker than the sides of the box can take',
  headline: (facts, say) =>
    `runners ${say.length(facts.depth)} thick want grooves as deep in sides of ${say.length(facts.thickness)}, half of ` +
    `them is ${say.length(facts.limit)}: ${say.length(facts.difference)} too deep`,
  brief: (facts, say) => `grooves for runners ${say.length(facts.difference)} too deep`,
  related: { sides: (values, say) => `the sides are ${say.length(values['thickness'] as Measure)} thick` },
  mends: { thinner: ({ size }, say) => `Make the runners ${say.length(size as Measure)} thick` },
  help: `
A box on wooden runners has grooves in its sides that ride on them. The grooves are as deep as the runners are thick, so
that what is free beside the box stays free. More than half of a side is never cut away (from memory, as textbooks have
it for grooves): take thinner runners or thicker sides.

\`\`\`fettle wrong
piece "box" {
  size 20 wide, 12 high, 16 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides
    top thick 3/4, between sides
  }
  face inset, gap 1/8 {
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners dovetail   runners 3/4 high, thick 3/8 }
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 20 wide, 12 high, 16 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides
    top thick 3/4, between sides
  }
  face inset, gap 1/8 {
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners dovetail   runners 3/4 high, thick 1/4 }
  }
}
\`\`\`
`,
});
