import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const tooFewHinges = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly hinge: string;
  readonly count: number;
  readonly needed: number;
  readonly height: Measure;
  readonly weight: string;
}>({
  code: 'too-few-hinges',
  severity: 'warning',
  title: 'Too few hinges for the height or the weight of a door',
  headline: (facts, say) =>
    `${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} is ${say.length(facts.height)} high${facts.weight === '' ? '' : ` and weighs about ${facts.weight}`}: ${facts.needed} hinges carry it, not ${facts.count}`,
  brief: (facts) => `${facts.count} of ${facts.needed} hinges`,
  related: {
    hinge: (values, say) => `${say.name(String(values['hinge']))} is described here`,
    also: (values, say) => `${subject(values, say)} hangs the same way`,
  },
  mends: {
    more: (values) => `Hang it on ${Number(values['count'])}`,
  },
  help: `
Two hinges carry a door up to 40" high and about 20 lb, three up to 60" and 33 lb, four up to 80" and 48 lb (common practice,
no source). The weight is an average of the wood's. Where no number is said, as many are taken as these figures ask for.

\`\`\`fettle wrong
hinge "butt" butt, 2 long, leaf 5/8 wide, 5/32 closed
piece "box" {
  size 20 wide, 50 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { door "front" hinged left { hinges "butt", 2 to each door }   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
hinge "butt" butt, 2 long, leaf 5/8 wide, 5/32 closed
piece "box" {
  size 20 wide, 50 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { door "front" hinged left { hinges "butt", 3 to each door }   fronts thick 3/4 }
}
\`\`\`
`,
});
