import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** Kilograms on a square metre for a pound on a square foot: 0.45359237 / 0.3048 squared. */
const KILOGRAMS = 4.882428;

function loadWords(psf: number, metric: boolean): string {
  return metric ? `${Math.round(psf * KILOGRAMS)} kg a square metre` : `${psf} lb a square foot`;
}

/** A screening against the shelf table of a published standard, never a rating. */
export const shelfTooLong = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly length: Measure;
  readonly thickness: Measure;
  /** What the shelf is screened as. */
  readonly material: string;
  readonly loadPsf: number;
  /** Whether the piece is in millimetres or centimetres. */
  readonly metric: boolean;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'shelf-too-long',
  severity: 'warning',
  title: 'A shelf that is likely to sag',
  headline: (facts, say) =>
    `the shelves of ${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} are ` +
    `${say.length(facts.length)} long; screened as ${facts.material}, ${say.length(facts.thickness)} thick under ` +
    `${loadWords(facts.loadPsf, facts.metric)}, they may be ${say.length(facts.limit)}: ` +
    `${say.length(facts.difference)} too long; a screening, no rating`,
  brief: (facts, say) => `shelves ${say.length(facts.difference)} too long`,
  related: { also: (values, say) => `the shelves of ${subject(values, say)} are too long as well` },
  mends: { thicken: (values, say) => `Make them ${say.length(values['size'] as Measure)} thick` },
  help: `
A shelf on two supports sags under its load, with the third power of its length. This is a screening for the ordinary
case: the longest shelf of the Architectural Woodwork Standards (2009, 10-4.4.14.10) at 50 lb per square foot, a shelf
of books, sagging no more than 1/144 of its length. Solid wood is taken for red oak, a sheet for plywood, a sheet
without grain for MDF. Softer wood, wet places, years of load and shelves that are notched carry less.

It is no rating, and that nothing is reported does not show what a shelf carries. Make the shelf thicker, give it a
front rail or a middle support, or narrow the opening.

\`\`\`fettle wrong
piece "bookcase" {
  size 60 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "books" { shelves 2 adjustable } }
}
\`\`\`

\`\`\`fettle right
piece "bookcase" {
  size 40 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "books" { shelves 2 adjustable } }
}
\`\`\`
`,
});
