import { defineFinding, type Measure } from '../finding.ts';

/** A screw so near to the edge of its wood that it splits it. */
export const screwNearEdge = defineFinding<{
  readonly hardware: string;
  readonly screw: string;
  readonly others: number;
  readonly part: string;
  /** From the rim of its hole to the edge; zero where the hole runs out of it. */
  readonly left: Measure;
  readonly limit: Measure;
}>({
  code: 'screw-near-edge',
  severity: 'warning',
  title: 'A screw too near to an edge',
  headline: ({ hardware, screw, others, part, left, limit }, say) =>
    `the ${screw} of the ${hardware}${others === 0 ? '' : ` and ${others} more`} ${others === 0 ? 'leaves' : 'leave'} ` +
    `${say.length(left)} of the ${part} beside ${others === 0 ? 'its hole' : 'their holes'}: less than its own ` +
    `thickness of ${say.length(limit)} splits`,
  brief: ({ left }, say) => `only ${say.length(left)} beside a screw`,
  related: {},
  mends: {},
  help: `
A screw wedges the wood apart. Beside its hole at least as much wood as the screw is thick should be left (common
practice, no source); near an end more is better, and a hole bored first always helps.

Move the slide, or choose one whose holes lie elsewhere.

\`\`\`fettle wrong
slide "plain 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side {
  hole 1/8 from front   hole 12 from front
  screws 5/8 long, 1/8 thick
}
piece "box" {
  size 20 wide, 12 high, 16 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides
    top thick 3/4, between sides
    back thick 1/4, in groove 1/4 deep, 1/2 in from back edge
  }
  face overlay full, gap 1/8, reveal 1/8 {
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "plain 14" }
  }
}
\`\`\`

\`\`\`fettle right
slide "plain 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side {
  hole 1/2 from front   hole 12 from front
  screws 5/8 long, 1/8 thick
}
piece "box" {
  size 20 wide, 12 high, 16 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides
    top thick 3/4, between sides
    back thick 1/4, in groove 1/4 deep, 1/2 in from back edge
  }
  face overlay full, gap 1/8, reveal 1/8 {
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "plain 14" }
  }
}
\`\`\`
`,
});
