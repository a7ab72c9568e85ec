import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

/** A shelf is written to lie beyond its opening or inside another shelf. */
export const shelfOutOfPlace = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly up: Measure;
  readonly to: 'underside' | 'upper face';
  readonly what: 'the lower edge of the opening' | 'the upper edge of the opening' | 'the shelf below it';
  readonly by: Measure;
}>({
  code: 'shelf-out-of-place',
  severity: 'error',
  title: 'A shelf that cannot lie there',
  headline: (facts, say) =>
    `a shelf of ${subject(facts, say)} with its ${facts.to} ${say.length(facts.up)} up reaches ` +
    `${say.length(facts.by)} into ${facts.what}`,
  brief: (facts, say) => `a shelf ${say.length(facts.by)} too far`,
  related: {},
  mends: { move: (values, say) => `Lay it ${say.length(values['size'] as Measure)} up` },
  help: `
A shelf lies within its opening and clear of the shelf below it. Its height counts from the lower edge of the opening:
\`underside 12 up\` to the face it rests on, \`upper face 12 up\` to the face things stand on, its thickness between the two.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "books" { shelves 1 fixed { shelf upper face 1/2 up } } }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "books" { shelves 1 fixed { shelf upper face 12 up } } }
}
\`\`\`
`,
});
