import { defineFinding } from '../finding.ts';

export const valueNotUnderstood = defineFinding<{
  readonly words: string;
  readonly wanted: 'length' | 'count' | 'number';
  readonly problem:
    | 'length-for-number'
    | 'not-whole'
    | 'division-by-zero'
    | 'area'
    | 'unknown-name'
    | 'unreadable'
    | 'too-large';
}>({
  code: 'value-not-understood',
  severity: 'error',
  title: 'A value that cannot be used here',
  headline: (facts) => {
    const wanted = facts.wanted === 'length' ? 'a length' : facts.wanted === 'count' ? 'a whole number' : 'a number';
    const why = {
      'length-for-number': 'it is a length',
      'not-whole': 'it is not whole',
      'division-by-zero': 'it divides by zero',
      area: 'a length times a length is no length',
      'unknown-name': 'its name stands for no value',
      unreadable: 'it cannot be read as a number',
      'too-large': 'it is beyond any size of furniture',
    }[facts.problem];
    return `${wanted} belongs here, and '${facts.words}' is none: ${why}`;
  },
  brief: (facts) => `'${facts.words}' is no ${facts.wanted === 'count' ? 'whole number' : facts.wanted}`,
  related: {},
  mends: {},
  help: `
A length is written as the trade writes it: \`17-1/2\`, \`3/4"\`, \`19mm\`, \`5'-2-3/8"\`. A count is a whole number. Sums,
differences, products with a number and quotients are worked out exactly.

\`\`\`fettle wrong
piece "shelf unit" {
  size 30 wide, 36/0 high, 12 deep
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
