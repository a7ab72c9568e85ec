import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const hingeThinnerThanGap = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly hinge: string;
  readonly closed: Measure;
  readonly gap: Measure;
  readonly difference: Measure;
}>({
  code: 'hinge-thinner-than-gap',
  severity: 'warning',
  title: 'A hinge thinner than the gap it closes',
  headline: (facts, say) =>
    `${say.name(facts.hinge)} is ${say.length(facts.closed)} thick when closed, the gap of ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} is ${say.length(facts.gap)}: ` +
    `${say.length(facts.difference)} is missing, and nothing is let in`,
  brief: (facts, say) => `${say.length(facts.difference)} thinner than the gap`,
  related: {
    hinge: (values, say) => `${say.name(String(values['hinge']))} is described here`,
    also: (values, say) => `${subject(values, say)} hangs the same way`,
  },
  mends: {
    'use-hinge': (values, say) => `Use ${say.name(String(values['hinge']))}`,
  },
  help: `
The gap beside a door and the two gains together are as thick as the closed hinge. Where the hinge is thinner than the gap
there is no gain to cut: the leaves need packing, and only their screws hold them. Make the gap smaller or choose a thicker
hinge.

\`\`\`fettle wrong
hinge "butt" butt, 2 long, leaf 5/8 wide, 1/16 closed
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
