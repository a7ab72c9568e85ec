import { defineFinding } from '../finding.ts';

/** A sum in which a number without a unit seems to be meant in the unit of its neighbour. */
export const unitsMixedInSum = defineFinding<{
  /** The number without a unit. */
  readonly bare: string;
  /** What it counts, and what it looks like, in words. */
  readonly unit: string;
  readonly other: string;
  /** The neighbour, as written. */
  readonly beside: string;
}>({
  code: 'units-mixed-in-sum',
  severity: 'warning',
  title: 'A sum that mixes units by a slip',
  headline: (facts) =>
    `'${facts.bare}' counts ${facts.unit} here, beside '${facts.beside}' it looks like ${facts.other}`,
  brief: (facts) => `${facts.unit} or ${facts.other}?`,
  related: {},
  mends: { say: (values) => `Write ${values['words']}` },
  help: `
Inches and millimetres may stand in one sum, and they are added exactly. A number without a unit counts the units of its
piece, whatever stands beside it. Here that gives a size that hardly anyone means: hundreds of inches beside
millimetres, or a fraction of a millimetre beside inches. With its own unit the number is taken as meant.

\`\`\`fettle wrong
piece "wall cupboard" {
  size (600 - 36mm) wide, 30 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`

\`\`\`fettle right
piece "wall cupboard" {
  size (600mm - 36mm) wide, 30 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`
`,
});
