import { defineFinding, type Measure } from '../finding.ts';

export const toeSpaceSmall = defineFinding<{
  readonly what: 'depth' | 'height';
  readonly size: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'toe-space-small',
  severity: 'note',
  title: 'A toe space that is small',
  headline: (facts, say) =>
    `the toe space is ${say.length(facts.size)} ${facts.what === 'depth' ? 'deep' : 'high'}, kitchen practice is at ` +
    `least ${say.length(facts.limit)}: ${say.length(facts.difference)} less`,
  related: {},
  mends: { deepen: (values, say) => `Set the plinth back ${say.length(values['size'] as Measure)}` },
  help: `
Whoever stands at a cabinet puts the toes under it. ANSI/KCMA A161.1 asks kitchen cabinets for a toe space at least 2"
deep and 3" high. A piece one does not stand and work at needs none, and a plinth set
back by less than 1", for a shadow line, is not judged.

\`\`\`fettle wrong
piece "box" {
  size 20 wide, 24 high, 12 deep
  case { sides thick 3/4   plinth 4 high, set back 1, thick 3/4 }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 20 wide, 24 high, 12 deep
  case { sides thick 3/4   plinth 4 high, set back 2, thick 3/4 }
}
\`\`\`
`,
});
