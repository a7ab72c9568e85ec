import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const hingeDoorTooHigh = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly hinge: string;
  readonly height: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'hinge-door-too-high',
  severity: 'warning',
  title: 'A door too high for a pair of its hinges',
  headline: (facts, say) =>
    `${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} is ${say.length(facts.height)} high, ` +
    `a pair of ${say.name(facts.hinge)} carries at most ${say.length(facts.limit)}: ` +
    `${say.length(facts.difference)} too high for two hinges`,
  brief: (facts, say) => `door ${say.length(facts.difference)} too high`,
  related: {
    hinge: (values, say) => `${say.name(String(values['hinge']))} is described here`,
    also: (values, say) => `${subject(values, say)} hangs on it as well`,
  },
  mends: {
    'use-hinge': (values, say) => `Use ${say.name(String(values['hinge']))}`,
  },
  help: `
The data sheet of a hinge says how high a door a pair of it carries. A higher door wants a third hinge, or another one.

\`\`\`fettle wrong
hinge "butt" doors at most 24 high
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 { door "front" { hinges "butt" }   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
hinge "butt" doors at most 36 high
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 { door "front" { hinges "butt" }   fronts thick 3/4 }
}
\`\`\`
`,
});
