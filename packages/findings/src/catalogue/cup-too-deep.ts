import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const cupTooDeep = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly hinge: string;
  readonly depth: Measure;
  readonly thickness: Measure;
  readonly left: Measure;
  readonly limit: Measure;
  readonly through: boolean;
}>({
  code: 'cup-too-deep',
  severity: 'error',
  title: 'A cup hole that shows on the front of the door',
  headline: (facts, say) =>
    `${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} is ${say.length(facts.thickness)} thick, the cups of ${say.name(facts.hinge)} are ${say.length(facts.depth)} deep: ` +
    (facts.through
      ? 'they come through its front'
      : `${say.length(facts.left)} of wood is left before them, at least ${say.length(facts.limit)} is wanted`),
  brief: (facts, say) => (facts.through ? 'cups come through the front' : `${say.length(facts.left)} before the cup`),
  related: {
    hinge: (values, say) => `${say.name(String(values['hinge']))} is described here`,
    also: (values, say) => `${subject(values, say)} hangs the same way`,
  },
  mends: {
    'use-hinge': (values, say) => `Use ${say.name(String(values['hinge']))}`,
  },
  help: `
The cup of a concealed hinge is sunk into the back of the door. What is left before it has to stay whole while it is bored
and afterwards: 1/8" or 3 mm at least (common practice, no source). Make the door thicker, or choose a shallower cup. Set
the drill's stop and bore a scrap of the same thickness first.

\`\`\`fettle wrong
hinge "cup" concealed, cup 35mm wide, cup 12mm deep, cup 3mm to 6mm from edge, overlay 12mm more than cup distance
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face overlay full, gap 1/8, reveal 1/8 { door "front" hinged left { hinges "cup" }   fronts thick 1/2 }
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
