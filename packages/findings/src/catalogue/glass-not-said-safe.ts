import { defineFinding } from '../finding.ts';
import { subject } from '../named.ts';

export const glassNotSaidSafe = defineFinding<{
  readonly name?: string;
  readonly words: string;
}>({
  code: 'glass-not-said-safe',
  severity: 'note',
  title: 'Glass that is not said to be safe',
  headline: (facts, say) =>
    `the glass of ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} is not said to be safety glass: order it tempered or laminated where somebody may fall against it`,
  brief: () => 'not said to be safety glass',
  related: {},
  mends: {
    safety: () => 'Order it as safety glass',
  },
  help: `
Plain glass breaks into blades. Doors within reach of children, low doors and large panes are glazed with tempered or
laminated glass; what the law asks for differs from place to place, and nothing here certifies anything. Tempered glass
cannot be cut once it is made: measure first. Wear gloves and goggles when you handle panes.

\`\`\`fettle wrong
board "cherry" any thickness, 9 wide, 120 long
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 {
    door "press"
    fronts "cherry" thick 3/4, frame-and-panel { glass thick 1/8, in rabbet 3/8 wide, rabbet 3/8 deep, clearance 1/8 }
  }
}
\`\`\`

\`\`\`fettle right
board "cherry" any thickness, 9 wide, 120 long
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 {
    door "press"
    fronts "cherry" thick 3/4, frame-and-panel { glass thick 1/8, in rabbet 3/8 wide, rabbet 3/8 deep, clearance 1/8, safety }
  }
}
\`\`\`
`,
});
