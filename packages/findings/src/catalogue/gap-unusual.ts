import { defineFinding, type Measure } from '../finding.ts';

export const gapUnusual = defineFinding<{
  readonly gap: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
  readonly tooWide: boolean;
}>({
  code: 'gap-unusual',
  severity: 'warning',
  title: 'A gap that is unusual around inset fronts',
  headline: (facts, say) =>
    `a gap of ${say.length(facts.gap)} around inset fronts is ` +
    (facts.tooWide
      ? `${say.length(facts.difference)} over ${say.length(facts.limit)}: it shows`
      : `${say.length(facts.difference)} under ${say.length(facts.limit)}: fronts bind`),
  brief: (facts, say) => `a gap of ${say.length(facts.gap)}`,
  related: {},
  mends: { 'usual-gap': (values, say) => `Make the gap ${say.length(values['size'] as Measure)}` },
  help: `
Gaps around inset fronts are 1/16" to 1/8" (common practice, no source). Under 1/32" a front binds as soon as the
weather turns damp; over 3/16" the gap is the first thing one sees. Most often such a gap is a slip of the pen or of the
unit.

\`\`\`fettle wrong
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/4 { door "front"   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 3/32 { door "front"   fronts thick 3/4 }
}
\`\`\`
`,
});
