import { defineFinding } from '../finding.ts';

/** A row, a stack or a face that holds no space. */
export const emptyGroup = defineFinding<{ readonly group: 'row' | 'stack' | 'face' }>({
  code: 'empty-group',
  severity: 'warning',
  title: 'A row, a stack or a face with nothing in it',
  headline: (facts) => `this ${facts.group} holds no front and no open space`,
  brief: (facts) => `an empty ${facts.group}`,
  related: {},
  mends: { open: (values) => `Put an open space into the ${String(values['group'])}` },
  help: `
Rows, stacks and faces are made of spaces: doors, drawers, false fronts, lids and open spaces, or more rows and stacks.

\`\`\`fettle wrong
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    drawer "linen" front 9 high
    row { }
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    drawer "linen" front 9 high
    row { door "left"   door "right" }
    fronts thick 3/4
  }
}
\`\`\`
`,
});
