import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const hingeScrewsInEdging = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly hinge: string;
  readonly screw: Measure;
  readonly edging: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'hinge-screws-in-edging',
  severity: 'warning',
  title: 'Hinge screws that hold in the edging alone',
  headline: (facts, say) =>
    `the screws of ${say.name(facts.hinge)} are ${say.length(facts.screw)} long, the edging of ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} is ${say.length(facts.edging)} thick: ` +
    `they want ${say.length(facts.limit)} to hold in what lies behind it, ${say.length(facts.difference)} more`,
  brief: (facts, say) => `screws ${say.length(facts.difference)} too short`,
  related: {
    hinge: (values, say) => `${say.name(String(values['hinge']))} is described here`,
    also: (values, say) => `${subject(values, say)} hangs the same way`,
  },
  mends: {
    'use-hinge': (values, say) => `Use ${say.name(String(values['hinge']))}`,
  },
  help: `
A strip of solid wood on the edge of a panel is held by glue. Screws that end in it carry the door on that glue alone: 1/4"
or 6 mm of them should be in the panel behind (common practice, no source). Choose a hinge with longer screws.

\`\`\`fettle wrong
hinge "butt" butt, 2 long, leaf 5/8 wide, 5/32 closed, screws 3/8 long, 3 screws in each leaf
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { door "front" hinged left { hinges "butt" }   fronts thick 3/4 { edging thick 1/4, all round } }
}
\`\`\`

\`\`\`fettle right
hinge "butt" butt, 2 long, leaf 5/8 wide, 5/32 closed, screws 5/8 long, 3 screws in each leaf
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { door "front" hinged left { hinges "butt" }   fronts thick 3/4 { edging thick 1/4, all round } }
}
\`\`\`
`,
});
