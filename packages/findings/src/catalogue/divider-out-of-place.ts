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
  related: {},
  mends: { remove: (values) => `Take out this ${values['word']}` },
  help: `
A partition or a divider stands between two spaces of a row or a stack, in the order in which one sees them.
`,
});
