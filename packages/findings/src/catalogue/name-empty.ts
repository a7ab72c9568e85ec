import { defineFinding } from '../finding.ts';

/** Quotation marks with nothing between them where a name is given. */
export const nameEmpty = defineFinding<{ readonly word: string }>({
  code: 'name-empty',
  severity: 'warning',
  title: 'An empty name',
  headline: (facts) => `the name of this '${facts.word}' is empty`,
  brief: () => 'an empty name',
  related: {},
  mends: {
    remove: () => 'Leave it without a name',
    give: (values, say) => `Call it ${say.name(String(values['name']))}`,
  },
  help: `
A name needs at least one letter or figure between its quotation marks.

\`\`\`fettle wrong
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    drawer "" rest
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset {
    drawer "linen" rest
    fronts thick 3/4
  }
}
\`\`\`
`,
});
