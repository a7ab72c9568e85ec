import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const cupBeyondStile = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly hinge: string;
  readonly reach: Measure;
  readonly room: Measure;
  readonly difference: Measure;
  readonly isAtGroove: boolean;
}>({
  code: 'cup-beyond-stile',
  severity: 'error',
  title: 'A cup that reaches beyond its stile',
  headline: (facts, say) =>
    `the cups of ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} reach ${say.length(facts.reach)} in from its edge, ` +
    `${facts.isAtGroove ? 'the groove in its stile begins' : 'its stile ends'} at ${say.length(facts.room)}: ${say.length(facts.difference)} too far`,
  brief: (facts, say) =>
    `cup ${say.length(facts.difference)} ${facts.isAtGroove ? 'into the groove' : 'beyond the stile'}`,
  related: {
    hinge: (values, say) => `${say.name(String(values['hinge']))} is described here`,
    also: (values, say) => `${subject(values, say)} hangs the same way`,
  },
  mends: {
    'use-hinge': (values, say) => `Use ${say.name(String(values['hinge']))}`,
    widen: (values, say) => `Make the stiles ${say.length(values['size'] as Measure)} wide`,
  },
  help: `
The cup of a concealed hinge is bored in the stile of a framed door and stays in it: beyond the stile it would cut the
panel, and where it is deep enough to open into the groove the panel lies in, it has no wall there. Wider stiles, a
shallower groove or a smaller cup mend it.

\`\`\`fettle wrong
hinge "cup" concealed, cup 35mm wide, cup 12mm deep, cup 3mm to 6mm from edge, overlay 12mm more than cup distance
board "ash" any thickness, 8 wide, 120 long
sheet "ply 1/4" nominal 1/4, actual 1/4, 96 long, 48 wide
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face overlay full, gap 1/8, reveal 1/8 {
    door "front" hinged left { hinges "cup" }
    fronts "ash" thick 3/4, frame-and-panel { stiles 1-3/4 wide   panel "ply 1/4", in groove 3/8 deep }
  }
}
\`\`\`

\`\`\`fettle right
hinge "cup" concealed, cup 35mm wide, cup 12mm deep, cup 3mm to 6mm from edge, overlay 12mm more than cup distance
board "ash" any thickness, 8 wide, 120 long
sheet "ply 1/4" nominal 1/4, actual 1/4, 96 long, 48 wide
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face overlay full, gap 1/8, reveal 1/8 {
    door "front" hinged left { hinges "cup" }
    fronts "ash" thick 3/4, frame-and-panel { stiles 2-1/4 wide   panel "ply 1/4", in groove 3/8 deep }
  }
}
\`\`\`
`,
});
