import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** An overlay front that leaves so much of an edge to be seen that it does not lie on it at all. */
export const revealLeavesNoLap = defineFinding<{
  readonly name?: string;
  /** Where it has no name. */
  readonly words: string;
  readonly side: 'left' | 'right' | 'top' | 'bottom';
  readonly reveal: Measure;
  /** What it has of the edge to lap. */
  readonly edge: Measure;
}>({
  code: 'reveal-leaves-no-lap',
  severity: 'error',
  title: 'A reveal as wide as the edge',
  headline: (facts, say) =>
    `a reveal of ${say.length(facts.reveal)} leaves ${subject(facts, say)} nothing to lie on: it has ` +
    `${say.length(facts.edge)} of the edge at its ${facts.side}`,
  brief: (facts, say) => `a reveal of ${say.length(facts.reveal)}`,
  related: { front: (values, say) => `${subject(values, say)} stands here` },
  mends: { 'reveal-less': (values, say) => `Leave ${say.length(values['size'] as Measure)} to be seen` },
  help: `
A reveal is what a full overlay front leaves to be seen of the edge it lies on. As wide as the edge, or wider, it leaves
no wood under the front: the front does not close its opening. At a divider that is shown each of two fronts has half of
its thickness.

\`\`\`fettle wrong
piece "cupboard" {
  size 30 wide, 24 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face overlay full, gap 1/8, reveal 3/4 {
    doors "cups"
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "cupboard" {
  size 30 wide, 24 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face overlay full, gap 1/8, reveal 1/8 {
    doors "cups"
    fronts thick 3/4
  }
}
\`\`\`
`,
});
