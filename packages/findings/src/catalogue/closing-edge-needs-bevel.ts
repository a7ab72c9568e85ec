import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const closingEdgeNeedsBevel = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly width: Measure;
  readonly thickness: Measure;
  readonly sweep: string;
  readonly gap: Measure;
  readonly bevelled: boolean;
}>({
  code: 'closing-edge-needs-bevel',
  severity: 'error',
  title: 'A closing edge that strikes before the door is shut',
  headline: (facts, say) =>
    `the closing edge of ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)}, ${say.length(facts.width)} wide and ${say.length(facts.thickness)} thick, sweeps ${facts.sweep} beyond itself${facts.bevelled ? ' with its bevel' : ''}: its gap is ${say.length(facts.gap)}`,
  brief: (facts, say) => `sweeps ${facts.sweep} in a gap of ${say.length(facts.gap)}`,
  related: {
    also: (values, say) => `${subject(values, say)} hangs the same way`,
  },
  mends: {
    bevel: (values, say) => `Bevel its closing edge by ${say.length(values['bevel'] as Measure)}`,
  },
  help: `
A door turns on the corner that it hangs on. The back corner of its closing edge runs on a wider circle than the front one:
by √(w² + t²) - w, w being the width of the door and t its thickness. Where that is more than the gap, the door strikes
what stands beside it, and the closing edge has to be bevelled towards the back.

\`\`\`fettle wrong
hinge "butt" butt, 2 long, leaf 5/8 wide, 5/32 closed
piece "box" {
  size 11-3/4 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 1/8 { door "front" hinged left { hinges "butt" }   fronts thick 2 }
}
\`\`\`

\`\`\`fettle right
hinge "butt" butt, 2 long, leaf 5/8 wide, 5/32 closed
piece "box" {
  size 11-3/4 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 1/8 { door "front" hinged left { hinges "butt", closing edge bevelled 3/32 }   fronts thick 2 }
}
\`\`\`
`,
});
