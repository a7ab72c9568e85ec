import { defineFinding } from '../finding.ts';

/** A sequence in which nothing follows anything. */
export const sequenceWithoutOrder = defineFinding<{ readonly sequence: string; readonly count: number }>({
  code: 'sequence-without-order',
  severity: 'warning',
  title: 'A sequence of less than two fronts',
  headline: (facts) =>
    `${facts.sequence} names ${facts.count === 0 ? 'no front' : 'one front'}: with less than 2 nothing follows`,
  brief: (facts) => `${facts.count === 0 ? 'no front' : 'one front'}, nothing follows`,
  related: {},
  mends: {},
  help: `
A sequence says which fronts are cut from one blank one after the other. Name two of them or more; a pair of doors counts as
its two leaves.

\`\`\`fettle wrong
sheet "oak ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 30 wide, 26 high, 18 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    stack { drawer "upper" share 1   drawer "lower" share 1 }
    fronts "oak ply" thick 3/4
  }
  sequence "fronts" { "upper" }
}
\`\`\`

\`\`\`fettle right
sheet "oak ply" nominal 3/4, actual 3/4, 96 long, 48 wide
piece "box" {
  size 30 wide, 26 high, 18 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    stack { drawer "upper" share 1   drawer "lower" share 1 }
    fronts "oak ply" thick 3/4
  }
  sequence "fronts" { "upper", "lower" }
}
\`\`\`
`,
});
