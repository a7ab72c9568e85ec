import { defineFinding } from '../finding.ts';
import { subject } from '../named.ts';

export const hingesAtOtherEdge = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly hinge: string;
  /** The edge that the hinges are named for, and the one that hangs. */
  readonly named: 'left' | 'right';
  readonly hung: 'left' | 'right';
  /** `unused`: the door has other hinges at its own edge. */
  readonly which: 'single' | 'unused' | 'pair';
}>({
  code: 'hinges-at-other-edge',
  severity: 'warning',
  title: 'Hinges at an edge on which no door hangs',
  headline: (facts, say) => {
    const door = subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say);
    const hinge = say.name(facts.hinge);
    switch (facts.which) {
      case 'single':
        return `${door} hangs on its ${facts.hung} edge, and its hinges ${hinge} are named at its ${facts.named} edge alone`;
      case 'unused':
        return `${door} hangs on its ${facts.hung} edge: ${hinge} at its ${facts.named} edge are used for nothing`;
      case 'pair':
        return `${hinge} are named at the ${facts.named} edge alone: the ${facts.hung} door of ${door} has no hinges`;
      default: {
        const unknown: never = facts.which;
        return unknown;
      }
    }
  },
  brief: (facts) => `hinges at the ${facts.named} edge alone`,
  related: {},
  mends: {
    turn: (values) => `Hang it on its ${values['edge']} edge`,
    move: (values, say) => `Put ${say.name(String(values['hinge']))} at its ${values['edge']} edge`,
    both: (values, say) => `Take ${say.name(String(values['hinge']))} at both edges`,
    remove: (values, say) => `Leave out ${say.name(String(values['hinge']))}`,
  },
  help: `
A single door hangs on one edge, a pair on its two outer edges. \`at left\` and \`at right\` behind the name of hinges say
for which edge they are; without it they are for every edge that a door hangs on.

\`\`\`fettle wrong
hinge "butt" butt, 2 long, leaf 5/8 wide, 5/32 closed
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { door "front" hinged left { hinges "butt" at right }   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
hinge "butt" butt, 2 long, leaf 5/8 wide, 5/32 closed
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { door "front" hinged left { hinges "butt" at left }   fronts thick 3/4 }
}
\`\`\`
`,
});
