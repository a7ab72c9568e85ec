import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const paneDoesNotFit = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly why: 'falls-out' | 'stands-proud' | 'thin-front' | 'thin-frame';
  readonly left: Measure;
  readonly limit: Measure;
}>({
  code: 'pane-does-not-fit',
  severity: 'error',
  title: 'A pane that its rabbet does not hold',
  headline: (facts, say) => {
    const door = subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say);
    switch (facts.why) {
      case 'falls-out':
        return `pushed to one side, the pane of ${door} lies on ${say.length(facts.left)} of its rabbet at the other: at least ${say.length(facts.limit)} is wanted`;
      case 'stands-proud':
        return `the pane of ${door} stands ${say.length(facts.left)} out of its rabbet, which is ${say.length(facts.limit)} deep`;
      case 'thin-frame':
        return `the rabbet for the pane of ${door} leaves ${say.length(facts.left)} of the narrowest member beside it: at least ${say.length(facts.limit)}, half of it, is wanted`;
      default:
        return `the rabbet for the pane of ${door} leaves ${say.length(facts.left)} of wood before it: at least ${say.length(facts.limit)} is wanted`;
    }
  },
  related: {},
  mends: {
    clearance: (values, say) => `Give it a clearance of ${say.length(values['size'] as Measure)}`,
    narrower: (values, say) => `Cut the rabbet ${say.length(values['size'] as Measure)} wide`,
    deeper: (values, say) => `Cut the rabbet ${say.length(values['size'] as Measure)} deep`,
    shallower: (values, say) => `Cut the rabbet ${say.length(values['size'] as Measure)} deep`,
  },
  help: `
A pane lies in a rabbet at the back of its frame and is held there by beads. It is a little smaller than the rabbet, and
wherever it is pushed to, 1/8" or 3 mm of it has to lie on the frame; the rabbet is at least as deep as the glass, and leaves
1/8" or 3 mm of wood before it and half of each member beside it (common practice, no source). Measure the glued-up frame before the pane is ordered.

\`\`\`fettle wrong
board "cherry" any thickness, 9 wide, 120 long
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 {
    door "press"
    fronts "cherry" thick 3/4, frame-and-panel { glass thick 1/8, in rabbet 3/8 wide, rabbet 3/8 deep, clearance 3/8, safety }
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
