import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const caseGainTooDeep = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly hinge: string;
  readonly depth: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'case-gain-too-deep',
  severity: 'error',
  title: 'Gains in the case deeper than the closed hinge leaves',
  headline: (facts, say) =>
    `the gains for ${say.name(facts.hinge)} beside ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} are ${say.length(facts.depth)} deep, the hinge leaves ${say.length(facts.limit)} for both: ` +
    `${say.length(facts.difference)} too deep`,
  brief: (facts, say) => `gain ${say.length(facts.difference)} too deep`,
  related: {
    hinge: (values, say) => `${say.name(String(values['hinge']))} is described here`,
    also: (values, say) => `${subject(values, say)} hangs the same way`,
  },
  mends: {
    halve: (values, say) => `Make each gain ${say.length(values['size'] as Measure)} deep`,
  },
  help: `
The gap beside a door and the two gains together are as thick as the closed hinge. Where the gain in the case is deeper by
itself, the door comes too near to it and binds. If it is cut already, pack it with veneer and measure it again.

\`\`\`fettle wrong
hinge "butt" butt, 2 long, leaf 5/8 wide, 5/32 closed
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { door "front" hinged left { hinges "butt", case gain 1/8 deep }   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
hinge "butt" butt, 2 long, leaf 5/8 wide, 5/32 closed
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { door "front" hinged left { hinges "butt", measured case gain 3/64 deep }   fronts thick 3/4 }
}
\`\`\`
`,
});
