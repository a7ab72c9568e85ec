import { defineFinding, type Measure } from '../finding.ts';

/** Sides of a box that are thicker than the slides under it take. */
export const sidesTooThickForSlides = defineFinding<{
  readonly slides: string;
  readonly thickness: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'sides-too-thick-for-slides',
  severity: 'error',
  title: 'Sides too thick for their slides',
  headline: (facts, say) =>
    `${say.name(facts.slides)} goes under sides of at most ${say.length(facts.limit)}, these are ` +
    `${say.length(facts.thickness)} thick: ${say.length(facts.difference)} too thick`,
  brief: (facts, say) => `sides ${say.length(facts.difference)} too thick`,
  related: { slides: ({ slides }, say) => `${say.name(String(slides))} is chosen here` },
  mends: { thinner: ({ size }, say) => `Make the sides ${say.length(size as Measure)} thick` },
  help: `
A slide that lies under the box reaches around its side from below; it is made for sides up to a certain thickness.

\`\`\`fettle wrong
slide "plain 14" under mount, 14 long, 1-3/4 high, takes 3/16 each side, takes 5/8 below, sides at most 5/8 thick
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
    drawers { sides thick 3/4   bottom thick 1/4   corners butt   slides "plain 14" }
  }
}
\`\`\`

\`\`\`fettle right
slide "plain 14" under mount, 14 long, 1-3/4 high, takes 3/16 each side, takes 5/8 below, sides at most 5/8 thick
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
    drawers { sides thick 5/8   bottom thick 1/4   corners butt   slides "plain 14" }
  }
}
\`\`\`
`,
});
