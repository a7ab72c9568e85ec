import { defineFinding } from '../finding.ts';

/** A statement that needs a name to be of use, and has none. */
export const nameMissing = defineFinding<{
  readonly word: string;
  /** A piece without a name is made all the same. */
  readonly usable: boolean;
}>({
  code: 'name-missing',
  severity: 'warning',
  title: 'A statement without its name',
  headline: (facts) =>
    `this '${facts.word}' has no name` +
    (facts.usable ? ' to tell it from others in drawings and lists' : ', so nothing can make use of it'),
  brief: (facts) => `a ${facts.word} without a name`,
  related: {},
  mends: { give: (values, say) => `Call it ${say.name(String(values['name']))}` },
  help: `
Pieces, patterns, stock, hardware and values are known by their names, which stand in quotes right after the word.

\`\`\`fettle wrong
piece {
  size 30 wide, 36 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`

\`\`\`fettle right
piece "shelf unit" {
  size 30 wide, 36 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`
`,
});
