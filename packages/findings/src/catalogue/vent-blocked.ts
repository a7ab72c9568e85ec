import { defineFinding, type Measure } from '../finding.ts';

/** Something stands in the way of the air between two openings of a vent, or behind one. */
export const ventBlocked = defineFinding<{
  readonly part: string;
  /** How much of the opening's height or width it covers. */
  readonly covers: Measure;
  readonly of: Measure;
  readonly along: 'height' | 'width';
}>({
  code: 'vent-blocked',
  severity: 'warning',
  title: 'Something stands before a vent',
  headline: (facts, say) =>
    `the ${facts.part} stands across ${say.length(facts.covers)} of the ${facts.along} of the vent, ` +
    `${say.length(facts.of)}`,
  brief: (facts, say) => `${say.length(facts.covers)} of a vent covered`,
  related: { part: (values) => `the ${String(values['part'])}` },
  mends: {},
  help: `
Air goes straight through: what stands between the opening in the front and the last opening behind it is in its way, be
it a shelf, a partition, the bottom of a drawer, or an end of the box that no opening is said for. \`box\` and \`back\` in
the body of the vent open those.

\`\`\`fettle wrong
piece "box" {
  size 18 wide, 20 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   back thick 1/4, applied }
  face inset, gap 1/8 {
    door "onions" rest, hinged left { shelves 1 fixed   vent 6 wide, 2 high, 8 up { back } }
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 18 wide, 20 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   back thick 1/4, applied }
  face inset, gap 1/8 {
    door "onions" rest, hinged left { shelves 1 fixed   vent 6 wide, 2 high, 4 up { back } }
    fronts thick 3/4
  }
}
\`\`\`
`,
});
