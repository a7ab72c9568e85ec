import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** The saw takes more than lies between the leaves. */
export const splitWiderThanGap = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly kerf: Measure;
  readonly gap: Measure;
  readonly by: Measure;
  readonly each: Measure;
}>({
  code: 'split-wider-than-gap',
  severity: 'warning',
  title: 'A cut between two doors that is wider than their gap',
  headline: (facts, say) =>
    `${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} is cut through by a kerf of ${say.length(facts.kerf)}, ` +
    `the gap between its leaves is ${say.length(facts.gap)}: each leaf loses ${say.length(facts.each)}; make the panel ` +
    `${say.length(facts.by)} wider, plan a gap of ${say.length(facts.kerf)}, or cut it with a thinner blade`,
  brief: (facts, say) => `the kerf takes ${say.length(facts.by)} more than the gap`,
  related: {},
  mends: {},
  help: `
A pair that is made as one panel loses the kerf of the saw between its leaves, and nothing more where the gap is as wide.
The kerf is the widest of the shop's machines, or 1/8" (3 mm) where none says its own. What is planed off both edges
after the cut comes on top.

\`\`\`fettle wrong
board "ash" any thickness, 8 wide, 120 long
piece "box" {
  size 24 wide, 20 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { doors "front" { pair made as one }   fronts "ash" thick 3/4 }
}
\`\`\`

\`\`\`fettle right
board "ash" any thickness, 8 wide, 120 long
piece "box" {
  size 24 wide, 20 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 1/8 { doors "front" { pair made as one }   fronts "ash" thick 3/4 }
}
\`\`\`
`,
});
