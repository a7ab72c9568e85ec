import { defineFinding, type Measure } from '../finding.ts';

/** A screw that runs into a joint or another cut in its wood. */
export const screwMeetsJoint = defineFinding<{
  readonly hardware: string;
  readonly screw: string;
  readonly others: number;
  readonly part: string;
  /** 'groove for the back' */
  readonly what: string;
  /** How far it would have to move to be clear of it. */
  readonly by: Measure;
}>({
  code: 'screw-meets-joint',
  severity: 'warning',
  title: 'A screw into a joint',
  headline: ({ hardware, screw, others, part, what, by }, say) =>
    `the ${screw} of the ${hardware}${others === 0 ? '' : ` and ${others} more`} ${others === 0 ? 'runs' : 'run'} into ` +
    `the ${what} in the ${part}: ${say.length(by)} would clear it`,
  brief: ({ what }) => `a screw in the ${what}`,
  related: { other: ({ what }) => `The ${String(what)} comes from here` },
  mends: {},
  help: `
A screw in a groove holds in air, one in a dado splits off what stands in it, and a glued joint with a screw through it
is weaker than one without. Move what is screwed on until its holes are clear of the joints, or the joint.

\`\`\`fettle wrong
slide "plain 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side {
  hole 1-1/2 from front, 0 up   hole 12 from front, 0 up
  screws 5/8 long, 1/8 thick
}
piece "box" {
  size 20 wide, 12 high, 16 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, in dado 1/4 deep
    top thick 3/4, between sides
    back thick 1/4, in groove 1/4 deep, 1/2 in from back edge
  }
  face inset, gap 1/8 {
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "plain 14", 0 above lower edge of opening }
  }
}
\`\`\`

\`\`\`fettle right
slide "plain 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side {
  hole 1-1/2 from front, 3/8 up   hole 12 from front, 3/8 up
  screws 5/8 long, 1/8 thick
}
piece "box" {
  size 20 wide, 12 high, 16 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides, in dado 1/4 deep
    top thick 3/4, between sides
    back thick 1/4, in groove 1/4 deep, 1/2 in from back edge
  }
  face inset, gap 1/8 {
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "plain 14", 0 above lower edge of opening }
  }
}
\`\`\`
`,
});
