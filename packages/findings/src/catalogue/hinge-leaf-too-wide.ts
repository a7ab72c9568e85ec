import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const hingeLeafTooWide = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly hinge: string;
  readonly leaf: Measure;
  readonly thickness: Measure;
  readonly left: Measure;
  readonly limit: Measure;
  readonly comesOut: boolean;
}>({
  code: 'hinge-leaf-too-wide',
  severity: 'error',
  title: 'Leaves too wide for the thickness of the door',
  headline: (facts, say) =>
    `a leaf of ${say.name(facts.hinge)} is ${say.length(facts.leaf)} wide, ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} is ${say.length(facts.thickness)} thick: ` +
    (facts.comesOut
      ? 'its gain comes out at the back'
      : `${say.length(facts.left)} of wood is left beside its gain, at least ${say.length(facts.limit)} is wanted`),
  brief: (facts, say) => (facts.comesOut ? 'gains come out' : `${say.length(facts.left)} beside the gain`),
  related: {
    hinge: (values, say) => `${say.name(String(values['hinge']))} is described here`,
    also: (values, say) => `${subject(values, say)} hangs the same way`,
  },
  mends: {
    'use-hinge': (values, say) => `Use ${say.name(String(values['hinge']))}`,
  },
  help: `
A leaf is let into the edge of the door from its front. What is left behind it, the backset, has to stand the screws: 1/8"
or 3 mm at least (common practice, no source). A knife hinge lies in the middle of the thickness and wants half of that on
either side. Choose a narrower hinge or a thicker door.

\`\`\`fettle wrong
hinge "butt" butt, 2 long, leaf 3/4 wide, 5/32 closed
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { door "front" hinged left { hinges "butt" }   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
hinge "butt" butt, 2 long, leaf 5/8 wide, 5/32 closed
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { door "front" hinged left { hinges "butt" }   fronts thick 3/4 }
}
\`\`\`
`,
});
