import { defineFinding } from '../finding.ts';

/** A width on a space of a stack, or a height on a space of a row: what holds the space decides it. */
export const sizeAcross = defineFinding<{
  readonly words: string;
  readonly group: 'row' | 'stack' | 'face';
}>({
  code: 'size-across',
  severity: 'warning',
  title: 'A size that the row or stack decides',
  headline: (facts) =>
    facts.group === 'row'
      ? `all spaces of a row are as high as the row, so '${facts.words}' counts for nothing`
      : `all spaces of a ${facts.group} are as wide as the ${facts.group}, so '${facts.words}' counts for nothing`,
  brief: (facts) => `'${facts.words}' counts for nothing`,
  related: { group: (values) => `the ${values['group']} they stand in` },
  mends: { remove: (values) => `Take out '${values['words']}'` },
  help: `
The spaces of a stack stand one above the other and share its width; those of a row stand side by side and share its
height. Say the width of the stack itself, where it stands in a row, or the height of the row.

\`\`\`fettle wrong
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    stack {
      drawer "linen" front 9 high, front 18 wide
      drawer "blankets" rest
    }
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    stack {
      drawer "linen" front 9 high
      drawer "blankets" rest
    }
    fronts thick 3/4
  }
}
\`\`\`
`,
});
