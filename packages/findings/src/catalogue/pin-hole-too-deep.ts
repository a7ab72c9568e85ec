import { defineFinding, type Measure } from '../finding.ts';

/** What a hole for a shelf pin leaves behind it is nothing, or too little. */
export const pinHoleTooDeep = defineFinding<{
  readonly part: string;
  readonly depth: Measure;
  readonly thickness: Measure;
  /** Nothing is left behind it. */
  readonly through: boolean;
  readonly left: Measure;
  readonly limit: Measure;
}>({
  code: 'pin-hole-too-deep',
  severity: 'warning',
  title: 'Pin holes that go too deep',
  headline: (facts, say) =>
    facts.through
      ? `pin holes ${say.length(facts.depth)} deep come out of the ${facts.part}, ${say.length(facts.thickness)} thick`
      : `pin holes ${say.length(facts.depth)} deep leave ${say.length(facts.left)} of the ${facts.part}: less than ` +
        `${say.length(facts.limit)} lifts when the drill comes near`,
  brief: (facts, say) => (facts.through ? 'pin holes come out' : `${say.length(facts.left)} behind pin holes`),
  related: {},
  mends: { shallower: (values, say) => `Bore ${say.length(values['size'] as Measure)} deep` },
  help: `
A hole for a shelf pin is about half as deep as its panel is thick; at least 1/8" or 3 mm stays behind it (common
practice, no source), so that the far face stays whole. A stop on the drill keeps every hole alike.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 1/2   bottom thick 3/4, between sides }
  face inset { open "books" { shelves 2 adjustable, thick 3/4 { pins 7/16 deep } } }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 1/2   bottom thick 3/4, between sides }
  face inset { open "books" { shelves 2 adjustable, thick 3/4 { pins 1/4 deep } } }
}
\`\`\`
`,
});
