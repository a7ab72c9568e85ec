import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const doorWiderThanHigh = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly width: Measure;
  readonly height: Measure;
  readonly difference: Measure;
}>({
  code: 'door-wider-than-high',
  severity: 'warning',
  title: 'A door wider than it is high',
  headline: (facts, say) =>
    `${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} is ` +
    `${say.length(facts.width)} wide and ${say.length(facts.height)} high: ${say.length(facts.difference)} wider than high, it sags`,
  brief: (facts, say) => `door ${say.length(facts.difference)} wider than high`,
  related: { also: (values, say) => `${subject(values, say)} is wider than high as well` },
  mends: { pair: (values) => `Make ${Number(values['count']) === 1 ? 'it a pair' : 'them pairs'} of doors` },
  help: `
A door that is wider than it is high hangs on hinges that stand close together: its own weight pulls at them with a long
lever, and it sags (common practice, no source). Two narrow doors hang better, or a lid or flap whose hinges run along
the long edge.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 14 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 { door "front"   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 14 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 { doors "front"   fronts thick 3/4 }
}
\`\`\`
`,
});
