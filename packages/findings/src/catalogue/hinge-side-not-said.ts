import { defineFinding } from '../finding.ts';
import { subject } from '../named.ts';

export const hingeSideNotSaid = defineFinding<{
  readonly name?: string;
  readonly words: string;
}>({
  code: 'hinge-side-not-said',
  severity: 'note',
  title: 'A door of which nobody knows where it hangs',
  headline: (facts, say) =>
    `nothing says on which edge ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} hangs: its hinges have no place yet`,
  brief: () => 'hinge side not said',
  related: {},
  mends: {
    left: () => 'Hang it on its left edge',
    right: () => 'Hang it on its right edge',
  },
  help: `
Gains, cups and screws are laid out from the edge that a door hangs on, as seen from the front. A pair hangs on its outer
edges; a single door has to say \`hinged left\` or \`hinged right\`, or names its hinges \`at left\` or \`at right\`.

\`\`\`fettle wrong
hinge "butt" butt, 2 long, leaf 5/8 wide, 5/32 closed
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { door "front" { hinges "butt" }   fronts thick 3/4 }
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
