import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const cupDistanceOutside = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly hinge: string;
  readonly distance: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
  readonly tooNear: boolean;
}>({
  code: 'cup-distance-outside',
  severity: 'error',
  title: 'A cup too near the edge of the door, or too far from it',
  headline: (facts, say) =>
    `for its overlay the cups of ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} have to be ${say.length(facts.distance)} from its edge, ${say.name(facts.hinge)} allows at ` +
    `${facts.tooNear ? 'least' : 'most'} ${say.length(facts.limit)}: ${say.length(facts.difference)} too ${facts.tooNear ? 'near' : 'far'}`,
  brief: (facts, say) =>
    `cup ${say.length(facts.difference)} too ${facts.tooNear ? 'near the edge' : 'far from the edge'}`,
  related: {
    hinge: (values, say) => `${say.name(String(values['hinge']))} is described here`,
    also: (values, say) => `${subject(values, say)} hangs the same way`,
  },
  mends: {
    'use-hinge': (values, say) => `Use ${say.name(String(values['hinge']))}`,
  },
  help: `
How far a door with concealed hinges laps the case depends on the cup distance: the wood between its edge and the cup. A
hinge allows only a little of it, 3 to 6 mm as a rule (trade convention, from memory). Beyond that another hinge is wanted,
or another overlay: change the reveal or the gap.

\`\`\`fettle wrong
hinge "cup" concealed, cup 35mm wide, cup 12mm deep, cup 3mm to 6mm from edge, overlay 12mm more than cup distance
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face overlay full, gap 1/8, reveal 3/8 { door "front" hinged left { hinges "cup" }   fronts thick 3/4 }
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
