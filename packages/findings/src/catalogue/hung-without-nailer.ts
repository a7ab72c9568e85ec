import { defineFinding, type Measure } from '../finding.ts';

/** Nothing strong enough takes the screws that hold a hung piece. */
export const hungWithoutNailer = defineFinding<{
  readonly back: Measure | undefined;
  readonly limit: Measure;
}>({
  code: 'hung-without-nailer',
  severity: 'warning',
  title: 'A hung piece without nailers',
  headline: (facts, say) =>
    facts.back === undefined
      ? 'the piece hangs on a wall and has neither a back nor nailers: nothing takes the screws'
      : `the piece hangs by a back ${say.length(facts.back)} thick: under ${say.length(facts.limit)} it needs nailers`,
  brief: () => 'nothing takes the screws in the wall',
  related: {},
  mends: { add: () => 'Add nailers at the top and at the foot' },
  help: `
A piece that hangs on a wall is screwed to it through strips from side to side, at least 1/2" by 2-1/2", at the top and
at the bottom, and one more above 60" of height; a back of 1/2" or more needs none (Architectural Woodwork Standards,
1st ed., 2009, 10-4.4.18). What the wall itself holds is not checked here: find the studs, and follow what the fasteners'
maker says.

\`\`\`fettle wrong
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    back thick 1/4 in groove 1/4 deep, 3/4 in from back edge
    hung on wall
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
