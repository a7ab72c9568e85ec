import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** A shelf is so short, or its cleats so thin, that its ends do not lie on them. */
export const shelfLeavesCleat = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly shy: Measure;
  readonly thickness: Measure;
  /** What of the cleat lies under the shelf, if it is pushed to the other end. */
  readonly left: Measure;
  readonly limit: Measure;
  readonly how: 'falls' | 'keeps too little';
}>({
  code: 'shelf-leaves-cleat',
  severity: 'error',
  title: 'A shelf that slips off its cleats',
  headline: (facts, say) => {
    const shelf = `shelves of ${subject(facts, say)}, ${say.length(facts.shy)} shy at each end, `;
    const cleat = `cleats ${say.length(facts.thickness)} thick`;
    return facts.how === 'falls'
      ? `${shelf}fall off ${cleat} when they are pushed to one end`
      : `${shelf}keep ${say.length(facts.left)} on ${cleat} when they are pushed to one end: ` +
          `${say.length(facts.limit)} is asked for`;
  },
  brief: (facts, say) => (facts.how === 'falls' ? 'falls off its cleats' : `${say.length(facts.left)} on the cleat`),
  related: { cleats: () => 'the cleats' },
  mends: { shy: (values, say) => `Leave them ${say.length(values['size'] as Measure)} shy at each end` },
  help: `
What a shelf is left short at both ends opens at one end when it is pushed to the other. At least 3/8" or 10 mm of the
cleat has to stay under it then (common practice, no source).

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "books" { shelves 1 on cleats, shy 3/8 { cleats thick 3/4, 1 high } } }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "books" { shelves 1 on cleats, shy 1/16 { cleats thick 3/4, 1 high } } }
}
\`\`\`
`,
});
