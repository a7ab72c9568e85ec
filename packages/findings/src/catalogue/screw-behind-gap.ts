import { defineFinding, type Measure } from '../finding.ts';

/** A screw that has to cross a gap before it reaches the wood that it is to hold in. */
export const screwBehindGap = defineFinding<{
  readonly hardware: string;
  readonly screw: string;
  /** How many more of the same statement cross the same gap. */
  readonly others: number;
  /** What stands back. */
  readonly part: string;
  readonly gap: Measure;
}>({
  code: 'screw-behind-gap',
  severity: 'error',
  title: 'A screw into something that stands back',
  headline: ({ hardware, screw, others, part, gap }, say) =>
    `the ${screw} of the ${hardware}${others === 0 ? '' : ` and ${others} more`} would cross ${say.length(gap)} of ` +
    `air: the ${part} stands back by so much`,
  brief: ({ gap }, say) => `a screw across ${say.length(gap)} of air`,
  related: {},
  mends: {
    packers: ({ gap, stock }, say) =>
      `Put ${say.length(gap as Measure)} packers${stock === undefined ? '' : ` of ${say.name(String(stock))}`} behind the slides`,
  },
  help: `
A slide lies in the plane of its opening. Where what stands beside it is set back, such as the panel of a frame, or a
side behind the stile of a face frame, a screw pulls the slide into the hollow and bends it. A packer as thick as the
gap, between the slide and the wood, mends that: it lies on the wood that stands back and reaches from what is flush
before it to what is flush behind it. A solid panel that is free to move is no place for screws: fasten the packer to the
frame around it, and use screws that end within the packer where you can.

\`\`\`fettle wrong
slide "plain 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side {
  hole 1/2 from front   hole 12 from front
  screws 3/8 long, 1/8 thick
}
piece "box" {
  size 20 wide, 12 high, 16 deep
  case {
    sides thick 3/4, frame-and-panel {
      stiles 2-1/2 wide   top-rail 2 wide   bottom-rail 2 wide
      panel thick 1/4, in groove 3/8 deep, clearance 1/16
    }
    bottom thick 3/4, between sides
    top thick 3/4, between sides
    back thick 1/4, in groove 1/4 deep, 1/2 in from back edge
  }
  face inset, gap 1/8 {
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "plain 14", 4 above lower edge of front }
  }
}
\`\`\`

\`\`\`fettle right
slide "plain 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side {
  hole 1/2 from front   hole 12 from front
  screws 3/8 long, 1/8 thick
}
piece "box" {
  size 20 wide, 12 high, 16 deep
  case {
    sides thick 3/4, frame-and-panel {
      stiles 2-1/2 wide   top-rail 2 wide   bottom-rail 2 wide
      panel thick 1/4, in groove 3/8 deep, clearance 1/16
    }
    bottom thick 3/4, between sides
    top thick 3/4, between sides
    back thick 1/4, in groove 1/4 deep, 1/2 in from back edge
  }
  face inset, gap 1/8 {
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "plain 14", 4 above lower edge of front   packers 1/4 }
  }
}
\`\`\`
`,
});
