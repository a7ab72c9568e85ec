import { defineFinding } from '../finding.ts';

export const dividerOutOfPlace = defineFinding<{
  readonly word: string;
  readonly where: 'first' | 'last' | 'beside-another';
}>({
  code: 'divider-out-of-place',
  severity: 'error',
  title: 'A divider with nothing to divide',
  headline: (facts) =>
    `this ${facts.word} ` +
    (facts.where === 'first'
      ? 'stands before the first space: it has nothing on one side'
      : facts.where === 'last'
        ? 'stands after the last space: it has nothing on one side'
        : 'stands right beside another one: there is no space between them'),
  brief: (facts) => `a ${facts.word} with nothing to divide`,
  related: {},
  mends: { remove: (values) => `Take out this ${values['word']}` },
  help: `
A partition or a divider stands between two spaces of a row or a stack, in the order in which one sees them.

\`\`\`fettle wrong
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    row {
      partition thick 3/4, shown
      door "left"
      door "right"
    }
    fronts thick 3/4
  }
}
\`\`\`

\`\`\`fettle right
piece "chest" {
  size 20 wide, 30 high, 15 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 {
    row {
      door "left"
      partition thick 3/4, shown
      door "right"
    }
    fronts thick 3/4
  }
}
\`\`\`
`,
});
