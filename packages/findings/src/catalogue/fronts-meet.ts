import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** Two fronts that lie on the case lap what is between them by more than there is of it. */
export const frontsMeet = defineFinding<{
  readonly name?: string;
  /** Where it has no name. */
  readonly words: string;
  /** What both lap together. */
  readonly laps: Measure;
  /** Thickness of what is between them. */
  readonly thickness: Measure;
  /** Zero where they just touch. */
  readonly over: Measure;
}>({
  code: 'fronts-meet',
  severity: 'error',
  title: 'Two fronts meet over what is between them',
  headline: (facts, say) =>
    `${subject(facts, say)} and the front beside it lap ` +
    `${say.length(facts.laps)} together, there is ${say.length(facts.thickness)} between them: ` +
    (facts.over.exactInches === '0' ? 'no gap is left' : `${say.length(facts.over)} too much`),
  brief: (facts, say) =>
    facts.over.exactInches === '0' ? 'no gap left' : `fronts meet, ${say.length(facts.over)} too much`,
  related: {
    beside: (values, say) => `${subject(values, say)} laps ${say.length(values['lap'] as Measure)}`,
    divider: (values, say) => `what is between them, ${say.length(values['thickness'] as Measure)} thick`,
  },
  mends: { 'lap-less': (values, say) => `Lap ${say.length(values['size'] as Measure)}` },
  help: `
Fronts that lie on the case lap its edges, and what is between two of them is lapped from both sides. Some of it has to
be left for the gap between the fronts. A front that is full or half overlay takes its half of a covered divider; one
that laps by an amount, or by its lip, takes as much as is written.

\`\`\`fettle wrong
piece "cupboard" {
  size 30 wide, 24 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face overlay 1/2, gap 1/8 {
    row {
      door "cups"
      partition thick 3/4
      door "plates"
    }
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "cupboard" {
  size 30 wide, 24 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face overlay 5/16, gap 1/8 {
    row {
      door "cups"
      partition thick 3/4
      door "plates"
    }
    fronts thick 3/4
  }
}
\`\`\`
`,
});
