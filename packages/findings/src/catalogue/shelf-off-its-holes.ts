import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** The height that is written for an adjustable shelf is that of no hole. */
export const shelfOffItsHoles = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly up: Measure;
  readonly to: 'underside' | 'upper face';
  /** The nearest height at which it lies on pins. */
  readonly nearest: Measure;
  readonly difference: Measure;
}>({
  code: 'shelf-off-its-holes',
  severity: 'warning',
  title: 'A shelf between two holes',
  headline: (facts, say) =>
    `no hole carries a shelf of ${subject(facts, say)} with its ${facts.to} ${say.length(facts.up)} up: the nearest ` +
    `is ${say.length(facts.nearest)}, ${say.length(facts.difference)} away`,
  brief: (facts, say) => `${say.length(facts.difference)} from the nearest hole`,
  related: { rows: () => 'the rows of holes' },
  mends: { nearest: (values, say) => `Lay it ${say.length(values['size'] as Measure)} up` },
  help: `
Holes are one pitch apart, and a shelf lies where a hole is: its underside half of a pin above the middle of the hole.
Write a height that a hole has, begin the row elsewhere, or leave the height out and let the shelf find its nearest hole.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "books" { shelves 1 adjustable { shelf underside 12 up   pins holes 1/4 wide, lowest 4 up, 1 apart } } }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "books" { shelves 1 adjustable { shelf underside 12-1/8 up   pins holes 1/4 wide, lowest 4 up, 1 apart } } }
}
\`\`\`
`,
});
