import { defineFinding, type Measure } from '../finding.ts';

/** A ledge for a screen takes too much of the thickness of its front. */
export const ventLedgeTooDeep = defineFinding<{
  readonly part: string;
  readonly depth: Measure;
  readonly thickness: Measure;
  readonly limit: Measure;
}>({
  code: 'vent-ledge-too-deep',
  severity: 'error',
  title: 'A ledge that is too deep',
  headline: (facts, say) =>
    `a ledge ${say.length(facts.depth)} deep in the ${facts.part}, ${say.length(facts.thickness)} thick: ` +
    `${say.length(facts.limit)} is the most that leaves an edge around the vent`,
  brief: (facts, say) => `ledge ${say.length(facts.depth)} deep`,
  related: {},
  mends: { shallower: (values, say) => `Make it ${say.length(values['size'] as Measure)} deep` },
  help: `
The ledge that a screen lies in is cut from the back of the front. At least 1/8" or 3 mm stays before it (common
practice, no source): the edge that one sees.

\`\`\`fettle wrong
piece "box" {
  size 18 wide, 20 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   back thick 1/4, applied }
  face inset, gap 1/8 {
    door "onions" rest, hinged left { vent 6 wide, 2 high, 4 up { ledge 1/4 wide, 3/4 deep } }
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 18 wide, 20 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   back thick 1/4, applied }
  face inset, gap 1/8 {
    door "onions" rest, hinged left { vent 6 wide, 2 high, 4 up { ledge 1/4 wide, 1/4 deep } }
    fronts thick 3/4
  }
}
\`\`\`
`,
});
