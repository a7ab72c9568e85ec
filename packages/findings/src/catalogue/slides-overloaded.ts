import { defineFinding } from '../finding.ts';
import { subject } from '../named.ts';

/** Slides that carry more than their maker rates them for. */
export const slidesOverloaded = defineFinding<{
  readonly name?: string;
  /** Where it has no name. */
  readonly words: string;
  readonly slides: string;
  /** What drawer and contents weigh, rounded, with the unit. */
  readonly load: string;
  readonly rating: string;
  readonly difference: string;
  /** What of it is the drawer itself. */
  readonly drawer: string;
}>({
  code: 'slides-overloaded',
  severity: 'warning',
  title: 'Slides that carry too much',
  headline: (facts, say) =>
    `${subject(facts, say)} with what it holds weighs about ${facts.load}, ${say.name(facts.slides)} is rated for ` +
    `${facts.rating}: ${facts.difference} too much`,
  brief: ({ difference }) => `slides with ${difference} too much`,
  related: {
    drawer: (values, say) => `${subject(values, say)}: the drawer itself is about ${String(values['drawer'])} of it`,
  },
  mends: { 'use-slides': (values, say) => `Use ${say.name(String(values['slides']))}` },
  help: `
The maker of a slide rates the pair for a load: the drawer, its front and everything in it. The weights of wood are
averages, so stay well below the rating; this is a comparison of two numbers, not a test of the slide.

\`\`\`fettle wrong
slide "plain 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side, carries 40 lb
piece "box" {
  size 20 wide, 16 high, 16 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides
    top thick 3/4, between sides
  }
  face inset, gap 1/8 {
    drawer "tools" { holds 90 "record" }
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "plain 14" }
  }
  thing "record" { 12-3/8 wide, 1/8 deep, 12-3/8 high   weighs 1/2 lb }
}
\`\`\`

\`\`\`fettle right
slide "plain 14" side mount, 14 long, 1-3/4 high, takes 1/2 each side, carries 75 lb
piece "box" {
  size 20 wide, 16 high, 16 deep
  case {
    sides thick 3/4
    bottom thick 3/4, between sides
    top thick 3/4, between sides
  }
  face inset, gap 1/8 {
    drawer "tools" { holds 90 "record" }
    fronts thick 3/4
    drawers { sides thick 1/2   bottom thick 1/4   corners butt   slides "plain 14" }
  }
  thing "record" { 12-3/8 wide, 1/8 deep, 12-3/8 high   weighs 1/2 lb }
}
\`\`\`
`,
});
