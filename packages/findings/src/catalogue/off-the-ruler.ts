import { defineFinding, type Measure } from '../finding.ts';

/** A size that is written down and is no mark of the piece's ruler. */
export const offTheRuler = defineFinding<{
  readonly size: Measure;
  /** The nearest marks below and above. */
  readonly below: Measure;
  readonly above: Measure;
}>({
  code: 'off-the-ruler',
  severity: 'note',
  title: 'A size between two marks of the ruler',
  headline: (facts, say) =>
    `${say.length(facts.size)} is no mark of this ruler: it lies between ${say.length(facts.below)} and ` +
    `${say.length(facts.above)}`,
  related: {},
  mends: {
    'to-mark': (values, say) =>
      `Make it ${say.length(values['size'] as Measure)}, ${say.length(values['change'] as Measure)} ${String(values['direction'])}`,
  },
  help: `
The size is taken exactly as it is written. It cannot be set out with the ruler that the piece names, so it is shown as
the mark before it and what is left.

\`\`\`fettle wrong
piece "shelf unit" {
  units inches to 1/16
  size 30-3/32 wide, 36 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`

\`\`\`fettle right
piece "shelf unit" {
  units inches to 1/32
  size 30-3/32 wide, 36 high, 12 deep
  case { sides thick 3/4 }
}
\`\`\`
`,
});
