import { defineFinding } from '../finding.ts';
import { subject } from '../named.ts';

export const hingesNotPlaced = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly hinge: string;
  readonly form: 'butt' | 'knife' | 'concealed';
  readonly fit: 'inset' | 'overlay' | 'lipped';
}>({
  code: 'hinges-not-placed',
  severity: 'warning',
  title: 'Hinges that have no place on their door',
  headline: (facts, say) =>
    `${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} is ${facts.fit === 'inset' ? 'an inset' : facts.fit === 'overlay' ? 'an overlay' : 'a lipped'} door: ` +
    `where ${facts.form === 'concealed' ? 'the cups of' : facts.form === 'butt' ? 'the leaves of the butt hinge' : 'the leaves of the knife hinge'} ${say.name(facts.hinge)} lie on it is not known, ` +
    'so they are neither placed nor checked',
  brief: () => 'hinges neither placed nor checked',
  related: {
    hinge: (values, say) => `${say.name(String(values['hinge']))} is described here`,
    also: (values, say) => `${subject(values, say)} hangs on it as well`,
  },
  mends: { 'use-hinge': (values, say) => `Use ${say.name(String(values['hinge']))}` },
  help: `
Butt and knife hinges are let into the edges or the ends of a door that lies inside its opening, and into the wood across
the gap. On a door that laps its opening the leaves lie on faces, one way for one hinge and another for the next: mark them
from the hinge itself, or hang the door on concealed hinges for overlay doors. Cups are not placed on lipped doors.

\`\`\`fettle wrong
hinge "butt" butt, 2 long, leaf 5/8 wide, 5/32 closed
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face overlay full, gap 1/8, reveal 1/8 { door "front" hinged left { hinges "butt" }   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
hinge "cup" concealed, cup 35mm wide, cup 12mm deep, cup 3mm to 6mm from edge, overlay 12mm more than cup distance
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face overlay full, gap 1/8, reveal 1/8 { door "front" hinged left { hinges "cup" }   fronts thick 3/4 }
}
\`\`\`
`,
});
