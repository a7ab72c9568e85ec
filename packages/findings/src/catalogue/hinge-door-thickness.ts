import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const hingeDoorThickness = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly hinge: string;
  readonly thickness: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
  readonly tooThick: boolean;
}>({
  code: 'hinge-door-thickness',
  severity: 'error',
  title: 'A door too thick or too thin for its hinges',
  headline: (facts, say) =>
    `${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} is ${say.length(facts.thickness)} thick, ` +
    `${say.name(facts.hinge)} is made for ${facts.tooThick ? 'at most' : 'at least'} ${say.length(facts.limit)}: ` +
    `${say.length(facts.difference)} too ${facts.tooThick ? 'thick' : 'thin'}`,
  brief: (facts, say) => `door ${say.length(facts.difference)} too ${facts.tooThick ? 'thick' : 'thin'}`,
  related: {
    hinge: (values, say) => `${say.name(String(values['hinge']))} is described here`,
    also: (values, say) => `${subject(values, say)} hangs on it as well`,
  },
  mends: {
    'use-hinge': (values, say) => `Use ${say.name(String(values['hinge']))}`,
    'make-thick': (values, say) => `Make it ${say.length(values['size'] as Measure)} thick`,
  },
  help: `
The data sheet of a hinge says how thick a door it is made for. On a thinner door its screws come through, on a thicker
one it binds or does not close. Choose another hinge or another front.

\`\`\`fettle wrong
hinge "butt" doors 7/8 to 1-1/4 thick
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 { door "front" { hinges "butt" }   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
hinge "butt" doors 5/8 to 1 thick
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 { door "front" { hinges "butt" }   fronts thick 3/4 }
}
\`\`\`
`,
});
