import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** A slide is longer than the case is deep behind the front. */
export const slideTooLong = defineFinding<{
  readonly slides: string;
  /** Closed length of the slide. */
  readonly length: Measure;
  /** What it needs: its length and the free depth behind it. */
  readonly needed: Measure;
  /** From the back of the front to the front of the case's back. */
  readonly available: Measure;
  readonly difference: Measure;
}>({
  code: 'slide-too-long',
  severity: 'error',
  title: 'A slide is longer than the case is deep',
  headline: (facts, say) =>
    `${say.name(facts.slides)} needs ${say.length(facts.needed)} of depth, behind the front there is ` +
    `${say.length(facts.available)}: ${say.length(facts.difference)} too long`,
  brief: (facts, say) => `slides ${say.length(facts.difference)} too long`,
  related: {
    drawer: (values, say) => `${subject(values, say)} runs on it`,
    depth: (values, say) => `the depth there is, ${say.length(values['available'] as Measure)}, follows from here`,
  },
  mends: {
    'use-slides': (values, say) =>
      `Use ${say.name(String(values['slides']))}, which needs ${say.length(values['needed'] as Measure)}`,
    deepen: (values, say) => `Make the piece ${say.length(values['size'] as Measure)} deep`,
  },
  help: `
The box of a drawer is as deep as its slide is long. Both have to stand between the back of the front and the front of
the case's back, with the free depth that the slide's maker asks for behind it.

Choose a shorter slide, or make the piece deeper: the overhang of a top, a thick front and a back that stands in a
groove all take from the depth inside.

\`\`\`fettle wrong
use "shop.fettle"
piece "chest" {
  size 20 wide, 30 high, 14 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "linen" front 9 high
    drawer "blankets" rest
    fronts thick 3/4
    drawers { sides "oak" thick 1/2   bottom "thin ply"   corners dovetail   slides "side mount 14" }
  }
}
\`\`\`

\`\`\`fettle right
use "shop.fettle"
piece "chest" {
  size 20 wide, 30 high, 14 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    drawer "linen" front 9 high
    drawer "blankets" rest
    fronts thick 3/4
    drawers { sides "oak" thick 1/2   bottom "thin ply"   corners dovetail   slides "side mount 12" }
  }
}
\`\`\`
`,
});
