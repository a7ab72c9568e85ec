import { defineFinding, type Measure } from '../finding.ts';
import { subject } from '../named.ts';

export const pinHolesTooNear = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly apart: Measure;
  readonly left: Measure;
  readonly limit: Measure;
}>({
  code: 'pin-holes-too-near',
  severity: 'warning',
  title: 'Pin holes with hardly any wood between them',
  headline: (facts, say) => {
    const who = subject(facts.name === undefined ? { words: facts.words } : { name: facts.name }, say);
    return `pin holes of ${who} ${say.length(facts.apart)} apart leave ${say.length(facts.left)} of wood between them: less than ${say.length(facts.limit)} breaks out`;
  },
  brief: ({ left }, say) => `${say.length(left)} between pin holes`,
  related: {},
  mends: { usual: (values, say) => `Bore them ${say.length(values['size'] as Measure)} apart` },
  help: `
Each hole has its own wood around it: 1/8" or 3 mm at least to the next (from memory). What is said to lie \`apart\` goes from the middle
of one hole to the middle of the next.

\`\`\`fettle wrong
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset { open "books" { shelves 2 adjustable { pins holes 1/4 wide, 1/4 apart } } }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 20 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides   top thick 3/4, between sides }
  face inset { open "books" { shelves 2 adjustable { pins holes 1/4 wide, 1 apart } } }
}
\`\`\`
`,
});
