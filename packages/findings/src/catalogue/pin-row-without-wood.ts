import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** Where a row of holes should be there is nothing to bore into. */
export const pinRowWithoutWood = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly row: 'front' | 'back';
  readonly side: 'left' | 'right';
  /** How many holes of the row have no wood all around them. */
  readonly holes: number;
  readonly count: number;
  /** From the datum of the row. */
  readonly place: Measure;
}>({
  code: 'pin-row-without-wood',
  severity: 'error',
  title: 'Pin holes in the air',
  headline: (facts, say) => {
    const holes = facts.holes === facts.count ? `all ${facts.count}` : `${facts.holes} of ${facts.count}`;
    return (
      `${holes} holes of the ${facts.row} row at the ${facts.side} end of ${subject(facts, say)}, ` +
      `${say.length(facts.place)} from the ${facts.row}, have no wood flush with the opening all around them`
    );
  },
  brief: (facts) => `${facts.holes} pin holes in the air`,
  related: {},
  mends: {},
  help: `
A pin holds in a panel whose face stands at the end of the shelf. The panel of a framed side lies back from its stiles,
a web frame is open, and beyond an edge there is nothing: a row stands in a stile, in a partition or in a plain side, and
its first and last hole within it. Move the row, or use cleats.

\`\`\`fettle wrong
piece "press" {
  size 24 wide, 40 high, 16 deep
  case {
    sides of "oak" thick 3/4, frame-and-panel { stiles 2 wide   panel of "oak" thick 3/8, in groove 3/8 deep, float 1/16 each side }
    bottom thick 3/4, between sides
  }
  face inset { open "books" { shelves 2 adjustable, thick 3/4 { pins 4 from front, 1 from back } } }
}
board "oak" any thickness, 8 wide, 120 long
\`\`\`

\`\`\`fettle right
piece "press" {
  size 24 wide, 40 high, 16 deep
  case {
    sides of "oak" thick 3/4, frame-and-panel { stiles 2 wide   panel of "oak" thick 3/8, in groove 3/8 deep, float 1/16 each side }
    bottom thick 3/4, between sides
  }
  face inset { open "books" { shelves 2 adjustable, thick 3/4 { pins 1 from front, 1 from back } } }
}
board "oak" any thickness, 8 wide, 120 long
\`\`\`
`,
});
