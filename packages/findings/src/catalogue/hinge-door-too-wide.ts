import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const hingeDoorTooWide = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly hinge: string;
  readonly width: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'hinge-door-too-wide',
  severity: 'warning',
  title: 'A door too wide for its hinges',
  headline: (facts, say) =>
    `${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} is ${say.length(facts.width)} wide, ` +
    `${say.name(facts.hinge)} is made for doors of at most ${say.length(facts.limit)}: ` +
    `${say.length(facts.difference)} too wide`,
  brief: (facts, say) => `door ${say.length(facts.difference)} too wide`,
  related: {
    hinge: (values, say) => `${say.name(String(values['hinge']))} is described here`,
    also: (values, say) => `${subject(values, say)} hangs on it as well`,
  },
  mends: {
    'use-hinge': (values, say) => `Use ${say.name(String(values['hinge']))}`,
    pair: (values) => `Make ${Number(values['count']) === 1 ? 'it a pair' : 'them pairs'} of doors`,
  },
  help: `
The data sheet of a hinge says how wide a door it carries: the weight of a wide door pulls with a long lever. Choose a
stronger hinge, or make a pair of doors.

\`\`\`fettle wrong
hinge "butt" doors at most 16 wide
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 { door "front" { hinges "butt" }   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
hinge "butt" doors at most 20 wide
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 { door "front" { hinges "butt" }   fronts thick 3/4 }
}
\`\`\`
`,
});
