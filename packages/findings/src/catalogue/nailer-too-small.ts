import { defineFinding, type Measure } from '../finding.ts';

/** The strips that carry a hung piece are too thin, too narrow or too few. */
export const nailerTooSmall = defineFinding<{
  readonly what: 'thickness' | 'width' | 'count';
  readonly size: Measure | number;
  readonly limit: Measure | number;
}>({
  code: 'nailer-too-small',
  severity: 'warning',
  title: 'Nailers that are too small',
  headline: (facts, say) => {
    if (typeof facts.size === 'number' || typeof facts.limit === 'number') {
      return `${String(facts.size)} nailer carries the piece, at least ${String(facts.limit)} are asked`;
    }
    const words = facts.what === 'thickness' ? 'thick' : 'wide';
    return `the nailers are ${say.length(facts.size)} ${words}, at least ${say.length(facts.limit)} is asked`;
  },
  brief: (facts) =>
    facts.what === 'count' ? 'too few nailers' : facts.what === 'width' ? 'nailers too narrow' : 'nailers too thin',
  related: {},
  mends: { enlarge: (values, say) => `Make it ${say.length(values['size'] as Measure)}` },
  help: `
Strips that carry a piece on a wall are at least 1/2" thick and 2-1/2" wide, one at the top and one at the bottom, and
one more where the piece is higher than 60" (Architectural Woodwork Standards, 1st ed., 2009, 10-4.4.18).

\`\`\`fettle wrong
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    back thick 1/4 in groove 1/4 deep, 3/4 in from back edge
    hung on wall
    nailers 2 wide of "ply", by screws
  }
}
\`\`\`

\`\`\`fettle right
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply"
    back thick 1/4 in groove 1/4 deep, 3/4 in from back edge
    hung on wall
    nailers 3 wide of "ply", by screws
  }
}
\`\`\`
`,
});
