import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** Slides that are set so low or so high that there is no opening, or no box, beside them. */
export const slideOutOfPlace = defineFinding<{
  readonly name?: string;
  /** Where it has no name. */
  readonly words: string;
  readonly where: 'under-opening' | 'over-opening' | 'under-box' | 'over-box';
  readonly difference: Measure;
}>({
  code: 'slide-out-of-place',
  severity: 'error',
  title: 'Slides beside nothing',
  headline: (facts, say) => {
    const by = say.length(facts.difference);
    const slides = `the slides of ${subject(facts, say)}`;
    switch (facts.where) {
      case 'under-opening':
        return `${slides} reach below its opening: ${by} too low`;
      case 'over-opening':
        return `${slides} reach above its opening: ${by} too high`;
      case 'under-box':
        return `${slides} have their middle below the side of the box: ${by} too low`;
      case 'over-box':
        return `${slides} have their middle above the side of the box: ${by} too high`;
      default: {
        const unknown: never = facts.where;
        return String(unknown);
      }
    }
  },
  related: { drawer: (values, say) => `${subject(values, say)} stands here` },
  mends: { set: ({ size }, say) => `Set the slides at ${say.length(size as Measure)}` },
  help: `
A slide lies within the height of its opening, and its middle, where the screws of the box sit, beside the side of the
box. Where slides are set from one line for all drawers, such as the lower edges of the fronts, a front that laps what is
under its opening, or a box that stands high, may leave a slide beside nothing.

\`\`\`fettle wrong
slide "plain 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side
piece "box" {
  size 20 wide, 12 high, 16 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides
    top thick 3/4, between sides
  }
  face inset, gap 1/8 {
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "plain 14", 10 above lower edge of front }
  }
}
\`\`\`

\`\`\`fettle right
slide "plain 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side
piece "box" {
  size 20 wide, 12 high, 16 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides
    top thick 3/4, between sides
  }
  face inset, gap 1/8 {
    drawer "tools"
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "plain 14", 2 above lower edge of front }
  }
}
\`\`\`
`,
});
