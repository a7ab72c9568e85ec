import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const hingesDoNotFit = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly hinge: string;
  readonly count: number;
  readonly needs: Measure;
  readonly height: Measure;
}>({
  code: 'hinges-do-not-fit',
  severity: 'error',
  title: 'Hinges that find no room on the edge of the door',
  headline: (facts, say) =>
    `${facts.count} hinges ${say.name(facts.hinge)} do not find room on ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)}, which is ${say.length(facts.height)} high`,
  brief: () => 'hinges overlap or stand over its ends',
  related: {
    hinge: (values, say) => `${say.name(String(values['hinge']))} is described here`,
    also: (values, say) => `${subject(values, say)} hangs the same way`,
  },
  mends: {
    'use-hinge': (values, say) => `Use ${say.name(String(values['hinge']))}`,
  },
  help: `
Each hinge needs its own length of the edge that the door hangs on, within the ends of the door and beside the others. Use
fewer or shorter ones, or put the outer ones nearer to the ends.

\`\`\`fettle wrong
hinge "butt" butt, 3 long, leaf 5/8 wide, 5/32 closed
piece "box" {
  size 14 wide, 18 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { door "front" hinged left { hinges "butt", 6 from ends }   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
hinge "butt" butt, 3 long, leaf 5/8 wide, 5/32 closed
piece "box" {
  size 14 wide, 18 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { door "front" hinged left { hinges "butt", 2 from ends }   fronts thick 3/4 }
}
\`\`\`
`,
});
