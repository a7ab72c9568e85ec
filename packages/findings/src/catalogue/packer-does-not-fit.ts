import { defineFinding, type Measure } from '../finding.ts';

/** Packers that are thicker or thinner than the gap they fill, or that find none. */
export const packerDoesNotFit = defineFinding<{
  /** 'left slide of "cards"' */
  readonly hardware: string;
  readonly thickness: Measure;
  /** Zero where nothing stands back. */
  readonly gap: Measure;
  readonly difference: Measure;
  readonly how: 'too-thick' | 'too-thin' | 'no-gap';
}>({
  code: 'packer-does-not-fit',
  severity: 'error',
  title: 'A packer that does not fill its gap',
  headline: ({ hardware, thickness, gap, difference, how }, say) => {
    switch (how) {
      case 'no-gap':
        return `packers ${say.length(thickness)} thick have nothing to fill: nothing stands back behind the slides`;
      case 'too-thick':
      case 'too-thin':
        return (
          `the packer behind the ${hardware} is ${say.length(thickness)} thick, its gap is ${say.length(gap)}: ` +
          `${say.length(difference)} ${how === 'too-thick' ? 'too thick' : 'too thin'}`
        );
      default: {
        const unknown: never = how;
        return String(unknown);
      }
    }
  },
  related: {},
  mends: {
    thickness: ({ size }, say) => `Make the packers ${say.length(size as Measure)} thick`,
    remove: () => 'Leave the packers out',
  },
  help: `
A packer brings a slide out to the plane of its opening: it is exactly as thick as what stands behind the slide is set
back. A thinner one lets the slide bend, a thicker one makes the opening narrower than the box and its slides.

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
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "plain 14", 4 above lower edge of front   packers 3/8 }
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
