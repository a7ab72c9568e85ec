import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const doorTooWide = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly width: Measure;
  readonly limit: Measure;
  readonly difference: Measure;
}>({
  code: 'door-too-wide',
  severity: 'warning',
  title: 'A door wider than doors of casework are',
  headline: (facts, say) =>
    `${subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say)} is ` +
    `${say.length(facts.width)} wide, doors are at most about ${say.length(facts.limit)}: ` +
    `${say.length(facts.difference)} too wide`,
  brief: (facts, say) => `door ${say.length(facts.difference)} too wide`,
  related: { also: (values, say) => `${subject(values, say)} is too wide as well` },
  mends: { pair: (values) => `Make ${Number(values['count']) === 1 ? 'it a pair' : 'them pairs'} of doors` },
  help: `
A wide door is heavy on its hinges, warps more, and swings far into the room. Doors of casework are at most about 24"
wide (common practice, no source); a wider opening gets a pair.

\`\`\`fettle wrong
piece "box" {
  size 30 wide, 40 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 { door "front"   fronts thick 3/4 }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 30 wide, 40 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset, gap 1/8 { doors "front"   fronts thick 3/4 }
}
\`\`\`
`,
});
