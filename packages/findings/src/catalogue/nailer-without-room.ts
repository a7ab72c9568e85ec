import { defineFinding, type Measure } from '../finding.ts';

/** The strips behind the back are thicker than the room there. */
export const nailerWithoutRoom = defineFinding<{
  readonly thickness: Measure;
  readonly room: Measure;
  readonly difference: Measure;
}>({
  code: 'nailer-without-room',
  severity: 'error',
  title: 'Nailers without room behind the back',
  headline: (facts, say) =>
    `the nailers are ${say.length(facts.thickness)} thick, behind the back there is ${say.length(facts.room)}: ` +
    `they stand out ${say.length(facts.difference)} from the back edge`,
  brief: (facts, say) => `nailers ${say.length(facts.difference)} too thick`,
  related: { back: (values, say) => `the back stands ${say.length(values['room'] as Measure)} in from the back edge` },
  mends: {
    'move-in': (values, say) => `Stand the back ${say.length(values['size'] as Measure)} in from the back edge`,
  },
  help: `
Nailers lie between the sides, behind the back. The back stands in from the back edge by their thickness at least, or
they keep the piece off the wall.

\`\`\`fettle wrong
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    back thick 1/4 in groove 1/4 deep, 1/2 in from back edge
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
    back thick 1/4 in groove 1/4 deep, 3/4 in from back edge
    hung on wall
    nailers 3 wide of "ply", by screws
  }
}
\`\`\`
`,
});
