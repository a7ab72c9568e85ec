import { defineFinding, type Measure } from '../finding.ts';

/** A screw that is longer than the wood behind it is thick. */
export const screwBreaksThrough = defineFinding<{
  readonly hardware: string;
  readonly screw: string;
  readonly others: number;
  readonly part: string;
  readonly length: Measure;
  /** Through all that lies behind it. */
  readonly wood: Measure;
  /** Zero where its tip just reaches the far face. */
  readonly by: Measure;
}>({
  code: 'screw-breaks-through',
  severity: 'error',
  title: 'A screw that comes out on the other side',
  headline: ({ hardware, screw, others, part, length, wood, by }, say) =>
    `the ${screw} of the ${hardware}${others === 0 ? '' : ` and ${others} more`}, ${say.length(length)} long, ` +
    `${others === 0 ? 'goes' : 'go'} through the ${part}: behind it there is ${say.length(wood)} of wood, ` +
    (by.exactInches === '0' ? 'its tip would show' : `${say.length(by)} too long`),
  brief: ({ by }, say) =>
    by.exactInches === '0' ? 'a screw as long as its wood is thick' : `a screw ${say.length(by)} too long`,
  related: {},
  mends: {},
  help: `
A screw has to end within the wood: a tip that comes out scratches whoever reaches into the next compartment, or shows on
the outside of the case. Use shorter screws than the wood behind the hardware is thick.

\`\`\`fettle wrong
slide "plain 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side {
  hole 1-1/2 from front   hole 12 from front
  screws 3/4 long, 1/8 thick
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
    drawer "tools"
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
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "plain 14" }
  }
}
\`\`\`
`,
});
