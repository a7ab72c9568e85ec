import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** What a drawer would be on other slides than those that are chosen. */
export const slidesCompared = defineFinding<{
  readonly name?: string;
  /** Where it has no name. */
  readonly words: string;
  readonly chosen: string;
  readonly other: string;
  readonly width: Measure;
  readonly otherWidth: Measure;
  readonly height: Measure;
  readonly otherHeight: Measure;
  readonly depth: Measure;
  readonly otherDepth: Measure;
  /** In the shop's own currency, of a pair; 'not told' where the entry has none. */
  readonly cost: string;
  readonly otherCost: string;
  readonly rating: string;
  readonly otherRating: string;
}>({
  code: 'slides-compared',
  severity: 'note',
  title: 'Slides compared',
  headline: (facts, say) => {
    const size = (what: string, other: Measure, chosen: Measure) =>
      `${say.length(other)} ${what}${other.exactInches === chosen.exactInches ? ' as well' : ` rather than ${say.length(chosen)}`}`;
    const told = (what: string, other: string, chosen: string) =>
      `${what} ${other}${other === chosen ? ' as well' : ` rather than ${chosen}`}`;
    return (
      `on ${say.name(facts.other)} instead of ${say.name(facts.chosen)} the box of ${subject(facts, say)} is ` +
      `${size('wide', facts.otherWidth, facts.width)}, ${size('high', facts.otherHeight, facts.height)} and ` +
      `${size('deep', facts.otherDepth, facts.depth)}, ${told('costs', facts.otherCost, facts.cost)}, ` +
      `${told('carries', facts.otherRating, facts.rating)}`
    );
  },
  brief: (facts, say) => `box ${say.length(facts.otherWidth)} wide on the other slides`,
  related: { chosen: ({ slides }, say) => `${say.name(String(slides))} is chosen here` },
  mends: { 'use-slides': (values, say) => `Use ${say.name(String(values['slides']))}, and compare no more` },
  help: `
What other slides would make of a drawer: how wide, how high and how deep its box could be, what they cost and what they
carry. The figures of both come from their entries. The box that is compared is the one that the slides leave room for,
whatever size is written.

\`\`\`fettle wrong
slide "hidden 12" under mount, 12 long, takes 3/16 each side, takes 9/16 below
use "shop.fettle"
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
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "side mount 12"   compare "hidden 12" }
  }
}
\`\`\`

\`\`\`fettle right
use "shop.fettle"
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
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "side mount 12" }
  }
}
\`\`\`
`,
});
