import { defineFinding, type Measure } from '../finding.ts';

/** A screw with no wood behind it that it could hold in. */
export const screwInAir = defineFinding<{
  /** 'left slide of "cards"' */
  readonly hardware: string;
  /** 'rear screw' */
  readonly screw: string;
  /** How many more of the same statement find none. */
  readonly others: number;
  /** Wood farther off than this is none. */
  readonly limit: Measure;
}>({
  code: 'screw-in-air',
  severity: 'error',
  title: 'A screw in the air',
  headline: ({ hardware, screw, others, limit }, say) =>
    `the ${screw} of the ${hardware} finds no wood within ${say.length(limit)} behind it` +
    (others === 0 ? '' : `, and ${others} more likewise`),
  brief: ({ screw }) => `${screw} in the air`,
  related: {},
  mends: {},
  help: `
What carries a load is screwed to wood at every hole that its maker gave it. A slide beside an opening that has no side
and no partition there, or a rear screw that lies behind the end of what stands beside it, holds nothing.

Put a partition or a full panel beside the opening, choose a slide whose holes lie where there is wood, or set it at
another height.

\`\`\`fettle wrong
slide "plain 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side {
  hole 1-1/2 from front   hole 12 from front
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
  face inset, gap 1/8 {
    row {
      drawer "tools"
      open "files" opening 9 wide
    }
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "plain 14" }
  }
}
\`\`\`

\`\`\`fettle right
slide "plain 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side {
  hole 1-1/2 from front   hole 12 from front
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
  face inset, gap 1/8 {
    row {
      drawer "tools"
      partition thick 3/4
      open "files" opening 9 wide
    }
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "plain 14" }
  }
}
\`\`\`
`,
});
