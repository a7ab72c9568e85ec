import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** The shop has slides, and these drawers name none. */
export const drawersWithoutSlides = defineFinding<{
  readonly name?: string;
  readonly words: string;
  /** How many drawers there are of this kind. */
  readonly count: number;
  /** The longest slides of the shop that fit. */
  readonly slides: string;
  readonly length: Measure;
}>({
  code: 'drawers-without-slides',
  severity: 'note',
  title: 'Drawers that name no slides',
  headline: (facts, say) =>
    `${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} ` +
    (facts.count === 1 ? '' : `and ${facts.count - 1} more ${facts.count === 2 ? 'drawer' : 'drawers'} `) +
    `${facts.count === 1 ? 'names' : 'name'} no slides and nothing to run on, so the box fills its opening; ` +
    `${say.name(facts.slides)}, ${say.length(facts.length)} long, would fit`,
  related: {},
  mends: {
    'use-slides': (values, say) =>
      `Put ${Number(values['count']) === 1 ? 'it' : 'them'} on ${say.name(String(values['slides']))}`,
  },
  help: `
The width of a drawer box follows from what it runs on. Where no slides are named and no frame stands under the drawer,
the box is worked out to fill its opening but for 1/32" at each side. If slides are meant, name them: the box becomes
narrower by what they take.

\`\`\`fettle wrong
slide "side mount 10" side mount, 10 long, takes 1/2 each side
piece "box" {
  size 20 wide, 10 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "only"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4 }
  }
}
\`\`\`

\`\`\`fettle right
slide "side mount 10" side mount, 10 long, takes 1/2 each side
piece "box" {
  size 20 wide, 10 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "only"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   slides "side mount 10" }
  }
}
\`\`\`
`,
});
