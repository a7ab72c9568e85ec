import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** Slides onto which a box is lifted, in an opening that leaves no room to lift it. */
export const drawerCannotBeLiftedIn = defineFinding<{
  readonly name?: string;
  /** Where it has no name. */
  readonly words: string;
  readonly slides: string;
  /** How far the box has to be lifted. */
  readonly lift: Measure;
  /** Over the box, in its opening. */
  readonly free: Measure;
  readonly difference: Measure;
}>({
  code: 'drawer-cannot-be-lifted-in',
  severity: 'error',
  title: 'A drawer that cannot be lifted onto its slides',
  headline: (facts, say) =>
    `${subject(facts, say)} is lifted ${say.length(facts.lift)} onto ${say.name(facts.slides)}, over its box there is ` +
    `${say.length(facts.free)} free: ${say.length(facts.difference)} too little`,
  brief: (facts, say) => `${say.length(facts.difference)} too little to lift a drawer in`,
  related: { drawer: (values, say) => `${subject(values, say)} stands here` },
  mends: {
    clear: ({ size }, say) => `Keep ${say.length(size as Measure)} clear above`,
    'box-height': ({ size }, say) => `Make the box ${say.length(size as Measure)} high`,
  },
  help: `
Some slides take the box from above: it is pushed in a little raised, and let down onto them. The opening has to leave
that much free height over the box.

\`\`\`fettle wrong
slide "plain 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side, lifts in 3/4
piece "box" {
  size 20 wide, 12 high, 16 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides
    top thick 3/4, between sides
  }
  face inset, gap 1/8 {
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "plain 14" }
  }
}
\`\`\`

\`\`\`fettle right
slide "plain 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side, lifts in 3/4
piece "box" {
  size 20 wide, 12 high, 16 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides
    top thick 3/4, between sides
  }
  face inset, gap 1/8 {
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "plain 14"   clear 3/4 above }
  }
}
\`\`\`
`,
});
