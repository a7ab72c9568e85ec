import { defineFinding, type Measure } from '../finding.ts';

/** A screw that reaches into a solid panel which has to move in its frame. */
export const screwPinsPanel = defineFinding<{
  /** 'left slide of "cards"' */
  readonly hardware: string;
  readonly screw: string;
  /** How many more of the same statement do the same. */
  readonly others: number;
  readonly panel: string;
  /** How long it is from the plane of the slide, and what lies before the panel. */
  readonly length: Measure;
  readonly wood: Measure;
  /** How far it reaches into the panel. */
  readonly by: Measure;
}>({
  code: 'screw-pins-panel',
  severity: 'warning',
  title: 'A screw that holds a floating panel fast',
  headline: ({ hardware, screw, others, panel, length, wood, by }, say) =>
    `the ${screw} of the ${hardware}${others === 0 ? '' : ` and ${others} more`}, ${say.length(length)} long, ` +
    `${others === 0 ? 'goes' : 'go'} through ${say.length(wood)} of packer and ${say.length(by)} into the ${panel}, which has to move`,
  brief: ({ by }, say) => `a screw ${say.length(by)} into a panel that has to move`,
  related: {
    packers: () => 'These packers lie before the panel',
    panel: () => 'The panel is solid and lies loose in its grooves',
  },
  mends: {
    shorter: ({ size }, say) => `Use screws ${say.length(size as Measure)} long, which end within the packer`,
    'onto-rail': ({ size }, say) => `Set the slides ${say.length(size as Measure)} up, before a rail of the frame`,
  },
  help: `
A solid panel lies loose in the grooves of its frame, because its width changes with the seasons. A screw that holds it
to a slide, and so to the stiles that the slide is also screwed to, takes that freedom away, and the panel splits or
pushes its frame apart. A packer before it is fastened to the frame: it reaches from stile to stile, and the screws of
the slide end within it. Where there is no room for screws that hold, a rail of the frame at the height of the slide is
better: there the screws find wood that does not move.

\`\`\`fettle wrong
board "cherry" any thickness, 9 wide, 120 long
slide "plain 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side {
  hole 1/2 from front   hole 12 from front
  screws 5/8 long, 1/8 thick
}
piece "box" {
  size 20 wide, 12 high, 16 deep
  case {
    sides thick 1, frame-and-panel {
      stiles 2-1/2 wide   top-rail 2 wide   bottom-rail 3 wide
      panel "cherry" thick 3/8, in groove 3/8 deep, float 1/16 each side
    }
    bottom thick 3/4, between sides
    top thick 3/4, between sides
    back thick 1/4, in groove 1/4 deep, 1/2 in from back edge
  }
  face inset, gap 1/8 {
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "plain 14", 4 above lower edge of front   packers }
  }
}
\`\`\`

\`\`\`fettle right
board "cherry" any thickness, 9 wide, 120 long
slide "plain 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side {
  hole 1/2 from front   hole 12 from front
  screws 5/8 long, 1/8 thick
}
piece "box" {
  size 20 wide, 12 high, 16 deep
  case {
    sides thick 1, frame-and-panel {
      stiles 2-1/2 wide   top-rail 2 wide   bottom-rail 3 wide
      panel "cherry" thick 3/8, in groove 3/8 deep, float 1/16 each side
    }
    bottom thick 3/4, between sides
    top thick 3/4, between sides
    back thick 1/4, in groove 1/4 deep, 1/2 in from back edge
  }
  face inset, gap 1/8 {
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "plain 14", 4 above lower edge of front, screws 1/4 long   packers }
  }
}
\`\`\`
`,
});
