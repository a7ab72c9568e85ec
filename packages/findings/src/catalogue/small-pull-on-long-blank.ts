import { defineFinding, type Measure } from '../finding.ts';

/** A caution: hands stay away from cutters while there is enough to hold. */
export const smallPullOnLongBlank = defineFinding<{
  readonly pull: string;
  readonly stock: string;
  readonly size: Measure;
  readonly limit: Measure;
  readonly count: number;
}>({
  code: 'small-pull-on-long-blank',
  severity: 'note',
  title: 'Small pulls are made on a long blank',
  headline: (facts, say) =>
    `${say.name(facts.pull)} is ${say.length(facts.size)} long and made of ${say.name(facts.stock)}: shape ` +
    `${facts.count === 1 ? 'it' : `all ${facts.count}`} on a blank that stays at least ${say.length(facts.limit)} long, ` +
    'and cut it off last (common practice)',
  brief: (facts, say) => `keep its blank ${say.length(facts.limit)} long`,
  related: { pull: (values, say) => `${say.name(String(values['pull']))} is described here` },
  mends: {},
  help: `
A piece as small as a pull cannot be held safely at a saw, a router table or a jointer. Its profile, its recess and its
screw holes are made on a blank that is at least 12" (300 mm) long, what is left of it included, and each pull is cut off
only when all else is done, the last ones by hand. This is common practice, no source; follow what the maker of the
machine says, and its guards.

\`\`\`fettle wrong
board "maple" any thickness, 8 wide, 120 long
pull "block" 3 wide, 3/4 high, of "maple", stands out 3/4, thread 3/8 deep
piece "box" {
  size 20 wide, 20 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 { door "front" hinged left   pulls "block"   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
pull "block" 3 wide, 3/4 high, stands out 3/4, thread 3/8 deep
piece "box" {
  size 20 wide, 20 high, 16 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 { door "front" hinged left   pulls "block"   fronts thick 3/4 }
}
\`\`\`
`,
});
