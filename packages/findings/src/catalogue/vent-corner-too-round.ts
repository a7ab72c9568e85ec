import { defineFinding, type Measure } from '../finding.ts';

/** A square lining does not go into an opening with round corners, or a round corner is larger than its opening. */
export const ventCornerTooRound = defineFinding<{
  readonly radius: Measure;
  readonly why: 'a lining is square' | 'it is more than half of the opening';
}>({
  code: 'vent-corner-too-round',
  severity: 'error',
  title: 'Corners that are too round',
  headline: (facts, say) => `corners of ${say.length(facts.radius)} cannot be: ${facts.why}`,
  brief: (facts, say) => `corners of ${say.length(facts.radius)}`,
  related: { lining: () => 'the lining' },
  mends: { square: () => 'Cut the corners square' },
  help: `
A cutter leaves its radius in every inside corner. Strips of a lining are square: they go into an opening whose corners
are cut square with a chisel, or into none. And no corner is rounder than half of its opening.

\`\`\`fettle wrong
piece "box" {
  size 18 wide, 20 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   back thick 1/4, applied }
  face inset, gap 1/8 {
    door "onions" rest, hinged left { vent 6 wide, 2 high, 4 up, corners 1/4 { lining thick 1/4 } }
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 18 wide, 20 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   back thick 1/4, applied }
  face inset, gap 1/8 {
    door "onions" rest, hinged left { vent 6 wide, 2 high, 4 up, square corners { lining thick 1/4 } }
    fronts thick 3/4
  }
}
\`\`\`
`,
});
