import { defineFinding, type Measure } from '../finding.ts';

/** A foot is to taper to more than it is thick, or to nothing. */
export const footCannotTaper = defineFinding<{
  readonly to: Measure;
  readonly thickness: Measure;
}>({
  code: 'foot-cannot-taper',
  severity: 'error',
  title: 'A taper that cannot be',
  headline: (facts, say) =>
    `the feet are ${say.length(facts.thickness)} thick and cannot taper to ${say.length(facts.to)}`,
  brief: (facts, say) => `a taper to ${say.length(facts.to)}`,
  related: {},
  mends: { thinner: (values, say) => `Taper to ${say.length(values['size'] as Measure)}` },
  help: `
A foot tapers on the two faces that look inwards, from the rails down to the floor. What is left at the floor is more than
nothing and less than the foot is thick above.

\`\`\`fettle wrong
board "cherry" any thickness, 8 wide, 120 long
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    feet 6 high of "cherry" thick 1-1/2, taper to 2
  }
}
\`\`\`

\`\`\`fettle right
board "cherry" any thickness, 8 wide, 120 long
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    feet 6 high of "cherry" thick 1-1/2, taper to 1
  }
}
\`\`\`
`,
});
