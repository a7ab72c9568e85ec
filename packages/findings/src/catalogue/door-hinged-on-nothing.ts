import { defineFinding } from '../finding.ts';
import { subject } from '../named.ts';

export const doorHingedOnNothing = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly hinge: string;
  readonly where: string;
}>({
  code: 'door-hinged-on-nothing',
  severity: 'error',
  title: 'A door hinged where nothing stands',
  headline: (facts, say) =>
    `${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} hangs on ${say.name(facts.hinge)}, and there is no wood ${facts.where} for them to hold in`,
  brief: (facts) => `no wood ${facts.where}`,
  related: {
    hinge: (values, say) => `${say.name(String(values['hinge']))} is described here`,
    also: (values, say) => `${subject(values, say)} hangs the same way`,
  },
  mends: {
    'other-side': (values) => `Hang it on its ${String(values['side'])} edge`,
    'use-hinge': (values, say) => `Use ${say.name(String(values['hinge']))}`,
  },
  help: `
Hinges hold in the door and in what stands beside it: a side, a partition, the stile of a frame; knife hinges in what is over
and under the door. Between two doors that meet, and behind the fronts before a covered divider, there is nothing to hold
in. Hang the door on its other edge, or put a partition there.

\`\`\`fettle wrong
hinge "butt" butt, 2 long, leaf 5/8 wide, 5/32 closed
piece "box" {
  size 40 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { row { door "pans" hinged right { hinges "butt" }   door "pots" hinged right { hinges "butt" } }   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
hinge "butt" butt, 2 long, leaf 5/8 wide, 5/32 closed
piece "box" {
  size 40 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { row { door "pans" hinged right { hinges "butt" }   partition thick 3/4, shown   door "pots" hinged right { hinges "butt" } }   fronts thick 3/4 }
}
\`\`\`
`,
});
