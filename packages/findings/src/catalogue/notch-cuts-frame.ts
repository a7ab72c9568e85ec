import { defineFinding, type Measure } from '../finding.ts';

/** A toe space goes right through the front stile of a framed side. */
export const notchCutsFrame = defineFinding<{
  readonly depth: Measure;
  readonly stile: Measure;
  readonly difference: Measure;
}>({
  code: 'notch-cuts-frame',
  severity: 'error',
  title: 'A toe space through a stile',
  headline: (facts, say) =>
    `the toe space is ${say.length(facts.depth)} deep, the front stile of the side ${say.length(facts.stile)} wide: ` +
    `the notch cuts it off and takes the tenon of its rail`,
  brief: () => 'the toe space cuts the stile off',
  related: { stile: (values, say) => `the stiles are ${say.length(values['stile'] as Measure)} wide` },
  mends: { shallower: (values, say) => `Make it ${say.length(values['size'] as Measure)} deep` },
  help: `
A side of frame and panel stands on its stiles. A recess for toes that is as deep as the front stile is wide cuts it off
and takes the joint of the bottom rail with it. A plinth under the case leaves the frame whole.

\`\`\`fettle wrong
board "cherry" any thickness, 8 wide, 120 long
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "cherry" thick 3/4, frame-and-panel { stiles 2 wide }
    bottom "ply" between sides
    toe-space 4 high, 3 deep, of "ply"
  }
}
\`\`\`

\`\`\`fettle right
board "cherry" any thickness, 8 wide, 120 long
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "cherry" thick 3/4, frame-and-panel { stiles 3-1/2 wide }
    bottom "ply" between sides
    toe-space 4 high, 3 deep, of "ply"
  }
}
\`\`\`
`,
});
