import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** A row of holes stands where its pins are not under the shelf, or the back row is not behind the front row. */
export const pinRowOffShelf = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly row: 'front' | 'back';
  readonly where: 'before the front of the shelf' | 'behind the back of the shelf' | 'before the front row';
  /** By how much. */
  readonly by: Measure;
}>({
  code: 'pin-row-off-shelf',
  severity: 'error',
  title: 'A row of holes beside its shelves',
  headline: (facts, say) =>
    `the ${facts.row} row of pin holes of ${subject(facts, say)} stands ${say.length(facts.by)} ${facts.where}`,
  brief: (facts, say) => `pin row ${say.length(facts.by)} off`,
  related: {},
  mends: { usual: (values, say) => `Put it ${say.length(values['size'] as Measure)} in, as is usual` },
  help: `
A shelf lies on two pins at each end, one near its front and one near its back. A row whose pins reach beyond the shelf
carries nothing, and two rows in one tip it. Rows are measured from the front edge, or from the back of an inset front,
and from the front of the back.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "books" { shelves 2 adjustable { pins 8 from front, 6 from back } } }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "books" { shelves 2 adjustable { pins 2 from front, 2 from back } } }
}
\`\`\`
`,
});
