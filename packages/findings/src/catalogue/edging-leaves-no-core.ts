import { defineFinding, type Measure } from '../finding.ts';

/** Strips are as wide together as the part whose edges they are put on. */
export const edgingLeavesNoCore = defineFinding<{
  readonly part: string;
  readonly size: Measure;
  /** Of all strips across it. */
  readonly strips: Measure;
}>({
  code: 'edging-leaves-no-core',
  severity: 'error',
  title: 'Edging that leaves no core',
  headline: (facts, say) =>
    `the strips on the ${facts.part} are ${say.length(facts.strips)} together, the part is ${say.length(facts.size)}: no core is left`,
  brief: () => 'no core left between the strips',
  related: {},
  mends: {},
  help: `
The core of an edged part is the part less its strips. Where the strips are as wide as the part there is nothing to put
them on; such a part is made of solid wood.

\`\`\`fettle wrong
board "cherry" any thickness, 8 wide, 120 long
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply" { edging "cherry" thick 6, at front, at back }
  }
}
\`\`\`

\`\`\`fettle right
board "cherry" any thickness, 8 wide, 120 long
sheet "ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 24 wide, 20 high, 12 deep
  case {
    sides "ply" { edging "cherry" thick 1/4, at front, at back }
  }
}
\`\`\`
`,
});
