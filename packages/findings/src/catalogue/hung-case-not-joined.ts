import { defineFinding } from '../finding.ts';

/** What a hung piece is made of holds together by nothing that is said. */
export const hungCaseNotJoined = defineFinding<{
  /** Of panels: the ones whose ends merely meet others, 'bottom and top'. */
  readonly panels: string;
  readonly isBack: boolean;
}>({
  code: 'hung-case-not-joined',
  severity: 'warning',
  title: 'A hung case without joints',
  headline: (facts) =>
    facts.isBack
      ? 'the piece hangs on a wall by a back that lies on its edges, and nothing is said to hold the case to it'
      : `the piece hangs on a wall, and nothing is said to hold its ${facts.panels} to what they meet: ` +
        'the back alone would carry them',
  brief: (facts) => (facts.isBack ? 'nothing holds the case to its back' : `no joint for the ${facts.panels}`),
  related: {},
  mends: {
    dado: () => 'Let the panels of the case into dadoes',
    screws: () => 'Screw the panels of the case together',
    'back-screws': () => 'Screw the back to the case',
  },
  help: `
What stands in a hung piece rests on its bottom, and the bottom hangs on the sides. Where ends merely meet faces and
nothing is said to hold them, all of it pulls at the back. Say how the case is joined: \`join dado\`, \`join dowels\`,
\`join screws\` for all of its panels, or beside one of them. A back that lies on the edges of the case and carries it
without nailers is screwed to it: \`applied by screws\`. What a joint carries is not computed here.

\`\`\`fettle wrong
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    top "ply" between sides
    bottom "ply" between sides
    back thick 1/4 in groove 1/4 deep, 3/4 in from back edge
    hung on wall
    nailers 3 wide of "ply", by screws
  }
}
\`\`\`

\`\`\`fettle right
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    top "ply" between sides
    bottom "ply" between sides
    back thick 1/4 in groove 1/4 deep, 3/4 in from back edge
    hung on wall
    nailers 3 wide of "ply", by screws
    join dado
  }
}
\`\`\`
`,
});
