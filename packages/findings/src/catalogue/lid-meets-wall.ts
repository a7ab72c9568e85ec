import { defineFinding, type Measure } from '../finding.ts';

export const lidMeetsWall = defineFinding<{
  /** In degrees. */
  readonly angle: string;
  readonly reach: Measure;
  readonly room: Measure;
  readonly difference: Measure;
}>({
  code: 'lid-meets-wall',
  severity: 'error',
  title: 'A lid that strikes the wall before it is open',
  headline: (facts, say) =>
    `to stand open at ${facts.angle} degrees the lid reaches ${say.length(facts.reach)} behind the case, and the wall is ` +
    `${say.length(facts.room)} away: ${say.length(facts.difference)} too near`,
  brief: (facts, say) => `${say.length(facts.difference)} too near to the wall`,
  related: {},
  mends: {
    away: ({ size }, say) => `Let the piece stand ${say.length(size as Measure)} from the wall`,
  },
  help: `
A lid turns on the back edge of its underside. On the way its back corner runs behind the case: by its thickness where it
is flush, farther with an overhang; and a lid that opens beyond a right angle leans back with all of its depth. A piece
that stands against a wall needs so much room behind the lid: an overhang there keeps it, or say how far away it stands.

\`\`\`fettle wrong
hinge "butt 3" butt, 3 long, leaf 1/2 wide, 5/32 closed, screws 5/8 long, 3 screws in each leaf
board "pine" any thickness, 12 wide, 96 long
piece "chest" {
  size 40 wide, 20 high, 18 deep
  case {
    lid "pine" thick 3/4 { hinges "butt 3"   support torsion, 2 of them, carries 60 inch-pounds }
    sides "pine" thick 3/4   bottom "pine" thick 3/4, between sides   back "pine" thick 3/4, applied
  }
}
\`\`\`

\`\`\`fettle right
hinge "butt 3" butt, 3 long, leaf 1/2 wide, 5/32 closed, screws 5/8 long, 3 screws in each leaf
board "pine" any thickness, 12 wide, 96 long
piece "chest" {
  size 40 wide, 20 high, 18 deep
  case {
    lid "pine" thick 3/4, 3/4 from wall { hinges "butt 3"   support torsion, 2 of them, carries 60 inch-pounds }
    sides "pine" thick 3/4   bottom "pine" thick 3/4, between sides   back "pine" thick 3/4, applied
  }
}
\`\`\`
`,
});
