import { defineFinding, type Measure } from '../finding.ts';

/** Slides that are screwed to a side which stands behind the stile of a face frame. */
export const slidesNeedPacking = defineFinding<{
  readonly slides: string;
  /** How thick the piece between slide and side is. */
  readonly packing: Measure;
  readonly sides: 'left' | 'right' | 'both';
}>({
  code: 'slides-need-packing',
  severity: 'note',
  title: 'Slides behind a face frame',
  headline: (facts, say) => {
    const where = facts.sides === 'both' ? 'each side' : `the ${facts.sides} side`;
    return (
      `the stiles stand in beyond the sides: behind them the slides ${say.name(facts.slides)} need a packing piece ` +
      `${say.length(facts.packing)} thick on ${where}`
    );
  },
  brief: (facts, say) => `packing pieces ${say.length(facts.packing)} thick`,
  related: { stiles: (values, say) => `the stiles, ${say.length(values['stile'] as Measure)} wide` },
  mends: {},
  help: `
A slide at the side of a drawer is screwed to the side of the case. Behind a face frame whose stiles are wider than the
sides are thick the side stands back from the opening, by the width of the stile less the thickness of the side: a
packing piece of exactly that thickness brings the slide out to the edge of the opening.

\`\`\`fettle wrong
slide "side mount 14" side mount, 14 long, takes 1/2 each side
piece "chest" {
  size 24 wide, 20 high, 18 deep
  case {
    sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides
    frame thick 3/4 {
      stiles 1-1/2 wide
      top-rail 1-1/2 wide
      bottom-rail 1-1/2 wide
    }
  }
  face inset, gap 3/32 {
    drawer "a"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "side mount 14" }
  }
}
\`\`\`

\`\`\`fettle right
slide "side mount 14" side mount, 14 long, takes 1/2 each side
piece "chest" {
  size 24 wide, 20 high, 18 deep
  case {
    sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides
    frame thick 3/4 {
      stiles 3/4 wide
      top-rail 1-1/2 wide
      bottom-rail 1-1/2 wide
    }
  }
  face inset, gap 3/32 {
    drawer "a"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "side mount 14" }
  }
}
\`\`\`
`,
});
