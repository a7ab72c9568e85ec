import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** A front laps an edge of the case or of its frame by more than the edge is wide. */
export const lapBeyondEdge = defineFinding<{
  readonly name?: string;
  /** Where it has no name. */
  readonly words: string;
  readonly side: 'left' | 'right' | 'top' | 'bottom';
  readonly lap: Measure;
  readonly edge: Measure;
  readonly over: Measure;
}>({
  code: 'lap-beyond-edge',
  severity: 'error',
  title: 'A front reaches beyond the edge it lies on',
  headline: (facts, say) =>
    `${subject(facts, say)} laps the ${facts.side} edge by ` +
    `${say.length(facts.lap)}, the edge is ${say.length(facts.edge)}: it stands out ${say.length(facts.over)} beyond the case`,
  brief: (facts, say) => `${say.length(facts.over)} beyond the case`,
  related: { edge: (values, say) => `the edge, ${say.length(values['edge'] as Measure)}, follows from here` },
  mends: { 'lap-less': (values, say) => `Lap ${say.length(values['size'] as Measure)}` },
  help: `
A front that laps an edge by an amount, or by its lip, covers as much of it as is written. More than the edge has would
stand out beyond the case: in the way of its neighbour, and of the size the piece is meant to have.

\`\`\`fettle wrong
piece "cupboard" {
  size 30 wide, 24 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face overlay 7/8, gap 1/8 {
    doors "cups"
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "cupboard" {
  size 30 wide, 24 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face overlay 3/4, gap 1/8 {
    doors "cups"
    fronts thick 3/4
  }
}
\`\`\`
`,
});
