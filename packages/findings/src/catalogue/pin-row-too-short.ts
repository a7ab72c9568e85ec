import { defineFinding } from '../finding.ts';
import { subject } from '../named.ts';

/** A row has fewer holes than there are shelves. */
export const pinRowTooShort = defineFinding<{
  readonly name?: string;
  readonly words: string;
  readonly holes: number;
  readonly shelves: number;
}>({
  code: 'pin-row-too-short',
  severity: 'error',
  title: 'More shelves than holes',
  headline: (facts, say) =>
    `${counted(facts.shelves, 'shelf', 'shelves')} of ${subject(facts, say)} on rows of ` +
    counted(facts.holes, 'hole', 'holes'),
  brief: (facts) => `${facts.holes} holes for ${facts.shelves} shelves`,
  related: { shelves: () => 'the shelves' },
  mends: {},
  help: `
Each shelf needs a hole of its own in every row. A row reaches from \`lowest\` to \`highest\`, one hole every pitch; let it
begin lower, end higher, or bring the holes nearer together.

\`\`\`fettle wrong
piece "box" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "books" { shelves 2 adjustable { pins lowest 12 up, highest 12 up } } }
}
\`\`\`

\`\`\`fettle right
piece "box" {
  size 24 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "books" { shelves 2 adjustable { pins lowest 6 up, highest 22 up } } }
}
\`\`\`
`,
});

function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}
