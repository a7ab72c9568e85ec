import { defineFinding, type Measure } from '../finding.ts';

/** What should lie in a groove is left so short that it does not reach into it. */
export const panelLeavesGroove = defineFinding<{
  /** 'panels of the sides', 'back', 'tenons of the sides' */
  readonly what: string;
  readonly hold: 'groove' | 'rabbet' | 'mortise';
  readonly depth: Measure;
  /** What it is left short of the bottom, at each edge. */
  readonly short: Measure;
}>({
  code: 'panel-leaves-groove',
  severity: 'error',
  title: 'A panel that does not reach into its groove',
  headline: (facts, say) =>
    `the ${facts.what} ${say.length(facts.short)} short of a ${facts.hold} ${say.length(facts.depth)} deep: nothing is left in it`,
  brief: (facts) => `nothing left in the ${facts.hold}`,
  related: {},
  mends: { shorten: (values, say) => `Make it ${say.length(values['size'] as Measure)}` },
  help: `
Float, clearance and the shortness of a tenon are taken off what lies in a groove or mortise. What is left there has to
hold: as much as the groove is deep, and nothing is left at all.

\`\`\`fettle wrong
board "cherry" any thickness, 8 wide, 120 long
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "cherry" thick 3/4 {
      panel "cherry" thick 3/8, in groove 3/8 deep, float 1/2 each side
    }
  }
}
\`\`\`

\`\`\`fettle right
board "cherry" any thickness, 8 wide, 120 long
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "cherry" thick 3/4 {
      panel "cherry" thick 3/8, in groove 3/8 deep, float 1/16 each side
    }
  }
}
\`\`\`
`,
});
