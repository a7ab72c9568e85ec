import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const pullOffFront = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly pull: string;
  readonly edge: 'left' | 'right' | 'upper' | 'lower';
  readonly by: Measure;
}>({
  code: 'pull-off-front',
  severity: 'error',
  title: 'A pull that reaches beyond its front',
  headline: (facts, say) =>
    `${say.name(facts.pull)} reaches ${say.length(facts.by)} beyond the ${facts.edge} edge of ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)}`,
  brief: (facts, say) => `${say.length(facts.by)} over the edge`,
  related: {
    also: (values, say) => `${subject(values, say)} has it as well`,
  },
  mends: {
    move: (values, say) => `Put its middle ${say.length(values['size'] as Measure)} from the edge`,
  },
  help: `
The whole pull lies on its front, from end to end. Move it, or choose a smaller one.

\`\`\`fettle wrong
pull "bar" 5 wide, 1/2 high
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { door "pens" hinged left { pulls "bar", 1 below top }   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
pull "bar" 5 wide, 1/2 high
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   top thick 3/4, between sides   bottom thick 3/4, between sides }
  face inset, gap 3/32 { door "pens" hinged left { pulls "bar", 4 below top }   fronts thick 3/4 }
}
\`\`\`
`,
});
