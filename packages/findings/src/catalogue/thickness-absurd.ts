import { defineFinding, type Measure } from '../finding.ts';

/** A thickness that is most often a slip of the unit. */
export const thicknessAbsurd = defineFinding<{
  readonly size: Measure;
  readonly limit: Measure;
  readonly tooMuch: boolean;
}>({
  code: 'thickness-absurd',
  severity: 'warning',
  title: 'A thickness that can hardly be meant',
  headline: (facts, say) =>
    `${say.length(facts.size)} thick can hardly be meant: parts are ${facts.tooMuch ? 'at most' : 'at least'} about ` +
    `${say.length(facts.limit)} thick`,
  brief: (facts, say) => `${say.length(facts.size)} thick`,
  related: {},
  mends: { 'other-unit': (values) => `Write ${String(values['words'])}` },
  help: `
No part of a case is thicker than about 4" or thinner than about 1/64" (common practice, no source). Such a thickness
is most often a number in another unit: a bare number takes the units of its piece.

\`\`\`fettle wrong
piece "box" {
  units inches
  size 80 wide, 20 high, 12 deep
  case { sides thick 18 }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  units inches
  size 80 wide, 20 high, 12 deep
  case { sides thick 18mm }
}
\`\`\`
`,
});
