import { defineFinding, type Measure } from '../finding.ts';

/** Too little wood is left between a groove and the edge beside it. */
export const grooveBreaksOut = defineFinding<{
  /** What is left. */
  readonly left: Measure;
  readonly limit: Measure;
}>({
  code: 'groove-breaks-out',
  severity: 'warning',
  title: 'A groove that breaks out at the edge',
  headline: (facts, say) =>
    `${say.length(facts.left)} of wood is left behind the groove of the back: less than ${say.length(facts.limit)} ` +
    'breaks out',
  brief: (facts, say) => `a groove ${say.length(facts.left)} from the edge`,
  related: {},
  mends: {
    'move-in': (values, say) => `Set the back ${say.length(values['size'] as Measure)} in from the back edge`,
  },
  help: `
The wood between a groove and the edge of the panel is short and weak. With less than about 1/8" (common practice, no
source) it breaks out when the groove is cut, or when the piece is moved. Usual is 1/2", which also leaves room for a
wall that is not straight.

A back that is flush with the back edge lies in a rabbet or is applied.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    back thick 1/4 in groove 1/4 deep, 1/16 in from back edge
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides thick 3/4
    back thick 1/4 in groove 1/4 deep, 1/2 in from back edge
  }
}
\`\`\`
`,
});
