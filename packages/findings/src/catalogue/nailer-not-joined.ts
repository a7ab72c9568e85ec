import { defineFinding } from '../finding.ts';

/** The strips that carry a hung piece are fastened to nothing. */
export const nailerNotJoined = defineFinding<{
  /** They have nothing at their ends. */
  readonly isFree: boolean;
}>({
  code: 'nailer-not-joined',
  severity: 'warning',
  title: 'Nailers that are joined to nothing',
  headline: (facts) =>
    facts.isFree
      ? 'the nailers carry the piece on the wall and have no sides to be joined to'
      : 'the nailers carry the piece on the wall, and nothing is said to join them to the sides: they would come away ' +
        'with the back',
  brief: () => 'nothing joins the nailers to the case',
  related: {},
  mends: { screws: () => 'Screw through the sides into the nailers', dowels: () => 'Dowel the nailers to the sides' },
  help: `
The screws in the wall hold the nailers, and the nailers hold the case: they are joined to the sides at both ends. Say how:
\`by screws\` through the sides, \`by dowels\`, \`by loose tenons\`, or \`in dado\`. Where nothing is said of the row, two
fasteners hold each end, a quarter of its width from its edges. Gluing a strip to the back as well does not replace
this.

\`\`\`fettle wrong
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    back thick 1/4 in groove 1/4 deep, 3/4 in from back edge
    hung on wall
    nailers 3 wide of "ply"
  }
}
\`\`\`

\`\`\`fettle right
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    back thick 1/4 in groove 1/4 deep, 3/4 in from back edge
    hung on wall
    nailers 3 wide of "ply", by screws
  }
}
\`\`\`
`,
});
