import { defineFinding } from '../finding.ts';

/** Named values that are said by means of each other. */
export const valueCircle = defineFinding<{
  /** In the order in which each leads to the next; the last leads back to the first. */
  readonly names: readonly string[];
}>({
  code: 'value-circle',
  severity: 'error',
  title: 'A value defined by itself',
  headline: (facts, say) => {
    const [first = '', ...others] = facts.names.map((name) => say.name(name));
    return (
      `the value ${first} is defined by itself` +
      (others.length === 0 ? '' : `, by way of ${others.join(' and ')}`) +
      ': none of it ever comes to a number'
    );
  },
  brief: (facts, say) => `${say.name(facts.names[0] ?? '')} defined by itself`,
  related: { member: (values, say) => `${say.name(String(values['name']))} is part of the circle` },
  mends: {},
  help: `
A named value may be worked out from other named values, as long as one of them is a number in the end.

\`\`\`fettle wrong
piece "shelf unit" {
  let "span" be "bay" * 2
  let "bay" be "span" / 2
  size 30 wide, 36 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`

\`\`\`fettle right
piece "shelf unit" {
  let "span" be "bay" * 2
  let "bay" be 15
  size "span" wide, 36 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`
`,
});
